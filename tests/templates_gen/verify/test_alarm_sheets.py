"""The alarm for what a beginner relies on: every word and number of a sheet, its signs, its tile, its small warp."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import cache
from itertools import pairwise

import pytest
from kits import NAILS, NOTCHED, PEGGED, font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Region, Shape, Text
from layout.drawing.sheet import Sheet
from layout.plan import Plan
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.verify.prove import prove

BEADS: Mapping[str, object] = {"weft": {"beads": {"number": 26, "over": "5 cm"}}}
KITS: Mapping[str, Mapping[str, object]] = {
    "round bars": BEADS,
    "notched": NOTCHED,
    "pegged": PEGGED | {"weaving.start": "right"},
    "nails": NAILS | {"weaving.near_end": "top"},
}
SHEETS: Sequence[tuple[str, str]] = (
    ("round bars", "strips.pdf"),
    ("round bars", "winding.pdf"),
    ("round bars", "spacing-guide.pdf"),
    ("round bars", "wrap-gauge.pdf"),
    ("round bars", "frame-check.pdf"),
    ("notched", "strips.pdf"),
    ("pegged", "strips.pdf"),
    ("nails", "strips.pdf"),
    ("nails", "winding.pdf"),
    ("nails", "kit.pdf"),
)
_TURNS = 8  # in the usual run every eighth word is spoilt, on each sheet other ones


@cache
def planned(kit: str) -> Plan:
    """The plan of one of the kits."""
    return plan_of(dict(KITS[kit]))


@cache
def output(kit: str, file: str) -> Output:
    """A file of it, as it must be."""
    return Outputs(planned(kit), font_metrics()).output(file)


def rings(kit: str, file: str, shapes: Sequence[Shape]) -> bool:
    """Whether the proof finds something against the file with these shapes on its first sheet."""
    right = output(kit, file)
    sheets = (replace(right.sheets[0], shapes=tuple(shapes)), *right.sheets[1:])
    return not prove(planned(kit), sheets, right.laid, on_paper=True).sound


def first(kit: str, file: str) -> Sheet:
    """Its first sheet, as it must be: nothing is found against it."""
    sheet = output(kit, file).sheets[0]
    assert not rings(kit, file, sheet.shapes)
    return sheet


def exchanged(sheet: Sheet, old: Shape, new: Sequence[Shape]) -> list[Shape]:
    """The shapes of a sheet with others in place of one."""
    return [each for shape in sheet.shapes for each in (new if shape is old else (shape,))]


@pytest.mark.parametrize(("kit", "file"), SHEETS)
def test_another_word_or_number_is_found(kit: str, file: str, pytestconfig: pytest.Config) -> None:
    """Whichever it is, in a head, a step, a picture, a list, at a mark or at a scale; a number by one."""
    sheet = first(kit, file)
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
    every = 1 if pytestconfig.getoption("thorough") else _TURNS
    silent = []
    for text in texts[SHEETS.index((kit, file)) % every :: every]:
        other = str(int(text.words) + 1) if text.words.isdigit() else f"{text.words[:-1]}~"
        if not rings(kit, file, exchanged(sheet, text, [text._replace(words=other)])):
            silent.append(text.words)
    assert [words for words in silent if words != SAMPLE] == []


SAMPLE = "15"
"""Stands as a sign for any number: another one would do as well."""


def picture_numbers(sheet: Sheet) -> list[Text]:
    """Upright numbers in the letters of pictures, those in rings too."""
    texts = (shape for shape in sheet.shapes if isinstance(shape, Text) and not shape.angle)
    return [text for text in texts if text.words.isdigit() and text.pen is Pen.STRONG and text.words != SAMPLE]


@pytest.mark.parametrize(
    ("kit", "file"),
    [
        ("round bars", "spacing-guide.pdf"),
        ("round bars", "winding.pdf"),
        ("round bars", "kit.pdf"),
        ("notched", "strips.pdf"),
        ("pegged", "strips.pdf"),
        ("nails", "strips.pdf"),
    ],
)
def test_a_number_in_a_picture_or_a_ring_is_not_lost(kit: str, file: str) -> None:
    """Nor are two of them exchanged."""
    sheet = first(kit, file)
    numbers = picture_numbers(sheet)
    assert len(numbers) >= 3
    for one, other in pairwise(numbers):
        lost = exchanged(sheet, one, [])
        assert rings(kit, file, lost), f"{one.words} lost"
        if one.words != other.words:
            swapped = [
                one._replace(words=other.words) if s is one else other._replace(words=one.words) if s is other else s
                for s in sheet.shapes
            ]
            assert rings(kit, file, swapped), f"{one.words} and {other.words} exchanged"


SIGNS: Mapping[tuple[str, str], int] = {
    ("round bars", "strips.pdf"): 9,
    ("round bars", "spacing-guide.pdf"): 8,
    ("round bars", "wrap-gauge.pdf"): 4,
    ("notched", "strips.pdf"): 6,
    ("pegged", "strips.pdf"): 4,
}
"""How many signs each sheet explains."""


@pytest.mark.parametrize(("kit", "file"), SIGNS)
def test_a_sign_drawn_with_another_pen_is_found(kit: str, file: str) -> None:
    """Of every meaning on the sheet: cut lines as folds, folds as cut lines, marks as other marks."""
    sheet = first(kit, file)
    found = 0
    for text in sheet.shapes:
        if isinstance(text, Text) and text.pen is Pen.TEXT and text.size > 3 and not text.angle:
            sign = [s for s in sheet.shapes if not isinstance(s, Text) and _is_sign(s, text)]
            if sign and not any(shape.pen in (Pen.RING, Pen.PAPER) for shape in sign[:1]):
                found += 1
                spoilt = [_repenned(s) if s is sign[0] else s for s in sheet.shapes]
                assert rings(kit, file, spoilt), text.words
    assert found >= SIGNS[kit, file]


def _is_sign(shape: Curve | Region, text: Text) -> bool:
    paths = shape.contours if isinstance(shape, Region) else (shape,)
    points = [point for path in paths for point in path.points()]
    return all(1 < text.at.x - x < 16.05 and abs(y - text.at.y - 1.2) < 2.9 for x, y in points)


def _repenned(shape: Shape) -> Shape:
    if isinstance(shape, Region):
        return shape._replace(pen=Pen.HELD)
    return shape._replace(pen=Pen.FOLD if shape.pen is not Pen.FOLD else Pen.CUT)


def _of_the_warp(shape: Shape, sheet: Sheet) -> bool:
    """Whether it is of the small warp in the head."""
    if not isinstance(shape, Curve) or shape.pen not in (Pen.SMALL_WARP, Pen.PICK):
        return False
    return all(point.y > sheet.height - 40 for point in shape.points())


HEADS: Mapping[str, Callable[[Shape], list[Shape]]] = {
    "gone": lambda _: [],
    "aside": lambda shape: Placing(0, 2.2, 0).shapes([shape]),
    "of another pen": lambda shape: [shape._replace(pen=Pen.OUTLINE)],  # type: ignore[call-arg]
}


@pytest.mark.parametrize("name", HEADS)
def test_a_wrong_small_warp_is_found(name: str) -> None:
    """Each of its ends, and each piece of the pick that shows how far the work has come."""
    sheet = first("round bars", "winding.pdf")
    drawn = [shape for shape in sheet.shapes if _of_the_warp(shape, sheet)]
    assert len(drawn) == 8 + 2
    for shape in drawn:
        assert rings("round bars", "winding.pdf", exchanged(sheet, shape, HEADS[name](shape)))


def test_the_small_warp_of_another_step_is_found() -> None:
    """Though it is whole."""
    other = first("round bars", "spacing-guide.pdf")
    sheet = first("round bars", "frame-check.pdf")
    kept = [shape for shape in sheet.shapes if not _of_the_warp(shape, sheet)]
    taken = [shape for shape in other.shapes if _of_the_warp(shape, other)]
    assert len(taken) == 8 + 3
    assert rings("round bars", "frame-check.pdf", [*kept, *taken])
    assert rings("round bars", "frame-check.pdf", kept)


def test_a_tile_beside_its_square_is_found() -> None:
    """White on white says nothing."""
    sheet = first("round bars", "frame-check.pdf")
    (tile,) = (shape for shape in sheet.shapes if isinstance(shape, Text) and shape.pen is Pen.ON_BLACK)
    moved = exchanged(sheet, tile, Placing(0, 20, 0).shapes([tile]))
    assert rings("round bars", "frame-check.pdf", moved)
    square = next(
        shape
        for shape in sheet.shapes
        if isinstance(shape, Region) and shape.pen is Pen.SOLID and len(shape.contours[0].steps) == 3
    )
    assert rings("round bars", "frame-check.pdf", exchanged(sheet, square, []))


@pytest.mark.parametrize("name", ["2026", "7", "A frame for all of us, in the year 2026", "Reed 1 2 3"])
@pytest.mark.parametrize("paper", ["common", "148 x 210 mm", "210 x 148 mm"])
def test_a_name_of_a_kit_may_be_or_end_in_figures(name: str, paper: str) -> None:
    """Figures of a name are no numbers of a picture, whether they stand alone or begin a line."""
    planned = plan_of({"name": name, "paper.size": paper})
    for file in ("strips.pdf", "spacing-guide.pdf"):
        wanted = Outputs(planned, font_metrics()).output(file)
        assert findings(planned, wanted, read(wanted, write(wanted))).sentences == ()
