"""What the frame check says of the pull of the warp, and the table by which a pull is measured on one thread."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from layout.frames.load import Load
from layout.frames.tension import MOST_DIP
from layout.messages.english import ENGLISH
from layout.messages.roles import Check as Said
from layout.plan import Plan
from layout.values.forces import NEWTONS
from layout.values.numerals import say_number, say_root
from layout.values.quantity import Quantity
from layout.values.units import mm_in, say_length

Table = tuple[tuple[str, ...], ...]
"""Rows of a table, each with its name first."""

PULLS = (1, 2, 3, 5, 8, 12)
"""The pulls of one thread in N that the table lists."""


@dataclass(frozen=True, slots=True)
class Both:
    """Says lengths in both systems, the kit's own first: to 0.1 mm and 0.01 in, or one figure `finer`."""

    imperial: bool

    def __call__(self, mm: Fraction | float, finer: int = 0) -> str:
        """The length `mm`."""
        return self.both(say_number(mm, 1 + finer), say_number(mm / mm_in("in"), 2 + finer))

    def root(self, squared: Fraction, finer: int = 0) -> str:
        """The length whose square in mm2 is `squared`."""
        return self.both(say_root(squared, 1 + finer), say_root(squared / mm_in("in") ** 2, 2 + finer))

    def both(self, metric: str, inches: str) -> str:
        """Both figures with their units, the kit's own first."""
        lengths = [f"{metric} mm", f"{inches} in"]
        return ENGLISH.listed(lengths[::-1] if self.imperial else lengths)


def pull_words(load: Load, said: Both) -> str:
    """How hard the warp pulls on each bar, and how far that may bend."""
    most = said(load.most, 1)
    bent = load.bending
    if bent is None:
        gives = ENGLISH.say(Said.LAY_A_RULE, most=most)
    elif bent.exact:
        gives = ENGLISH.say(Said.BENDS, bent=said(bent.value, 1), most=most)
    else:
        gives = ENGLISH.say(Said.BENDS_RANGE, bent=said(bent.value, 1), high=said(bent.high, 1), most=most)
    return ENGLISH.paragraph([_pull(load), gives])


def _pull(load: Load) -> str:
    each, pull, pound = load.thread, load.pull, float(NEWTONS["lb"])
    values: dict[str, object] = {
        "threads": load.threads,
        "newtons": _whole(pull.value),
        "pounds": _whole(pull.value / pound),
    }
    values["tension"] = load.thread_words
    if each.exact:
        return ENGLISH.say(Said.PULL_IS, **values)
    newtons = {"least": _whole(pull.low), "most": _whole(pull.high)}
    pounds = {"lightest": _whole(pull.low / pound), "heaviest": _whole(pull.high / pound)}
    return ENGLISH.say(Said.PULL_RANGE, **values, **newtons, **pounds)


def measuring_words(plan: Plan) -> str:
    """How the pull of one thread is measured."""
    if plan.warp_thread is None:
        return ENGLISH.say(Said.MEASURE_UNWEIGHED)
    return ENGLISH.say(Said.MEASURE_HOW, length=say_length(plan.kit.frame.tightened.outer_height))


def measuring_table(plan: Plan) -> Table:
    """By the pull of a thread in N: the weight that makes it dip by a sixtieth, and its pitch, free over the height."""
    thread, frame = plan.warp_thread, plan.kit.frame.tightened
    if thread is None:
        return ()
    imperial = frame.outer_width.imperial
    name, each, places = (Said.ROW_OUNCES, "oz", 2) if imperial else (Said.ROW_GRAMS, "g", 0)
    weights = (say_number(hung(pull, thread.stiffness) / float(NEWTONS[each]), places) for pull in PULLS)
    metres = frame.outer_height.mm / 1000
    squares = (pull / (4 * thread.tex / 10**6 * metres**2) for pull in PULLS)
    return (
        (ENGLISH.say(Said.ROW_PULL), *map(str, PULLS)),
        (ENGLISH.say(name), *weights),
        (ENGLISH.say(Said.ROW_HERTZ), *(say_root(square, 0) for square in squares)),
    )


def hung(pull: float, stiffness: Quantity) -> float:
    """The load in N that makes a thread with that pull at rest dip by a sixtieth of its free length, however long."""
    aside = float(MOST_DIP)
    side = math.hypot(0.5, aside)
    return (pull + stiffness.value * (2 * side - 1)) * 2 * aside / side


def _whole(newtons: float) -> str:
    return say_number(newtons, 0)
