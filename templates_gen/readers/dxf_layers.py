"""The layers of a DXF file against the operations that it carries: names, colours, line weights, nothing hidden."""

from __future__ import annotations

import math
from collections.abc import Mapping

from layout.cutting.stock import Operation
from layout.errors import shown
from templates_gen.document import Operations, ReadError
from templates_gen.readers.tags import Tags, records

_ALWAYS = ("0", "Defpoints")  # layers that every DXF file has; nothing of ours lies on them
_WEIGHTS = (0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211)
"""Every line weight there is, in hundredths of a millimetre (DXF reference, group code 370)."""

_SETTING_UP = {5, 100, 330, 347, 390}  # handles and markers


def check_layers(tables: Tags, operations: Operations) -> None:
    """`ReadError` unless the layers are those of the operations, each as it must look, all to be seen."""
    layers = [record for record in records(tables) if record[0].value == "LAYER"]
    found = dict(map(_layer, layers))
    if list(found) != [*_ALWAYS, *operations] or len(found) != len(layers):
        raise ReadError(f"the DXF has the layers {shown(list(found))}, which are not those of its operations")
    numbers = _numbered(operations)
    for name, shown_as in operations.items():
        if found[name] != (wanted := _look(shown_as, numbers[name])):
            raise ReadError(f"the DXF shows the layer {name} by {shown(found[name])}, where {shown(wanted)} is wanted")


def _layer(record: Tags) -> tuple[str, Mapping[int, str]]:
    values = {tag.code: tag.value.strip() for tag in record[1:] if tag.code not in _SETTING_UP}
    return values.pop(2, ""), values


def _look(operation: Operation, number: int) -> Mapping[int, str]:
    """Seen and free (70), its numbered colour (62), the colour itself (420), a whole line (6), its weight."""
    weight = min(_WEIGHTS, key=lambda each: abs(each - operation.width * 100))
    red, green, blue = _rgb(operation)
    colour = str(red * 65536 + green * 256 + blue)
    return {70: "0", 62: str(number), 420: colour, 6: "Continuous", 370: str(weight)}


def _rgb(operation: Operation) -> tuple[int, int, int]:
    value = int(operation.colour[1:], 16)
    return value >> 16, value >> 8 & 255, value & 255


_PLAIN = {1: 0xFF0000, 2: 0xFFFF00, 3: 0x00FF00, 4: 0x00FFFF, 5: 0x0000FF, 6: 0xFF00FF, 8: 0x808080, 9: 0xC0C0C0}
_DEPTHS = {0: 255, 4: 127, 6: 76, 8: 38}


def _numbered(operations: Operations) -> Mapping[str, int]:
    """The format's own colours, by number: each operation has the nearest that none before it took.

    There are a few plain ones, and a wheel of 24 hues in four depths, of which the plain ones are left out.
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
