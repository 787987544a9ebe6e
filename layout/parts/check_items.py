"""What is measured on a frame, in order: before it is warped, and after; and what to do where it is not right.

All is found from the frame itself. A far end that stands s aside makes the diagonals d1, d2 of a frame W wide differ by
about 2 W s / d (from d1^2 - d2^2 = 4 W s), which gives the difference that half a pitch allows.
"""

from __future__ import annotations

from typing import NamedTuple

from layout.messages.roles import Check as Said
from layout.parts.frame_pull import Table, bend_words, measuring_table, measuring_words
from layout.plan import Plan
from layout.values.by_rule import by_rule, root_by_rule

BARE = 3
"""So many checks are made before the frame is warped."""


class Check(NamedTuple):
    """One thing to measure: its `title`, what must come out, the names of the blanks to write on, and a `table`."""

    title: str
    sentences: tuple[str, ...]
    blanks: tuple[str, ...]
    table: Table = ()


class _Words(NamedTuple):
    """What the frame ends are called: bars where they are round, else boards."""

    parallel: Said
    middle: Said
    stretch: Said
    bent: Said
    not_parallel: Said
    mend: Said
    bend: Said
    stiffer: Said


_BARS = _Words(
    Said.PARALLEL_BARS,
    Said.MIDDLE_OF_BARS,
    Said.STRETCH_BARS,
    Said.BENT_BAR,
    Said.NOT_PARALLEL_BARS,
    Said.TURN_BAR,
    Said.BEND_BARS,
    Said.STIFFER_BAR,
)
_BOARDS = _Words(
    Said.PARALLEL_BOARDS,
    Said.MIDDLE_OF_BOARDS,
    Said.STRETCH_BOARDS,
    Said.BENT_BOARD,
    Said.NOT_PARALLEL_BOARDS,
    Said.SHIFT_BOARD,
    Said.BEND_BOARDS,
    Said.STIFFER_BOARD,
)


def ends_words(plan: Plan) -> _Words:
    """The roles that name the frame ends of a plan."""
    return _BARS if plan.kit.frame.ends.name == "round bars" else _BOARDS


def checks(plan: Plan) -> tuple[Check, ...]:
    """What to measure on the frame of a plan, in order."""
    frame, pitch, words = plan.kit.frame, plan.warp.pitch, plan.words
    say, ends, imperial = words.say, ends_words(plan), frame.outer_width.imperial
    width, height = frame.outer_width.mm, frame.outer_height.mm
    squared = width**2 + height**2  # of the diagonal
    leaning = (width * pitch) ** 2 / squared  # squared as well
    half, high = by_rule(width / 2, words, imperial=imperial), by_rule(height, words, imperial=imperial)
    apart = by_rule(pitch / 2, words, imperial=imperial, fine=True)
    return (
        Check(
            say(Said.DIAGONALS),
            (
                say(Said.DIAGONALS_ARE, long=root_by_rule(squared, words, imperial=imperial)),
                say(Said.AT_MOST, apart=root_by_rule(leaning, words, imperial=imperial, fine=True)),
            ),
            (say(Said.ONE), say(Said.OTHER)),
        ),
        Check(
            say(ends.parallel),
            (say(Said.PARALLEL_ARE, high=high), say(Said.AT_MOST, apart=apart)),
            (say(Said.LEFT), say(Said.RIGHT)),
        ),
        Check(say(ends.middle), (say(Said.MIDDLE_IS, half=half),), (say(Said.FAR), say(Said.NEAR))),
        Check(say(Said.BEND), bend_words(plan, ends.stretch), (say(Said.FAR), say(Said.NEAR))),
        Check(say(Said.MEASURE), (measuring_words(plan),), (say(Said.FREE), say(Said.FOUND)), measuring_table(plan)),
    )


def remedies(plan: Plan) -> tuple[tuple[str, str], ...]:
    """What may be wrong, and what to do then."""
    say, ends = plan.words.say, ends_words(plan)
    return (
        (say(Said.ONE_LONGER), say(Said.SQUEEZE)),
        (say(ends.not_parallel), say(ends.mend)),
        (say(ends.bend), say(ends.stiffer)),
    )
