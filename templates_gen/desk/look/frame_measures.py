"""The measures of a frame in its drawing: lines, and how long they are, in letters of one size on the screen.

Places are in mm of the frame, y down; `px` is a dot of the screen in mm at the size that the drawing is made for.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.messages.catalogue import Catalogue, Role
from layout.values.numerals import say_number
from layout.values.units import Length, in_unit, mm_in, say_length
from templates_gen.desk.look.frame_pencil import LETTERS, LINE, TICK, Pencil
from templates_gen.desk.look.frame_places import Places
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.desk_numbers import Dimension

WIDE, HIGH = 330.0, 382.0
"""The size in px that the drawing is made for; in another it is as much larger or smaller, letters too."""

ROW = 14.0
"""So far from the frame in px is a line of measure."""

_GAP = 6.0  # px: between words
_EDGE = 2.0  # px: words keep so far from the edge of the drawing


def other_unit(length: Length, words: Catalogue) -> str:
    """A metric length in inches, any other in cm, or in mm where it is small."""
    if not length.imperial:
        return in_unit(say_number(length.mm / mm_in("in"), 2), "in", words)
    unit = "mm" if length.mm < 100 else "cm"
    return in_unit(say_number(length.mm / mm_in(unit), 1), unit, words)


class Margins(NamedTuple):
    """What is kept free round the frame for its measures, in px."""

    left: float
    above: float
    right: float
    below: float


_LEFT, _ABOVE, _HIGHER, _BELOW = 38.0, 50.0, 78.0, 38.0  # px


def measures_of(at: Places, words: Catalogue, unit: str) -> Measures:
    """The measures of a frame that is drawn as large as they allow."""
    tried = [Measures(at, words, unit, low=low, apart=apart) for low in (False, True) for apart in (False, True)]
    return next((each for each in tried if each.fits), tried[-1])


class Measures:
    """What is written round a frame.

    Beside a `low` one its height is written across; two measures above it are in rows `apart` where they would meet.
    """

    def __init__(self, at: Places, words: Catalogue, unit: str, *, low: bool, apart: bool) -> None:
        self.at, self.words, self.unit, self._low, self._apart = at, words, unit, low, apart
        beside = [self._height_length(), *(length for _, _, length in self._of_ends())]
        left = ROW + 2 * TICK + self._widest(at.plan.kit.frame.outer_height) + _EDGE if low else _LEFT
        right = ROW + _GAP + max(map(self._widest, beside)) + _EDGE
        self.margins = Margins(left, _HIGHER if apart else _ABOVE, right, _BELOW + LINE * len(list(self._unseen())))
        across, up = WIDE - left - right, HIGH - self.margins.above - self.margins.below
        self.px = max(at.width / across, at.height / up)
        self.draw = Pencil(self.px)

    @property
    def fits(self) -> bool:
        """Whether this is how they have to be written."""
        return self._is_low() == self._low and self._meets() == self._apart

    def _is_low(self) -> bool:
        return self.long(self._both(self.at.plan.kit.frame.outer_height)) > self.at.height / self.px

    def _widest(self, length: Length) -> float:
        return max(map(self.long, self._two(length)))

    def drawn(self) -> Iterator[str]:
        """A group for each measure, named by its field."""
        frame = self.at.plan.kit.frame
        yield self._outer_width(frame.outer_width)
        yield self._outer_height(frame.outer_height)
        yield from self._above(frame.side_width)
        yield from self._beside()
        yield from self._below()

    def _outer_width(self, length: Length) -> str:
        at, px = self.at, self.px
        y = at.height + ROW * px
        said = self.draw.text(self._both(length), at.width / 2, y + (LETTERS + 3) * px, "middle")
        return self.draw.group("frame.outer_width", [self.draw.line(0, y, at.width, y, tips=True), said])

    def _outer_height(self, length: Length) -> str:
        at, px, x = self.at, self.px, -ROW * self.px
        line = self.draw.line(x, 0, x, at.height, tips=True)
        if self._low:
            said = list(self.draw.stacked(self._two(length), x - TICK * 2 * px, at.height / 2, "end"))
        else:
            said = [self.draw.turned(self._both(length), x - 6 * px, at.height / 2)]
        return self.draw.group("frame.outer_height", [line, *said])

    def _above(self, side: Length) -> Iterator[str]:
        """How wide a side piece is, and how wide the weaving; higher up where they would meet."""
        at, px, y = self.at, self.px, -ROW * self.px
        two, right = self._two(side), self._side_ends()
        said = [self.draw.text(line, right, y - (5 + LINE * k) * px, "end") for k, line in enumerate(reversed(two))]
        yield self.draw.group("frame.side_width", [self.draw.line(0, y, at.side, y), *said])
        left, _, end, _ = at.piece()
        words, up = self._width_words(), 5 + (2 * LINE if self._apart else 0)
        width = self.draw.text(words, at.width / 2, y - up * px, "middle")
        yield self.draw.group("weaving.width", [self.draw.line(left, y, end, y), width])

    def _width_words(self) -> str:
        return self._weave(self.at.plan.kit.weaving.width or self._own(self.at.plan.warp.width))

    def _side_ends(self) -> float:
        """Where the words on a side piece end: over it, but not left of the drawing."""
        return max(
            self.at.side, (self._widest(self.at.plan.kit.frame.side_width) - self.margins.left + _EDGE) * self.px
        )

    def _meets(self) -> bool:
        """Whether the words on the width of the weaving and those on a side piece would meet on one row."""
        half = self.long(self._width_words()) * self.px / 2
        return self.at.width / 2 - half < self._side_ends() + _GAP * self.px

    def _beside(self) -> Iterator[str]:
        """To the right: how deep the near end is, or where its pegs and nails stand; and how high the weaving is."""
        at, px, x = self.at, self.px, self.at.width + ROW * self.px
        inward = -math.inf
        for key, depth, length in self._of_ends():
            inward = max(sum(depth) / 2, inward + 2 * LINE * px)
            said = self.draw.stacked(self._two(length), x + _GAP * px, at.y("near", inward), "start")
            line = self.draw.line(x, at.y("near", depth[0]), x, at.y("near", depth[1]))
            yield self.draw.group(key, [line, *said])
        yield self._height(x, inward)

    def _height(self, x: float, inward: float) -> str:
        """Upright beside its line, or in two rows where that is short; further inward than what is said of the end."""
        at, px = self.at, self.px
        _, top, _, bottom = at.piece()
        asked = self._height_length()
        words, line = self._weave(asked), self.draw.line(x, top, x, bottom)
        half, middle = self.long(words) * px / 2, abs(at.y("near", 0.0) - (top + bottom) / 2)
        if 2 * half <= bottom - top and middle - half >= inward + LINE * px:
            upright = self.draw.turned(words, x + (LETTERS + 4) * px, (top + bottom) / 2)
            return self.draw.group("weaving.height", [line, upright])
        at_y = at.y("near", max(middle, inward + 2 * LINE * px))
        return self.draw.group(
            "weaving.height", [line, *self.draw.stacked(self._two(asked), x + _GAP * px, at_y, "start")]
        )

    def _height_length(self) -> Length:
        return self.at.plan.kit.weaving.height or self._own(Fraction(self.at.plan.amounts.woven_mm[1].value))

    def _of_ends(self) -> Iterator[tuple[str, tuple[float, float], Length]]:
        """What is seen of a frame end from its face: its field, between which depths, and how long that is."""
        ends, frame = self.at.ends, self.at.plan.kit.frame
        if isinstance(ends, RoundBar):
            yield "frame.bar_diameter", (0.0, self.at.wide), ends.diameter
        if isinstance(ends, PeggedEnd | NailEnd):
            yield "frame.edge_distance", (0.0, float(ends.edge_distance.mm)), ends.edge_distance
        if isinstance(ends, PeggedEnd):
            outer, rows = float(ends.edge_distance.mm), float(ends.row_distance.mm)
            yield "frame.row_distance", (outer, outer + rows), ends.row_distance
        elif not isinstance(ends, NailEnd) and frame.end_width is not None and not isinstance(ends, RoundBar):
            yield "frame.end_width", (0.0, float(frame.end_width.mm)), frame.end_width

    def _below(self) -> Iterator[str]:
        """What cannot be seen from the face, or is too small for a line of measure, line by line."""
        y = self.at.height + (ROW + 2 * LETTERS + 8) * self.px
        for k, (key, role, length) in enumerate(self._unseen()):
            words = self.words.say(role, length=self._both(length))
            if self.long(words) > self.at.width / self.px + 2 * min(self.margins.left, self.margins.right):
                words = self.words.say(role, length=self._typed(length))
            yield self.draw.group(key, [self.draw.text(words, self.at.width / 2, y + k * LINE * self.px, "middle")])

    def _unseen(self) -> Iterator[tuple[str, Role, Length]]:
        ends = self.at.ends
        if isinstance(ends, FlatEnd | NotchedEnd | PeggedEnd | NailEnd):
            yield "frame.thickness", Dimension.THICK, ends.thickness
        if isinstance(ends, NotchedEnd):
            yield "frame.notch_width", Dimension.NOTCH, ends.notch_width
        if isinstance(ends, PeggedEnd):
            yield "frame.peg_diameter", Dimension.PEG, ends.peg_diameter
        if isinstance(ends, NailEnd):
            yield "frame.nail_diameter", Dimension.NAIL, ends.nail_diameter

    def long(self, words: str) -> float:
        """How long words are, in px."""
        return metrics().width(words, LETTERS)

    def _typed(self, length: Length) -> str:
        return say_length(length, self.words)

    def _two(self, length: Length) -> tuple[str, str]:
        return self._typed(length), other_unit(length, self.words)

    def _both(self, length: Length) -> str:
        first, second = self._two(length)
        return self.words.say(Dimension.BOTH, first=first, second=second)

    def _weave(self, length: Length) -> str:
        return self.words.say(Dimension.WEAVE, length=self._both(length))

    def _own(self, mm: Fraction) -> Length:
        """A length that nobody typed, in the unit of the page."""
        unit, places = ("in", 2) if self.unit == "in" else ("cm", 1)
        return Length(round(mm / mm_in(unit), places) * mm_in(unit), unit)
