"""Where the marks of a wound frame must be, from the kit's numbers alone.

Nothing here calls the layout's sett, warp or parts: it reckons the same things another way, so that a mistake there
cannot hide. At mid-height the ends must stand at (k + 1/2) p - W/2, and each pass is straight, so every two contacts
that follow each other have their middle there; the slant of the first pass fixes the first contact.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.kit.kit import Kit


@dataclass(frozen=True, slots=True)
class Expected:
    """Exact positions in mm: contacts in the order of winding, unit lines with their totals, the two limits, and
    the one of them where winding starts.
    """

    near: tuple[Fraction, ...]
    far: tuple[Fraction, ...]
    lines: dict[str, tuple[tuple[Fraction, int], ...]]
    limits: tuple[Fraction, Fraction]
    start: Fraction

    @property
    def edges(self) -> dict[str, tuple[Fraction, ...]]:
        """From where to where each unit of an end reaches: the limit that it is counted from, then every line."""
        return {end: (self.start, *(at for at, _ in lines)) for end, lines in self.lines.items()}


def expected(kit: Kit, sett: Fraction, unit: Fraction) -> Expected:
    """The marks of `kit` at `sett` ends per mm (see `sett_is_sound`) and the marking unit in mm."""
    frame, weaving = kit.frame, kit.weaving
    room = weaving.width.mm if weaving.width else frame.outer_width.mm - 2 * (frame.side_width.mm + frame.margin.mm)
    ends = 2 * int(room * sett / 2)
    width = ends / sett
    face_slant = Fraction(1, 2) if weaving.slant == "shared" else Fraction(0)
    first_slant = (face_slant if weaving.first_pass == "face" else 1 - face_slant) * 2 / sett
    middles = [(k + Fraction(1, 2)) / sett for k in range(ends)]
    contacts = [middles[0] - first_slant / 2]
    for middle in middles:
        contacts.append(2 * middle - contacts[-1])
    near, far = tuple(contacts[0::2]), tuple(contacts[1::2])
    lines = {"near": _lines(near, width, unit), "far": _lines(far, width, unit)}
    turn = 1 if weaving.start == "left" else -1

    def seen(distances: tuple[Fraction, ...]) -> tuple[Fraction, ...]:
        return tuple(turn * (distance - width / 2) for distance in distances)

    placed = {end: tuple((turn * (at - width / 2), total) for at, total in found) for end, found in lines.items()}
    return Expected(seen(near), seen(far), placed, (-width / 2, width / 2), -turn * width / 2)


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
    """Whether `sett` follows from the kit's readings and the unit, or is the one it gives."""
    if kit.sett.given:
        return sett == kit.sett.given.per_mm
    counts = [Fraction(reading.pairs) / reading.over.mm for reading in kit.sett.readings]
    measured = min(counts) if kit.sett.loosest else max(counts)
    if kit.sett.as_measured:
        return sett == measured
    winds = sett * unit / 2
    return winds.denominator == 1 and winds * 2 / unit <= measured < (winds + 1) * 2 / unit
