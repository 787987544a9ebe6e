"""What the plan says about the pull of the warp on the frame ends, as rows for people and as plain values."""

from __future__ import annotations

from layout.frames.load import Load
from layout.values.numerals import say_fixed
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Row
from templates_gen.screen.ranges import FORCE, THICK, about, range_values
from templates_gen.screen.tables import Line


def load_values(load: Load) -> dict[str, object]:
    """For programs: N and mm, each with how it was obtained; null where the kit does not say what it needs."""
    return {
        **range_values("end_pull_n", load.pull),
        "end_pull_how": load.pull.origin.value,
        **range_values("end_bending_mm", load.bending),
        "end_bending_how": load.bending.origin.value if load.bending else None,
        "end_bending_most_mm": float(load.most),
    }


def load_rows(load: Load) -> list[Line]:
    """For people: the pull on each frame end, and how far it bends."""
    remark = message(Row.PULL_IS, threads=load.threads, tension=load.tension_words)
    return [(message(Row.PULL), about(load.pull, FORCE), remark), _bending(load)]


def _bending(load: Load) -> Line:
    if load.bending is None:
        return message(Row.BENDING), message(Row.BENDING_UNKNOWN), load.wanting
    remark = message(Row.BENDING_IS, origin=load.bending.origin, most=say_fixed(load.most, 2))
    return message(Row.BENDING), about(load.bending, THICK), remark
