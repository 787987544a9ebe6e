"""One sheet to DXF for cutters: millimetres, one layer an operation, every outline one polyline whose arcs are arcs.

R2010 is the oldest version that names its unit and its colours in full and is read everywhere. What a drawing carries
beside its lines stands in comments at the top of the file.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from io import StringIO
from typing import TYPE_CHECKING

from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.values.errors import LayoutError
from templates_gen.document import OPERATION_OF, About, packed
from templates_gen.writers.checks import check
from templates_gen.writers.curves import turn
from templates_gen.writers.cutting.checks import check_cut

if TYPE_CHECKING:
    from ezdxf.document import Drawing

_COMMENT = 200  # letters in a line: some readers hold no more than 255
_MILLIMETRES = 4  # $INSUNITS
_SAME = 1e-4  # mm

Vertex = tuple[float, float, float]  # x, y and the bulge of the step that begins here


def write(sheets: Sequence[Sheet], about: About) -> bytes:
    """The DXF file of the one sheet, the same bytes for the same sheet. `LayoutError` if it cannot be written."""
    check(sheets, about)
    if about.operations is None:
        raise LayoutError("a DXF file is for a cutter: it needs to be told its operations")
    check_cut(sheets, about.operations)
    carried = packed(sheets, about)
    comments = [about.title, _areas(sheets[0])]
    comments += [carried[k : k + _COMMENT] for k in range(0, len(carried), _COMMENT)]
    file = StringIO()
    with _settled():
        _drawing(sheets[0], about).write(file)
    return ("".join([f"999\n{comment}\n" for comment in comments]) + file.getvalue()).encode()


@contextmanager
def _settled() -> Iterator[None]:
    """Fixed dates and identities, for which the library would otherwise ask the clock and the dice."""
    from ezdxf import options

    before = options.write_fixed_meta_data_for_testing
    options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        options.write_fixed_meta_data_for_testing = before


def _drawing(sheet: Sheet, about: About) -> Drawing:
    import ezdxf

    drawing = ezdxf.new("R2010", units=_MILLIMETRES)
    corner = (round(sheet.width, 6), round(sheet.height, 6))
    space = drawing.modelspace()
    space.reset_limits((0, 0), corner)
    space.reset_extents((0, 0, 0), (*corner, 0))
    for name, value in (("$LIMMIN", (0, 0)), ("$LIMMAX", corner), ("$EXTMIN", (0, 0, 0)), ("$EXTMAX", (*corner, 0))):
        drawing.header[name] = value
    operations = about.operations or {}
    numbers = _numbers([shown.colour for shown in operations.values()])
    for (name, shown), number in zip(operations.items(), numbers, strict=True):
        layer = drawing.layers.add(name, color=number, lineweight=_nearest_weight(shown.width))
        layer.rgb = _rgb(shown.colour)
    for shape in sheet.shapes:
        for path in _paths(shape):
            look = {"layer": OPERATION_OF[pen_of(shape)]}
            space.add_lwpolyline(list(_vertices(path)), format="xyb", close=path.closed, dxfattribs=look)
    for kind in sorted(drawing.entitydb.dxf_types_in_use()):  # the library would list them as a set has them
        drawing.classes.add_class(kind)
    return drawing


def _paths(shape: Curve | Region | Text) -> Sequence[Curve]:
    if isinstance(shape, Curve):
        return (shape,)
    return shape.contours if isinstance(shape, Region) else ()


def _areas(sheet: Sheet) -> str:
    """How many polylines follow each other for each area, which the polylines themselves do not tell."""
    counts = [str(len(shape.contours)) for shape in sheet.shapes if isinstance(shape, Region)]
    return " ".join(["areas:", *counts])


def _vertices(path: Curve) -> Iterator[Vertex]:
    """To a millionth of a millimetre; an arc that ends where the outline began becomes the way it closes."""
    at = path.start
    for end, through in path.steps:
        yield round(at.x, 6), round(at.y, 6), 0.0 if through is None else _bulge(at, through, end)
        at = end
    if not path.closed or math.dist(at, path.start) > _SAME:
        yield round(at.x, 6), round(at.y, 6), 0.0


def _bulge(start: Point, through: Point, end: Point) -> float:
    """The tangent of a quarter of the arc's angle, counter-clockwise positive (DXF reference, group code 42)."""
    return round(math.tan(turn(start, through, end) / 4), 12)


def _rgb(colour: str) -> tuple[int, int, int]:
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


def _numbers(colours: Sequence[str]) -> list[int]:
    """The numbered colours that programs without others show instead, one to each colour and no two alike.

    In the order of work each takes the nearest that is left of the plain ones, less 7, which is whatever is not the
    ground, and the hues in four depths, less the six that look like a plain one.
    """
    from ezdxf.colors import aci2rgb

    plain, hues = [*range(1, 7), 8, 9], [k for k in range(10, 250) if k % 10 in (0, 4, 6, 8)]
    left = plain + [k for k in hues if aci2rgb(k) not in map(aci2rgb, plain)]
    numbers: list[int] = []
    for wanted in map(_rgb, colours):
        numbers.append(min(left, key=lambda k: math.dist(wanted, tuple(aci2rgb(k)))))
        left.remove(numbers[-1])
    return numbers


def _nearest_weight(width: float) -> int:
    """The nearest of the line weights that the format has, in hundredths of a millimetre."""
    from ezdxf.lldxf.const import VALID_DXF_LINEWEIGHTS

    weights: Sequence[int] = VALID_DXF_LINEWEIGHTS
    return min(weights, key=lambda weight: abs(weight - width * 100))
