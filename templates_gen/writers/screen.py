"""One sheet to a lean SVG for the browser: lines in whole micrometres, and real words in the print font.

What is printed is the PDF; this is what a person sees before. The drawing stands in a group that makes micrometres of
the millimetres of the view box. A group stands for each run of shapes with one pen, words of one size apart. All lines
of a run are one path. Nothing in it has a name, a style, a script or a link, so that many may stand in one page.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby
from xml.sax.saxutils import escape

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from templates_gen.document import About
from templates_gen.lettering.fonts import metrics
from templates_gen.writers.checks import check
from templates_gen.writers.curves import radius, turn

_FONT = "Sheet,Open Sans,sans-serif"
_WEIGHTS = {Face.REGULAR: 400, Face.STRONG: 600}
_QUOTES = {'"': "&quot;"}


def write(sheet: Sheet, title: str = "", language: str = "en") -> str:
    """The SVG element of a sheet, the same text for the same sheet. `LayoutError` if it cannot be drawn.

    `title` is what it shows, for who cannot see it; `language` the tag (BCP 47) of its words.
    """
    check([sheet], About(title, ""))
    width, height = _mm(sheet.width), _mm(sheet.height)
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}" '
        f'role="img" aria-label="{escape(title, _QUOTES)}" lang="{escape(language, _QUOTES)}">'
        f'<g transform="scale(.001)" font-family="{_FONT}">'
    )
    return (
        head
        + "".join(_run(pen, size, run, sheet.height) for (pen, size), run in groupby(sheet.shapes, _look))
        + "</g></svg>"
    )


def _look(shape: Shape) -> tuple[Pen, float]:
    """What shapes of one group have in common: the pen, of words the size too."""
    return shape.pen, shape.size if isinstance(shape, Text) else 0.0


def _run(pen: Pen, size: float, run: Iterable[Shape], top: float) -> str:
    """One group; `top` is the height of the sheet, from whose upper edge y runs down."""
    ink = pen.ink
    grey = f"#{round(ink.grey * 255):02x}" + 2 * f"{round(ink.grey * 255):02x}"
    shapes = list(run)
    if size:
        words = "".join(_words(shape, top) for shape in shapes if isinstance(shape, Text))
        letters = f'font-size="{_short(size * 1000, 5)}" font-weight="{_WEIGHTS[ink.face]}"'
        return f'<g data-pen="{pen.value}" fill="{grey}" {letters}>{words}</g>'
    if ink.fills:
        areas = "".join(f'<path d="{_area(shape, top)}"/>' for shape in shapes if isinstance(shape, Region))
        return f'<g data-pen="{pen.value}" fill="{grey}">{areas}</g>'
    dash = f' stroke-dasharray="{" ".join(map(_um, ink.dash))}"' if ink.dash else ""
    lines = "".join(_curve(shape, top) for shape in shapes if isinstance(shape, Curve))
    look = f'fill="none" stroke="{grey}" stroke-width="{_um(ink.width)}"{dash}'
    return f'<g data-pen="{pen.value}" {look}><path d="{lines}"/></g>'


def _words(text: Text, top: float) -> str:
    """Words as long as on paper: a browser would move letters closer together. Figures alone it does not."""
    x, y = round(text.at.x * 1000), round((top - text.at.y) * 1000)
    place = f'x="{x}" y="{y}"'
    if text.angle:
        place = f'transform="translate({x} {y})rotate({_short(-text.angle, 5)})"'
    if not text.words.isdecimal():
        place += f' textLength="{round(metrics().width(text.words, text.size, text.pen) * 1000)}"'
    if text.words != " ".join(text.words.split()):
        place += ' xml:space="preserve"'
    return f"<text {place}>{escape(text.words)}</text>"


def _area(region: Region, top: float) -> str:
    return "".join(_curve(contour, top) for contour in region.contours)


def _curve(curve: Curve, top: float) -> str:
    """The start, and relative steps in whole micrometres; each begins where the rounded one before it ends."""
    x, y = round(curve.start.x * 1000), round((top - curve.start.y) * 1000)
    return f"M{x} {y}{''.join(_steps(curve, x, y, top))}{'z' if curve.closed else ''}"


def _steps(curve: Curve, x: int, y: int, top: float) -> Iterator[str]:
    start = curve.start
    for end, through in curve.steps:
        new_x, new_y = round(end.x * 1000), round((top - end.y) * 1000)
        dx, dy = new_x - x, new_y - y
        if through is not None:
            yield _arc(start, through, end, dx, dy)
        elif dy and dx:
            yield f"l{dx}{_next(dy)}"
        else:
            yield f"v{dy}" if dy else f"h{dx}"
        x, y, start = new_x, new_y, end


def _arc(start: Point, through: Point, end: Point, dx: int, dy: int) -> str:
    """What is counter-clockwise on the sheet is negative in SVG."""
    size = _um(radius(start, through, end))
    return f"a{size} {size} 0 0 {0 if turn(start, through, end) > 0 else 1}{_next(dx)}{_next(dy)}"


def _next(value: int) -> str:
    """One more number: a sign parts it from the one before, else a blank does."""
    return str(value) if value < 0 else f" {value}"


def _mm(value: float) -> str:
    return _short(value, 5)


def _um(value: float) -> str:
    """Millimetres in micrometres, to a hundredth of one."""
    return _short(value * 1000, 2)


def _short(value: float, places: int) -> str:
    text = f"{value:.{places}f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
