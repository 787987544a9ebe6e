"""What a cut part shows on its sheet, in the coordinates it was thought in: x along the weaving, whatever the grain."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from layout.cutting.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point, Step
from templates_gen.verify import LIMIT
from templates_gen.verify.compare import Findings
from templates_gen.verify.seen import Seen

_UPRIGHT = 1e-4  # mm that both ends of an upright line may differ in x


@dataclass(frozen=True, slots=True)
class CutSeen:
    """One part of a file for a cutter. `grain` is the axis of the part that has to lie along the stock's grain."""

    seen: Seen
    stock: Stock
    grain: str

    @property
    def turned(self) -> bool:
        """Whether the part lies a quarter turn round, so that its grain runs as the stock's."""
        return self.stock.grain not in ("none", self.grain)

    def beside(self, axis: str) -> float:
        """How far beside an edge its line is drawn along the part's own axis: half of that way's kerf, or nothing."""
        across = (axis == "x") != self.turned
        kerf = self.stock.kerf_x if across else self.stock.kerf_y
        return kerf / 2 if self.stock.kerf_drawn else 0.0

    def paths(self, pen: Pen) -> list[Path]:
        """Every path of a pen, in the part's own coordinates."""
        return [self._own(shape) for shape in self.seen.shapes() if isinstance(shape, Path) and shape.pen is pen]

    @property
    def outline(self) -> Path:
        """The widest of what is cut through."""
        return max(self.paths(Pen.THROUGH), key=lambda path: max(xs(path)) - min(xs(path)))

    def _own(self, path: Path) -> Path:
        def own(point: Point) -> Point:
            return Point(point.y, -point.x) if self.turned else point

        steps = tuple(Step(own(end), through and own(through)) for end, through in path.steps)
        return path._replace(start=own(path.start), steps=steps)


def xs(path: Path) -> list[float]:
    """The x of every point of a path."""
    return [point.x for point in path.points()]


def ys(path: Path) -> list[float]:
    """The y of every point of a path."""
    return [point.y for point in path.points()]


def uprights(paths: Sequence[Path]) -> list[float]:
    """The x of every straight side that stands upright, from left to right."""
    return sorted(start.x for path in paths for start, end in _straight(path) if abs(start.x - end.x) < _UPRIGHT)


def _straight(path: Path) -> Iterator[tuple[Point, Point]]:
    start = path.start
    for end, through in path.steps:
        if through is None:
            yield start, end
        start = end
    if path.closed and abs(start.x - path.start.x) + abs(start.y - path.start.y) > LIMIT:
        yield start, path.start


def matched(what: str, wanted: Sequence[float], found: Sequence[float]) -> Findings:
    """Whether as many were found as wanted, and none further off than the limit."""
    if len(wanted) != len(found):
        return Findings(0.0, (f"{len(found)} {what}s where kit and stock ask for {len(wanted)}",))
    off = max((abs(one - other) for one, other in zip(sorted(wanted), sorted(found), strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (f"a {what} is {off * 1000:.1f} micrometres off",))
