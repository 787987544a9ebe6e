"""A code read back from its modules: Data Matrix ECC 200 of 18 x 18, without the library that wrote it.

After ISO/IEC 16022: the finder and its clock tracks, the placement of codewords (annex F), Reed-Solomon over GF(256)
with the polynomial 301 (annex E), the text in C40 (5.2.5). Nothing is corrected: a file is right or it is not.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Code

SIDE = 18
"""Modules a side, with the finder."""

Bits = Sequence[Sequence[bool]]
"""Rows of modules from above, true where one is black."""

_INNER, _WORDS, _CORRECTION = SIDE - 2, 18, 14
_POLYNOMIAL, _FIELD = 0x12D, 256
_LATCH, _UNLATCH = 230, 254
_LETTERS = {4 + k: str(k) for k in range(10)} | {14 + k: chr(ord("A") + k) for k in range(26)}


def text_of(bits: Bits) -> str:
    """What a code says; ReadError where it is no such code, or where one module or more is not as it was written."""
    if len(bits) != SIDE or any(len(row) != SIDE for row in bits):
        raise ReadError(message(Code.SIZE, side=SIDE))
    _check_finder(bits)
    words = [_word(bits, places) for places in _placement()]
    if any(_syndromes(words)):
        raise ReadError(message(Code.DAMAGED))
    return _c40(words[:_WORDS])


def _check_finder(bits: Bits) -> None:
    """Black at the left and below; at the top and the right black and white in turn."""
    last = SIDE - 1
    solid = all(row[0] for row in bits) and all(bits[last])
    top = all(bits[0][k] == (k % 2 == 0) for k in range(SIDE))
    right = all(bits[k][last] == (k % 2 == 1) for k in range(SIDE))
    if not (solid and top and right):
        raise ReadError(message(Code.FINDER))


Place = tuple[int, int]


def _word(bits: Bits, places: Sequence[Place]) -> int:
    value = 0
    for row, column in places:
        value = value * 2 + bits[row + 1][column + 1]
    return value


_SHAPE = ((-2, -2), (-2, -1), (-1, -2), (-1, -1), (-1, 0), (0, -2), (0, -1), (0, 0))
"""Where the bits of a codeword stand from its last one, the most significant first."""
_CORNER_1 = ((-1, 0), (-1, 1), (-1, 2), (0, -2), (0, -1), (1, -1), (2, -1), (3, -1))
_CORNER_4 = ((-1, 0), (-1, -1), (0, -3), (0, -2), (0, -1), (1, -3), (1, -2), (1, -1))
"""The two shapes that are broken over the corners of a square whose side is a multiple of eight."""


@cache
def _placement() -> tuple[tuple[Place, ...], ...]:
    """The eight places of every codeword, within the finder, in the order of the codewords."""
    taken, found = set[Place](), list[tuple[Place, ...]]()
    for row, column, corner in _walk():
        if corner:
            places = tuple((one % _INNER, other % _INNER) for one, other in corner)
        elif not (0 <= row < _INNER and 0 <= column < _INNER) or (row, column) in taken:
            continue
        else:
            places = tuple(_wrapped(row + down, column + right) for down, right in _SHAPE)
        taken.update(places)
        found.append(places)
    return tuple(found)


def _walk() -> Iterator[tuple[int, int, tuple[Place, ...]]]:
    """The diagonals, upward and downward in turn, on which codewords end; a corner comes where one begins."""
    row, column = 4, 0
    while row < _INNER or column < _INNER:
        if (row, column) == (_INNER, 0):
            yield row, column, _CORNER_1
        elif (row, column) == (_INNER + 4, 2):
            yield row, column, _CORNER_4
        for step in (-2, 2):
            inside = True
            while inside:
                yield row, column, ()
                row, column = row + step, column - step
                inside = row >= 0 and column < _INNER if step < 0 else row < _INNER and column >= 0
            row, column = (row + 1, column + 3) if step < 0 else (row + 3, column + 1)


def _wrapped(row: int, column: int) -> Place:
    """A place beyond the upper or left side comes in again on the other, as far moved as the side asks for."""
    shift = 4 - (_INNER + 4) % 8
    if row < 0:
        row, column = row + _INNER, column + shift
    if column < 0:
        row, column = row + shift, column + _INNER
    return row, column


def _syndromes(words: Sequence[int]) -> list[int]:
    """The word, as a polynomial, at the first powers of 2; all are 0 where nothing was changed."""
    found = []
    for power in range(1, _CORRECTION + 1):
        at, value = _powers()[power], 0
        for word in words:
            value = _product(value, at) ^ word
        found.append(value)
    return found


@cache
def _powers() -> tuple[int, ...]:
    """2 to the power of 0, 1, 2 ... in the field."""
    found = [1]
    while len(found) < _FIELD - 1:
        twice = found[-1] * 2
        found.append(twice if twice < _FIELD else twice ^ _POLYNOMIAL)
    return tuple(found)


def _product(one: int, other: int) -> int:
    """The product of two elements of the field, bit by bit."""
    found = 0
    while other:
        if other & 1:
            found ^= one
        one, other = one * 2, other // 2
        if one >= _FIELD:
            one ^= _POLYNOMIAL
    return found


def _c40(words: Sequence[int]) -> str:
    """Three letters to two codewords, between the words that begin and end them."""
    begin, *pairs, end = words
    if (begin, end) != (_LATCH, _UNLATCH):
        raise ReadError(message(Code.TEXT))
    values = []
    for high, low in zip(pairs[::2], pairs[1::2], strict=True):
        three = high * _FIELD + low - 1
        values += [three // 1600, three // 40 % 40, three % 40]
    if any(value not in _LETTERS for value in values):
        raise ReadError(message(Code.TEXT))
    return "".join(_LETTERS[value] for value in values)
