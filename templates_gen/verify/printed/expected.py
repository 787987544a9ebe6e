"""Where the marks of a frame's ends must be, from the kit's numbers alone.

Nothing here calls the layout's sett, warp or parts: it computes the same things another way, so that a mistake there
cannot hide. At mid-height the ends must stand at (k + 1/2) p - W/2, and each pass is straight, so both its ends have
their middle there. Followed from the first of them, the thread gives every mark: round a bar it goes on where it came,
at notches every turn leads to the next notch, and a peg stands in the middle of the two ends that it turns.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from layout.kit.kit import Kit
from templates_gen.verify.kinds.truth import Marks
from templates_gen.verify.kinds.truths import truth_of

_KITS = 64  # kits whose marks are kept: each is asked for by many proofs


@dataclass(frozen=True, slots=True)
class Expected:
    """Exact positions in mm: contacts in the order of winding, unit lines with their totals, the two limits, and
    the one of them where winding starts. A `wound` warp counts its near contacts from 0, the tie-on.
    """

    near: tuple[Fraction, ...]
    far: tuple[Fraction, ...]
    lines: dict[str, tuple[tuple[Fraction, int], ...]]
    limits: tuple[Fraction, Fraction]
    start: Fraction
    wound: bool

    @property
    def edges(self) -> dict[str, tuple[Fraction, ...]]:
        """From where to where each unit of an end reaches: the limit that it is counted from, then every line."""
        return {end: (self.start, *(at for at, _ in lines)) for end, lines in self.lines.items()}


@lru_cache(_KITS)
def expected(kit: Kit, sett: Fraction, unit: Fraction) -> Expected:
    """The marks of `kit` at `sett` ends per mm (see `sett_is_sound`) and the marking unit in mm."""
    ends = ends_of(kit, sett)
    width = ends / sett
    near, far = _followed(kit, ends, 1 / sett)
    lines = {"near": _lines(near, width, unit), "far": _lines(far, width, unit)}
    turn = 1 if kit.weaving.start == "left" else -1

    def seen(distances: tuple[Fraction, ...]) -> tuple[Fraction, ...]:
        return tuple(turn * (distance - width / 2) for distance in distances)

    placed = {end: tuple((turn * (at - width / 2), total) for at, total in found) for end, found in lines.items()}
    return Expected(seen(near), seen(far), placed, (-width / 2, width / 2), -turn * width / 2, truth_of(kit).winds)


def ends_of(kit: Kit, sett: Fraction) -> int:
    """As many ends as there is room for, what is tied outside the limits with them where that width is free to choose.

    Even where the thread must come back, odd where it must not.
    """
    frame, weaving = kit.frame, kit.weaving
    room = weaving.width.mm if weaving.width else frame.outer_width.mm - 2 * (frame.side_width.mm + frame.margin.mm)
    ends = int(room * sett)
    left_out = True if truth_of(kit).winds else None
    back = {"near end": True, "far end": False, "either end": None, None: left_out}[weaving.tie_off]
    ends = ends if back is None or back == (ends % 2 == 0) else ends - 1
    while weaving.width is None and ends > 0 and 2 * _reach(kit, ends, 1 / sett) > room:
        ends -= 1 if back is None else 2
    return ends


def _reach(kit: Kit, ends: int, pitch: Fraction) -> Fraction:
    """How far from the centre the mark lies that is furthest out: a tie-on or tie-off may lie outside the limits."""
    near, far = _followed(kit, ends, pitch)
    return max(abs(at - ends * pitch / 2) for at in (*near, *far))


def _followed(kit: Kit, ends: int, pitch: Fraction) -> Marks:
    """Distances of all marks from the limit where winding starts."""
    middles = [(k + Fraction(1, 2)) * pitch for k in range(ends)]
    return truth_of(kit).follow(kit.frame.ends, kit, middles, pitch)


def _lines(contacts: tuple[Fraction, ...], width: Fraction, unit: Fraction) -> tuple[tuple[Fraction, int], ...]:
    """Each unit line, counted from the starting limit, with the contacts from the limit up to the line."""
    found, index, outside, at = [], 0, sum(1 for contact in contacts if contact < 0), unit
    while at <= width:
        while index < len(contacts) and contacts[index] < at:
            index += 1
        found.append((at, index - outside))
        at += unit
    return tuple(found)


def sett_is_sound(kit: Kit, sett: Fraction, unit: Fraction) -> bool:
    """Whether `sett` follows from the kit's readings and the unit, or is the one it gives, and fits notches it has."""
    if kit.sett.marking_unit and unit != kit.sett.marking_unit.mm:
        return False
    counts = [Fraction(reading.pairs) / reading.over.mm for reading in kit.sett.readings]
    measured = min(counts) if kit.sett.loosest else max(counts, default=Fraction(0))
    if density := getattr(kit.frame.ends, "density", None):
        allowed = [density.per_mm / 2, density.per_mm, 2 * density.per_mm]
        if kit.sett.given:
            return sett == kit.sett.given.per_mm and sett in allowed
        return sett == max((each for each in allowed if each <= measured), default=None)
    if kit.sett.given:
        return sett == kit.sett.given.per_mm
    if kit.sett.as_measured:
        return sett == measured
    laid = truth_of(kit).laid
    count = sett * unit / laid
    return count.denominator == 1 and count * laid / unit <= measured < (count + 1) * laid / unit
