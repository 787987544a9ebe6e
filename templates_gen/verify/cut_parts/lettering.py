"""What is engraved on a cut part, matched letter by letter with the outlines of the print font.

A file for a cutter holds no words. So the words that kit and stock ask for are drawn here once more, one letter after
the other by the font's own outlines and widths, and looked for among the areas that are engraved.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Text
from templates_gen.lettering.fonts import metrics
from templates_gen.lettering.outlines import contours_of
from templates_gen.messages.roles.proof_cut import Cut
from templates_gen.verify import LIMIT
from templates_gen.verify.cut_parts.found_cuts import FoundCut
from templates_gen.verify.finding import Findings, finding

SMALL = 7.5 * 25.4 / 72
_SIZES = (SMALL, 9.5 * 25.4 / 72)  # mm to the em: letters of 7.5 and 9.5 points, stated again on purpose
_PENS = (Pen.ENGRAVE, Pen.STRONG)  # for a cutter; on paper
Contours = list[list[Point]]


class Label(NamedTuple):
    """Words whose middle has to stand at `x`, their baseline between `low` and `high`."""

    words: str
    x: float
    low: float
    high: float


class Area(NamedTuple):
    """One engraved area: its contours, each as its points."""

    contours: Contours

    @property
    def top(self) -> float:
        """The highest of its points."""
        return max(point.y for contour in self.contours for point in contour)


def areas(cut: FoundCut) -> list[Area]:
    """Everything that is engraved inside the part, in its own coordinates; words on paper as their outlines."""
    drawn = (shape for shape in cut.seen.sheet.shapes if isinstance(shape, Text | Region) and shape.pen in _PENS)
    return [Area(contours) for contours in map(cut.inside, drawn) if contours]


def prove_engraved(
    there: list[Area], labels: Sequence[Label], text: str, *, may_end: bool = False, least: str = ""
) -> Findings:
    """Every label at its place, `text` in rows below one another however it is broken, and nothing else.

    Where `may_end` is true the text may end early, with its first row, or with the row that ends or follows `least`.
    """
    rest, missing = list(there), []
    for label in labels:
        at = next((k for k, area in enumerate(rest) if stands(area, label)), None)
        if at is None:
            missing.append(finding(Cut.LABEL, words=label.words))
        else:
            del rest[at]
    left = text.strip()
    for area in sorted(rest, key=lambda each: -each.top):
        left = left.lstrip()
        taken = next((taken for size in _SIZES if (taken := along(area.contours, left, size)) is not None), None)
        if not taken:
            missing.append(finding(Cut.ENGRAVED))
            break
        left = left[taken:]
    said = len(text.strip()) - len(left)
    if left.strip() and not missing and (said < max(1, len(least)) or not may_end):
        missing.append(finding(Cut.NOT_ENGRAVED, words=left.strip()))
    return Findings(0.0, tuple(missing))


def broken(text: str) -> str:
    """A text as it is once it was broken into rows and put together: one blank between words."""
    return " ".join(text.split())


def stands(area: Area, label: Label) -> bool:
    """Whether an area is just that label, at its place."""
    for size in _SIZES:
        if spot := spot_of(area, label.words, size):
            return abs(spot.x - label.x) <= LIMIT and label.low <= spot.y <= label.high
    return False


def spot_of(area: Area, words: str, size: float) -> Point | None:
    """The middle of the baseline where an area is just those words in letters of that size; None where it is not."""
    if along(area.contours, words, size) != len(words):
        return None
    start = _start(area.contours, words[0], size)
    return Point(start.x + metrics().width(words, size, Pen.ENGRAVE) / 2, start.y)


def along(contours: Contours, text: str, size: float) -> int | None:
    """How many characters of `text` the contours are, from its first on; None where they are anything else."""
    todo, pen = list(contours), None
    for k, letter in enumerate(text):
        glyph, advance = _glyph(letter, size)
        if glyph and not todo:
            return k
        if glyph and pen is None:
            pen = _start(todo, letter, size)
        if pen is None:
            continue
        if not _same(todo[: len(glyph)], glyph, pen):
            return None
        todo, pen = todo[len(glyph) :], Point(pen.x + advance, pen.y)
    return None if todo else len(text)


def _start(contours: Contours, letter: str, size: float) -> Point:
    """Where the baseline of a first letter begins."""
    glyph, _ = _glyph(letter, size)
    return Point(contours[0][0].x - glyph[0][0].x, contours[0][0].y - glyph[0][0].y)


def _same(found: Contours, wanted: Contours, pen: Point) -> bool:
    if len(found) != len(wanted):
        return False
    at_x, at_y = pen
    for one, other in zip(found, wanted, strict=True):
        if len(one) != len(other):
            return False
        for (x, y), (wanted_x, wanted_y) in zip(one, other, strict=True):
            if not (abs(x - wanted_x - at_x) <= LIMIT and abs(y - wanted_y - at_y) <= LIMIT):
                return False
    return True


@cache
def _glyph(letter: str, size: float) -> tuple[Contours, float]:
    """The outlines of one letter from the start of its baseline, and how far the next one stands."""
    return list(contours_of(Text(Point(0.0, 0.0), size, letter, pen=Pen.ENGRAVE))), metrics().width(
        letter, size, Pen.ENGRAVE
    )
