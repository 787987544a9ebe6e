"""Many cases of one truth: a share of them is tried in every run, all of them in a thorough one."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import product
from typing import Any

import pytest


def one_in(every: int, cases: Iterable[Any]) -> list[Any]:
    """All cases as parameters; the first of each `every` is usual, the others are slow."""
    return [pytest.param(case, marks=() if k % every == 0 else pytest.mark.slow) for k, case in enumerate(cases)]


def crossed(every: int, *axes: Sequence[Any]) -> list[Any]:
    """Each combination of a value of every axis, one in `every` usual, the others slow.

    Usual are those whose places on their axes add up to a multiple of `every`, so that each value is tried, and each
    beside others.
    """
    found = []
    for places in product(*(range(len(axis)) for axis in axes)):
        values = [axis[place] for axis, place in zip(axes, places, strict=True)]
        found.append(pytest.param(*values, marks=() if sum(places) % every == 0 else pytest.mark.slow))
    return found
