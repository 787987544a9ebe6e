"""A warp between nails that stand in a single row on the face of each frame end: every nail turns two ends.

The marks are those of pegs, in one row. With D the thickness of nail and thread together and R from row to row, a pass
is sqrt(R^2 + p^2 - D^2) long and leans by atan2(p, R) - asin(D / hypot(p, R)); where D = p all ends stand upright.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction
from math import floor

from layout.frames.frame import Frame
from layout.frames.kinds.nails import NailEnd
from layout.kit.kit import Weaving
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Spacing, WarpNeed, WarpNote
from layout.sett.sett import SettTaken
from layout.values.errors import FieldError
from layout.values.limits import plain
from layout.values.quantity import Quantity
from layout.values.units import Length, exact_length, say_length
from layout.warps.layout_result import LayoutResult, looser
from layout.warps.serpentine import BetweenPegs, courses_between, laid_between
from layout.warps.warp import Warp
from layout.warps.way import Course, Way

_THINNEST = Fraction(1, 2)  # mm: thinner nails are refused
_PERIOD = 2  # there and back: the next two passes lie as these do


class NailedEnds(Way[NailEnd]):
    """There and back between nails."""

    spacing = (Spacing.NAILS, Spacing.NAILS_ARE)

    def lay(
        self, count: int, sett: SettTaken, ends: NailEnd, weaving: Weaving, thread: Fraction | None
    ) -> LayoutResult:
        """Nails and passes."""
        return nailed(count, 1 / sett.per_mm, ends, thread or Fraction(0))

    def thread(self, ends: NailEnd, frame: Frame, warp: Warp, thread: Quantity) -> tuple[Quantity, Quantity]:
        """Between nails, round half a nail at every turn."""
        rows = frame.outer_height.mm - 2 * ends.edge_distance.mm
        across = float(ends.nail_diameter.mm) + thread.value
        between = BetweenPegs(warp, rows, ends.nail_diameter.mm)
        if across > between.widest:
            raise _too_thick(warp, across, thread)
        said = ENGLISH.say(Reason.ROUND_NAILS)
        return between.two_ends(_PERIOD, said, thread), between.whole(thread).explained(said)

    def courses(self, ends: NailEnd, frame: Frame, warp: Warp) -> Iterator[Course]:
        """Of the first pass up and the first pass down."""
        across = float(ends.nail_diameter.mm + (warp.thickness or 0))
        return courses_between(frame, warp, across, lambda _: ends.edge_distance.mm, _PERIOD)


def nailed(ends: int, pitch: Fraction, frame_end: NailEnd, thread: Fraction = Fraction(0)) -> LayoutResult:
    """Nails and passes of `ends` ends at `pitch` mm, as wound from left to right; `thread` mm thick.

    Raises FieldError where nails are thicker than the pitch: the ends beside them would be pressed apart.
    """
    nail = frame_end.nail_diameter.mm
    if nail > pitch:
        raise FieldError(
            "frame.nail_diameter", _need(pitch), say_length(frame_end.nail_diameter), _thinner(nail, pitch)
        )
    warnings = []
    if nail + thread > pitch:
        warnings.append(ENGLISH.say(WarpNote.NAIL_AND_THREAD_WIDE, both=plain(nail + thread), pitch=plain(pitch)))
    laid = laid_between(ends, pitch, (nail + thread) / 2)
    return laid._replace(notes=(ENGLISH.say(WarpNote.NAILED),), warnings=tuple(warnings))


def _need(pitch: Fraction) -> Message:
    return Message(WarpNeed.NAILS_THICK, {"pitch": say_length(Length(pitch))})


def _thinner(nail: Fraction, pitch: Fraction) -> Message | str:
    """The line of a thinner nail, or of a sett that is loose enough where no nail would do."""
    if pitch < _THINNEST:
        return looser(nail)
    return f'nail_diameter = "{exact_length(Length(max(pitch / 2, _THINNEST)))}"'


def _too_thick(warp: Warp, across: float, thread: Quantity) -> FieldError:
    """The refusal of nails and thread that do not fit between each other."""
    room = float(2 * warp.pitch) - thread.value
    thinner = f'nail_diameter = "{plain(floor(room * 100) / 100)} mm"'
    instead = thinner if room >= _THINNEST else looser(Fraction(math.ceil(across * 100), 200))
    need = Message(WarpNeed.NAIL_AND_THREAD, {"most": plain(2 * warp.pitch)})
    return FieldError("frame.nail_diameter", need, f"{plain(round(across, 3))} mm", instead)
