"""The frame that carries a warp: its two ends and its size."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from layout.frames.kinds.frame_end import FrameEnd
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class Frame:
    """`outer_width` runs along the frame ends, `outer_height` from end to end.

    `side_width` is the width of each side piece and `side_thickness` what it is from face to back, None where the kit
    does not say; `margin` is kept free between a side and the weaving.
    An `end_width` is that of a board across the frame's height, if it is known. A frame whose height can be adjusted is
    wound at `outer_height`, its lowest, and then tightened until it is up to `travel` higher.
    """

    ends: FrameEnd
    outer_width: Length
    outer_height: Length
    side_width: Length
    margin: Length
    end_width: Length | None = None
    side_thickness: Length | None = None
    travel: Length | None = None

    @property
    def widest_weaving(self) -> Length:
        """What is left between the sides less both margins; may be zero or negative on a frame that cannot be."""
        mm = self.outer_width.mm - 2 * self.side_width.mm - 2 * self.margin.mm
        return Length(mm, self.outer_width.unit)

    @property
    def sides_deep_mm(self) -> Fraction:
        """How thick the side pieces are; where the kit does not say, as thick as the frame ends."""
        return self.side_thickness.mm if self.side_thickness else self.ends.deep_mm

    @property
    def tightened(self) -> Frame:
        """The frame as it stands while it is woven on: at its greatest height, with no travel left."""
        if self.travel is None:
            return self
        high = Length(self.outer_height.mm + self.travel.mm, self.outer_height.unit)
        return replace(self, outer_height=high, travel=None)
