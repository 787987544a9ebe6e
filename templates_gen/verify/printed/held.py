"""What lies in the box of a kit, or once in its run, found out again: what it names, but for what it cannot have.

What a stock refuses is what the plan says; that no file of it is made is proven with the whole kit.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from layout.plan import Plan
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.grid_axes import axes_of
from templates_gen.verify.printed.height import bead_mm

_FINEST, _SMALLEST, _SHEETS = Fraction(3, 5), 10, 24  # mm, mm, whole sheets of paper
_CARD, _ROUND_CARD, _LOWEST = 105, 73.6, 100  # mm: a card of A6, what a sheet needs round it, how low it may be


def held_each(plan: Plan) -> list[str]:
    """What lies in each box."""
    return list(_there(plan, plan.kit.box.each_holds))


def held_once(plan: Plan) -> list[str]:
    """What there is once for a run."""
    return list(_there(plan, plan.kit.box.run_holds))


def holds(plan: Plan, *names: str) -> bool:
    """Whether any of these lies in the box, or once in a run."""
    return any(name in names for name in (*held_each(plan), *held_once(plan)))


def _there(plan: Plan, names: tuple[str, ...]) -> Iterator[str]:
    lacking = {"weaving-grid": not _has_grid(plan), "help": not _has_help(plan), "winding-comb": not _has_combs(plan)}
    yield from (name for name in names if name not in plan.refused and not lacking.get(name))


def _has_help(plan: Plan) -> bool:
    """A card of its own size, or paper that is not too low for the usual one."""
    return plan.kit.box.help is not None or min(_CARD, int(plan.kit.paper.height - _ROUND_CARD)) >= _LOWEST


def _has_grid(plan: Plan) -> bool:
    """Picks that are known; cells and sides that can be printed, on no more paper than is still joined."""
    if not bead_mm(plan):
        return False
    cells = [(abs(axis.cell), axis.count) for axis in axes_of(plan)]
    sides = [cell * count for cell, count in cells]
    paper = plan.kit.paper
    fine = min(cell for cell, _ in cells) < _FINEST
    return not fine and min(sides) >= _SMALLEST and float(sides[0] * sides[1]) <= _SHEETS * paper.width * paper.height


def _has_combs(plan: Plan) -> bool:
    """Whether anything is wound, round ends that combs are made for."""
    truth, ends = truth_of(plan.kit), plan.kit.frame.ends
    return truth.winds and ends_of(plan.kit, plan.warp.sett.per_mm) > 1 and "winding-comb" in truth.asks_for(ends)
