"""Which marks of both strips belong to each end of the warp, and the sentence that says so."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from layout.messages.catalogue import Catalogue, Role
from layout.parts.strip import numbered_marks
from layout.plan import Plan
from layout.warps.warp import End, Layer
from templates_gen.messages.roles.desk_numbers import Mark, Pointed

_SAID: Mapping[str, Role] = {
    "wound": Pointed.WOUND,
    "rod": Pointed.ROD,
    "notched": Pointed.NOTCHED,
    "pegged": Pointed.PEGGED,
    "nailed": Pointed.NAILED,
}
"""By how the frame ends carry the warp; others have marks."""

_SIDES: Mapping[tuple[Layer, Layer], Role] = {
    ("face", "face"): Mark.ON_FACE,
    ("back", "back"): Mark.BEHIND,
    ("face", "back"): Mark.FACE_TO_BACK,
    ("back", "face"): Mark.BACK_TO_FACE,
}
"""By the layers at the near and at the far end."""


class EndMarks(NamedTuple):
    """The places of the marks of one end of the warp, from 0 in the order of winding, on the near and far strip."""

    near: int
    far: int


def marks_of(plan: Plan) -> tuple[EndMarks, ...]:
    """The marks of every end, in the order of winding: those that it lies at, or whose pegs or nails it touches."""
    warp = plan.warp
    near = _nearest(warp.near, [each.near for each in warp.passes])
    far = _nearest(warp.far, [each.far for each in warp.passes])
    return tuple(map(EndMarks, near, far))


def _nearest(marks: Sequence[Fraction], places: Iterable[Fraction]) -> list[int]:
    """For each place the mark that lies nearest; marks go from left to right, or from right to left."""
    sign = -1 if marks[-1] < marks[0] else 1
    along = [sign * float(mark) for mark in marks]
    between = [(one + other) / 2 for one, other in pairwise(along)]
    return [bisect_left(between, sign * float(place)) for place in places]


def labels(plan: Plan, end: End, words: Catalogue) -> tuple[str, ...]:
    """What is printed at every mark of a strip, in the order of winding: its number, and where the thread is tied."""
    numbers = [number for number, _ in numbered_marks(plan, end)]
    said = list(map(str, numbers))
    if plan.warp.kind == "rod":
        return tuple(said)
    if (end == "far") == bool(plan.warp.ends % 2):
        said[-1] = words.say(Mark.TIE_OFF, number=numbers[-1])
    if end == "near":
        said[0] = words.say(Mark.TIE_ON, number=numbers[0])
    return tuple(said)


def sentences(plan: Plan, words: Catalogue) -> tuple[str, ...]:
    """For every end, in the order of winding, what it is and at which marks it lies."""
    warp = plan.warp
    role = _SAID.get(warp.kind, Pointed.MARKED)
    near, far = labels(plan, "near", words), labels(plan, "far", words)
    sides = {layers: words.say(role) for layers, role in _SIDES.items()}
    found = []
    for k, (one, at) in enumerate(zip(warp.passes, marks_of(plan), strict=True)):
        values: dict[str, object] = {"end": k + 1, "ends": warp.ends, "near": near[at.near], "far": far[at.far]}
        if role is Pointed.WOUND:
            values |= {"side": sides[one.layer_at("near"), one.layer_at("far")], "wind": k // 2 + 1}
        found.append(words.say(role, **values))
    return tuple(found)
