"""What the frame check says of the pull of the warp, and the table by which a pull is measured on one thread."""

from __future__ import annotations

import math

from layout.frames.tension import MOST_DIP
from layout.messages.roles import Check as Said
from layout.plan import Plan
from layout.values.by_rule import by_rule, least_by_rule
from layout.values.forces import NEWTONS
from layout.values.numerals import say_number, say_root
from layout.values.quantity import Quantity

Table = tuple[tuple[str, ...], ...]
"""Rows of a table, each with its name first."""

PULLS = (1, 2, 3, 5, 8, 12)
"""The pulls of one thread in N that the table lists."""


def bend_words(plan: Plan, stretch: Said) -> tuple[str, ...]:
    """How the bend is measured, how much is expected, at how much the warp grows slack, and how hard it pulls."""
    load, words, imperial = plan.load, plan.words, plan.kit.frame.outer_width.imperial
    most = words.say(Said.MOST, most=by_rule(load.most, words, imperial=imperial, fine=True))
    return words.say(stretch), words.paragraph([*_expected(plan), most]), _pull(plan)


def _expected(plan: Plan) -> list[str]:
    """How far it is expected to bend; nothing where the kit does not say what that needs."""
    bent, words, imperial = plan.load.bending, plan.words, plan.kit.frame.outer_width.imperial
    if bent is None:
        return []
    least = least_by_rule(imperial=imperial)
    if bent.high < least:
        return [words.say(Said.EXPECTED_LITTLE, least=by_rule(least, words, imperial=imperial, fine=True))]
    likely, high = (by_rule(each, words, imperial=imperial, fine=True) for each in (bent.value, bent.high))
    if likely == high:
        return [words.say(Said.EXPECTED, bent=likely)]
    return [words.say(Said.EXPECTED_RANGE, bent=likely, high=high)]


def _pull(plan: Plan) -> str:
    load = plan.load
    pull, pound = load.pull, float(NEWTONS["lb"])
    values: dict[str, object] = {
        "threads": load.threads,
        "tension": load.thread_words,
        "newtons": _whole(pull.value),
        "pounds": _whole(pull.value / pound),
    }
    if load.thread.exact:
        return plan.words.say(Said.PULL_IS, **values)
    return plan.words.say(Said.PULL_RANGE, **values, least=_whole(pull.low), most=_whole(pull.high))


def measuring_words(plan: Plan) -> str:
    """How the pull of one thread is measured."""
    if plan.warp_thread is None:
        return plan.words.say(Said.MEASURE_UNWEIGHED)
    high = plan.kit.frame.tightened.outer_height
    return plan.words.say(Said.MEASURE_HOW, length=by_rule(high.mm, plan.words, imperial=high.imperial))


def measuring_table(plan: Plan) -> Table:
    """By the pull of a thread in N: the weight that makes it dip by a sixtieth, and its pitch, free over the height."""
    thread, frame, say = plan.warp_thread, plan.kit.frame.tightened, plan.words.say
    if thread is None:
        return ()
    imperial = frame.outer_width.imperial
    name, each, places = (Said.ROW_OUNCES, "oz", 2) if imperial else (Said.ROW_GRAMS, "g", 0)
    weights = (say_number(hung(pull, thread.stiffness) / float(NEWTONS[each]), places) for pull in PULLS)
    metres = frame.outer_height.mm / 1000
    squares = (pull / (4 * thread.tex / 10**6 * metres**2) for pull in PULLS)
    return (
        (say(Said.ROW_PULL), *map(str, PULLS)),
        (say(name), *map(plan.words.figure, weights)),
        (say(Said.ROW_HERTZ), *(say_root(square, 0) for square in squares)),
    )


def hung(pull: float, stiffness: Quantity) -> float:
    """The load in N that makes a thread with that pull at rest dip by a sixtieth of its free length, however long."""
    aside = float(MOST_DIP)
    side = math.hypot(0.5, aside)
    return (pull + stiffness.value * (2 * side - 1)) * 2 * aside / side


def _whole(newtons: float) -> str:
    return say_number(newtons, 0)
