"""One sheet to DXF for cutters: millimetres, one layer an operation, every outline one polyline whose arcs are arcs.

R2010 is the oldest version that names its unit and its colours in full and is read everywhere. What stands round the
outlines is always data/skeleton.dxf with a few values filled in: what a library of the format writes, without settings
whose defaults are right and without the blanks before group codes. What a drawing carries beside its lines stands in
comments at the top of the file.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from functools import cache

from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.values.errors import LayoutError
from templates_gen.data import text_of
from templates_gen.document import OPERATION_OF, About, Operations, packed
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Form
from templates_gen.writers.checks import check
from templates_gen.writers.curves import joined, turn
from templates_gen.writers.cutting.checks import check_cut
from templates_gen.writers.dxf_layers import nearest_weight, numbers, rgb

_COMMENT = 200  # letters in a line: some readers hold no more than 255
_SAME = 1e-4  # mm
_FIRST = 51  # the handle of the first outline: 50 objects of the skeleton stand before it, four behind the last


def write(sheets: Sequence[Sheet], about: About) -> bytes:
    """The DXF file of the one sheet, the same bytes for the same sheet. `LayoutError` if it cannot be written."""
    check(sheets, about)
    if about.operations is None:
        raise LayoutError(message(Form.DXF_OPERATIONS))
    check_cut(sheets, about.operations)
    (sheet,) = sheets
    carried = packed(sheets, about)
    comments = [about.title, _areas(sheet), *(carried[k : k + _COMMENT] for k in range(0, len(carried), _COMMENT))]
    outlines = [(OPERATION_OF[pen_of(shape)], joined(path)) for shape in sheet.shapes for path in _paths(shape)]
    head, tail = _skeleton()
    for place, value in _places(sheet, about.operations, len(outlines)).items():
        head, tail = head.replace(f"<{place}>", value), tail.replace(f"<{place}>", value)
    drawn = [_polyline(_FIRST + k, layer, path) for k, (layer, path) in enumerate(outlines)]
    return "".join([*(f"999\n{comment}\n" for comment in comments), head, *drawn, tail]).encode()


@cache
def _skeleton() -> tuple[str, str]:
    """What stands before the outlines and what stands behind them."""
    whole = text_of("skeleton.dxf")
    head, tail = whole.split("<entities>\n")
    return head, tail


def _places(sheet: Sheet, operations: Operations, count: int) -> Mapping[str, str]:
    """What the places of the skeleton hold: the sheet's size, the looks of the layers, and the handles that follow."""
    places = {"width": _number(sheet.width), "height": _number(sheet.height)}
    colours = [shown.colour for shown in operations.values()]
    for (name, shown), number in zip(operations.items(), numbers(colours), strict=True):
        red, green, blue = rgb(shown.colour)
        places |= {f"{name} number": f"{number}", f"{name} colour": f"{red << 16 | green << 8 | blue}"}
        places[f"{name} weight"] = f"{nearest_weight(shown.width)}"
    for k, name in enumerate(("first", "second", "third", "seed")):
        places[f"{name} handle"] = f"{_FIRST + count + k:X}"
    return places


def _polyline(handle: int, layer: str, path: Curve) -> str:
    """One LWPOLYLINE of the model space (owner 17), which takes its looks from its layer."""
    vertices = _vertices(path)
    return (
        f"0\nLWPOLYLINE\n5\n{handle:X}\n330\n17\n100\nAcDbEntity\n8\n{layer}\n100\nAcDbPolyline\n"
        f"90\n{len(vertices)}\n70\n{int(path.closed)}\n{''.join(vertices)}"
    )


def _number(mm: float) -> str:
    """To a hundredth of a micrometre, always with a decimal point, and never -0.0."""
    return str(round(mm, 5) + 0.0)


def _paths(shape: Curve | Region | Text) -> Sequence[Curve]:
    if isinstance(shape, Curve):
        return (shape,)
    return shape.contours if isinstance(shape, Region) else ()


def _areas(sheet: Sheet) -> str:
    """How many polylines in a row belong to each area, which the polylines themselves do not show."""
    counts = [str(len(shape.contours)) for shape in sheet.shapes if isinstance(shape, Region)]
    return " ".join(["areas:", *counts])


def _vertices(path: Curve) -> list[str]:
    """Each corner and its bulge; an arc that ends at the start becomes the closing."""
    corners = path.points()
    if path.closed and math.dist(path.start, corners[-1]) <= _SAME:
        del corners[-1]
    places = [f"10\n{_number(x)}\n20\n{_number(y)}\n" for x, y in corners]
    at = path.start
    for k, (end, through) in enumerate(path.steps):
        if through is not None and (bulge := _bulge(at, through, end)):
            places[k] += f"42\n{bulge}\n"
        at = end
    return places


def _bulge(start: Point, through: Point, end: Point) -> float:
    """The tangent of a quarter of the arc's angle, counter-clockwise positive (DXF reference, group code 42)."""
    return round(math.tan(turn(start, through, end) / 4), 9)
