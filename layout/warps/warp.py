"""The warp on a wound frame: how many winds, and where each one crosses both frame ends.

Formulas: a wind lays two ends, so the winding pitch P is twice the pitch p. Seen along the winding, with s the share of
the slant taken on the face pass, the contacts lie at

    near  A_j = -W/2 + f (1/2 - s) P/2 + j P   j = 0..n   (0 the tie-on, n the tie-off; f +1 face first, -1 back first)
    far   C_j = A_j + q P                      j = 0..n-1 (q = s face first, 1 - s back first)

so that at mid-height face and back ends alternate at one even pitch.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor
from typing import Literal

from layout.errors import FieldError
from layout.frames.frame import Frame
from layout.kit.kit import Weaving
from layout.setting.sett import SettTaken
from layout.units import Length, say_length

End = Literal["near", "far"]

MOST_MARKS = 5000
"""More marks than this on one strip are refused."""


@dataclass(frozen=True, slots=True)
class Warp:
    """A warp wound round both frame ends; exact lengths in mm, x from the centre of the weaving, left negative.

    `near` and `far` list the winding marks in the order of winding: `near[0]` is the tie-on and `near[-1]` the tie-off.
    `toward` is +1 where the winding goes on to the right and -1 to the left.
    """

    sett: SettTaken
    winds: int
    near: tuple[Fraction, ...]
    far: tuple[Fraction, ...]
    toward: int
    notes: tuple[str, ...]

    @property
    def ends(self) -> int:
        """Two to a wind."""
        return 2 * self.winds

    @property
    def pitch(self) -> Fraction:
        """From one end to the next, in mm."""
        return 1 / self.sett.per_mm

    @property
    def winding_pitch(self) -> Fraction:
        """From one wind to the next on a frame end, in mm."""
        return 2 * self.pitch

    @property
    def width(self) -> Fraction:
        """From limit to limit, in mm."""
        return self.winds * self.winding_pitch

    def unit_lines(self, end: End) -> list[tuple[Fraction, int]]:
        """Every marking-unit line past the starting limit, with how many marks of `end` lie between the two.

        Half-open: a mark on a line is the first of the next unit, so that a unit never counts one too many.
        """
        unit, pitch, start = self.sett.unit.mm, self.winding_pitch, -self.width / 2
        lead = self.toward * (self.near if end == "near" else self.far)[0] - start
        distances = [k * unit for k in range(1, floor(self.width / unit) + 1)]
        outside = ceil(-lead / pitch)
        return [(self.toward * (start + d), ceil((d - lead) / pitch) - outside) for d in distances]


def wind(sett: SettTaken, frame: Frame, weaving: Weaving) -> Warp:
    """The warp that fits the frame or the width asked for, in whole winds.

    Raises FieldError where not one wind fits, or more than `MOST_MARKS` marks would be needed.
    """
    room = weaving.width or frame.widest_weaving
    pitch = 2 / sett.per_mm
    winds = floor(room.mm / pitch)
    if winds < 1:
        one = say_length(Length(pitch, room.unit))
        raise FieldError(
            "weaving.width", f"room for one wind, {one} at this sett", say_length(room), _more(pitch, room)
        )
    if winds + 1 > MOST_MARKS:
        widest = say_length(Length((MOST_MARKS - 1) * pitch, room.unit))
        raise FieldError("weaving.width", f"at most {MOST_MARKS:,} marks a strip", f"{winds + 1:,}", widest)
    near, far = _contacts(winds, pitch, weaving)
    return Warp(sett, winds, near, far, 1 if weaving.start == "left" else -1, _notes(room, weaving, winds * pitch))


def _more(pitch: Fraction, room: Length) -> str:
    return say_length(Length(10 * pitch, room.unit))


def _contacts(winds: int, pitch: Fraction, weaving: Weaving) -> tuple[tuple[Fraction, ...], tuple[Fraction, ...]]:
    share = Fraction(1, 2) if weaving.slant == "shared" else Fraction(0)
    face_first = weaving.first_pass == "face"
    lead = (Fraction(1, 2) - share) * pitch / 2 * (1 if face_first else -1)
    over = share if face_first else 1 - share
    toward = 1 if weaving.start == "left" else -1
    first = -winds * pitch / 2 + lead
    near = tuple(toward * (first + j * pitch) for j in range(winds + 1))
    far = tuple(toward * (first + (j + over) * pitch) for j in range(winds))
    return near, far


def _notes(room: Length, weaving: Weaving, width: Fraction) -> tuple[str, ...]:
    notes = []
    if spare := room.mm - width:
        taken, whole, less = (say_length(Length(mm, room.unit)) for mm in (width, room.mm, spare))
        asked = "were asked for" if weaving.width else "fit between the margins"
        notes.append(f"The weaving is {taken} wide, in whole winds; {whole} {asked}, {less} more.")
    if weaving.slant == "face straight":
        outside = "tie-off" if weaving.first_pass == "face" else "tie-on"
        notes.append(f"The ends on the face stand straight; the {outside} lies half a pitch outside the limit.")
    return tuple(notes)
