"""Numbers as people write them, read exactly. Knows nothing of units.

Said: by one rule, for whoever draws a number and whoever proves it: to the nearest last figure, halves away from zero.
Read: `12`, `3.5`, `3,5`, `.5`, `3/4`, `5 1/2`, `11-3/4`, `5½`, `1⁄8` (fraction slash), with one minus sign before them.
Not read: exponents, digits of other scripts, two decimal signs, a comma that may mean thousands, more than `MOST_WHOLE`
digits before the decimal sign or `MOST_DECIMALS` after it (zeros at the end are not counted).
"""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction
from math import isqrt

from layout.messages.catalogue import Figure
from layout.messages.roles import Value
from layout.values.errors import FieldError, shown

_VULGAR_CODES = (*range(0xBC, 0xBF), *range(0x2150, 0x215F), 0x2189)


def _vulgar(code: int) -> Fraction:
    _, top, _, *bottom = unicodedata.decomposition(chr(code)).replace("2044", "/").split()
    digits = [chr(int(part, 16)) for part in (top, *bottom)]
    return Fraction(int(digits[0]), int("".join(digits[1:])))


VULGAR = {chr(code): _vulgar(code) for code in _VULGAR_CODES}
"""The fractions that are one character: ½, ⅛ and the rest."""

BLANK = "[ \t\u00a0\u2009\u202f]"
"""What may stand between a number and its unit (regular expression): plain, no-break and thin spaces."""

MOST_WHOLE, MOST_DECIMALS = 12, 18
"""Of a decimal number: so many digits before the decimal sign and after it."""

# A fraction written out may have 30 digits over 19: room for every number the other forms can hold, said exactly.
NUMBER = rf"""(?P<minus>[-\u2212])?(?:
    (?P<units>[0-9]{{1,12}})(?:{BLANK}+|-)(?P<over>[0-9]{{1,10}})[/\u2044](?P<under>[0-9]{{1,10}})
  | (?:(?P<ones>[0-9]{{1,12}})(?:{BLANK}*|-))?(?P<vulgar>[{"".join(VULGAR)}])
  | (?P<top>[0-9]{{1,30}})[/\u2044](?P<bottom>[0-9]{{1,19}})
  | (?P<whole>[0-9]{{1,60}})(?:(?P<sign>[.,])(?P<decimals>[0-9]{{1,60}}))?
  | [.,](?P<part>[0-9]{{1,60}})
)"""
"""One number, for use in a larger pattern with `re.VERBOSE`."""


_ALONE = re.compile(NUMBER, re.VERBOSE)


def read_number(text: str) -> Fraction | None:
    """The number that `text` is, exactly; None if it is none, FieldError if it can be read in two ways."""
    match = _ALONE.fullmatch(text.strip())
    return number_from(match, text) if match else None


def number_from(match: re.Match[str], text: str) -> Fraction:
    """The number that `NUMBER` found in `text`, exactly; a fraction that is none raises FieldError."""
    got = match.groupdict()
    if got["under"] is not None:
        value = int(got["units"]) + _quotient(got["over"], got["under"], text, proper=True)
    elif got["vulgar"] is not None:
        value = int(got["ones"] or 0) + VULGAR[got["vulgar"]]
    elif got["bottom"] is not None:
        value = _quotient(got["top"], got["bottom"], text, proper=False)
    elif got["part"] is not None:
        value = _decimal("0", ".", got["part"], text, text.strip()[match.end("part") :])
    else:
        rest = text.strip()[max(match.end("whole"), match.end("decimals")) :]
        value = _decimal(got["whole"], got["sign"], got["decimals"], text, rest)
    return -value if got["minus"] else value


def _quotient(top: str, bottom: str, text: str, *, proper: bool) -> Fraction:
    if int(bottom) == 0:
        raise FieldError("", Value.OVER_ZERO, shown(text), "1/2 in")
    value = Fraction(int(top), int(bottom))
    if proper and value >= 1:
        raise FieldError("", Value.PROPER, shown(text), "5 1/2 in")
    return value


def _decimal(whole: str, sign: str | None, decimals: str | None, text: str, rest: str) -> Fraction:
    if sign == "," and decimals is not None and len(decimals) == 3 and int(whole) > 0:
        thousands, decimal = f"{whole}{decimals}", f"{whole}.{decimals.rstrip('0') or '0'}"
        example = f"{thousands} mm"
        raise FieldError("", Value.ONE_WAY, shown(text), example, thousands=thousands, decimal=decimal)
    kept = (decimals or "").rstrip("0")
    if len(whole) > MOST_WHOLE or len(kept) > MOST_DECIMALS:
        example = f"{whole[:3]}.{(kept or '5')[:2]}{rest}"
        raise FieldError("", Value.DIGITS, shown(text), example, whole=MOST_WHOLE, decimals=MOST_DECIMALS)
    return Fraction(f"{whole}.{kept or 0}")


def say_number(value: Fraction | float, places: int = 3) -> Figure:
    """`value` in figures with a decimal point, halves away from zero, no zeros at its end.

    A float stands for the nearest number of twelve figures: what two computations leave behind these cannot turn
    the last figure said.
    """
    return Figure(_without_zeros(say_fixed(value, places)))


def say_fixed(value: Fraction | float, places: int) -> Figure:
    """As `say_number`, always with all `places`."""
    top, bottom = (Fraction(f"{value:.11e}") if isinstance(value, float) else value).as_integer_ratio()
    scaled = (2 * abs(top) * 10**places + bottom) // (2 * bottom)
    return Figure(f"{'-' if top < 0 and scaled else ''}{_pointed(scaled, places)}")


def say_root(square: Fraction, places: int = 3) -> Figure:
    """The square root of `square` as `say_number` says a number, exactly; `square` must not be negative."""
    return Figure(_without_zeros(_pointed((isqrt(int(4 * square * 100**places)) + 1) // 2, places)))


def _pointed(scaled: int, places: int) -> str:
    whole, decimals = divmod(scaled, 10**places)
    return f"{whole}.{decimals:0{places}d}" if places else str(whole)


def _without_zeros(text: str) -> str:
    return text.rstrip("0").rstrip(".") if "." in text else text


def say_mixed(value: Fraction) -> str:
    """`value` as a whole number and a fraction: "12", "5 1/2", "3/4"."""
    whole, rest = divmod(abs(value), 1)
    parts = [str(whole)] if whole or not rest else []
    return ("-" if value < 0 else "") + " ".join([*parts, str(rest)] if rest else parts)
