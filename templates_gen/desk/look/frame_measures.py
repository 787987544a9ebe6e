"""The measures of a frame in its drawing: lines, and how long they are, in letters of one size on the screen.

Places are in mm of the frame, y down; `px` is a dot of the screen in mm at the size that the drawing is made for.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from html import escape

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.messages.catalogue import Catalogue, Role
from layout.values.numerals import say_number
from layout.values.units import Length, in_unit, mm_in, say_length
from templates_gen.desk.look.frame_places import Places
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.desk_numbers import Dimension

LETTERS = 12.0
"""How large letters are in px."""

ROW = 14.0
"""So far from the frame in px is a line of measure."""

_LINE, _TICK, _TIP, _HALF, _GAP = 14.0, 4.0, 8.0, 2.5, 6.0  # px: line spacing; ends; arrow heads; between words
_EDGE = 2.0  # px: words keep so far from the edge of the drawing


def other_unit(length: Length, words: Catalogue) -> str:
    """A metric length in inches, any other in cm, or in mm where it is small."""
    if not length.imperial:
        return in_unit(say_number(length.mm / mm_in("in"), 2), "in", words)
    unit = "mm" if length.mm < 100 else "cm"
    return in_unit(say_number(length.mm / mm_in(unit), 1), unit, words)


def short(value: float) -> str:
    """A number of a drawing, to a hundredth."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


