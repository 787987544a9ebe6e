"""The bed of a sheet that holds parts of several boxes: all but its margins and one gutter.

The gutter at the left takes the tile, the words, the upright check scale and the code; the margins take crop marks.
"""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.shapes import Box
from layout.kit.kit import Paper
from layout.nesting.bed import Bed

GAP = 2.2
"""Between two parts, in mm: room for a knife (common practice, no source), and for the number of a cut."""

_LEFT, _RIGHT, _UP = 24.0, 12.2, 17.0


class RunBed(NamedTuple):
    """Where parts may lie on a sheet of `paper`, in mm from its lower left corner."""

    paper: Paper
    left: float
    bottom: float
    right: float
    top: float

    @property
    def width(self) -> float:
        """Across, in mm."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Up, in mm."""
        return self.top - self.bottom

    @property
    def area(self) -> float:
        """What parts may cover, in mm2."""
        return self.width * self.height

    @property
    def sheet(self) -> Box:
        """The whole sheet."""
        return 0.0, 0.0, self.paper.width, self.paper.height

    @property
    def for_nesting(self) -> Bed:
        """The bed as the engine that places parts takes it: they may touch its edges."""
        return Bed(self.width, self.height, GAP, 0.0)


def run_bed(paper: Paper) -> RunBed:
    """The bed of a sheet of `paper`: 173.7 x 244.7 mm on the common one, and larger only as far as the paper is."""
    return RunBed(paper, _LEFT, _UP, paper.width - _RIGHT, paper.height - _UP)
