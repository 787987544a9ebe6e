from __future__ import annotations

import math
import re
from dataclasses import replace
from itertools import pairwise

import pytest
from kits import FLAT, font_metrics, laying_of, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, cross, rectangle
from layout.drawing.sheet import Part
from layout.drawing.signs import DOT, dots
from layout.messages.english import ENGLISH
from layout.paper.choice import Laying
from layout.paper.joined import proof_distance
from layout.paper.joints import LEAST_PIECE, SEAM
from layout.paper.joints import pieces as cut_at

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
    """From where to where words or an area reach."""
    if isinstance(shape, Text):
        return shape.at.x, shape.at.x + font_metrics().width(shape.words, shape.size, shape.pen)
    assert isinstance(shape, Region)
    xs = [point.x for path in shape.contours for point in path.points()]
    return min(xs), max(xs)


def test_every_mark_is_on_some_piece(laying: Laying) -> None:
    """Together the pieces have every mark of the whole strip, at the very same place, and none besides."""
    together = set().union(*map(uprights, pieces(laying)))
    assert together == uprights(laying.part)
    assert len(together) > 40


def joints(laying: Laying) -> list[float]:
    """Where the joints lie: two crosses of each stand there, one above the other."""
    found = []
    for one, other in pairwise(pieces(laying)):
        shared = sorted(x for x, _ in one.datum if any(x == point.x for point in other.datum))
        found.append(next(x for x, beside in pairwise(shared) if x == beside))
    return found


def test_overlaps_agree(laying: Laying) -> None:
    """Where two pieces overlap both show exactly the same marks, and both go on past the crosses of their joint."""
    for joint, (one, other) in zip(joints(laying), pairwise(pieces(laying)), strict=True):
        low, high = other.box[0], one.box[2]
        assert SEAM + 1e-9 >= joint - low > 8  # floats round
        assert SEAM + 1e-9 >= high - joint > 8
        there = [{mark for mark in uprights(piece) if low <= mark[1].x <= high} for piece in (one, other)]
        assert there[0] == there[1]


def test_joints_show_the_same_crosses(laying: Laying) -> None:
    """Three crosses of each joint stand on both pieces, drawn at the same places of the strip, not in one line."""
    for joint, (one, other) in zip(joints(laying), pairwise(pieces(laying)), strict=True):
        shared = [point for point in one.datum if point in other.datum][-3:]
        assert len(shared) == 3
        assert shared[0].x == shared[1].x == joint
        (a, b, c) = shared
        assert abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) > 30
        for point in shared:
            for piece in (one, other):
                assert all(hair in piece.shapes for hair in cross(point, 1, Pen.REGISTER))
                left, low, right, high = piece.box
                assert left <= point.x - 1
                assert point.x + 1 <= right
                assert low < point.y - 1
                assert point.y + 1 < high


def test_every_word_is_whole_somewhere(laying: Laying) -> None:
    """Words and signs are never cut, and each is whole on at least one piece; the grey flap is cut."""
    found = [shape for piece in pieces(laying) for shape in whole(piece)]
    assert set(found) >= {shape for shape in whole(laying.part) if shape.pen is not Pen.TINT}
    for piece in pieces(laying):
        assert all(piece.box[0] <= x_of(shape)[0] and x_of(shape)[1] <= piece.box[2] for shape in whole(piece))


def test_numbers_stay_with_their_marks(laying: Laying) -> None:
    """On every piece each number has its mark, and each mark that is broken for a number has that."""
    for piece in pieces(laying):
        marks = {mark[1].x for mark in uprights(piece) if mark[0] in (Pen.MARK, Pen.TEN)}
        numbers = [shape for shape in whole(piece) if isinstance(shape, Text) and shape.words.isdigit()]
        spans = [x_of(number) for number in numbers]
        for first, last in spans:
            assert any(abs(first - 1 - x) < 1e-6 or abs(last + 1 - x) < 1e-6 for x in marks)
        twice = [mark[1].x for mark in uprights(piece) if mark[0] in (Pen.MARK, Pen.TEN)]
        for x in {x for x in twice if twice.count(x) > 1}:
            assert any(first - 1 < x < last + 1 for first, last in spans)


