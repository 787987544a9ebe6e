"""A PDF content stream cut into instructions, strictly: any byte that does not match is refused."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import NamedTuple

from layout.drawing.pens import Face
from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Page

Numbers = list[float]
Instruction = tuple[bytes, bytes, Numbers]
"""The operator, its one operand that is not a number (dashes, a name or words; empty if there is none), the numbers."""

Letters = Mapping[int, str]
"""What each code of a font stands for."""


class Font(NamedTuple):
    """An embedded part of the print font: its codes, and which cut it is."""

    letters: Letters
    face: Face


LINE = b"m l"
"""Stands for a move and a line from there: nearly all that a sheet holds, taken in one go to save time."""

WHITE = b"\t\n\f\r "
"""White space as in ISO 32000-1, 7.2.2, except NUL, which our files never hold. A vertical tab is none."""

_NUMBER = rb"-?[0-9]{1,7}+(?:\.[0-9]{1,12}+)?+"
_INSTRUCTION = re.compile(
    rb"S*+(?:"
    rb"(N) (N) m (N) (N) l"
    rb"|((?:\[[0-9. ]*+\]|/[A-Za-z0-9+._-]++|\((?:[ !-'*-\[\]-~]|\\[\\()]|\\[0-3][0-7]{2})*+\))?+)"
    rb"S*+((?:NS++)*+)([A-Za-z]++)"
    rb")(?=S|\Z)".replace(b"S", rb"[\t\n\f\r ]").replace(b"N", _NUMBER)
)
_ESCAPED = re.compile(rb"\\(?:([0-7]{3})|(.))")


def instructions(content: bytes) -> Iterator[Instruction]:
    """Every instruction in order; `ReadError` at the first byte that begins none."""
    content = content.rstrip(WHITE)
    position = 0
    for found in _INSTRUCTION.finditer(content):
        begin, end = found.span()
        if begin != position:
            break
        position = end
        x, y, end_x, end_y, other, numbers, operator = found.groups()
        if x is not None:
            yield LINE, b"", [float(x), float(y), float(end_x), float(end_y)]
        else:
            yield operator, other, list(map(float, numbers.split()))
    if position != len(content):
        rest = content[position : position + 30].decode("latin-1").strip()
        raise ReadError(message(Page.HOLDS, what=shown(rest)))


def dashes(array: bytes) -> Numbers:
    """The numbers of such an operand; `ReadError` if one is none."""
    try:
        return [float(number) for number in array[1:-1].split()]
    except ValueError as error:
        raise ReadError(message(Page.DASHES, what=shown(array.decode()))) from error


def words(string: bytes, letters: Letters) -> str:
    """What such an operand says in that font; `ReadError` for a code that stands for nothing."""
    codes = _ESCAPED.sub(lambda found: bytes([int(found[1], 8)]) if found[1] else found[2], string[1:-1])
    said = "".join([letters.get(code, "\0") for code in codes])
    if "\0" in said:
        raise ReadError(message(Page.NO_CODE, what=shown(said)))
    return said
