"""A piece of a drawing that is cut both ways: what it shows, where it is trimmed, and the crosses that join it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from layout.drawing.shapes import Point
from layout.drawing.sheet import Part


@dataclass(frozen=True, slots=True)
class Pane:
    """A window of a drawing in the drawing's own coordinates, in mm, overlaps included.

    `trimmed` edges ("left", "bottom") are cut and laid over a neighbour; `crosses` stand on the joints, the same in
    both neighbours; `label` names the piece and is empty for a whole drawing.
    """

    left: float
    bottom: float
    right: float
    top: float
    trimmed: tuple[str, ...] = ()
    crosses: tuple[Point, ...] = ()
    label: str = ""

    @property
    def width(self) -> float:
        """From left to right, in mm."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """From bottom to top, in mm."""
        return self.top - self.bottom


@dataclass(frozen=True, slots=True)
class Paned:
    """A drawing that can be had in panes: `draw` makes any of them, `whole` is all of it.

    `snap` moves a joint at (x, y) to where its cross stands clear of the lines, `clear` an edge to where none lies on
    it: whether a line shows there would hang on the last digit of a float.
    """

    whole: Pane
    draw: Callable[[Pane], Part]
    snap: Callable[[Point], Point]
    clear: Callable[[Point], Point]
