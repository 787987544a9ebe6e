"""What the plan says about the pull of the warp on the frame ends, as rows for people and as plain values."""

from __future__ import annotations

from layout.frames.load import Load
from layout.values.forces import NEWTONS
from layout.values.numerals import say_fixed


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
    both = f"{say_fixed(newtons, 1)} N, {say_fixed(newtons / float(NEWTONS['lb']), 1)} lb"
    pull = ("Pull on each end", both, f"{load.threads} threads of {load.tension_words} each")
    if load.bending is None:
        return [pull, ("Bending", "not known", load.wanting)]
    how = (
        f"the middle of an end, {load.bending.origin.value}; at most {say_fixed(load.most, 2)} mm is good (span / 500)"
    )
    bent = load.bending.value
    return [pull, ("Bending", f"{say_fixed(bent, 2)} mm, {say_fixed(bent / 25.4, 3)} in", how)]
