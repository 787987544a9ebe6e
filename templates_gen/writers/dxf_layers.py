"""How layers look in a DXF file: the numbered colours and the line weights that the format has."""

from __future__ import annotations

import math
from collections.abc import Sequence

WEIGHTS = (0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211)
"""Every line weight in hundredths of a millimetre (DXF reference, group code 370)."""

_NUMBERED = """
    1:ff0000 2:ffff00 3:00ff00 4:00ffff 5:0000ff 6:ff00ff 8:808080 9:c0c0c0 14:7f0000 16:4c0000
    18:260000 20:ff3f00 24:7f1f00 26:4c1300 28:260900 30:ff7f00 34:7f3f00 36:4c2600 38:261300 40:ffbf00
    44:7f5f00 46:4c3900 48:261c00 54:7f7f00 56:4c4c00 58:262600 60:bfff00 64:5f7f00 66:394c00 68:1c2600
    70:7fff00 74:3f7f00 76:264c00 78:132600 80:3fff00 84:1f7f00 86:134c00 88:092600 94:007f00 96:004c00
    98:002600 100:00ff3f 104:007f1f 106:004c13 108:002609 110:00ff7f 114:007f3f 116:004c26 118:002613 120:00ffbf
    124:007f5f 126:004c39 128:00261c 134:007f7f 136:004c4c 138:002626 140:00bfff 144:005f7f 146:00394c 148:001c26
    150:007fff 154:003f7f 156:00264c 158:001326 160:003fff 164:001f7f 166:00134c 168:000926 174:00007f 176:00004c
    178:000026 180:3f00ff 184:1f007f 186:13004c 188:090026 190:7f00ff 194:3f007f 196:26004c 198:130026 200:bf00ff
    204:5f007f 206:39004c 208:1c0026 214:7f007f 216:4c004c 218:260026 220:ff00bf 224:7f005f 226:4c0039 228:26001c
    230:ff007f 234:7f003f 236:4c0026 238:260013 240:ff003f 244:7f001f 246:4c0013 248:260009
"""


def rgb(colour: str) -> tuple[int, int, int]:
    """Red, green and blue of a colour such as "#0055aa", from 0 to 255."""
    digits = colour.removeprefix("#")
    return int(digits[:2], 16), int(digits[2:4], 16), int(digits[4:], 16)


COLOURS = {int(number): rgb(colour) for number, _, colour in (each.partition(":") for each in _NUMBERED.split())}
"""Red, green and blue of the numbered colours (DXF reference, group code 62) that an operation may have: the plain ones
but 7, which is whatever is not the ground, and the hues in four depths, less the six that look like a plain one.
"""


def numbers(colours: Sequence[str]) -> list[int]:
    """Numbered colours, for programs that know no others: one for each colour, no two alike.

    In the order of work each takes the nearest that is still free.
    """
    left = dict(COLOURS)
    found: list[int] = []
    for wanted in map(rgb, colours):
        found.append(min(left, key=lambda number: math.dist(wanted, left[number])))
        del left[found[-1]]
    return found


def nearest_weight(width: float) -> int:
    """The line weight nearest to a width in mm."""
    return min(WEIGHTS, key=lambda weight: abs(weight - width * 100))
