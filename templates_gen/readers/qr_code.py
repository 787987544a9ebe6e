"""A QR code read back from its modules: versions 1 to 10 at level M, one text in bytes, without the library that wrote
it.

After ISO/IEC 18004: function patterns (6.3), placement (7.7), masks (7.8), format and version information (7.9, 7.10),
blocks (table 9), Reed-Solomon over GF(256) with the polynomial 285 (annex A). Nothing is corrected: a file is right or
it is not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import cache
from itertools import chain, zip_longest
from typing import NamedTuple

from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.proof_cards import QrCode

Bits = Sequence[Sequence[bool]]
"""Rows of modules from above, true where one is black."""

Place = tuple[int, int]
"""Row and column."""


class _Version(NamedTuple):
    """Correction words of a block, data words of every block, and where alignment patterns stand."""

    correction: int
    data: tuple[int, ...]
    aligned: tuple[int, ...]


_VERSIONS: Mapping[int, _Version] = {
    1: _Version(10, (16,), ()),
    2: _Version(16, (28,), (6, 18)),
    3: _Version(26, (44,), (6, 22)),
    4: _Version(18, (32,) * 2, (6, 26)),
    5: _Version(24, (43,) * 2, (6, 30)),
    6: _Version(16, (27,) * 4, (6, 34)),
    7: _Version(18, (31,) * 4, (6, 22, 38)),
    8: _Version(22, (38,) * 2 + (39,) * 2, (6, 24, 42)),
    9: _Version(22, (36,) * 3 + (37,) * 2, (6, 26, 46)),
    10: _Version(26, (43,) * 4 + (44,), (6, 28, 50)),
}
_MASKS: tuple[Callable[[int, int], int], ...] = (
    lambda i, j: (i + j) % 2,
    lambda i, _: i % 2,
    lambda _, j: j % 3,
    lambda i, j: (i + j) % 3,
    lambda i, j: (i // 2 + j // 3) % 2,
    lambda i, j: i * j % 2 + i * j % 3,
    lambda i, j: (i * j % 2 + i * j % 3) % 2,
    lambda i, j: ((i + j) % 2 + i * j % 3) % 2,
)
_FORMAT, _FORMAT_MASK, _LEVEL_M = 0x537, 0x5412, 0b00
_VERSION = 0x1F25
_POLYNOMIAL, _FIELD = 0x11D, 256
_BYTES, _LONG_COUNT = 0b0100, 10


def text_of(bits: Bits) -> str:
    """What a code says; ReadError where it is no such code, or where one module or more is not as it was written."""
    version, rest = divmod(len(bits) - 17, 4)
    if rest or version not in _VERSIONS or any(len(row) != len(bits) for row in bits):
        raise ReadError(message(QrCode.SIZE))
    patterns = _patterns(version)
    if any(bits[i][j] != black for (i, j), black in patterns.items()):
        raise ReadError(message(QrCode.PATTERN))
    mask = _MASKS[_mask_of(bits)]
    taken = patterns.keys() | set(chain(*_format_places(len(bits))))
    read = [bits[i][j] ^ (mask(i, j) == 0) for i, j in _zigzag(len(bits)) if (i, j) not in taken]
    words = [int("".join("01"[bit] for bit in read[k : k + 8]), 2) for k in range(0, len(read) - 7, 8)]
    if any(read[len(words) * 8 :]):
        raise ReadError(message(QrCode.DAMAGED))
    return _text(_data(words, _VERSIONS[version]), version)


@cache
def _patterns(version: int) -> Mapping[Place, bool]:
    """Finders with their white, alignment, timing, the dark module, and the version where it is given."""
    side, found = 17 + 4 * version, dict[Place, bool]()
    for top, left in ((0, 0), (0, side - 7), (side - 7, 0)):
        for i in range(max(0, top - 1), min(side, top + 8)):
            for j in range(max(0, left - 1), min(side, left + 8)):
                away = max(abs(i - top - 3), abs(j - left - 3))
                found[i, j] = away not in (2, 4)
    aligned = _VERSIONS[version].aligned
    for row in aligned:
        for column in aligned:
            if (row, column) not in ((6, 6), (6, aligned[-1]), (aligned[-1], 6)):
                places = [(i, j) for i in range(row - 2, row + 3) for j in range(column - 2, column + 3)]
                found |= {(i, j): max(abs(i - row), abs(j - column)) != 1 for i, j in places}
    for k in range(8, side - 8):
        found[6, k] = found[k, 6] = k % 2 == 0
    found[side - 8, 8] = True
    if version >= 7:
        said = version << 12 | _remainder(version << 12, _VERSION)
        for k in range(18):
            i, j = k // 3, side - 11 + k % 3
            found[i, j] = found[j, i] = bool(said >> k & 1)
    return found


def _remainder(value: int, divisor: int) -> int:
    """Of a division of polynomials over GF(2)."""
    while value.bit_length() >= divisor.bit_length():
        value ^= divisor << (value.bit_length() - divisor.bit_length())
    return value


def _format_places(side: int) -> tuple[list[Place], list[Place]]:
    """Where both copies of the format stand, its highest bit first."""
    around = [(8, k) for k in (0, 1, 2, 3, 4, 5, 7, 8)] + [(k, 8) for k in (7, 5, 4, 3, 2, 1, 0)]
    apart = [(side - 1 - k, 8) for k in range(7)] + [(8, side - 8 + k) for k in range(8)]
    return around, apart


def _mask_of(bits: Bits) -> int:
    """The number of the mask, from a format that both copies give alike."""
    one, other = ([bits[i][j] for i, j in places] for places in _format_places(len(bits)))
    said = int("".join("01"[bit] for bit in one), 2) ^ _FORMAT_MASK
    if one != other or _remainder(said, _FORMAT) or said >> 13 != _LEVEL_M:
        raise ReadError(message(QrCode.FORMAT))
    return said >> 10 & 7


def _zigzag(side: int) -> Iterator[Place]:
    """Every place in the order of the bits: two columns at a time from the right, upward and downward by turns."""
    up = True
    for right in (*range(side - 1, 6, -2), 5, 3, 1):
        for i in range(side - 1, -1, -1) if up else range(side):
            yield i, right
            yield i, right - 1
        up = not up


def _data(words: Sequence[int], version: _Version) -> list[int]:
    """The data words in order, out of blocks that are whole."""
    blocks: list[list[int]] = [[] for _ in version.data]
    turns = zip_longest(*(range(each) for each in version.data))
    order = [k for turn in turns for k, there in enumerate(turn) if there is not None]
    order += [k for _ in range(version.correction) for k in range(len(version.data))]
    for k, word in zip(order, words, strict=True):
        blocks[k].append(word)
    if any(_syndrome(block, k) for block in blocks for k in range(version.correction)):
        raise ReadError(message(QrCode.DAMAGED))
    return [word for block, each in zip(blocks, version.data, strict=True) for word in block[:each]]


@cache
def _powers() -> tuple[int, ...]:
    """The powers of 2 in the field, from the first on."""
    found, value = [], 1
    for _ in range(_FIELD - 1):
        found.append(value)
        value = value << 1 ^ (_POLYNOMIAL if value & 0x80 else 0)
    return tuple(found)


@cache
def _logarithms() -> Mapping[int, int]:
    return {value: k for k, value in enumerate(_powers())}


def _syndrome(block: Sequence[int], power: int) -> int:
    """The polynomial of the words at this power of 2."""
    value = 0
    for word in block:
        if value:
            value = _powers()[(_logarithms()[value] + power) % (_FIELD - 1)]
        value ^= word
    return value


def _text(data: Sequence[int], version: int) -> str:
    """One segment in bytes, and its end."""
    bits = "".join(f"{word:08b}" for word in data)
    wide = 16 if version >= _LONG_COUNT else 8
    count = int(bits[4 : 4 + wide], 2)
    begin, end = 4 + wide, 4 + wide + 8 * count
    if int(bits[:4], 2) != _BYTES or end > len(bits):
        raise ReadError(message(QrCode.TEXT))
    if "1" in bits[end : end + 4]:  # what follows that end is of no meaning (7.4.9)
        raise ReadError(message(QrCode.TEXT))
    try:
        return bytes(int(bits[k : k + 8], 2) for k in range(begin, end, 8)).decode()
    except UnicodeDecodeError:
        raise ReadError(message(QrCode.TEXT)) from None
