"""Random small edits of a file's bytes, the same in every run, and who else may look at what is then still read.

At least 1,000 of each format are made in every run; SWEEP=all in the environment makes more.
"""

from __future__ import annotations

import os
import random
from collections.abc import Callable, Iterator
from typing import NamedTuple

from templates_gen.document import Document, ReadError

ALL = os.environ.get("SWEEP") == "all"
_DIGITS = b"0123456789"


class Edit(NamedTuple):
    """A file changed in one place; `what` says how, for the message of a test that fails."""

    what: str
    data: bytes


def how_many(few: int, many: int) -> int:
    """How many edits this run makes: `many` with SWEEP=all, else `few`."""
    return many if ALL else few


def edits(whole: bytes, count: int, seed: int = 11, *, keep_length: bool = False) -> Iterator[Edit]:
    """So many edits of `whole`, of every kind by turns, none of them the file as it was.

    With `keep_length` only those after which every byte behind the edit stays at its place.
    """
    dice = random.Random(seed)  # noqa: S311 - the same edits in every run
    kinds = _SAME_LENGTH if keep_length else (*_SAME_LENGTH, *_OTHER_LENGTH)
    made = 0
    while made < count:
        kind = kinds[made % len(kinds)]
        data = bytearray(whole)
        at = kind(data, dice)
        if data != whole:
            made += 1
            yield Edit(f"{kind.__name__[1:]} at byte {at} of seed {seed}", bytes(data))


def read_or_refused(read: Callable[[bytes], Document], data: bytes) -> Document | None:
    """What a reader returns, or None where it refuses with one printable sentence; any other error fails the test."""
    try:
        return read(data)
    except ReadError as error:
        sentence = str(error)
        assert sentence.isprintable(), repr(sentence)
        assert len(sentence) < 400, sentence
        return None


def _any_byte(data: bytearray, dice: random.Random) -> int:
    at = dice.randrange(len(data))
    data[at] = dice.randrange(256)
    return at


def _one_bit(data: bytearray, dice: random.Random) -> int:
    at = dice.randrange(len(data))
    data[at] ^= 1 << dice.randrange(8)
    return at


def _digit(data: bytearray, dice: random.Random) -> int:
    at = _next(data, dice, _DIGITS)
    data[at] = dice.choice(_DIGITS)
    return at


def _space(data: bytearray, dice: random.Random) -> int:
    at = _next(data, dice, b" \n")
    data[at] = dice.choice(b"\0\t\n\v\f\r \x1c\x85\xa0")
    return at


def _exchange(data: bytearray, dice: random.Random) -> int:
    at = dice.randrange(len(data) - 1)
    data[at], data[at + 1] = data[at + 1], data[at]
    return at


def _copied(data: bytearray, dice: random.Random) -> int:
    """A few bytes written over with others of the same file."""
    length = dice.randint(1, 12)
    at, source = dice.randrange(len(data) - length), dice.randrange(len(data) - length)
    data[at : at + length] = data[source : source + length]
    return at


def _left_out(data: bytearray, dice: random.Random) -> int:
    at = dice.randrange(len(data))
    del data[at : at + dice.randint(1, 3)]
    return at


def _put_in(data: bytearray, dice: random.Random) -> int:
    at = dice.randrange(len(data))
    data[at:at] = bytes(dice.choices(b"\0\t\n\v\r \x1b0123456789-.<>()/ABCabc\x80\xff", k=dice.randint(1, 3)))
    return at


def _line_twice(data: bytearray, dice: random.Random) -> int:
    at, end = _line(data, dice)
    data[at:at] = data[at:end]
    return at


def _line_left_out(data: bytearray, dice: random.Random) -> int:
    at, end = _line(data, dice)
    del data[at:end]
    return at


def _line(data: bytearray, dice: random.Random) -> tuple[int, int]:
    """Where a line begins and where the next one does."""
    at = data.rfind(b"\n", 0, dice.randrange(len(data))) + 1
    end = data.find(b"\n", at) + 1
    return at, end or len(data)


def _next(data: bytearray, dice: random.Random, wanted: bytes) -> int:
    """A random place that holds one of the bytes `wanted`."""
    begin = dice.randrange(len(data))
    return next(at for k in range(len(data)) if data[at := (begin + k) % len(data)] in wanted)


_SAME_LENGTH = (_any_byte, _one_bit, _digit, _space, _exchange, _copied)
_OTHER_LENGTH = (_left_out, _put_in, _line_twice, _line_left_out)
