"""Rows of a table that was read, compared with what they must say: words to the letter, amounts to their last place."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import Decimal, InvalidOperation
from itertools import islice, zip_longest
from typing import NamedTuple

from templates_gen.messages.roles.buying import Tables
from templates_gen.verify.finding import NOTHING, Findings, finding

_SAME = Decimal("1e-9")
_MOST_WRONG = 20
CENT = Decimal("0.01")
PLACES = {"g": Decimal("0.1"), "m": CENT, "sheet": Decimal(1), "piece": Decimal(1)}
"""To what an amount is said, by its unit."""


class Amount(NamedTuple):
    """An amount before it is rounded, and the last place that is said of it."""

    exact: Decimal
    place: Decimal


Wanted = Sequence[str | Amount]
"""A row as it must be."""


def compared(rows: Iterable[Sequence[str]], head: Sequence[str], wanted: Iterable[Wanted]) -> Findings:
    """Row for row, the names of the columns first; of many that are wrong the first twenty."""
    found = iter(rows)
    if tuple(next(found, ())) != tuple(head):
        return Findings(0.0, (finding(Tables.HEAD),))
    wrong = (
        finding(Tables.ROW, row=number, want=_shown(want), got=_shown(got))
        for number, (want, got) in enumerate(zip_longest(wanted, found), 2)
        if want is None or got is None or not _alike(want, got)
    )
    first = tuple(islice(wrong, _MOST_WRONG))
    return Findings(0.0, first) if first else NOTHING


def _shown(row: Wanted | None) -> str:
    """Its cells but for the empty ones, amounts to a thousandth."""
    return ", ".join(f"{cell.exact:.3f}" if isinstance(cell, Amount) else cell for cell in row or () if cell)


def _alike(want: Wanted, got: Sequence[str]) -> bool:
    return len(want) == len(got) and all(
        _is(cell, one) if isinstance(one, Amount) else cell == one for one, cell in zip(want, got, strict=True)
    )


def _is(cell: str, amount: Amount) -> bool:
    """Whether a cell says an amount to its last place; halves may go either way, since amounts are floats."""
    try:
        said = Decimal(cell)
    except InvalidOperation:
        return False
    off = amount.place / 2 + _SAME * max(abs(amount.exact), Decimal(1))
    return said.as_tuple().exponent == amount.place.as_tuple().exponent and abs(said - amount.exact) <= off
