"""What the code of a sheet says, in exactly 24 characters of 0-9A-Z.

TG1, nine of the digest, two each of the sheet's number and of how many there are, four each of the width and height
between the corner targets in hundredths of a mm, all numbers in base 36. So a scan is known for what it is, and is
measured without its kit. Fewer or more characters would need another size of code.
"""

from __future__ import annotations

from templates_gen.codes.digest import digest_of
from templates_gen.codes.numerals import numeral

KIND = "TG1"
LENGTH = 24

_HUNDREDTHS = 100


def payload(inputs: str, number: int, total: int, rectangle: tuple[float, float]) -> str:
    """What sheet `number` of `total` says whose file carries `inputs`; `rectangle` is that of its targets, in mm."""
    sides = "".join(numeral(round(side * _HUNDREDTHS), 4) for side in rectangle)
    said = f"{KIND}{digest_of(inputs)}{numeral(number, 2)}{numeral(total, 2)}{sides}"
    if len(said) != LENGTH:
        raise ValueError(said)
    return said
