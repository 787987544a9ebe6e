"""Parts that are nothing but their size, and papers to place them on."""

from __future__ import annotations

from layout.drawing.sheet import Part
from layout.kit.kit import Paper
from layout.kit.paper_size import named_size

PAPERS = [Paper(size=named_size(name)) for name in ("common", "a4", "letter", "a3")]


def card(name: str, length: float, height: float) -> Part:
    """A part that is nothing but its size, its corner off the origin."""
    return Part(name, name, (), (), (-1.0, 2.0, length - 1.0, 2.0 + height))
