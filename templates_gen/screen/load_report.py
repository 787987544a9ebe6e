"""What the plan says about the pull of the warp on the frame ends, as rows for people and as plain values."""

from __future__ import annotations

from layout.frames.load import Load
from layout.values.forces import NEWTONS
from layout.values.numerals import say_fixed
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Measure, Row


def load_values(load: Load) -> dict[str, object]:
    """For programs: N and mm, each with how it was obtained; null where the kit does not say what it needs."""
    return {
        "end_pull_n": load.pull.value,
        "end_pull_how": load.pull.origin.value,
        "end_bending_mm": load.bending.value if load.bending else None,
        "end_bending_how": load.bending.origin.value if load.bending else None,
        "end_bending_most_mm": float(load.most),
    }


def load_rows(load: Load) -> list[tuple[str, str, str]]:
    """For people: the pull on each frame end, and how far it bends."""
    newtons = load.pull.value
    both = message(
        Measure.BOTH,
        first=message(Measure.NEWTONS, number=say_fixed(newtons, 1)),
        second=message(Measure.POUNDS, number=say_fixed(newtons / float(NEWTONS["lb"]), 1)),
    )
    remark = message(Row.PULL_IS, threads=load.threads, tension=load.tension_words)
    return [(message(Row.PULL), both, remark), _bending(load)]


def _bending(load: Load) -> tuple[str, str, str]:
    if load.bending is None:
        return message(Row.BENDING), message(Row.BENDING_UNKNOWN), load.wanting
    bent = load.bending.value
    both = message(
        Measure.BOTH,
        first=message(Measure.MM, number=say_fixed(bent, 2)),
        second=message(Measure.INCH, number=say_fixed(bent / 25.4, 3)),
    )
    return message(Row.BENDING), both, message(Row.BENDING_IS, origin=load.bending.origin, most=say_fixed(load.most, 2))