class Measures:
    """What is written round a frame; `margins` are left and right of it, in px."""

    def __init__(self, at: Places, px: float, margins: tuple[float, float], words: Catalogue, unit: str) -> None:
        self.at, self.px, self.margins, self.words, self.unit = at, px, margins, words, unit

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
        said = self._text(self._both(length), at.width / 2, y + (LETTERS + 3) * px, "middle")
        return self._group("frame.outer_width", [self._line(0, y, at.width, y, tips=True), said])

    def _outer_height(self, length: Length) -> str:
        at, px, x = self.at, self.px, -ROW * self.px
        line = self._line(x, 0, x, at.height, tips=True)
        both = self._both(length)
        if self.long(both) <= at.height / px:
            said = [self._turned(both, x - 6 * px, at.height / 2)]
        else:
            said = list(self._stacked(self._two(length), x - _TICK * 2 * px, at.height / 2, "end"))
        return self._group("frame.outer_height", [line, *said])

    def _above(self, side: Length) -> Iterator[str]:
        """How wide a side piece is, and how wide the weaving; higher up where they would meet."""
        at, px, y = self.at, self.px, -ROW * self.px
        two = self._two(side)
        wide = max(map(self.long, two)) * px
        right = max(at.side, wide - (self.margins[0] - _EDGE) * px)
        said = [self._text(line, right, y - (5 + _LINE * k) * px, "end") for k, line in enumerate(reversed(two))]
        yield self._group("frame.side_width", [self._line(0, y, at.side, y), *said])
        left, _, end, _ = at.piece()
        words = self._weave(at.plan.kit.weaving.width or self._own(at.plan.warp.width))
        meets = at.width / 2 - self.long(words) * px / 2 < right + _GAP * px
        up = 5 + (2 * _LINE if meets else 0)
        width = self._text(words, at.width / 2, y - up * px, "middle")
        yield self._group("weaving.width", [self._line(left, y, end, y), width])

    def _beside(self) -> Iterator[str]:
        """To the right: how high the weaving is, and how deep the near end, or where its pegs and nails stand."""
        at, px = self.at, self.px
        x = at.width + ROW * px
        deep = list(self._of_ends())
        taken = 0.0
        for key, depth, length in deep:
            two, y = self._two(length), at.y("near", (depth[0] + depth[1]) / 2)
            out = 1 if at.near_low else -1
            middle = y + out * max(0.0, taken - 0) if taken else y
            said = self._stacked(two, x + _GAP * px, middle, "start")
            yield self._group(key, [self._line(x, at.y("near", depth[0]), x, at.y("near", depth[1])), *said])
            taken += 2 * _LINE * px
        _, top, _, bottom = at.piece()
        asked = at.plan.kit.weaving.height or self._own(Fraction(at.plan.amounts.woven_mm[1].value))
        words = self._weave(asked)
        line = self._line(x, top, x, bottom)
        if self.long(words) <= (bottom - top) / px:
            said_high = [self._turned(words, x + (LETTERS + 4) * px, (top + bottom) / 2)]
        else:
            out = -1 if at.near_low else 1
            middle = (top + bottom) / 2
            if deep:
                middle = at.height / 2 + out * 2 * _LINE * px
            said_high = list(self._stacked(self._two(asked), x + _GAP * px, middle, "start"))
        yield self._group("weaving.height", [line, *said_high])

    def _of_ends(self) -> Iterator[tuple[str, tuple[float, float], Length]]:
        """What is seen of a frame end from its face: its field, between which depths, and how long that is."""
        ends, frame = self.at.ends, self.at.plan.kit.frame
        if isinstance(ends, RoundBar):
            yield "frame.bar_diameter", (0.0, self.at.wide), ends.diameter
        if isinstance(ends, PeggedEnd):
            outer, rows = float(ends.edge_distance.mm), float(ends.row_distance.mm)
            yield "frame.row_distance", (outer, outer + rows), ends.row_distance
        if isinstance(ends, PeggedEnd | NailEnd):
            yield "frame.edge_distance", (0.0, float(ends.edge_distance.mm)), ends.edge_distance
        elif frame.end_width is not None and not isinstance(ends, RoundBar):
            yield "frame.end_width", (0.0, float(frame.end_width.mm)), frame.end_width

    def _below(self) -> Iterator[str]:
        """What cannot be seen from the face, or is too small for a line of measure, line by line."""
        y = self.at.height + (ROW + 2 * LETTERS + 8) * self.px
        for k, (key, role, length) in enumerate(self._unseen()):
            words = self.words.say(role, length=self._both(length))
            if self.long(words) > self.at.width / self.px + 2 * min(self.margins):
                words = self.words.say(role, length=self._typed(length))
            yield self._group(key, [self._text(words, self.at.width / 2, y + k * _LINE * self.px, "middle")])

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

    def _group(self, key: str, parts: Sequence[str]) -> str:
        return f'<g class="dimg" data-dim="{key}">{"".join(parts)}</g>'

    def _text(self, words: str, x: float, y: float, anchor: str) -> str:
        size = short(LETTERS * self.px)
        place = f'x="{short(x)}" y="{short(y)}"'
        return f'<text class="dt" font-size="{size}" {place} text-anchor="{anchor}">{escape(words)}</text>'

    def _turned(self, words: str, x: float, y: float) -> str:
        """Upright words that are read from the right."""
        place = f'transform="translate({short(x)} {short(y)})rotate(-90)"'
        size = short(LETTERS * self.px)
        return f'<text class="dt" font-size="{size}" {place} text-anchor="middle">{escape(words)}</text>'

    def _stacked(self, lines: Sequence[str], x: float, middle: float, anchor: str) -> Iterator[str]:
        first = middle - ((len(lines) - 1) / 2 * _LINE - 0.36 * LETTERS) * self.px
        for k, line in enumerate(lines):
            yield self._text(line, x, first + k * _LINE * self.px, anchor)

    def _line(self, x1: float, y1: float, x2: float, y2: float, *, tips: bool = False) -> str:
        """A line with a short stroke across at both ends, and arrow heads where it is long enough."""
        px, t = self.px, _TICK * self.px
        if y1 == y2:
            d = f"M{short(x1)} {short(y1)}H{short(x2)}" + "".join(
                f"M{short(x)} {short(y1 - t)}V{short(y1 + t)}" for x in (x1, x2)
            )
        else:
            d = f"M{short(x1)} {short(y1)}V{short(y2)}" + "".join(
                f"M{short(x1 - t)} {short(y)}H{short(x1 + t)}" for y in (y1, y2)
            )
        line = f'<path class="dim" d="{d}"/>'
        if not tips or abs(x2 - x1) + abs(y2 - y1) < 4 * _TIP * px:
            return line
        a, b = _TIP * px, _HALF * px
        if y1 == y2:
            heads = f"M{short(x1)} {short(y1)}l{short(a)} {short(-b)}v{short(2 * b)}zM{short(x2)} {short(y2)}"
            heads += f"l{short(-a)} {short(-b)}v{short(2 * b)}z"
        else:
            heads = f"M{short(x1)} {short(y1)}l{short(-b)} {short(a)}h{short(2 * b)}zM{short(x2)} {short(y2)}"
            heads += f"l{short(-b)} {short(-a)}h{short(2 * b)}z"
        return line + f'<path class="tip" d="{heads}"/>'
