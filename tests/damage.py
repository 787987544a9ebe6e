"""Files made bad on purpose, the same way in every run."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator

import pytest

from templates_gen.files.formats import Document, ReadError


def damaged(whole: bytes) -> Iterator[bytes]:
    """Three hundred copies of a file, each with some bytes changed or its end cut off."""
    dice = random.Random(7)  # noqa: S311 - the same damage in every run
    for _ in range(150):
        data = bytearray(whole)
        for _ in range(dice.randint(1, 6)):
            data[dice.randrange(len(data))] = dice.randrange(256)
        yield bytes(data)
        yield whole[: dice.randrange(len(whole))]


def refuses(read: Callable[[bytes], Document], typed: str, old: str, new: str) -> None:
    """A file typed by hand, changed in one place that is there, is refused with one sentence."""
    assert old in typed
    with pytest.raises(ReadError) as caught:
        read(typed.replace(old, new, 1).encode())
    assert "\n" not in str(caught.value)
