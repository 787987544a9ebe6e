"""Where the marks of a frame's ends must be, from the kit's numbers alone.

Nothing here calls the layout's sett, warp or parts: it reckons the same things another way, so that a mistake there
cannot hide. At mid-height the ends must stand at (k + 1/2) p - W/2, and each pass is straight, so both its ends have
their middle there. Followed from the first of them, the thread gives every mark: round a bar it goes on where it came,
at notches every turn leads to the next notch, and a peg stands in the middle of the two ends that it turns.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from layout.kit.kit import Kit


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


def expected(kit: Kit, sett: Fraction, unit: Fraction) -> Expected:
    """The marks of `kit` at `sett` ends per mm (see `sett_is_sound`) and the marking unit in mm."""
    ends = ends_of(kit, sett)
    width = ends / sett
    near, far = _FOLLOWED[kit.frame.ends.kind](kit, [(k + Fraction(1, 2)) / sett for k in range(ends)], 1 / sett)
    lines = {"near": _lines(near, width, unit), "far": _lines(far, width, unit)}
    turn = 1 if kit.weaving.start == "left" else -1

    def seen(distances: tuple[Fraction, ...]) -> tuple[Fraction, ...]:
        return tuple(turn * (distance - width / 2) for distance in distances)

    placed = {end: tuple((turn * (at - width / 2), total) for at, total in found) for end, found in lines.items()}
    return Expected(
        seen(near), seen(far), placed, (-width / 2, width / 2), -turn * width / 2, kit.frame.ends.kind == "wound"
    )


def ends_of(kit: Kit, sett: Fraction) -> int:
    """As many ends as there is room for, what is tied outside the limits with them where that width is free to choose.

    Even where the thread must come back, odd where it must not.
    """
    frame, weaving = kit.frame, kit.weaving
    room = weaving.width.mm if weaving.width else frame.outer_width.mm - 2 * (frame.side_width.mm + frame.margin.mm)
    ends = int(room * sett)
    left_out = True if frame.ends.kind == "wound" else None
    back = {"near end": True, "far end": False, "either end": None, None: left_out}[weaving.tie_off]
    ends = ends if back is None or back == (ends % 2 == 0) else ends - 1
    while weaving.width is None and ends > 0 and 2 * _reach(kit, ends, 1 / sett) > room:
        ends -= 1 if back is None else 2
    return ends


def _reach(kit: Kit, ends: int, pitch: Fraction) -> Fraction:
    """How far from the centre the mark lies that is furthest out: a tie-on or tie-off may lie outside the limits."""
    near, far = _FOLLOWED[kit.frame.ends.kind](kit, [(k + Fraction(1, 2)) * pitch for k in range(ends)], pitch)
    return max(abs(at - ends * pitch / 2) for at in (*near, *far))


Marks = tuple[tuple[Fraction, ...], tuple[Fraction, ...]]


def _round_bars(kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
    """Distances of the contacts from the limit where winding starts; the slant of the first pass fixes the first."""
    face_slant = Fraction(1, 2) if kit.weaving.slant == "shared" else Fraction(0)
    first_slant = (face_slant if kit.weaving.first_pass == "face" else 1 - face_slant) * 2 * pitch
    contacts = [middles[0] - first_slant / 2]
    for middle in middles:
        contacts.append(2 * middle - contacts[-1])
    return tuple(contacts[0::2]), tuple(contacts[1::2])


def _through_notches(kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
    """The first pass stands upright; every turn round a tooth leads on to the next notch that is used."""
    density = getattr(kit.frame.ends, "density", None)
    apart = max(pitch, 1 / density.per_mm) if density else pitch
    visits: list[Fraction] = []
    here = middles[0]
    for middle in middles:
        there = 2 * middle - here
        visits += [here, there]
        here = there + apart
    near, far = visits[0::4] + visits[3::4], visits[1::4] + visits[2::4]
    return tuple(sorted(set(near))), tuple(sorted(set(far)))


def _round_pegs(_: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
    """A peg stands between the two ends it turns, the far ones after the first end; the outer two as far outside."""
    between = [middles[0] - pitch / 2, *((a + b) / 2 for a, b in pairwise(middles)), middles[-1] + pitch / 2]
    return tuple(between[0::2]), tuple(between[1::2])


_FOLLOWED = {"wound": _round_bars, "notched": _through_notches, "pegged": _round_pegs}


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
    laid = 1 if kit.frame.ends.kind == "notched" else 2  # a wind lays two ends, a peg turns two
    count = sett * unit / laid
    return count.denominator == 1 and count * laid / unit <= measured < (count + 1) * laid / unit
