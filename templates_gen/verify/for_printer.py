"""Sheets that were corrected for a printer, as they come out of it: computed from what the file carries, by own rules.

Nothing of what corrected them is used. What a sheet says of its printer is proven here and taken away, so that the
proofs of its parts see a sheet like any other.
"""

from __future__ import annotations

import json
import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any, NamedTuple

from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue, Figure
from layout.messages.roles import Sheet as Sheets
from templates_gen.document import Document
from templates_gen.messages.roles.printers import ForPrinter
from templates_gen.messages.roles.proof import Compared, Proof
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, finding, said
from templates_gen.verify.joined_arcs import joined

_SMALL = 7.5 * 25.4 / 72  # mm to the em
_SAME = 1e-3
_MARGINS = 8.0, 13.0  # mm
_STEPS_OF_FIVE = 10**5


class _Makes(NamedTuple):
    """What a printer makes of 1 mm across and up a sheet, how far up leans to the right, about a fixed point."""

    x: float
    y: float
    skew: float
    middle: Point

    def of(self, at: Point) -> Point:
        right, up = at.x - self.middle.x, at.y - self.middle.y
        return Point(self.middle.x + self.x * right + self.skew * up, self.middle.y + self.y * up)

    def way(self, angle: float) -> float:
        """The direction in which words come out that are drawn in another; level words stay level."""
        if not angle:
            return angle
        right, up = math.cos(math.radians(angle)), math.sin(math.radians(angle))
        return math.degrees(math.atan2(self.y * up, self.x * right + self.skew * up))


def carried_printer(inputs: str) -> Any:
    """The plain values of the printer that the inputs of a file name; None where they name none."""
    try:
        found = json.loads(inputs)
    except (ValueError, RecursionError):
        return None
    return found.get("printer") if isinstance(found, dict) else None


def as_printed(found: Document, plain: Sequence[Sheet], spoken: Sequence[Catalogue]) -> tuple[Document, Findings]:
    """What was read as it comes out of the printer that the file names, without the sentence that names it.

    `plain` are the sheets as they would be for no printer: only which of their paths are circles and how their arcs are
    parted is taken from them, never where anything lies. `spoken` is the language of each sheet.
    """
    printer = carried_printer(found.about.inputs)
    sheets, total = [], NOTHING
    for number, (sheet, wanted, words) in enumerate(zip(found.sheets, plain, spoken, strict=True), 1):
        makes = _Makes(printer["x"], printer["y"], printer["skew"], Point(sheet.width / 2, sheet.height / 2))
        bare, wrong = _without_sentence(sheet, sentence(printer, words), makes)
        where = said(Proof.SHEET, number=number)
        if not wrong.problems and len(bare.shapes) != len(wanted.shapes):
            count = {"found": len(bare.shapes), "wanted": len(wanted.shapes)}
            wrong += Findings(0.0, (finding(Compared.SHAPES, **count),))
        total += wrong.at(where)
        if not wrong.problems:
            shapes = tuple(_shape(one, other, makes) for one, other in zip(bare.shapes, wanted.shapes, strict=True))
            sheets.append(replace(bare, shapes=shapes))
    return found._replace(sheets=tuple(sheets)), total


def sentence(printer: Any, words: Catalogue) -> str:
    """What each sheet says: the printer's name and numbers with five decimals, how sure they are rounded up."""
    figures = {key: Figure(f"{printer[key] + 0.0:.5f}") for key in ("x", "y", "skew")}
    sure = max(1, math.ceil(round(max(printer["within"].values()) * _STEPS_OF_FIVE, 6)))
    within = Figure(f"{sure / _STEPS_OF_FIVE:.5f}")
    return words.say(Sheets.FOR_PRINTER, printer=printer["name"], **figures, within=within)


def _without_sentence(sheet: Sheet, sentence: str, makes: _Makes) -> tuple[Sheet, Findings]:
    """The sheet without the small words that make up the sentence, which stand inside its margins once."""
    texts = [k for k, shape in enumerate(sheet.shapes) if isinstance(shape, Text) and _is_small(shape)]
    taken = next(_made_up(_squeezed(sentence), sheet.shapes, texts), None)
    if taken is None:
        return sheet, Findings(0.0, (finding(ForPrinter.SENTENCE, words=sentence),))
    own = set(taken)
    rest = [k for k in texts if k not in own]
    again = next(_made_up(_squeezed(sentence), sheet.shapes, rest), None)
    lines = [shape for k, shape in enumerate(sheet.shapes) if k in own and isinstance(shape, Text)]
    side, top = _MARGINS
    inside = all(
        side - LIMIT <= at.x <= sheet.width - side and top - LIMIT <= at.y <= sheet.height - top
        for at in (makes.of(line.at) for line in lines)
    )
    right = again is None and inside and len({line.angle for line in lines}) == 1
    shapes = tuple(shape for k, shape in enumerate(sheet.shapes) if k not in own)
    wrong = () if right else (finding(ForPrinter.SENTENCE, words=sentence),)
    return replace(sheet, shapes=shapes), Findings(0.0, wrong)


def _made_up(left: str, shapes: Sequence[Shape], texts: Sequence[int]) -> Iterator[tuple[int, ...]]:
    """Which texts make up the words that are left, in order."""
    if not left:
        yield ()
        return
    for k in texts:
        shape = shapes[k]
        words = _squeezed(shape.words) if isinstance(shape, Text) else ""
        if words and left.startswith(words):
            others = [other for other in texts if other != k]
            for rest in _made_up(left[len(words) :], shapes, others):
                yield (k, *rest)


def _is_small(text: Text) -> bool:
    return abs(text.size - _SMALL) <= _SAME and text.pen.value == "text"


def _squeezed(words: str) -> str:
    return "".join(words.split())


def _shape(found: Shape, wanted: Shape, makes: _Makes) -> Shape:
    """One shape as it comes out; one of another kind than is wanted is left to the comparison."""
    if isinstance(found, Text):
        return found._replace(at=makes.of(found.at), angle=makes.way(found.angle))
    if isinstance(found, Region):
        others = wanted.contours if isinstance(wanted, Region) else ()
        if len(others) != len(found.contours):
            return found
        return Region(
            tuple(_path(one, other, makes) for one, other in zip(found.contours, others, strict=True)), found.pen
        )
    return _path(found, wanted, makes) if isinstance(wanted, Curve) else found


def _path(found: Curve, wanted: Curve, makes: _Makes) -> Curve:
    if _is_circle(wanted):
        points = found.points()[:-1]
        at = Point(sum(point.x for point in points) / len(points), sum(point.y for point in points) / len(points))
        to = makes.of(at)
        return _each(found, lambda point: Point(point.x + to.x - at.x, point.y + to.y - at.y))
    return _each(found, makes.of) if (path := joined(found, wanted, makes.of)) is None else path


def _each(path: Curve, moved: Any) -> Curve:
    steps = tuple(Step(moved(end), None if through is None else moved(through)) for end, through in path.steps)
    return Curve(moved(path.start), steps, path.pen, path.closed)


def _is_circle(path: Curve) -> bool:
    """Whether a path is a whole circle in arcs: all its points are equally far from their middle."""
    if not path.closed or len(path.steps) < 3 or math.dist(path.start, path.steps[-1].end) > _SAME:
        return False
    ends = path.points()[:-1]
    middle = sum(at.x for at in ends) / len(ends), sum(at.y for at in ends) / len(ends)
    radius = math.dist(middle, path.start)
    return all(
        through is not None and all(abs(math.dist(middle, at) - radius) < LIMIT / 100 for at in (end, through))
        for end, through in path.steps
    )
