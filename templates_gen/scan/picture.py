"""A picture of a bed, as all that follows sees it."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy
from numpy.typing import NDArray

Grey = NDArray[numpy.uint8]
"""Rows of pixels from above, 0 black to 255 white."""

Numbers = NDArray[numpy.floating]
Flags = NDArray[numpy.bool_]

MM = 25.4


@dataclass(frozen=True, eq=False)
class Picture:
    """One page of a scan. `dpi` is across and down, None where it is not known; `page` counts from 1.

    `remarks` are sentences on what is odd about its resolution. `asked` says that somebody gave the resolution.
    """

    grey: Grey
    dpi: tuple[float, float] | None
    page: int = 1
    remarks: tuple[str, ...] = field(default=())
    asked: bool = False

    def seen_by(self, x: float, y: float) -> Picture:
        """The same picture of a scanner that shows one millimetre as `x` across and `y` down its bed."""
        dpi = self.dpi and (self.dpi[0] * x, self.dpi[1] * y)
        return Picture(self.grey, dpi, self.page, self.remarks, self.asked)
