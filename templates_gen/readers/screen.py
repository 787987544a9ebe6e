"""From the SVG of a sheet on the screen back to the sheet. Everything that our writer never makes is refused.

It states on its own how each pen looks and how long words are, so that a drawing that would show something else than
what is printed is found.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from xml.etree import ElementTree

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text
from layout.drawing.sheet import Sheet
from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Svg
from templates_gen.readers.arcs import middle_of_arc

LARGEST = 16_000_000
"""Characters; a sheet of 5,000 ends is a tenth of it."""

_SVG = "{http://www.w3.org/2000/svg}"
_SPACE = "{http://www.w3.org/XML/1998/namespace}space"
_SIZE = re.compile(r"([0-9]{1,5}(?:\.[0-9]{1,5})?)mm")
_WHOLE = "-?[0-9]{1,8}"
_RADIUS = r"[0-9]{1,12}(?:\.[0-9]{1,2})?"
_LETTERS = r"[0-9]{1,7}(?:\.[0-9]{1,5})?"
_NEXT = rf"(?: (?=[0-9])|(?=-))({_WHOLE})"  # a sign parts it from the number before, else a blank does
_ONE = rf"l({_WHOLE}){_NEXT}|([hv])({_WHOLE})|a({_RADIUS}) ({_RADIUS}) 0 0 ([01]){_NEXT}{_NEXT}"
_STEP = re.compile(_ONE)
_PLAIN = re.sub(r"\((?!\?)", "(?:", _ONE)
_PATH = re.compile(rf"M({_WHOLE}) ({_WHOLE})((?:{_PLAIN})+)(z?)")
_TURNED = re.compile(rf"translate\(({_WHOLE}) ({_WHOLE})\)rotate\((-?[0-9]{{1,4}}(?:\.[0-9]{{1,5}})?)\)")
_NEAR = 0.6  # micrometres: a length of words is rounded to whole ones


def read(text: str, name: str = "") -> Sheet:
    """The sheet that is drawn, in mm, under that name; `ReadError` with one sentence for anything else."""
    if len(text) > LARGEST:
        raise ReadError(message(Svg.TOO_LARGE, most=LARGEST))
    if not text.startswith("<svg ") or "<!" in text or "<?" in text:
        raise ReadError(message(Svg.BEGINNING))
    try:
        root = ElementTree.fromstring(text)  # noqa: S314 - no entities, see above
    except (ElementTree.ParseError, ValueError) as error:
        raise ReadError(message(Svg.DAMAGED, why=shown(str(error)))) from error
    width, height = _size(root)
    (inner,) = root
    shapes = tuple(shape for group in inner for shape in _group(group, height))
    return Sheet(name, width, height, shapes)


def _size(root: ElementTree.Element) -> tuple[float, float]:
    """Width and height; refused unless the view box is in millimetres and the drawing in thousandths of them."""
    if root.tag != _SVG + "svg" or root.keys() != ["width", "height", "viewBox", "role", "aria-label", "lang"]:
        raise ReadError(message(Svg.ROOT, tag=_tag(root), keys=shown(sorted(root.keys()))))
    width, height = _SIZE.fullmatch(root.attrib["width"]), _SIZE.fullmatch(root.attrib["height"])
    inner = dict(root[0].items()) if len(root) == 1 and root[0].tag == _SVG + "g" else {}
    wanted = {"transform": "scale(.001)", "font-family": "Sheet,Open Sans,sans-serif"}
    boxed = width and height and root.attrib["viewBox"] == f"0 0 {width[1]} {height[1]}"
    if not width or not height or not boxed or inner != wanted or root.attrib["role"] != "img":
        raise ReadError(message(Svg.SCALE, sizes=shown([*sorted(root.items()), *sorted(inner.items())])))
    _no_text(root)
    _no_text(root[0])
    return float(width[1]), float(height[1])


def _tag(part: ElementTree.Element) -> str:
    return shown(part.tag.removeprefix(_SVG))


def _no_text(part: ElementTree.Element) -> None:
    if part.text or part.tail:
        raise ReadError(message(Svg.TEXT_AFTER, tag=_tag(part)))


def _looks(pen: Pen) -> dict[str, str]:
    """How a pen must look, from the table of pens alone; words have their size and weight besides."""
    ink = pen.ink
    level = f"{round(255 * ink.grey):02x}"
    grey = f"#{level}{level}{level}"
    if ink.fills:
        return {"fill": grey}
    look = {"fill": "none", "stroke": grey, "stroke-width": f"{ink.width * 1000:g}"}
    if ink.dash:
        look["stroke-dasharray"] = " ".join(f"{part * 1000:g}" for part in ink.dash)
    return look


_PENS = {pen.value: (pen, {"data-pen": pen.value, **_looks(pen)}) for pen in Pen}


def _group(group: ElementTree.Element, height: float) -> Iterator[Shape]:
    """The shapes of one run; refused unless it looks as its pen does."""
    said = group.get("data-pen", "")
    pen, look = _PENS.get(said, (Pen.TEXT, {}))
    got = dict(group.items())
    size = got.pop("font-size", "")
    if group.tag != _SVG + "g" or not look or not len(group):
        raise ReadError(message(Svg.RUN, tag=_tag(group), keys=shown(said)))
    _no_text(group)
    if size:
        yield from _texts(group, pen, got, size, height)
        return
    if got != look:
        raise ReadError(message(Svg.RUN, tag=_tag(group), keys=shown(said)))
    for part in group:
        _no_text(part)
        if part.tag != _SVG + "path" or part.keys() != ["d"] or len(part):
            raise ReadError(message(Svg.AMONG, tag=_tag(part), keys=shown(sorted(part.keys()))))
        paths = list(_paths(part.attrib["d"], pen, height))
        if not pen.ink.fills:
            yield from paths
        elif all(path.closed for path in paths):
            yield Region(tuple(paths), pen)
        else:
            raise ReadError(message(Svg.OPEN, path=shown(part.attrib["d"])))
    if not pen.ink.fills and len(group) != 1:
        raise ReadError(message(Svg.LINES, count=len(group)))


def _texts(group: ElementTree.Element, pen: Pen, got: dict[str, str], size: str, height: float) -> Iterator[Text]:
    """Words of one size."""
    _, look = _PENS[pen.value]
    weighty = {"font-weight": "400" if pen.ink.face is Face.REGULAR else "600"}
    if not pen.ink.words or got != {**look, **weighty} or not re.fullmatch(_LETTERS, size):
        raise ReadError(message(Svg.RUN, tag=_tag(group), keys=shown(pen.value)))
    for part in group:
        if part.tag != _SVG + "text" or len(part) or part.tail:
            raise ReadError(message(Svg.AMONG, tag=_tag(part), keys=shown(sorted(part.keys()))))
        words = part.text or ""
        place = dict(part.items())
        at, angle = _place(place, part, height)
        text = Text(at, float(size) / 1000, words, angle, pen)
        _as_long(text, place, part)
        yield text


def _place(place: dict[str, str], part: ElementTree.Element, height: float) -> tuple[Point, float]:
    """Where words begin, and how far they are turned; takes what says so out of `place`."""
    turned = _TURNED.fullmatch(place.pop("transform", ""))
    if turned:
        return Point(float(turned[1]) / 1000, height - float(turned[2]) / 1000), -float(turned[3])
    x, y = place.pop("x", ""), place.pop("y", "")
    if not re.fullmatch(_WHOLE, x) or not re.fullmatch(_WHOLE, y):
        raise ReadError(message(Svg.AMONG, tag=_tag(part), keys=shown(sorted(part.keys()))))
    return Point(float(x) / 1000, height - float(y) / 1000), 0.0


def _as_long(text: Text, place: dict[str, str], part: ElementTree.Element) -> None:
    """Refused unless the words are as long as on paper, and every blank of them shows."""
    length, space = place.pop("textLength", ""), place.pop(_SPACE, "")
    blanks = text.words != " ".join(text.words.split())
    long = metrics().width(text.words, text.size, text.pen) * 1000 if not metrics().missing(text.words) else -1.0
    figures = text.words.isdecimal()
    said = bool(re.fullmatch(r"[0-9]{1,8}", length)) and abs(float(length) - long) <= _NEAR
    if place or (space == "preserve") != blanks or (length != "" if figures else not said):
        raise ReadError(message(Svg.AMONG, tag=_tag(part), keys=shown(sorted(part.items()))))


def _paths(commands: str, pen: Pen, height: float) -> Iterator[Curve]:
    """The lines of one path, y turned to run upward."""
    position = 0
    while position < len(commands) or position == 0:
        found = _PATH.match(commands, position)
        if not found:
            raise ReadError(message(Svg.PATH, path=shown(commands[position : position + 50])))
        x, y = int(found[1]), int(found[2])
        start = Point(x / 1000, height - y / 1000)
        yield Curve(start, tuple(_steps(x, y, found[3], height)), pen, found[4] == "z")
        position = found.end()


def _steps(x: int, y: int, commands: str, height: float) -> Iterator[Step]:
    """Straight steps and arcs; SVG's sweep counts as positive what goes clockwise on the sheet."""
    at = Point(x / 1000, height - y / 1000)
    for across, down, one, by, rx, ry, sweep, arc_x, arc_y in _STEP.findall(commands):
        x += int(across or arc_x or (by if one == "h" else 0))
        y += int(down or arc_y or (by if one == "v" else 0))
        end = Point(x / 1000, height - y / 1000)
        if rx != ry:
            raise ReadError(message(Svg.ARC, one=rx, other=ry))
        yield Step(end, middle_of_arc(at, float(rx) / 1000, sweep == "0", end) if rx else None)
        at = end
