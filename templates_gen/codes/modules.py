"""The black and white modules of a sheet's code: Data Matrix ECC 200, 18 x 18 (ISO/IEC 16022)."""

from __future__ import annotations

from functools import lru_cache

from layout.kit.kit import Paper
from layout.paper.code import Modules
from layout.paper.targets import rectangle
from templates_gen.codes.payload import LENGTH, payload
from templates_gen.document import About

_SIDE, _WORDS, _CORRECTION = 18, 18, 14  # modules a side; codewords of data and of error correction (its table 7)
_KEPT = 400


def codes_for(about: About, paper: Paper, total: int) -> tuple[Modules, ...]:
    """The code of each of the `total` sheets of a file, in order."""
    sides = rectangle(paper)
    return tuple(modules(payload(about.inputs, number, total, sides)) for number in range(1, total + 1))


@lru_cache(_KEPT)
def modules(said: str) -> Modules:
    """The rows of a code from above, "#" for black and "." for white; ValueError if it is not 24 of 0-9A-Z."""
    from reportlab.graphics.barcode.ecc200datamatrix import ECC200DataMatrix  # dear to import

    class Square(ECC200DataMatrix):
        """One region of 18 x 18 instead of the four of 44 x 44."""

        def __init__(self, value: str) -> None:
            super().__init__(value)
            self.row_modules = self.col_modules = _SIDE
            self.row_regions = self.col_regions = 1
            self.row_usable_modules = self.col_usable_modules = _SIDE - 2
            self.cw_data, self.cw_ecc = _WORDS, _CORRECTION

    if len(said) != LENGTH or not (said.isascii() and said.isalnum() and said == said.upper()):
        raise ValueError(said)
    square = Square(said)
    square.validate()
    upward = square.encode()  # type: ignore[no-untyped-call]
    return tuple("".join("#" if black else "." for black in row) for row in reversed(upward))
