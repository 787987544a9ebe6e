"""Numbers in base 36, with 0-9A-Z as digits: the letters that a code holds most densely."""

from __future__ import annotations

from string import ascii_uppercase, digits

DIGITS = digits + ascii_uppercase


def numeral(number: int, length: int) -> str:
    """`number` in `length` digits; ValueError where it needs more."""
    if not 0 <= number < len(DIGITS) ** length:
        raise ValueError(number)
    found = ""
    for _ in range(length):
        number, digit = divmod(number, len(DIGITS))
        found = DIGITS[digit] + found
    return found
