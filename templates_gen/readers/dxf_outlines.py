"""The outlines of a DXF file: polylines in exactly the form that we write, each with the looks of its layer."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Step, points_at, straight_to
from layout.values.errors import shown
from templates_gen.document import OPERATION_OF, ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Dxf
from templates_gen.readers.arcs import steps_of_bulge
from templates_gen.readers.dxf_skeleton import FIRST_HANDLE

_NUMBER = "-?[0-9][-.0-9e]{0,23}+"
_PLAIN = re.compile("-?[0-9]+[.]?[0-9]*(?:e-?[0-9]+)?")
_POLYLINE = re.compile(
    r"0\nLWPOLYLINE\n5\n([0-9A-F]{1,8})\n330\n17\n100\nAcDbEntity\n8\n([a-z]+)\n"
    r"100\nAcDbPolyline\n90\n([1-9][0-9]{0,4})\n70\n([01])\n"
    rf"((?:10\n{_NUMBER}\n20\n{_NUMBER}\n(?:42\n{_NUMBER}\n)?)++)"
)
"""Its handle, its owner (330: 17 is the block of the model space), its layer, how many vertices (no outline of
ours has a hundred thousand), whether it closes."""

_LARGEST = 1e7  # mm
_PEN_OF = {name: pen for pen, name in OPERATION_OF.items()}


class Outlines(NamedTuple):
    """The outlines in the order of the file, and where in the text they end."""

    paths: Sequence[Curve]
    end: int


def outlines(text: str, start: int) -> Outlines:
    """Every polyline from `start` on, up to anything in another form. `ReadError` for one that contradicts itself."""
    paths: list[Curve] = []
    while found := _POLYLINE.match(text, start):
        handle, layer, count, closed, vertices = found.groups()
        if handle != f"{FIRST_HANDLE + len(paths):X}":
            raise ReadError(message(Dxf.HANDLE, handle=shown(handle)))
        if layer not in _PEN_OF:
            raise ReadError(message(Dxf.LAYER, layer=shown(layer)))
        if f"\n{vertices}".count("\n10\n") != int(count) or int(count) < 2:
            raise ReadError(message(Dxf.VERTICES))
        drawn = _bent if "\n42\n" in vertices else _straight
        paths.append(drawn(vertices.split("\n"), _PEN_OF[layer], closed=closed == "1"))
        start = found.end()
    return Outlines(paths, start)


def _straight(lines: Sequence[str], pen: Pen, *, closed: bool) -> Curve:
    """An outline without arcs: x and y follow each other from beginning to end."""
    values = _numbers(lines[1::2])
    start, *ends = points_at(values[::2], values[1::2])
    return Curve(start, straight_to(ends), pen, closed)


def _bent(lines: Sequence[str], pen: Pen, *, closed: bool) -> Curve:
    """An outline with arcs. One that closes along an arc has it as its last step; a straight closing needs no step."""
    points, bulges = _vertices(lines)
    if bulges[-1] and not closed:
        raise ReadError(message(Dxf.BENDS))
    ends = [*points[1:], points[0]] if bulges[-1] else points[1:]
    steps = [
        step
        for at, bulge, end in zip(points, bulges, ends, strict=False)
        for step in (steps_of_bulge(at, bulge, end) if bulge else (Step(end),))
    ]
    return Curve(points[0], tuple(steps), pen, closed)


def _vertices(lines: Sequence[str]) -> tuple[list[Point], list[float]]:
    """Each point, and the bulge of the step that begins there (0 where it is straight)."""
    values = _numbers(lines[1::2])
    points: list[Point] = []
    bulges: list[float] = []
    x = 0.0
    for code, value in zip(lines[::2], values, strict=False):  # behind the last value is an empty line
        if code == "10":
            x = value
        elif code == "20":
            points.append(Point(x, value))
            bulges.append(0.0)
        else:
            bulges[-1] = value
    return points, bulges


def number(text: str) -> float:
    """A number of mm, or a bulge, as our files have it: the shortest text that gives this number."""
    return _numbers([text])[0]


def _numbers(texts: Sequence[str]) -> list[float]:
    try:
        values = list(map(float, texts))
    except ValueError:
        values = []
    if list(map(repr, values)) != texts or not (min(values) > -_LARGEST and max(values) < _LARGEST):
        wrong = next(
            (text for text in texts if not _PLAIN.fullmatch(text) or repr(float(text)) != text), message(Dxf.FAR)
        )
        raise ReadError(message(Dxf.NUMBER, what=shown(wrong)))
    return values
