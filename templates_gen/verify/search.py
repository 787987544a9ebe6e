"""Where a function comes to nothing, by halving: for proofs that solve what the layout has in a formula."""

from __future__ import annotations

from collections.abc import Callable

_HALVINGS = 80


def root(of: Callable[[float], float], low: float, high: float) -> float:
    """An x between `low` and `high` where `of`, which has another sign at each, is nothing, to the last digits."""
    rising = of(low) <= 0
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if (of(middle) <= 0) == rising:
            low = middle
        else:
            high = middle
    return (low + high) / 2
