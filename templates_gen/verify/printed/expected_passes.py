"""The way of the thread, pass by pass, from the kit's numbers alone.

Nothing here calls the layout's warps or pictures. Each pass has its middle where its end is wanted, (k + 1/2) p from
the limit where winding starts, and is straight, so that one of its ends gives the other.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.kit.kit import Kit
from templates_gen.verify.printed.expected import expected
from templates_gen.verify.printed.pegs import end_thickness


class ExpectedPass(NamedTuple):
    """A pass: how far its middle lies from the limit where winding starts, how much further on its `lean` takes it at
    the far end than at the near one (both mm, the way the winding goes), whether it runs on the `face`, and `up`, from
    the near end to the far one.
    """

    middle: Fraction
    lean: Fraction
    face: bool
    up: bool


def expected_passes(kit: Kit, sett: Fraction, unit: Fraction) -> tuple[ExpectedPass, ...]:
    """Every pass of `kit` at `sett` ends per mm, in the order of winding."""
    marks = expected(kit, sett, unit)
    ends = round((marks.limits[1] - marks.limits[0]) * sett)
    leans = _LEANS[kit.frame.ends.kind](kit, 1 / sett, len(marks.near) < ends)
    face = kit.frame.ends.kind != "wound" or kit.weaving.first_pass == "face"
    turns = kit.frame.ends.kind == "wound"
    return tuple(
        ExpectedPass((k + Fraction(1, 2)) / sett, lean, face != (turns and k % 2 == 1), k % 2 == 0)
        for k, lean in zip(range(ends), leans, strict=False)
    )


def _round_bars(kit: Kit, pitch: Fraction, _: bool) -> Iterator[Fraction]:
    """A wind leads two pitches on; the face takes half of that or none, the back the rest, and down means backward."""
    of_face = pitch if kit.weaving.slant == "shared" else Fraction(0)
    slants = (of_face, 2 * pitch - of_face)
    first, second = slants if kit.weaving.first_pass == "face" else slants[::-1]
    while True:
        yield first
        yield -second


def _through_notches(_: Kit, pitch: Fraction, in_pairs: bool) -> Iterator[Fraction]:
    """Upright, but where two ends share a notch: then every second one leads from one notch to the next."""
    while True:
        yield Fraction(0)
        yield 2 * pitch if in_pairs else Fraction(0)


def _round_pegs(kit: Kit, pitch: Fraction, _: bool) -> Iterator[Fraction]:
    """From a peg to the next, a pitch on at the other end: between the sides that face each other each end's middle
    line lies half a peg and half a thread beside the centres.
    """
    lean = pitch - getattr(kit.frame.ends, "peg_diameter").mm - Fraction(end_thickness(kit) or 0)  # noqa: B009
    while True:
        yield lean
        yield -lean


_LEANS = {"wound": _round_bars, "notched": _through_notches, "pegged": _round_pegs}
