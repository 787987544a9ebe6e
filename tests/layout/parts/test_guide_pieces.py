"""Spacing guides in pieces: whatever the width, paper and frame, joints are clear and nothing is lost."""

from __future__ import annotations

import math
import re
from collections import Counter
from itertools import product

import pytest
import shapely
from cases import one_in
from kits import KINDS, font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import JOINT_THIRD, Part
from layout.paper.choice import Laying
from layout.products import laid

WIDTHS = (260, 330, 471, 640, 905, 1200, 1777, 2400, 2900)
PAPERS = ("common", "a4", "letter", "a3", "148 x 210 mm")
KITS = [
    {
        "weaving.width": f"{width} mm",
        "frame.outer_width": f"{width + 100} mm",
        "paper.size": paper,
        "weaving.near_end": ("bottom", "top")[k % 2],
        "sett.given": ("2.5 ends/cm", "8 epi", "5 ends/cm")[k % 3],
    }
    | (list(KINDS.values())[k % len(KINDS)] if k % 3 == 0 else {})
    for k, (width, paper) in enumerate(product(WIDTHS, PAPERS))
]


def layings(changes: dict[str, object]) -> list[Laying]:
    """How both guides lie, where they are in pieces."""
    planned = plan_of(changes)
    return [laying for laying in laid("spacing-guide", planned, font_metrics()) if laying.way == "tiles"]


def pieces_of(laying: Laying, part: Part) -> list[Part]:
    """The pieces of a part in order."""
    return [piece.part for sheet in laying.sheets for piece in sheet if piece.part.name == part.name]


def box_of(text: Text) -> shapely.Polygon:
    """Where the capitals of words stand."""
    wide = font_metrics().width(text.words, text.size, text.pen)
    return shapely.box(text.at.x, text.at.y, text.at.x + wide, text.at.y + font_metrics().cap * text.size)


def joints_of(piece: Part) -> list[shapely.Polygon]:
    """The three crosses of each joint of a piece, 1 mm to each side."""
    paths = [shape for shape in piece.shapes if isinstance(shape, Curve) and shape.pen is Pen.REGISTER]
    arms = [path for path in paths if math.dist(path.start, path.steps[0].end) == pytest.approx(2.0)]
    return [shapely.LineString(path.points()).envelope for path in arms]


@pytest.mark.parametrize("changes", one_in(4, KITS), ids=lambda kit: f"{kit['weaving.width']} on {kit['paper.size']}")
def test_joints_are_clear_and_nothing_is_lost(changes: dict[str, object]) -> None:
    """Crosses stand within the paper off marks, ticks, numbers and words; each piece is named; every word is whole."""
    for laying in layings(changes):
        for part in laying.parts:
            pieces = pieces_of(laying, part)
            assert len(pieces) > 1
            for k, piece in enumerate(pieces, 1):
                _is_clear(piece)
                said = Counter(re.findall(r"piece (\d+) of (\d+)", " ".join(words_on(piece))))
                assert said == {(str(k), str(len(pieces))): 1}
            assert {word for piece in pieces for word in words_on(piece)} == set(words_on(part))


def _is_clear(piece: Part) -> None:
    arms = joints_of(piece)
    left, low, right, high = piece.box
    assert len(arms) % 6 == 0
    assert arms
    inside = shapely.box(left, low, right, high)
    words = [box_of(shape) for shape in piece.shapes if isinstance(shape, Text)]
    lines = [
        shapely.LineString(shape.points())
        for shape in piece.shapes
        if isinstance(shape, Curve) and not shape.closed and shape.pen is not Pen.REGISTER
    ]
    for arm in arms:
        assert inside.contains(arm)
        assert min(word.distance(arm) for word in words) > 0.2
        assert min(line.distance(arm) for line in lines) > 0.2


def words_on(part: Part) -> list[str]:
    """Everything a part says."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text)]


@pytest.mark.parametrize("paper", ["common", "a4", "letter", "a3"])
@pytest.mark.parametrize("width", [905, 1200, 2400])
def test_both_guides_share_their_sheets(paper: str, width: int) -> None:
    """Near and far in pieces stand upright on the same sheets, which say once how they are joined, true of both."""
    (laying,) = layings({"weaving.width": f"{width} mm", "frame.outer_width": "3 m", "paper.size": paper})
    assert [part.name for part in laying.parts] == ["spacing-near", "spacing-far"]
    assert laying.once
    said = re.search(r"end crosses level with each other must be ([\d.]+) mm apart", " ".join(laying.notes))
    assert said
    for part in laying.parts:
        xs = [point.x for point in part.datum]
        assert float(said[1]) == pytest.approx(max(xs) - min(xs), abs=0.051)


def test_crosses_of_a_joint_are_far_apart() -> None:
    """Three crosses not in one line, 7 mm apart along the guide and as much across it: no piece can turn unseen."""
    (laying,) = layings({"weaving.width": "1.2 m", "frame.outer_width": "1.3 m"})
    for part in laying.parts:
        assert part.joint_rows
        one, other = part.joint_rows
        assert abs(one - other) >= JOINT_THIRD
