"""What is seen of one printed sheet on a scan. Lengths are mm of the sheet, y up, from its lower left corner."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.correction import Scale
from layout.drawing.shapes import Point
from layout.messages.catalogue import Catalogue
from layout.values.errors import LayoutError


class Line(NamedTuple):
    """A straight mark as it is drawn: from `start` to `end`, `width` mm wide. Its place is that of its middle."""

    start: Point
    end: Point
    width: float


class Label(NamedTuple):
    """What the code of a sheet says: digest of its file, its number of how many, and its targets' rectangle in mm."""

    digest: str
    number: int
    total: int
    rectangle: tuple[float, float]


class SeenTarget(NamedTuple):
    """A target's place on the sheet, and where it was found after the sheet's own scale is taken out."""

    place: Point
    found: Point


class SeenLine(NamedTuple):
    """How far a mark is off its place, across itself (to the left of its direction positive), and the 95 % of that, in
    mm, after the sheet's own scale is taken out. None where it was not found.

    `within` is of this mark beside its neighbours; `placed` is the 95 % of how far all marks there may be off together,
    since targets that are a little off carry all marks with them.
    """

    line: Line
    off: float | None
    within: float | None
    placed: float = 0.0


class OnBed(NamedTuple):
    """Where a sheet lies on the bed, in mm, y up: its lower left corner at `origin`, and to where a mm across leads
    from there, and a mm up."""

    origin: Point
    across: Point
    up: Point

    def at(self, place: Point) -> Point:
        """Where a place of the sheet lies."""
        (left, low), across, up = self
        return Point(left + place.x * across.x + place.y * up.x, low + place.x * across.y + place.y * up.y)


@dataclass(frozen=True)
class Seen:
    """A sheet on a scan. `scale` is what comes out of one millimetre, as the scanner sees it; `within` its 95 %.

    Without a resolution that is known, `scale` keeps only the ratio of x to y and the skew (`dpi` is None, and x * y is
    1). `uneven` is the size in mm of what no scale explains. `on_bed` is where the sheet lies on its page of the scan.
    """

    label: Label
    scale: Scale
    within: Scale
    ratio_within: float
    targets: tuple[SeenTarget, ...]
    lines: tuple[SeenLine, ...]
    uneven: float
    dpi: float | None
    turn: float
    on_bed: OnBed | None = None


class ScanError(LayoutError):
    """A scan that gives no number that can be trusted; its text says why in one sentence, without the file's name."""

    @staticmethod
    def _english() -> Catalogue:
        from templates_gen.messages.english import ENGLISH  # not needed before something is refused

        return ENGLISH


Lines = Sequence[Line]
"""The marks of a sheet, in the order in which they are reported."""
