"""The sentence that names a printer: on every sheet, on every paper, in every language, off everything else."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

import pytest
from ink import corners, meetings
from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD, font_metrics, kit_of
from printers import FAR, USUAL, printer_of

from layout.drawing.correction import corrected
from layout.drawing.pens import Pen
from layout.drawing.printer import LONGEST_NAME, Printer
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Sheet
from layout.paper.printer_line import printer_words, with_printer_line
from layout.plan import Plan, plan
from layout.values.errors import LayoutError
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import stock_file
from templates_gen.languages.catalogues import words_of

SIDE, TOP = 8.0, 13.0  # our own margins, stated once more
GAP = 0.3  # the least white between words and anything else, in mm
WHITE = 2.0  # of a target, from its middle
WIDE = "W" * LONGEST_NAME
PAPERS = ("common", "a4", "letter", "148 x 210 mm", "210 x 148 mm", "11x17")
LANGUAGES = ("en", "es", "de", "fr")
ENDS = ({}, FLAT, NOTCHED, PEGGED, NAILS, CROSSED, ROD)
LAYS = ("auto", "diagonal", "tiles", "straight")
CASES = [
    ({**ENDS[k % len(ENDS)], "paper.lay": LAYS[k % 4]}, PAPERS[k % len(PAPERS)], LANGUAGES[k // 2 % 4])
    for k in range(4 * len(PAPERS))
]

SMALL: tuple[tuple[dict[str, object], str, str], ...] = (
    ({"paper.lay": "diagonal"}, "letter", "es"),
    ({}, "148 x 210 mm", "fr"),
    ({**PEGGED, "paper.lay": "tiles"}, "210 x 148 mm", "de"),
)


def planned(changes: dict[str, object], paper: str, language: str) -> Plan:
    """The plan of a kit, in the words of its language."""
    kit = kit_of({**changes, "paper.size": paper, "paper.language": language})
    return plan(kit, words_of(kit))


def said_on(planned: Plan, names: tuple[str, ...]) -> Iterator[tuple[str, Sheet, Sheet]]:
    """What every printed sheet of a kit says of printers of these names: words, the sheet without, and with them."""
    outputs = Outputs(planned, font_metrics(), stock=stock_file.built_in())
    for record in outputs.records.values():
        if not record.name.endswith(".pdf"):
            continue
        output = record.draw()
        for sheet, pieces in zip(output.sheets, output.laid, strict=True):
            for name in names:
                words = printer_words(replace(USUAL, name=name), planned.words)
                found = with_printer_line(sheet, pieces, words, font_metrics())
                assert found is not None, f"{sheet.name} has no room for {words}"
                yield words, sheet, found


def check(words: str, sheet: Sheet, found: Sheet) -> None:
    """Nothing else is changed; the words are whole, inside the margins, and off all ink and the white of targets."""
    known = set(sheet.shapes)
    own = [shape for shape in found.shapes if shape not in known]
    assert [shape for shape in found.shapes if shape in known] == list(sheet.shapes)
    texts = [shape for shape in own if isinstance(shape, Text)]
    assert len(texts) == len(own) > 0
    assert "".join(text.words for text in texts).replace(" ", "") == words.replace(" ", "").replace("\u00a0", "")
    lines = {text.words for text in texts}
    for text in texts:
        for x, y in corners(text):
            assert SIDE <= x <= sheet.width - SIDE
            assert TOP <= y <= sheet.height - TOP
            assert all(math.dist((x, y), at) > WHITE for at in targets(sheet))
    close = [each for each in meetings(found, GAP) if each.words in lines or each.other in lines]
    assert close == []


def targets(sheet: Sheet) -> list[Point]:
    """The middles of the targets."""
    rings = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    return [Point(ring.start.x - 1.2, ring.start.y) for ring in rings]


@pytest.mark.parametrize(("changes", "paper", "language"), SMALL)
def test_there_is_room_on_every_sheet(changes: dict[str, object], paper: str, language: str) -> None:
    """Of a kit, for a printer with a usual name."""
    found = list(said_on(planned(changes, paper, language), ("Office printer",)))
    assert len(found) >= 5
    for each in found:
        check(*each)


@pytest.mark.slow
@pytest.mark.parametrize(("changes", "paper", "language"), CASES)
def test_there_is_room_for_every_name(changes: dict[str, object], paper: str, language: str) -> None:
    """The widest one too, with every kind of frame end, way to lie, paper and language."""
    try:
        numbers = planned(changes, paper, language)
        found = list(said_on(numbers, ("Office printer", "A", WIDE)))
    except LayoutError:
        pytest.skip("this paper refuses a part of that kit")
    for each in found:
        check(*each)


@pytest.fixture(scope="module")
def usual() -> list[tuple[Sheet, Sheet]]:
    """Sheets of a kit without the sentence and with it."""
    return [(sheet, found) for _, sheet, found in said_on(planned({}, "common", "en"), ("Office printer",))]


@pytest.mark.parametrize("printer", FAR[:4], ids=str)
def test_nothing_leaves_the_page_or_enters_the_white_of_a_target(
    printer: Printer, usual: list[tuple[Sheet, Sheet]]
) -> None:
    """However far off a printer may be: all ink stays on the paper, and no words enter the white of a target.

    On paper all of it comes out where it should, inside the margins.
    """
    for _, sheet in usual:
        moved = corrected(sheet, printer.scale)
        rings = targets(moved)
        for shape in moved.shapes:
            for x, y in _ink(shape):
                assert 1 < x < sheet.width - 1
                assert 1 < y < sheet.height - 1
            for at in _along(shape) if isinstance(shape, Text) else ():
                assert all(math.dist(at, ring) > WHITE - 0.1 for ring in rings), (sheet.name, shape)


def _ink(shape: object) -> Iterator[Point]:
    if isinstance(shape, Text):
        yield from corners(shape)
    elif isinstance(shape, Curve | Region):
        for path in shape.contours if isinstance(shape, Region) else (shape,):
            yield from path.points()


def _along(text: Text) -> Iterator[Point]:
    """Points along the baseline and along the tops of words."""
    low_left, low_right, high_right, high_left = corners(text)
    for one, other in ((low_left, low_right), (high_left, high_right)):
        for k in range(21):
            yield Point(one.x + (other.x - one.x) * k / 20, one.y + (other.y - one.y) * k / 20)


@pytest.mark.parametrize("scale", [(1.01, 1.01, 0.002), (0.99, 0.99, -0.002)], ids=str)
def test_words_stay_clear(scale: tuple[float, float, float], usual: list[tuple[Sheet, Sheet]]) -> None:
    """Up to 1 %, beyond which a print setting is likelier than the printer, no word meets another or a mark."""
    for sheet, found in usual:
        plain = {(each.words, each.other) for each in meetings(sheet, 0.05)}
        moved = corrected(found, printer_of(*scale).scale)
        met = {(each.words, each.other) for each in meetings(moved, 0.0)} - plain
        assert met == set(), sheet.name
