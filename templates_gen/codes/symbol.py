"""A Data Matrix symbol ECC 200 of 18 x 18 modules from 24 characters of 0-9A-Z (ISO/IEC 16022).

Libraries that make it draw in many other ways besides, and take as long to load as a file to prove. They are the judges
in the tests.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

SIDE, LENGTH = 18, 24
_INNER = SIDE - 2  # without the finder pattern
_LATCH, _UNLATCH = 230, 254  # to C40, and back to ASCII, which the symbol's last codeword is read as
_CORRECTION = 14
_POLYNOMIAL = 0x12D  # x^8 + x^5 + x^3 + x^2 + 1 makes the field of 256 elements
_C40 = {character: value for value, character in enumerate("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ", 4)}

Place = tuple[int, int]
"""Row from above and column of a module."""


def symbol(said: str) -> list[list[bool]]:
    """Its rows from above, true where black; ValueError if it is not 24 of 0-9A-Z."""
    if len(said) != LENGTH or not all(character in _C40 for character in said):
        raise ValueError(said)
    data = _codewords(said)
    rows = [[_finder(row, column) for column in range(SIDE)] for row in range(SIDE)]
    for word, places in zip([*data, *_correction(data)], _places(), strict=True):
        for bit, (row, column) in zip(range(7, -1, -1), places, strict=True):
            rows[row + 1][column + 1] = bool(word >> bit & 1)
    return rows


def _finder(row: int, column: int) -> bool:
    """Solid at the left and below; black and white in turn above and at the right."""
    if column == 0 or row == SIDE - 1:
        return True
    return (row == 0 or column == SIDE - 1) and (row + column) % 2 == 0


def _codewords(said: str) -> list[int]:
    """The characters by threes in two codewords each (5.2.5), between the latches."""
    words = [_LATCH]
    for k in range(0, LENGTH, 3):
        first, second, third = (_C40[character] for character in said[k : k + 3])
        words += divmod(1600 * first + 40 * second + third + 1, 256)
    return [*words, _UNLATCH]


def _correction(data: Sequence[int]) -> list[int]:
    """The codewords of error correction by Reed and Solomon: the rest of a division by the generator (annex E)."""
    powers, logs, generator = _field()
    rest = [0] * _CORRECTION
    for word in data:
        lead = word ^ rest[0]
        rest = [*rest[1:], 0]
        if lead:
            rest = [each ^ powers[(logs[lead] + factor) % 255] for each, factor in zip(rest, generator, strict=True)]
    return rest


@cache
def _field() -> tuple[Sequence[int], Sequence[int], Sequence[int]]:
    """Powers of 2, their logarithms, and those of the factors of (x - 2)(x - 4) ... (x - 2^14), without its x^14."""
    powers, logs = [1] * 255, [0] * 256
    for k in range(1, 255):
        doubled = powers[k - 1] << 1
        powers[k] = doubled ^ _POLYNOMIAL if doubled > 255 else doubled
        logs[powers[k]] = k
    factors = [1]
    for root in range(1, _CORRECTION + 1):
        times = [powers[(logs[each] + root) % 255] if each else 0 for each in factors]
        factors = [one ^ other for one, other in zip([*factors, 0], [0, *times], strict=True)]
    return powers, logs, [logs[each] for each in factors[1:]]


@cache
def _places() -> tuple[tuple[Place, ...], ...]:
    """Where the eight bits of each codeword stand within the finder pattern (annex F, no corner cases)."""
    taken: set[Place] = set()
    found = []
    for row, column in _walk():
        if (row, column) not in taken:
            own = tuple(_wrapped(row + down, column + on) for down, on in _ROUND_LAST)
            taken.update(own)
            found.append(own)
    return tuple(found)


_ROUND_LAST = ((-2, -2), (-2, -1), (-1, -2), (-1, -1), (-1, 0), (0, -2), (0, -1), (0, 0))
"""The bits of a codeword round its last one, the first bit first."""


def _wrapped(row: int, column: int) -> Place:
    """What lies beyond the upper or the left edge goes on at the opposite one."""
    if row < 0:
        row, column = row + _INNER, column + 4 - (_INNER + 4) % 8
    if column < 0:
        row, column = row + 4 - (_INNER + 4) % 8, column + _INNER
    return row, column


def _walk() -> Iterator[Place]:
    """The last bits of codewords on slanted ways up and down."""
    row, column = 4, 0
    while row < _INNER or column < _INNER:
        while row >= 0 and column < _INNER:
            if row < _INNER and column >= 0:
                yield row, column
            row, column = row - 2, column + 2
        row, column = row + 1, column + 3
        while row < _INNER and column >= 0:
            if row >= 0 and column < _INNER:
                yield row, column
            row, column = row + 2, column - 2
        row, column = row + 3, column + 1
