"""What a writer will not draw. Every writer asks here first, so that no library is handed what it cannot do right."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence
from weakref import WeakValueDictionary

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError, shown
from templates_gen.document import About
from templates_gen.lettering import fonts
from templates_gen.writers.curves import turn

LARGEST = 3500.0
"""No sheet is longer and no point lies further out, in mm: beyond, a PDF library rounds by more than a micrometre."""

_STEEPEST, _FLATTEST = 0.7854, 1e-4  # of an arc, in radians: 45 degrees and a rounding; nearly a straight line


class Found:
    """Sheets that were found good, each the very object: it never changes, so one look is enough for all formats."""

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
        raise LayoutError("a file needs at least one sheet")
    _check_about(sheets, about)
    for sheet in sheets:
        if sheet in _SOUND:
            continue
        if not (0 < sheet.width <= LARGEST and 0 < sheet.height <= LARGEST):
            size = f"{sheet.width:g} x {sheet.height:g} mm"
            raise LayoutError(f"sheet {shown(sheet.name)} is {size}: each side must lie between 0 and {LARGEST:g} mm")
        _check_shapes(sheet)
        check_words(shape.words for shape in sheet.shapes if isinstance(shape, Text))
        _SOUND.add(sheet)


def check_words(words: Iterable[str]) -> None:
    """`LayoutError` naming the characters that the print font does not carry, if there are any."""
    letters = "".join(sorted(set().union(*words)))
    if missing := fonts.metrics().missing(letters):
        raise LayoutError(f"the print font cannot draw {shown(missing)}")


def _check_about(sheets: Sequence[Sheet], about: About) -> None:
    if bad := [letter for letter in about.title if not _shows(letter)]:
        raise LayoutError(f"a title cannot hold {shown(bad[0])}")
    for text in (about.inputs, *(sheet.name for sheet in sheets)):
        try:
            text.encode()
        except UnicodeEncodeError as error:
            raise LayoutError(f"{shown(text)} holds half a character (a lone surrogate)") from error


def _shows(letter: str) -> bool:
    return unicodedata.category(letter) not in ("Cc", "Cs") and ord(letter) & 0xFFFE != 0xFFFE


def _check_shapes(sheet: Sheet) -> None:
    for number, shape in enumerate(sheet.shapes, 1):
        if isinstance(shape, Curve):
            fault = "a line needs a line pen" if shape.pen.ink.fills else _fault(shape)
        elif isinstance(shape, Region):
            fault = _region_fault(shape)
        else:
            fault = _text_fault(shape)
        if fault:
            raise LayoutError(f"sheet {shown(sheet.name)}, shape {number}: {fault}")


def _region_fault(region: Region) -> str:
    if not region.pen.ink.fills or not region.contours:
        return "a region needs a pen that fills and at least one contour"
    if any(contour.pen is not region.pen or not contour.closed for contour in region.contours):
        return "a region needs closed contours of its own pen"
    return next(filter(None, map(_fault, region.contours)), "")


def _text_fault(text: Text) -> str:
    if text.pen is not Pen.TEXT:
        return f"words drawn with the pen {shown(text.pen.value)} must be outlined before"
    if not _inside(text.at):
        return f"a text needs a place within {LARGEST:g} mm, got {text.at.x:g}, {text.at.y:g}"
    if not 0 < text.size <= LARGEST or not abs(text.angle) <= 3600:
        return f"a text needs a size above 0 mm and an angle in degrees, got {text.size:g} and {text.angle:g}"
    return ""


def _inside(point: Point) -> bool:
    x, y = point
    return -LARGEST <= x <= LARGEST and -LARGEST <= y <= LARGEST  # false for what is not a number


def _fault(path: Curve) -> str:
    start, steps, _, _ = path
    if not steps:
        return "a line needs at least one step"
    if not _inside(start):
        return f"a line needs points within {LARGEST:g} mm, got {start.x:g}, {start.y:g}"
    for end, through in steps:
        if not _inside(end):
            return f"a line needs points within {LARGEST:g} mm, got {end.x:g}, {end.y:g}"
        if end == start:
            return f"a step needs a length, got one that stays at {end.x:g}, {end.y:g}"
        if through is not None and not _FLATTEST <= abs(turn(start, through, end)) <= _STEEPEST:
            return "an arc needs three points that are not in line and a turn of at most 45 degrees"
        start = end
    return ""
