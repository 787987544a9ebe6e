"""From SVG back to a sheet, with Python's XML library. Everything our writer never makes is refused.

A hostile file could make the parser expand entities without end. So a file that holds any "<!" (a document type, an
entity, a comment) or does not begin with our own declaration is refused before it is parsed.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from itertools import accumulate
from operator import sub
from xml.etree import ElementTree

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, points_at, straight_to
from layout.drawing.sheet import Sheet
from layout.values.errors import shown
from templates_gen.document import About, Document, ReadError, unpacked
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Svg
from templates_gen.readers.arcs import steps_of_arc
from templates_gen.readers.svg_looks import Look, looks_of

LARGEST_FILE = 16_000_000
"""Bytes: the spacing guides of 5,000 ends with all their words in outlines are under a quarter."""
_MOST_PARTS = 50_000  # elements, and attributes; such a file has 21,000
_MOST_STEPS = 150_000  # of all lines and outlines, which are read one by one; such a file has 20,000
_MOST_NUMBERS = 1_600_000  # of all paths, each after a blank or a sign or with a point; words are read in one go

_DECLARATION = b'<?xml version="1.0" encoding="utf-8" ?>\n<svg '
_SVG = "{http://www.w3.org/2000/svg}"
_LANG = "{http://www.w3.org/XML/1998/namespace}lang"
_NUMBER = r"(-?[0-9]{1,7}+(?:\.[0-9]++)?+)"
_LINE_TO = rf"L{_NUMBER} {_NUMBER}"
_ARC_TO = rf"A{_NUMBER} {_NUMBER} 0 0 ([01]) {_NUMBER} {_NUMBER}"
_STEP = re.compile(rf" (?:{_LINE_TO}|{_ARC_TO})")
_PATH = re.compile(rf"M{_NUMBER} {_NUMBER}((?:{_STEP.pattern})++)( Z)?+(?: (?=M)|\Z)")
_WHOLE, _BROKEN = r"(?:0|[1-9][0-9]{0,3})", r"(?:(?:[1-9][0-9]{0,3})?\.[0-9]{0,2}[1-9])"
_AND = rf"(?:{_WHOLE}(?:-(?!0)| )|{_BROKEN}(?:-(?!0)|(?=\.)| (?=[0-9])))"  # a sign, or a second point, is enough
_BY = rf"(?:-(?!0))?{_AND}++(?:{_BROKEN}|{_WHOLE})"
_LINES = rf"l{_BY}Z"
_WORD = re.compile(rf"M{_NUMBER} {_NUMBER}({_LINES}(?:m{_BY}{_LINES})*+)")
_ONE = re.compile(r"-?(?:[0-9]*\.[0-9]+|[0-9]+)")
_LETTERS = (*(pen for pen in Pen if pen.ink.words), Pen.ENGRAVE)  # what fills letters, for the eye and for a cutter
_SIZE = re.compile(r"([0-9]{1,7}+(?:\.[0-9]++)?+)mm")  # 1 mm is 1 unit: the view box must repeat the size


def read(data: bytes) -> Document:
    """The sheet, in mm; `ReadError` with one sentence for anything else than a file of ours."""
    if len(data) > LARGEST_FILE:
        raise ReadError(message(Svg.TOO_LARGE, most=LARGEST_FILE))
    if not data.startswith(_DECLARATION) or b"<!" in data or data.count(b"<?") != 1:
        raise ReadError(message(Svg.BEGINNING))
    _draws_little(data)
    try:
        root = ElementTree.fromstring(data)  # noqa: S314 - no entities, see above
    except (ElementTree.ParseError, ValueError) as error:
        raise ReadError(message(Svg.DAMAGED, why=shown(str(error)))) from error
    width, height = _size(root)
    head, groups = list(root)[:2], list(root)[2:]
    if [part.tag for part in head] != [_SVG + "title", _SVG + "desc"]:
        raise ReadError(message(Svg.INPUTS))
    title, line = (_text(part) for part in head)
    inputs, names, operations = unpacked(line, title)
    if len(names) != 1:
        raise ReadError(message(Svg.SHEETS, count=len(names)))
    about = About(title, inputs, operations)
    if not about.speaks(tag := root.get(_LANG, "en")):  # a file that names none is English
        raise ReadError(message(Svg.LANGUAGE, found=shown(tag), wanted=about.language))
    looks = looks_of(operations)
    seen: dict[str, int] = {}
    shapes = [shape for group in groups for shape in _group(group, looks, seen, height)]
    return Document((Sheet(names[0], width, height, tuple(shapes)),), about)


def _draws_little(data: bytes) -> None:
    """Refuses a file that draws far more than ours before anything in it is read."""
    parts = max(data.count(b"<"), data.count(b"="))
    steps = data.count(b"L") + data.count(b"A")
    numbers = max(data.count(b" ") + data.count(b"-"), data.count(b"."))
    if parts > _MOST_PARTS or steps > _MOST_STEPS or numbers > _MOST_NUMBERS:
        raise ReadError(message(Svg.DRAWS))


def _size(root: ElementTree.Element) -> tuple[float, float]:
    """Width and height of the sheet; refused unless one unit of the drawing is one millimetre."""
    keys = set(root.keys()) - {"baseProfile", "version", _LANG}
    if root.tag != _SVG + "svg" or keys != {"width", "height", "viewBox"}:
        raise ReadError(message(Svg.ROOT, tag=_tag(root), keys=shown(sorted(root.keys()))))
    if root.get("baseProfile", "full") != "full" or root.get("version", "1.1") != "1.1":
        raise ReadError(message(Svg.PROFILE))
    width, height = _SIZE.fullmatch(root.attrib["width"]), _SIZE.fullmatch(root.attrib["height"])
    if not width or not height or root.attrib["viewBox"] != f"0 0 {width[1]} {height[1]}":
        raise ReadError(message(Svg.SCALE, sizes=shown(sorted(root.items()))))
    _no_text(root)
    return float(width[1]), float(height[1])


def _tag(part: ElementTree.Element) -> str:
    """An element's name as it may stand in a sentence."""
    return shown(part.tag.removeprefix(_SVG))


