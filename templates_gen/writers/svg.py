"""One sheet to SVG for editors and cutters: millimetres throughout, groups and paths only.

A group stands for each run of shapes with one pen and is named after it; in a file for a cutter, after its operation,
whose colour and line width it has. Words must have become outlines before.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache
from io import StringIO
from itertools import chain, groupby
from operator import sub
from typing import TYPE_CHECKING

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.values.errors import LayoutError
from templates_gen.document import OPERATION_OF, About, Operations, packed
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Form
from templates_gen.writers.checks import check
from templates_gen.writers.curves import joined, radius, turn
from templates_gen.writers.cutting.checks import check_cut

_LETTERS = (*(pen for pen in Pen if pen.ink.words), Pen.ENGRAVE)  # what fills letters, for the eye and for a cutter

if TYPE_CHECKING:
    from svgwrite import Drawing


def write(sheets: Sequence[Sheet], about: About) -> bytes:
    """The SVG file of the one sheet, the same bytes for the same sheet. `LayoutError` if it cannot be written."""
    check(sheets, about)
    if len(sheets) != 1:
        raise LayoutError(message(Form.SVG_SHEETS, count=len(sheets)))
    if any(isinstance(shape, Text) for shape in sheets[0].shapes):
        raise LayoutError(message(Form.SVG_WORDS))
    if about.operations is not None:
        check_cut(sheets, about.operations)
    file = StringIO()
    _drawing(sheets[0], about).write(file)
    return file.getvalue().encode()


def _drawing(sheet: Sheet, about: About) -> Drawing:
    from svgwrite import Drawing
    from svgwrite.path import Path as SvgPath

    width, height = _number(sheet.width), _number(sheet.height)
    drawing = Drawing(size=(f"{width}mm", f"{height}mm"), viewBox=f"0 0 {width} {height}", debug=False)
    drawing.attribs["xml:lang"] = about.language
    drawing.elements.clear()  # an empty list of definitions
    drawing.set_desc(about.title, packed([sheet], about))
    seen: dict[Pen, int] = {}
    for pen, run in groupby(sheet.shapes, pen_of):
        seen[pen] = seen.get(pen, 0) + 1
        name, look = _ink(pen) if about.operations is None else _operation(pen, about.operations)
        group = drawing.add(drawing.g(id=name if seen[pen] == 1 else f"{name}-{seen[pen]}", **look))
        for shape in run:
            commands = " ".join(_commands(shape, sheet.height))
            group.add(SvgPath(commands, debug=False))
    return drawing


def _ink(pen: Pen) -> tuple[str, dict[str, str]]:
    """A pen's name and its look as presentation attributes: no style sheet, which some cutters do not read."""
    ink = pen.ink
    grey = f"#{round(ink.grey * 255):02x}" + 2 * f"{round(ink.grey * 255):02x}"
    dash = {"stroke_dasharray": ",".join(map(_number, ink.dash))} if ink.dash else {}
    return pen.value, _fill(grey) if ink.fills else {**_stroke(grey, ink.width), **dash}


def _operation(pen: Pen, operations: Operations) -> tuple[str, dict[str, str]]:
    """An operation's name and its look, from the table of the stock."""
    name = OPERATION_OF[pen]
    shown = operations[name]
    return name, _fill(shown.colour) if pen.ink.fills else _stroke(shown.colour, shown.width)


def _fill(colour: str) -> dict[str, str]:
    return {"fill": colour, "fill_rule": "nonzero", "stroke": "none"}


def _stroke(colour: str, width: float) -> dict[str, str]:
    return {"fill": "none", "stroke": colour, "stroke_width": _number(width)}


def _commands(shape: Shape, height: float) -> Iterator[str]:
    """Absolute commands, y turned to run downward from the sheet's upper edge; words in relative steps."""
    if isinstance(shape, Region):
        if shape.pen in _LETTERS and not any(step.through for contour in shape.contours for step in contour.steps):
            yield "".join(_word(shape, height))
        else:
            for contour in shape.contours:
                yield from _commands(contour, height)
    elif isinstance(shape, Curve):
        start = shape.start
        yield f"M{_place(start, height)}"
        for end, through in joined(shape).steps:
            yield f"L{_place(end, height)}" if through is None else _arc(start, through, end, height)
            start = end
        if shape.closed:
            yield "Z"


def _word(region: Region, height: float) -> Iterator[str]:
    """The start of the first contour, and from there relative steps in whole thousandths of a mm.

    Each step begins at the rounded end of the last one, so that roundings do not add up.
    """
    start_x, start_y = region.contours[0].start
    at_x = at_y = 0
    yield f"M{_place(region.contours[0].start, height)}"
    for contour in region.contours:
        points = contour.points()
        xs = [round((x - start_x) * 1000) for x, _ in points]
        ys = [round((start_y - y) * 1000) for _, y in points]
        if contour is not region.contours[0]:
            yield "m" + _steps([at_x, xs[0]], [at_y, ys[0]])
        yield "l" + _steps(xs, ys) + "Z"
        at_x, at_y = xs[0], ys[0]


def _steps(xs: Sequence[int], ys: Sequence[int]) -> str:
    """From each place to the next, in mm."""
    by = zip(map(sub, xs[1:], xs), map(sub, ys[1:], ys), strict=True)
    values = list(chain.from_iterable(by))
    pointed = [False, *[value % 1000 != 0 for value in values]]
    return "".join(map(_thousandths, values, pointed)).removeprefix(" ")


@lru_cache(20_000)
def _thousandths(value: int, pointed: bool) -> str:
    """The number of mm, without a zero before its point.

    In front is a blank, unless the number before ends at a sign, or at a second point where it is `pointed` itself (SVG
    1.1, 8.3.9: the grammar for path data).
    """
    text = _number(value / 1000).replace("0.", ".", 1) if abs(value) < 1000 else _number(value / 1000)
    return text if value < 0 or (text[0] == "." and pointed) else f" {text}"


def _arc(start: Point, through: Point, end: Point, height: float) -> str:
    size = _number(radius(start, through, end))
    sweep = 0 if turn(start, through, end) > 0 else 1  # what is counter-clockwise on the sheet is negative in SVG
    return f"A{size} {size} 0 0 {sweep} {_place(end, height)}"


def _place(point: Point, height: float) -> str:
    return f"{_number(point.x)} {_number(height - point.y)}"


def _number(value: float) -> str:
    """The one place where a number becomes text: to a hundredth of a micrometre, without trailing zeros."""
    text = f"{value:.5f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
