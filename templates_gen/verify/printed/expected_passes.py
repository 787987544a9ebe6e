"""The way of the thread, pass by pass, from the kit's numbers alone.

Nothing here calls the layout's warps or pictures. Each pass has its middle where its end is wanted, (k + 1/2) p from
the limit where winding starts, and is straight, so that one of its ends gives the other.
"""

from __future__ import annotations

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
