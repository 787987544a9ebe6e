"""The way of the thread, pass by pass, from the kit's numbers alone.

Nothing here calls the layout's warps or pictures. Each pass has its middle where its end is wanted, (k + 1/2) p from
the limit where winding starts, and is straight, so that one of its ends gives the other.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from layout.kit.kit import Kit
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import expected


class ExpectedPass(NamedTuple):
    """A pass: how far its middle lies from the limit where winding starts, how much further on its `lean` takes it at
    the far end than at the near one (both mm, the way the winding goes), whether it is on the `face` at the near end,
    `up`, from the near end to the far one, and whether it is on the face at the far end.
    """

    middle: Fraction
    lean: Fraction
    face: bool
    up: bool
    far_face: bool


class NumberedMark(NamedTuple):
    """A mark by its number, and how far it lies from the limit where winding starts, in mm."""

    number: int
    away: Fraction


@dataclass(frozen=True)
class NumberedMarks:
    """The marks of both ends in the order of winding, by how far from the starting limit they lie, and the numbers of
    the first ones.
    """

    near: Sequence[Fraction]
    far: Sequence[Fraction]
    first_near: int

    def at_near(self, one: ExpectedPass) -> NumberedMark:
        """The mark of the near end to which a pass comes."""
        return _closest(self.near, one.middle - one.lean / 2, self.first_near)

    def at_far(self, one: ExpectedPass) -> NumberedMark:
        """The mark of the far end to which it comes."""
        return _closest(self.far, one.middle + one.lean / 2, 1)


def _closest(marks: Sequence[Fraction], at: Fraction, first: int) -> NumberedMark:
    place = bisect_left(marks, at)
    index = min(range(max(0, place - 1), min(len(marks), place + 1)), key=lambda k: abs(marks[k] - at))
    return NumberedMark(index + first, marks[index])


def expected_passes(kit: Kit, sett: Fraction, unit: Fraction) -> tuple[ExpectedPass, ...]:
    """Every pass of `kit` at `sett` ends per mm, in the order of winding."""
    marks = expected(kit, sett, unit)
    ends = round((marks.limits[1] - marks.limits[0]) * sett)
    truth = truth_of(kit)
    leans = truth.leans(kit.frame.ends, kit, 1 / sett, in_pairs=len(marks.near) < ends)
    faces = (truth.faces(kit, k) for k in range(ends))
    return tuple(
        ExpectedPass((k + Fraction(1, 2)) / sett, lean, near, k % 2 == 0, far)
        for k, (lean, (near, far)) in enumerate(zip(leans, faces, strict=False))
    )


def numbered_marks(kit: Kit, sett: Fraction, unit: Fraction) -> NumberedMarks:
    """The marks of both ends of `kit` at `sett` ends per mm."""
    marks = expected(kit, sett, unit)
    near, far = (tuple(_away(at, marks.start) for at in each) for each in (marks.near, marks.far))
    return NumberedMarks(near, far, truth_of(kit).first_near)


def _away(at: Fraction, start: Fraction) -> Fraction:
    """How far a mark lies from the starting limit, the way the winding goes."""
    return at - start if start < 0 else start - at
