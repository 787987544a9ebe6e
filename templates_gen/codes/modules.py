"""The black and white modules of a sheet's code: Data Matrix ECC 200, 18 x 18 (ISO/IEC 16022)."""

from __future__ import annotations

from functools import lru_cache

from layout.kit.kit import Paper
from layout.paper.code import Modules
from layout.paper.targets import rectangle
from templates_gen.codes.payload import payload
from templates_gen.codes.symbol import symbol
from templates_gen.document import About

_KEPT = 400


def codes_for(about: About, paper: Paper, total: int) -> tuple[Modules, ...]:
    """The code of each of the `total` sheets of a file, in order."""
    sides = rectangle(paper)
    return tuple(modules(payload(about.inputs, number, total, sides)) for number in range(1, total + 1))


@lru_cache(_KEPT)
def modules(said: str) -> Modules:
    """The rows of a code from above, "#" for black and "." for white; ValueError if it is not 24 of 0-9A-Z."""
    return tuple("".join("#" if black else "." for black in row) for row in symbol(said))
