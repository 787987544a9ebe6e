"""The same drawing as ezdxf writes it: what our own DXF files must be, line by line."""

from __future__ import annotations

import math
from collections.abc import Iterator
from io import StringIO

import ezdxf
import pytest
from ezdxf import options
from ezdxf.document import Drawing
from ezdxf.lldxf.const import VALID_DXF_LINEWEIGHTS
from ezdxf.math import Vec2, bulge_3_points, bulge_to_arc

from layout.drawing.shapes import Curve, Point, Region, Step
from layout.drawing.sheet import Sheet, pen_of
from templates_gen.document import OPERATION_OF, Operations

_MILLIMETRES = 4  # $INSUNITS

HEADER = (
    "$ACADVER", "$ACADMAINTVER", "$DWGCODEPAGE", "$EXTMIN", "$EXTMAX", "$LIMMIN", "$LIMMAX", "$HANDSEED", "$TILEMODE",
    "$MEASUREMENT", "$INSUNITS", "$PSTYLEMODE",
)  # fmt: skip
"""The settings that our files have: version, text, size, unit and model space. The DXF reference ("Writing a DXF
interchange file") lets a file leave out every other one, which then has its default."""


def exported(sheet: Sheet, operations: Operations, numbers: dict[str, int]) -> str:
    """The file without its comments and without settings that no drawing of ours needs.

    `numbers` are the layers' numbered colours.
    """
    file = StringIO()
    with pytest.MonkeyPatch.context() as patch:  # fixed dates and identities
        patch.setattr(options, "write_fixed_meta_data_for_testing", True)
        _drawn(sheet, operations, numbers).write(file)
    head, end, rest = file.getvalue().partition("  0\nENDSEC\n")
    start, *settings = head.split("  9\n$")
    kept = [f"  9\n${setting}" for setting in settings if "$" + setting.partition("\n")[0] in HEADER]
    return unpadded("".join([start, *kept, end, rest]))


def unpadded(text: str) -> str:
    """Group codes without the blanks that fill them up to three places: every second line is one."""
    lines = text.split("\n")
    lines[::2] = map(str.strip, lines[::2])
    return "\n".join(lines)


def _drawn(sheet: Sheet, operations: Operations, numbers: dict[str, int]) -> Drawing:
    drawing = ezdxf.new("R2010", units=_MILLIMETRES)
    corner = (round(sheet.width, 5), round(sheet.height, 5))
    space = drawing.modelspace()
    space.reset_limits((0, 0), corner)
    space.reset_extents((0, 0, 0), (*corner, 0))
    for name, value in (("$LIMMIN", (0, 0)), ("$LIMMAX", corner), ("$EXTMIN", (0, 0, 0)), ("$EXTMAX", (*corner, 0))):
        drawing.header[name] = value
    for name, shown in operations.items():
        weight = min(VALID_DXF_LINEWEIGHTS, key=lambda each: abs(each - shown.width * 100))
        layer = drawing.layers.add(name, color=numbers[name], lineweight=weight)
        layer.rgb = tuple(bytes.fromhex(shown.colour[1:]))
    for shape in sheet.shapes:
        look = {"layer": OPERATION_OF[pen_of(shape)]}
        for path in shape.contours if isinstance(shape, Region) else (shape,):
            assert isinstance(path, Curve)
            space.add_lwpolyline(list(_vertices(path)), format="xyb", close=path.closed, dxfattribs=look)
    for kind in sorted(drawing.entitydb.dxf_types_in_use()):  # else they stand in the order of a set
        drawing.classes.add_class(kind)
    return drawing


def _vertices(path: Curve) -> Iterator[tuple[float, float, float]]:
    """Corners to a hundredth of a micrometre, each with the bulge that ezdxf finds through three points."""
    at = path.start
    for end, through in _arcs(path):
        yield round(at.x, 5), round(at.y, 5), round(bulge_3_points(at, end, through), 9) if through else 0.0
        at = end
    if not path.closed or math.dist(at, path.start) > 1e-4:
        yield round(at.x, 5), round(at.y, 5), 0.0


def _arcs(path: Curve) -> Iterator[Step]:
    """Its steps; two arcs of one circle that turn as far, together by more than 59 and at most 90 degrees, are one.

    Their circles are those that ezdxf finds; those of more than 3.5 mm stay in halves.
    """
    at, left = path.start, list(path.steps)
    while left:
        step = left.pop(0)
        if left and (circle := _circle(at, step)) and (other := _circle(step.end, left[0])):
            off = circle[0].distance(other[0]) + abs(circle[1] - other[1])
            if (
                off < 1e-4
                and circle[1] < 3.500001
                and 59 < math.degrees(circle[2] + other[2]) < 90.01
                and math.isclose(circle[2], other[2])
            ):
                step = Step(left.pop(0).end, step.end)
        yield step
        at = step.end


def _circle(start: Point, step: Step) -> tuple[Vec2, float, float] | None:
    """The centre of an arc, its radius, and how far it turns."""
    if step.through is None:
        return None
    bulge = bulge_3_points(start, step.end, step.through)
    centre, _, _, radius = bulge_to_arc(start, step.end, bulge)
    return centre, radius, 4 * math.atan(abs(bulge))
