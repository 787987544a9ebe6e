"""Kits by the hundred: what each key may be, every two values of two keys together, and all of them together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations
from math import gcd, prod
from random import Random

Changes = dict[str, object]
Axes = Mapping[str, Sequence[object]]

_TRIES = 12  # rows are drawn so often, and the one that holds most new pairs is kept


def pairwise_rows(axes: Axes, seed: int = 1) -> list[dict[str, object]]:
    """Few rows, one value of each axis in each, in which every value stands beside every value of every other axis."""
    names, random = list(axes), Random(seed)  # noqa: S311 (the same rows in every run)
    left = {
        (one, i, other, j)
        for one, other in combinations(names, 2)
        for i in range(len(axes[one]))
        for j in range(len(axes[other]))
    }
    rows = []
    while left:
        first = min(left)
        tries = (_row(axes, first, left, random) for _ in range(_TRIES))
        best = max(tries, key=lambda row: len(left & _pairs(row)))
        left -= _pairs(best)
        rows.append({name: axes[name][k] for name, k in best.items()})
    return rows


Pair = tuple[str, int, str, int]


def _row(axes: Axes, first: Pair, left: set[Pair], random: Random) -> dict[str, int]:
    """A row that holds the pair `first`; the other axes, in any order, each take what gives most new pairs."""
    row = {first[0]: first[1], first[2]: first[3]}
    others = [name for name in axes if name not in row]
    random.shuffle(others)
    for name in others:
        order = random.sample(range(len(axes[name])), len(axes[name]))
        row[name] = max(order, key=lambda k: len(left & _pairs_with(row, name, k, axes)))
    return {name: row[name] for name in axes}


def _pairs_with(row: Mapping[str, int], name: str, k: int, axes: Axes) -> set[Pair]:
    order = {each: number for number, each in enumerate(axes)}
    return {(name, k, other, j) if order[name] < order[other] else (other, j, name, k) for other, j in row.items()}


def _pairs(row: Mapping[str, int]) -> set[Pair]:
    return {(one, row[one], other, row[other]) for one, other in combinations(row, 2)}


def all_rows(axes: Axes) -> Iterator[dict[str, object]]:
    """Every combination once, in an order in which any beginning is spread over all of them."""
    total = prod(map(len, axes.values()))
    step = next(k for k in range(int(total * 0.618) or 1, total + 1) if gcd(k, total) == 1)
    for number in range(total):
        rest, row = number * step % total, {}
        for name, values in axes.items():
            rest, k = divmod(rest, len(values))
            row[name] = values[k]
        yield row
