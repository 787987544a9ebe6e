"""What a writer refuses to draw. Every writer asks here first, so that no library gets what it cannot draw rightly."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence
from weakref import WeakValueDictionary

from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError, shown
from templates_gen.document import About
from templates_gen.lettering import fonts
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Draw
from templates_gen.writers.curves import turn

LARGEST = 3500.0
"""No sheet is longer and no point lies further out, in mm: beyond, a PDF library rounds by more than a micrometre."""

_STEEPEST, _FLATTEST = 0.7854, 1e-4  # of an arc, in radians: 45 degrees and a rounding; nearly a straight line


class Found:
    """Sheets that were found good, by identity. A sheet never changes, so one check is enough for all formats."""

    def __init__(self) -> None:
        self._sheets: WeakValueDictionary[int, Sheet] = WeakValueDictionary()

    def __contains__(self, sheet: Sheet) -> bool:
        return self._sheets.get(id(sheet)) is sheet

    def add(self, sheet: Sheet) -> None:
        """Remembers a sheet for as long as it lives."""
        self._sheets[id(sheet)] = sheet


_SOUND = Found()


def check(sheets: Sequence[Sheet], about: About) -> None:
    """`LayoutError` with one sentence if any sheet, or what is said about them, cannot be written."""
    if not sheets:
        raise LayoutError(message(Draw.NO_SHEET))
    _check_about(sheets, about)
    for sheet in sheets:
        if sheet in _SOUND:
            continue
        if not (0 < sheet.width <= LARGEST and 0 < sheet.height <= LARGEST):
            size = {"width": sheet.width, "height": sheet.height, "most": LARGEST}
            raise LayoutError(message(Draw.SIZE, sheet=shown(sheet.name), **size))
        _check_shapes(sheet)
        check_words(shape.words for shape in sheet.shapes if isinstance(shape, Text))
        _SOUND.add(sheet)


def check_words(words: Iterable[str]) -> None:
    """`LayoutError` naming the characters that the print font does not carry, if there are any."""
    letters = "".join(sorted(set().union(*words)))
    if missing := fonts.metrics().missing(letters):
        raise LayoutError(message(Draw.LETTERS, letters=shown(missing)))


def _check_about(sheets: Sequence[Sheet], about: About) -> None:
    if bad := [letter for letter in about.title if not _shows(letter)]:
        raise LayoutError(message(Draw.TITLE, letter=shown(bad[0])))
    for text in (about.inputs, *(sheet.name for sheet in sheets)):
        try:
            text.encode()
        except UnicodeEncodeError as error:
            raise LayoutError(message(Draw.SURROGATE, text=shown(text))) from error


def _shows(letter: str) -> bool:
    return unicodedata.category(letter) not in ("Cc", "Cs") and ord(letter) & 0xFFFE != 0xFFFE


def _check_shapes(sheet: Sheet) -> None:
    for number, shape in enumerate(sheet.shapes, 1):
        if isinstance(shape, Curve):
            fault = message(Draw.LINE_PEN) if shape.pen.ink.fills else _fault(shape)
        elif isinstance(shape, Region):
            fault = _region_fault(shape)
        else:
            fault = _text_fault(shape)
        if fault:
            raise LayoutError(message(Draw.SHAPE, sheet=shown(sheet.name), number=number, fault=fault))


def _region_fault(region: Region) -> str:
    if not region.pen.ink.fills or not region.contours:
        return message(Draw.REGION)
    if any(contour.pen is not region.pen or not contour.closed for contour in region.contours):
        return message(Draw.CONTOURS)
    return next(filter(None, map(_fault, region.contours)), "")


def _text_fault(text: Text) -> str:
    if not text.pen.ink.words:
        return message(Draw.WORDS_PEN, pen=shown(text.pen.value))
    if not _inside(text.at):
        return message(Draw.TEXT_PLACE, most=LARGEST, x=text.at.x, y=text.at.y)
    if not 0 < text.size <= LARGEST or not abs(text.angle) <= 3600:
        return message(Draw.TEXT_SIZE, size=text.size, angle=text.angle)
    return ""


def _inside(point: Point) -> bool:
    x, y = point
    return -LARGEST <= x <= LARGEST and -LARGEST <= y <= LARGEST  # false for what is not a number


def _fault(path: Curve) -> str:
    start, steps, _, _ = path
    if not steps:
        return message(Draw.STEPS)
    for x, y in path.points():
        if not (-LARGEST <= x <= LARGEST and -LARGEST <= y <= LARGEST):  # true for what is not a number
            return message(Draw.POINTS, most=LARGEST, x=x, y=y)
    for end, through in steps:
        if end == start:
            return message(Draw.STEP, x=end.x, y=end.y)
        if through is not None and not _FLATTEST <= abs(turn(start, through, end)) <= _STEEPEST:
            return message(Draw.ARC)
        start = end
    return ""
