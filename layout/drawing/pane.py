"""A piece of a drawing that is cut both ways: what it shows, where it is trimmed, and the crosses that join it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.shapes import Box, Point
from layout.drawing.sheet import Part


@dataclass(frozen=True, slots=True)
class Pane:
    """A window of a drawing in the drawing's own coordinates, in mm, overlaps included.

    `trimmed` edges ("left", "bottom") are cut and laid over a neighbour; from `under_right` on, and from `under_top`
    up, it lies under another piece, where there is one. `crosses` stand on the joints, the same in both neighbours.
    """

    left: float
    bottom: float
    right: float
    top: float
    trimmed: tuple[str, ...] = ()
    crosses: tuple[Point, ...] = ()
    under_right: float | None = None
    under_top: float | None = None

    @property
    def width(self) -> float:
        """From left to right, in mm."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """From bottom to top, in mm."""
        return self.top - self.bottom


class OnSheet(NamedTuple):
    """How a pane stands on a sheet: which of `across` x `up` pieces it is, and whether it is `turned` to the left.

    What is said of the drawing stands beside the piece where it `says` so.
    """

    number: int = 1
    across: int = 1
    up: int = 1
    turned: bool = False
    says: bool = False

    @property
    def total(self) -> int:
        """How many pieces there are."""
        return self.across * self.up


@dataclass(frozen=True, slots=True)
class Paned:
    """A drawing that can be had in panes: `draw` makes any of them, alone or as it stands on a sheet; `whole` is all.

    `box` is the box of such a part. `snap` moves a joint at (x, y) to where its cross stands clear of the lines,
    `clear` an edge to where none lies on it: whether a line shows there would hang on the last digit of a float. Joints
    keep off the `middle`. `words` are what the first sheet says, with all that is said beside it or without.
    """

    whole: Pane
    middle: Point
    draw: Callable[[Pane, OnSheet | None], Part]
    box: Callable[[Pane, OnSheet], Box]
    snap: Callable[[Point], Point]
    clear: Callable[[Point], Point]
    words: Callable[[Part, OnSheet], Part]
