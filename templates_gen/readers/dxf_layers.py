"""How the layers of a DXF file must look for the operations that it carries."""

from __future__ import annotations

import math
from collections.abc import Mapping

from layout.cutting.stock.stock import Operation
from templates_gen.document import Operations

_WEIGHTS = (0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211)
"""Every line weight there is, in hundredths of a millimetre (DXF reference, group code 370)."""


def layer_values(operations: Operations) -> Mapping[str, str]:
    """For each operation its layer's numbered colour (62), the colour itself (420) and its line weight (370)."""
    values: dict[str, str] = {}
    for name, number in _numbered(operations).items():
        red, green, blue = _rgb(operations[name])
        weight = min(_WEIGHTS, key=lambda each: abs(each - operations[name].width * 100))
        values[f"{name} number"] = str(number)
        values[f"{name} colour"] = str(red * 65536 + green * 256 + blue)
        values[f"{name} weight"] = str(weight)
    return values


def _rgb(operation: Operation) -> tuple[int, int, int]:
    value = int(operation.colour[1:], 16)
    return value >> 16, value >> 8 & 255, value & 255


_PLAIN = {1: 0xFF0000, 2: 0xFFFF00, 3: 0x00FF00, 4: 0x00FFFF, 5: 0x0000FF, 6: 0xFF00FF, 8: 0x808080, 9: 0xC0C0C0}
_DEPTHS = {0: 255, 4: 127, 6: 76, 8: 38}


def _numbered(operations: Operations) -> Mapping[str, int]:
    """The format's own colours, by number: each operation has the nearest that is still free.

    There are a few plain ones, and a wheel of 24 hues in four depths, from which the plain ones are left out.
    """
    wheel = {k: (value >> 16, value >> 8 & 255, value & 255) for k, value in _PLAIN.items()}
    hues = {10 * hue + ones: _hue(hue, depth) for hue in range(1, 25) for ones, depth in _DEPTHS.items()}
    wheel |= {k: rgb for k, rgb in hues.items() if rgb not in wheel.values()}
    numbers: dict[str, int] = {}
    for name, operation in operations.items():
        wanted = _rgb(operation)
        numbers[name] = min(wheel, key=lambda k: math.dist(wanted, wheel[k]))
        del wheel[numbers[name]]
    return numbers


def _hue(number: int, depth: int) -> tuple[int, int, int]:
    """Hues go by 15 degrees from red over yellow and green; a channel is full 60 degrees to either side of its own."""

    def channel(own: float) -> int:
        away = abs(((number - 1) / 4 - own + 3) % 6 - 3)  # in sixths of the wheel
        return int(depth * min(max(2 - away, 0.0), 1.0))

    return channel(0), channel(2), channel(4)
