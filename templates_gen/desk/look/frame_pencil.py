"""How lines of measure and their words are drawn: SVG in mm of the frame, with letters of one size on the screen."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape

LETTERS = 12.0
"""How large letters are in px."""

LINE, TICK = 14.0, 4.0
"""From line to line of words, and how far the strokes across both ends of a line reach, in px."""

_TIP, _HALF = 8.0, 2.5  # px: arrow heads


def short(value: float) -> str:
    """A number of a drawing, to a hundredth."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


class Pencil:
    """Draws where a dot of the screen is `px` mm of the frame."""

    def __init__(self, px: float) -> None:
        self.px = px

    def group(self, key: str, parts: Sequence[str]) -> str:
        """One measure, by its field."""
        return f'<g class="dimg" data-dim="{key}">{"".join(parts)}</g>'

    def text(self, words: str, x: float, y: float, anchor: str) -> str:
        """Words that begin, end or have their middle at x, as `anchor` says; their baseline at y."""
        size = short(LETTERS * self.px)
        place = f'x="{short(x)}" y="{short(y)}"'
        return f'<text class="dt" font-size="{size}" {place} text-anchor="{anchor}">{escape(words)}</text>'

    def turned(self, words: str, x: float, y: float) -> str:
        """Upright words that are read from the right."""
        place = f'transform="translate({short(x)} {short(y)})rotate(-90)"'
        size = short(LETTERS * self.px)
        return f'<text class="dt" font-size="{size}" {place} text-anchor="middle">{escape(words)}</text>'

    def stacked(self, lines: Sequence[str], x: float, middle: float, anchor: str) -> Iterator[str]:
        """Lines of words, one under the other, with their middle at that height."""
        first = middle - ((len(lines) - 1) / 2 * LINE - 0.36 * LETTERS) * self.px
        for k, line in enumerate(lines):
            yield self.text(line, x, first + k * LINE * self.px, anchor)

    def line(self, x1: float, y1: float, x2: float, y2: float, *, tips: bool = False) -> str:
        """A line with a short stroke across at both ends, and arrow heads where it is long enough."""
        t = TICK * self.px
        if y1 == y2:
            d = f"M{short(x1)} {short(y1)}H{short(x2)}" + "".join(
                f"M{short(x)} {short(y1 - t)}V{short(y1 + t)}" for x in (x1, x2)
            )
        else:
            d = f"M{short(x1)} {short(y1)}V{short(y2)}" + "".join(
                f"M{short(x1 - t)} {short(y)}H{short(x1 + t)}" for y in (y1, y2)
            )
        line = f'<path class="dim" d="{d}"/>'
        if not tips or abs(x2 - x1) + abs(y2 - y1) < 4 * _TIP * self.px:
            return line
        return f'{line}<path class="tip" d="{self._heads(x1, y1, x2, y2)}"/>'

    def _heads(self, x1: float, y1: float, x2: float, y2: float) -> str:
        a, b = _TIP * self.px, _HALF * self.px
        if y1 == y2:
            heads = f"M{short(x1)} {short(y1)}l{short(a)} {short(-b)}v{short(2 * b)}zM{short(x2)} {short(y2)}"
            heads += f"l{short(-a)} {short(-b)}v{short(2 * b)}z"
        else:
            heads = f"M{short(x1)} {short(y1)}l{short(-b)} {short(a)}h{short(2 * b)}zM{short(x2)} {short(y2)}"
            heads += f"l{short(-b)} {short(-a)}h{short(2 * b)}z"
        return heads
