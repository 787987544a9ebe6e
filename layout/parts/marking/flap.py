"""The words on the flap of a strip: in one row, in places of their own, as many as find room."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal, NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.typeset import SMALL

ARROW = 2.0
"""Length of the arrow head of a phrase, in mm."""

_ARROW_GAP, _GAP, _BESIDE, _OFF_CENTRE, _OFF_EDGE, _OFF_JOINT = 0.9, 4.0, 1.4, 0.9, 2.0, 0.9
Stand = Literal["left", "right", "centre", "anywhere"]
Span = tuple[float, float]


class Phrase(NamedTuple):
    """`words` that stand at one end of the strip, beside its centre, or anywhere; `arrow` is -1 left, 1 right, 0 none.

    One that may stand anywhere keeps `between` two x if these are given. Of two that say the same `thing` the later
    one takes the place of the other.
    """

    thing: str
    words: str
    stand: Stand = "anywhere"
    pen: Pen = Pen.TEXT
    arrow: int = 0
    between: Span | None = None

    def width(self, metrics: FontMetrics) -> float:
        """The room it takes, arrow head and all."""
        return metrics.width(self.words, SMALL, self.pen) + (ARROW + _ARROW_GAP if self.arrow else 0.0)

    @property
    def words_from(self) -> float:
        """How far behind its start its words begin: an arrow to the left stands before them."""
        return ARROW + _ARROW_GAP if self.arrow < 0 else 0.0


class Placed(NamedTuple):
    """A phrase and the x at which it starts."""

    start: float
    phrase: Phrase


def set_in_row(
    wishes: Sequence[Sequence[Phrase]], ends: Span, joints: Sequence[float], metrics: FontMetrics
) -> list[Placed]:
    """Wish by wish what finds room between both `ends`, off the centre and the `joints`; never half a wish."""
    walls = [(joint - _OFF_JOINT, joint + _OFF_JOINT) for joint in joints]
    chosen: dict[str, Phrase] = {}
    placed: list[Placed] = []
    for wish in wishes:
        tried = chosen | {phrase.thing: phrase for phrase in wish}
        row = _Row(ends, walls, metrics)
        if row.takes(tried.values()):
            chosen, placed = tried, row.placed()
    return placed


class _Row:
    """A row that is being filled."""

    def __init__(self, ends: Span, walls: Sequence[Span], metrics: FontMetrics) -> None:
        self.left, self.right, self.metrics = ends[0] + _OFF_EDGE, ends[1] - _OFF_EDGE, metrics
        self.walls = list(walls)
        self.taken: list[Span] = [(-_OFF_CENTRE, _OFF_CENTRE)]
        self.fixed: list[Placed] = []
        self.loose: dict[Span, list[Phrase]] = {}

    def takes(self, phrases: Iterable[Phrase]) -> bool:
        """Whether all of `phrases` found room, those with a place of their own first."""
        ordered = sorted(phrases, key=lambda phrase: phrase.stand == "anywhere")
        return all(self._spread(each) if each.stand == "anywhere" else self._fix(each) for each in ordered)

    def placed(self) -> list[Placed]:
        """Every phrase; those between two others spread evenly."""
        found = list(self.fixed)
        for gap, phrases in self.loose.items():
            space = _GAP + self._slack(gap, phrases) / (len(phrases) + 1)
            x = gap[0] + space
            for phrase in phrases:
                found.append(Placed(x, phrase))
                x += phrase.width(self.metrics) + space
        return found

    def _fix(self, phrase: Phrase) -> bool:
        width = phrase.width(self.metrics)
        starts = {"left": (self.left,), "right": (self.right - width,), "centre": (_BESIDE, -_BESIDE - width)}
        for start in starts[phrase.stand]:
            others = [*self.walls, *(self.taken[1:] if phrase.stand == "centre" else self.taken)]
            clear = all(start + width <= low or high <= start for low, high in others)
            if clear and self.left <= start and start + width <= self.right:
                self.fixed.append(Placed(start, phrase))
                self.taken.append((start, start + width))
                return True
        return False

    def _spread(self, phrase: Phrase) -> bool:
        """Into the gap with most room."""
        low, high = phrase.between or (self.left, self.right)
        gaps = [gap for gap in self._gaps() if low < (gap[0] + gap[1]) / 2 < high]
        if not gaps:
            return False
        slacks = {gap: self._slack(gap, [*self.loose.get(gap, []), phrase]) for gap in gaps}
        gap = max(slacks, key=lambda each: slacks[each])
        self.loose.setdefault(gap, []).append(phrase)
        return slacks[gap] >= 0

    def _gaps(self) -> list[Span]:
        edges = sorted([*self.taken, *self.walls])
        lows, highs = [self.left - _GAP], []
        for low, high in edges:
            highs.append(low)
            lows.append(max(high, lows[-1]))
        return list(zip(lows, [*highs, self.right + _GAP], strict=True))

    def _slack(self, gap: Span, phrases: Sequence[Phrase]) -> float:
        widths = sum(phrase.width(self.metrics) for phrase in phrases)
        return gap[1] - gap[0] - widths - _GAP * (len(phrases) + 1)
