"""The measures of the print font, handed to the layout as a value: the layout itself opens no file."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from layout.drawing.pens import Face, Pen


@dataclass(frozen=True, slots=True, eq=False)
class FontMetrics:
    """Widths and heights of the print font in fractions of the em; it is the same only as itself.

    `advances` maps each character that the font carries to its advance width, and `strong` the same characters in
    semibold letters; `cap` is the height of a capital, `ascent` and `descent` (negative) bound the tall and the deep
    letters, of both.
    """

    advances: Mapping[str, float]
    cap: float
    ascent: float
    descent: float
    strong: Mapping[str, float]

    def width(self, words: str, size: float, pen: Pen = Pen.TEXT) -> float:
        """The width in mm of `words` set at `size` mm to the em in the letters of `pen`."""
        advances = self.advances if pen.ink.face is Face.REGULAR else self.strong
        return size * sum(map(advances.__getitem__, words))

    def missing(self, words: str) -> str:
        """The characters of `words` that the font does not carry, each once, in order."""
        return "".join(dict.fromkeys(letter for letter in words if letter not in self.advances))
