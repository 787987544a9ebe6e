"""The measures of the print font, handed to the layout as a value: the layout itself opens no file."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class FontMetrics:
    """Widths and heights of one font in fractions of the em.

    `advances` maps each character that the font carries to its advance width; `cap` is the height of a capital,
    `ascent` and `descent` (negative) bound the tall and the deep letters.
    """

    advances: Mapping[str, float]
    cap: float
    ascent: float
    descent: float

    def width(self, words: str, size: float) -> float:
        """The width in mm of `words` set at `size` mm to the em."""
        return size * sum(map(self.advances.__getitem__, words))

    def missing(self, words: str) -> str:
        """The characters of `words` that the font does not carry, each once, in order."""
        return "".join(dict.fromkeys(letter for letter in words if letter not in self.advances))