def _text(part: ElementTree.Element) -> str:
    if part.attrib or len(part) or (part.tail or "").strip():
        raise ReadError(message(Svg.TEXT, tag=_tag(part)))
    return part.text or ""


def _no_text(part: ElementTree.Element) -> None:
    if (part.text or "").strip() or (part.tail or "").strip():
        raise ReadError(message(Svg.TEXT_AFTER, tag=_tag(part)))


def _group(
    group: ElementTree.Element, looks: Mapping[str, Look], seen: dict[str, int], height: float
) -> Iterator[Shape]:
    """The shapes of one run; refused unless its name and its look are those of one pen, counted up."""
    said = group.get("id", "")
    name = said.partition("-")[0]
    pen, look = looks.get(name, (Pen.MARK, {}))
    seen[name] = seen.get(name, 0) + 1
    wanted = {"id": name if seen[name] == 1 else f"{name}-{seen[name]}", **look}
    if group.tag != _SVG + "g" or not look or dict(group.items()) != wanted or not len(group):
        raise ReadError(message(Svg.RUN, tag=_tag(group), keys=shown(said)))
    _no_text(group)
    for part in group:
        _no_text(part)
        if part.tag != _SVG + "path" or part.keys() != ["d"] or len(part):
            raise ReadError(message(Svg.AMONG, tag=_tag(part), keys=shown(sorted(part.keys()))))
        paths = list(_paths(part.attrib["d"], pen, height))
        if pen.ink.fills:
            if not all(path.closed for path in paths):
                raise ReadError(message(Svg.OPEN, path=shown(part.attrib["d"])))
            yield Region(tuple(paths), pen)
        elif len(paths) != 1:
            raise ReadError(message(Svg.LINES, count=len(paths)))
        else:
            yield paths[0]


def _paths(commands: str, pen: Pen, height: float) -> Iterator[Curve]:
    """The lines of one path element, y turned to run upward again."""
    words = pen in _LETTERS
    if words and (found := _WORD.fullmatch(commands)):
        yield from _word(Point(float(found[1]), height - float(found[2])), found[3], pen)
        return
    if words and "A" not in commands:  # an area without an arc is written as words are
        raise ReadError(message(Svg.PATH, path=shown(commands[:50])))
    position = 0
    while position < len(commands) or position == 0:
        found = _PATH.match(commands, position)
        if not found:
            raise ReadError(message(Svg.PATH, path=shown(commands[position : position + 50])))
        start = Point(float(found[1]), height - float(found[2]))
        yield Curve(start, tuple(_steps(start, found[3], height)), pen, found.groups()[-1] is not None)
        position = found.end()


def _word(at: Point, commands: str, pen: Pen) -> Iterator[Curve]:
    """The contours of words that begin at `at`, from their relative steps; each begins one step from the last."""
    for contour in commands[:-1].split("Z"):
        move, _, lines = contour.partition("l")
        if move:
            (x,), (y,) = _by(move[1:])
            at = Point(at.x + x, at.y - y)
        xs, ys = _by(lines)
        ends = points_at(accumulate(xs, initial=at.x), accumulate(ys, sub, initial=at.y))
        yield Curve(next(ends), straight_to(ends), pen, True)


def _by(numbers: str) -> tuple[list[float], list[float]]:
    """The steps across and down, as many of the one as of the other."""
    by = list(map(float, _ONE.findall(numbers)))
    if len(by) % 2:
        raise ReadError(message(Svg.PATH, path=shown(numbers[:50])))
    return by[::2], by[1::2]


def _steps(at: Point, commands: str, height: float) -> Iterator[Step]:
    """Straight steps and arcs; SVG's sweep counts as positive what goes clockwise on the sheet."""
    for line_x, line_y, rx, ry, sweep, arc_x, arc_y in _STEP.findall(commands):
        if line_x:
            at = Point(float(line_x), height - float(line_y))
            yield Step(at)
        else:
            end = Point(float(arc_x), height - float(arc_y))
            if rx != ry:
                raise ReadError(message(Svg.ARC, one=rx, other=ry))
            yield from steps_of_arc(at, float(rx), sweep == "0", end)
            at = end
