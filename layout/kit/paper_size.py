"""The size of the paper to draw for, as a kit says it: by a name, or by its two sides."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.drawing.sheet import PT
from layout.values.units import say_number

POINT = Fraction(127, 360)
"""One PDF unit in mm, exactly (ISO 32000: 1/72 in)."""

PAPERS = {"common": (595, 790), "a4": (595, 842), "letter": (612, 792), "a3": (842, 1191), "11x17": (792, 1224)}
"""Sheets in whole PDF units (1/72 in). `common` prints unscaled on A4 and on Letter."""

OWN = "own"


@dataclass(frozen=True, slots=True)
class PaperSize:
    """The sheet called `name` ("own" if it has none), `width` x `height` in whole PDF units."""

    name: str
    width: int
    height: int

    @property
    def sides_mm(self) -> tuple[float, float]:
        """Its width and its height in mm."""
        return self.width * PT, self.height * PT

    @property
    def words(self) -> str:
        """The size as a kit file has it, exactly."""
        if self.name != OWN:
            return self.name
        width, height = (say_number(side * POINT) for side in (self.width, self.height))
        return f"{width} x {height} mm"


def named_size(name: str) -> PaperSize:
    """The sheet that is called so; KeyError where none is."""
    return PaperSize(name, *PAPERS[name])
