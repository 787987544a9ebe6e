"""What the plan says about the pull of the warp on the frame ends, as rows for people and as plain values."""

from __future__ import annotations

from layout.frames.load import Load
from layout.values.numerals import say_fixed
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Row
from templates_gen.screen.ranges import FORCE, STRESS, THICK, about, range_values
from templates_gen.screen.tables import Line


def load_values(load: Load) -> dict[str, object]:
    """For programs: N and mm, each with how it was obtained; null where the kit does not say what it needs."""
    return {
        **range_values("thread_pull_n", load.thread),
        "thread_pull_how": load.thread.origin.value,
        **range_values("end_pull_n", load.pull),
        "end_pull_how": load.pull.origin.value,
        **range_values("end_bending_mm", load.bending),
        "end_bending_how": load.bending.origin.value if load.bending else None,
        "end_bending_most_mm": float(load.most),
        **range_values("end_stress_n_mm2", load.stress),
        "end_stress_how": load.stress.origin.value if load.stress else None,
        "end_stress_most_n_mm2": load.allowed.value if load.allowed else None,
    }


def load_rows(load: Load) -> list[Line]:
    """For people: the pull of a thread and of all on each bar, how far a bar bends, and what stress it is under."""
    remark = message(Row.PULL_IS, threads=load.threads, tension=load.thread_words)
    return [(message(Row.PULL), about(load.pull, FORCE), remark), _bending(load), *_stress(load)]


def _stress(load: Load) -> list[Line]:
    if load.stress is None:
        return []
    remark = message(Row.STRESS_UNKNOWN)
    if load.allowed is not None:
        remark = message(Row.STRESS_IS, most=say_fixed(load.allowed.value, 0))
    return [(message(Row.STRESS), about(load.stress, STRESS), remark)]


def _bending(load: Load) -> Line:
    if load.bending is None:
        return message(Row.BENDING), message(Row.BENDING_UNKNOWN), load.wanting
    remark = message(Row.BENDING_IS, origin=load.bending.origin, most=say_fixed(load.most, 2))
    return message(Row.BENDING), about(load.bending, THICK), remark