def test_no_part_of_a_sign_stands_alone(laying: Laying) -> None:
    """An arrow has its shaft and its head, scissors both eyes and blades, on whatever piece they are."""
    for piece in pieces(laying):
        shafts = [shape for shape in piece.shapes if isinstance(shape, Curve) and shape.pen is Pen.OUTLINE]
        solids = [shape for shape in whole(piece) if isinstance(shape, Region) and shape.pen is Pen.SOLID]
        on_edge = [shape for shape in solids if _is_head(shape) and abs(_tip(shape).x) > 1e-6 and _across(shape)]
        blades = [shape for shape in solids if not _is_head(shape)]
        assert len([shaft for shaft in shafts if not shaft.closed]) == len(on_edge)
        assert len([eye for eye in shafts if eye.closed]) == len(blades)


def _tip(region: Region) -> Point:
    return region.contours[0].points()[0]


def _is_head(region: Region) -> bool:
    tip, one, other = region.contours[0].points()
    return abs(math.dist(tip, one) - math.dist(tip, other)) < 0.01


def _across(region: Region) -> bool:
    """Whether it points across the strip."""
    _, one, other = region.contours[0].points()
    return abs(one.y - other.y) < 1e-6


def test_pieces_are_numbered(laying: Laying) -> None:
    """Every piece says which of how many it is."""
    count = len(pieces(laying))
    for number, piece in enumerate(pieces(laying), 1):
        assert f"Near bar, piece {number} of {count}" in [
            shape.words for shape in whole(piece) if isinstance(shape, Text)
        ]


def test_the_proof_distance_runs_over_all_joints(laying: Laying) -> None:
    """Measured sheet by sheet from cross to cross and added up, it is what the sheets say, to their tenth of a mm."""
    ends = [min(laying.part.datum)[0], *joints(laying), max(point.x for point in laying.part.datum)]
    total = 0.0
    placed = [piece for sheet in laying.sheets for piece in sheet]
    for (start, stop), (part, placing) in zip(pairwise(ends), placed, strict=True):
        level = part.datum[0].y
        on_sheet = placing.points([Point(start, level), Point(stop, level)])
        total += math.dist(*on_sheet)
    assert total == pytest.approx(proof_distance(laying.part), abs=1e-6)
    said = re.search(r"end crosses level with each other must be ([\d.]+) mm apart", " ".join(laying.notes))
    assert said is not None
    assert float(said[1]) == pytest.approx(total, abs=0.051)


def test_no_piece_is_a_scrap(laying: Laying) -> None:
    """Without its overlaps every piece is at least 40 mm long."""
    edges = [laying.part.box[0], *joints(laying), laying.part.box[2]]
    assert min(other - one for one, other in pairwise(edges)) >= LEAST_PIECE - 1e-6


def test_long_frames_come_out() -> None:
    """A frame of 3 m, our own limit, comes out in tiles on every sheet there is, down to 148 x 210 mm."""
    for size in ("common", "letter", "148 x 210 mm"):
        wide = {"weaving.width": "as wide as fits", "frame.outer_width": "3 m", "paper.size": size}
        laying = laying_of(plan_of(wide), "strip-far")
        assert laying.way == "tiles"
        assert set().union(*map(uprights, pieces(laying))) == uprights(laying.part)


@pytest.mark.parametrize("turn", [1, -1])
def test_dots_far_apart_are_no_one_sign(turn: int) -> None:
    """Dots stay or go each for itself, whichever way they are counted: one beyond a joint takes none with it."""
    xs = [x * turn for x in (-60, -40, -20, 0, 20, 40, 60)]
    drawn = [shape for x in xs for shape in dots([Point(x, 2.0)], full=True)]
    box = rectangle(-70, -15, 70, 15, Pen.CUT)
    part = Part("strip-near", "", (box, *drawn), (Point(-69, 0), Point(69, 0), Point(-69, 9)), (-70, -15, 70, 15))
    for piece in cut_at(replace(part, joint_rows=(5.0, -5.0)), [-30.0], font_metrics(), ENGLISH):
        left, _, right, _ = piece.box
        shown = {shape.contours[0].start.x - DOT for shape in piece.shapes if isinstance(shape, Region)}
        assert shown == {float(x) for x in xs if left <= x - DOT and x + DOT <= right}
