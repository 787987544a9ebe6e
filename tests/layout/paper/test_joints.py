from __future__ import annotations

import math
import re
from itertools import pairwise

import pytest
from kits import FLAT, font_metrics, laying_of, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, cross
from layout.drawing.sheet import Part
from layout.paper.choice import Laying
from layout.paper.joints import LEAST_PIECE, OVERLAP, joints_of, proof_distance

CASES: dict[str, dict[str, object]] = {
    "60 cm on common": {"weaving.width": "60 cm", "frame.outer_width": "70 cm", "paper.lay": "tiles"},
    "12 in on a small sheet": {
        "weaving.width": "12 in",
        "frame.outer_width": "18 in",
        "sett.given": "8 epi",
        "paper.size": "148 x 210 mm",
        "name": "Крапива и лён, рама для большой шпалеры",
    },
    "3 m on a4": {
        "weaving.width": "as wide as fits",
        "frame.outer_width": "3 m",
        "paper.size": "a4",
        "sett.given": "5/cm",
    },
    "3 m from the right over boards": {
        "weaving.width": "as wide as fits",
        "frame.outer_width": "3 m",
        "weaving.start": "right",
        "weaving.slant": "face straight",
        "sett.given": "12 epi",
    }
    | FLAT,
}


@pytest.fixture(scope="module", params=CASES)
def laying(request: pytest.FixtureRequest) -> Laying:
    """A near strip in tiles."""
    found = laying_of(plan_of(CASES[request.param]), "strip-near")
    assert found.way == "tiles"
    return found


def pieces(laying: Laying) -> list[Part]:
    """The pieces in order."""
    return [piece.part for sheet in laying.sheets for piece in sheet]


def uprights(part: Part) -> set[tuple[Pen, Point, Point]]:
    """Every mark, with its pen and both ends."""
    return {
        (shape.pen, shape.start, shape.steps[0].end)
        for shape in part.shapes
        if isinstance(shape, Curve) and len(shape.steps) == 1 and shape.start.x == shape.steps[0].end.x
        if shape.pen is not Pen.REGISTER
    }


def whole(part: Part) -> list[Text | Region]:
    """Words and arrow heads."""
    return [shape for shape in part.shapes if isinstance(shape, Text | Region)]


def x_of(shape: Shape) -> tuple[float, float]:
    """From where to where words or an arrow head reach."""
    if isinstance(shape, Text):
        return shape.at.x, shape.at.x + font_metrics().width(shape.words, shape.size)
    assert isinstance(shape, Region)
    xs = [point.x for path in shape.contours for point in path.points()]
    return min(xs), max(xs)


def test_every_mark_is_on_some_piece(laying: Laying) -> None:
    """Together the pieces have every mark of the whole strip, at the very same place, and none besides."""
    together = set().union(*map(uprights, pieces(laying)))
    assert together == uprights(laying.part)
    assert len(together) > 50


def test_overlaps_agree(laying: Laying) -> None:
    """Where two pieces overlap both show exactly the same marks; the overlap is at least 14 mm to each side."""
    for one, other in pairwise(pieces(laying)):
        low, high = other.box[0], one.box[2]
        assert high - low >= 2 * OVERLAP
        there = [{mark for mark in uprights(piece) if low <= mark[1].x <= high} for piece in (one, other)]
        assert there[0] == there[1]


def test_joints_show_the_same_crosses(laying: Laying) -> None:
    """Three crosses of each joint stand on both pieces, drawn at the same places of the strip, not in one line."""
    joints = joints_of(laying.part, len(pieces(laying)))
    for joint, (one, other) in zip(joints, pairwise(pieces(laying)), strict=True):
        shared = [point for point in one.datum if point in other.datum][-3:]
        assert len(shared) == 3
        assert shared[0].x == shared[1].x == joint
        (a, b, c) = shared
        assert abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) > 100
        for point in shared:
            for piece in (one, other):
                assert all(hair in piece.shapes for hair in cross(point, 4, Pen.REGISTER))
                assert piece.box[0] <= point.x - 4
                assert point.x + 4 <= piece.box[2]


def test_every_word_is_whole_somewhere(laying: Laying) -> None:
    """Words and arrow heads are never cut, and each is whole on at least one piece."""
    found = [shape for piece in pieces(laying) for shape in whole(piece)]
    assert set(found) >= set(whole(laying.part))
    for piece in pieces(laying):
        assert all(piece.box[0] <= x_of(shape)[0] and x_of(shape)[1] <= piece.box[2] for shape in whole(piece))


def test_totals_stay_with_their_lines(laying: Laying) -> None:
    """On every piece there are as many running totals as unit lines."""
    for piece in pieces(laying):
        lines = [mark for mark in uprights(piece) if mark[0] is Pen.UNIT]
        totals = [shape for shape in whole(piece) if isinstance(shape, Text) and shape.words.isdigit()]
        assert len(totals) == len(lines)


def test_no_arrow_stands_alone(laying: Laying) -> None:
    """An arrow head is on a piece only together with the words before it."""
    for piece in pieces(laying):
        for before, shape in pairwise(piece.shapes):
            if isinstance(shape, Region):
                assert isinstance(before, Text)


def test_pieces_are_numbered(laying: Laying) -> None:
    """Every piece says which of how many it is."""
    count = len(pieces(laying))
    for number, piece in enumerate(pieces(laying), 1):
        assert f"piece {number} of {count}" in [shape.words for shape in whole(piece) if isinstance(shape, Text)]


def test_the_proof_distance_runs_over_all_joints(laying: Laying) -> None:
    """Measured sheet by sheet from cross to cross and added up, it is what the sheets say, to their tenth of a mm."""
    joints = joints_of(laying.part, len(pieces(laying)))
    ends = [min(laying.part.datum)[0], *joints, max(point.x for point in laying.part.datum)]
    total = 0.0
    placed = [piece for sheet in laying.sheets for piece in sheet]
    for (start, stop), (part, placing) in zip(pairwise(ends), placed, strict=True):
        level = part.datum[0].y
        on_sheet = placing.points([Point(start, level), Point(stop, level)])
        total += math.dist(*on_sheet)
    assert total == pytest.approx(proof_distance(laying.part), abs=1e-6)
    said = re.search(r"small crosses at its two ends are ([\d.]+) mm apart", " ".join(laying.notes))
    assert said is not None
    assert float(said[1]) == pytest.approx(total, abs=0.051)


def test_no_piece_is_a_scrap(laying: Laying) -> None:
    """Without its overlaps every piece is at least 40 mm long."""
    assert laying.part.length / len(pieces(laying)) >= LEAST_PIECE


def test_long_frames_come_out() -> None:
    """A frame of 3 m, our own limit, comes out in tiles on every sheet there is, down to 148 x 210 mm."""
    for size in ("common", "letter", "148 x 210 mm"):
        wide = {"weaving.width": "as wide as fits", "frame.outer_width": "3 m", "paper.size": size}
        laying = laying_of(plan_of(wide), "strip-far")
        assert laying.way == "tiles"
        assert set().union(*map(uprights, pieces(laying))) == uprights(laying.part)
