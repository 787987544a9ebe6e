"""What lies in the box of a plan, or once in its run: what the kit names, but for what it cannot have.

Every list and sheet of a box goes by this, so that all of them name the same.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from layout.parts.cards.help_left_out import help_left_out
from layout.parts.grid_size import left_out
from layout.plan import Plan


def _winds_by_comb(plan: Plan) -> bool:
    return bool(plan.warp.winds) and "winding-comb" in plan.kit.frame.ends.cut_parts


_LACKING: Mapping[str, Callable[[Plan], bool]] = {
    "weaving-grid": lambda plan: bool(left_out(plan)),
    "help": lambda plan: bool(help_left_out(plan)),
    "winding-comb": lambda plan: not _winds_by_comb(plan),
}
"""Whether the numbers of a kit, or its paper, allow no such thing; any other thing can always be had."""


def held_each(plan: Plan) -> tuple[str, ...]:
    """The products in each box, by name."""
    return tuple(name for name in plan.kit.box.each_holds if can_have(plan, name))


def held_once(plan: Plan) -> tuple[str, ...]:
    """The products that there are once for a whole run."""
    return tuple(name for name in plan.kit.box.run_holds if can_have(plan, name))


def is_held(plan: Plan, *names: str) -> bool:
    """Whether any of these lies in the box, or once in the run."""
    return any(plan.kit.box.has(name) and can_have(plan, name) for name in names)


def can_have(plan: Plan, name: str) -> bool:
    """Whether neither the stock refuses a thing nor the kit."""
    return name not in plan.refused and not (name in _LACKING and _LACKING[name](plan))
