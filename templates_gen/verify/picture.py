"""What a winding picture shows, read from its lines, arrows, knots and words; it knows nothing of any kit.

The first two crosses mark the near end, left and right, the third the far end; what lies beyond the second is the view
from the right.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point, Region
from templates_gen.verify.arrows import Arrow, arrows_in
from templates_gen.verify.seen import Seen

_ON = 0.01  # an arrow belongs to a pass when its middle lies so near to it, in mm


class Drawn(NamedTuple):
    """One pass: its x at both ends, the way the winding goes, on which layer, and of each arrow whether it leads up."""

    near: float
    far: float
    face: bool
    arrows: list[bool]

    @property
    def middle(self) -> float:
        """Its x at half height."""
        return (self.near + self.far) / 2

    @property
    def lean(self) -> float:
        """How much further on it is at the far end."""
        return self.far - self.near


@dataclass(frozen=True, slots=True)
class Picture:
    """`passes` in the order of winding; x of all but knots and words is turned so that the winding goes on to +x."""

    toward: int
    near: float
    far: float
    passes: list[Drawn]
    winds_on: list[int]
    knots: list[Point]
    side_arrows: list[tuple[float, bool]]
    words: list[tuple[Point, str]]

    @property
    def near_below(self) -> bool:
        """Whether the near end is the lower one."""
        return self.near < self.far

    @property
    def step(self) -> float:
        """From the first pass to the second."""
        return self.passes[1].middle - self.passes[0].middle if len(self.passes) > 1 else 0.0

    def is_far(self, at: Point) -> bool:
        """Whether a place is nearer to the far end."""
        return abs(at.y - self.far) < abs(at.y - self.near)

    @property
    def left_out(self) -> list[str]:
        """The figures that stand between both frame ends, before the side view."""
        low, high = sorted((self.near, self.far))
        edge = max(abs(x) for one in self.passes for x in (one.near, one.far)) + 1
        return [words for at, words in self.words if words.isdigit() and low < at.y < high and abs(at.x) < edge]

    @property
    def numbers(self) -> list[str]:
        """The figures beyond the far end, in the order of winding."""
        out = 1 if self.near_below else -1
        beyond = [(at.x * self.toward, words) for at, words in self.words if out * (at.y - self.far) > 0]
        return [words for _, words in sorted(beyond) if words.isdigit()]


def picture_of(seen: Seen, toward: int) -> Picture:
    """What one picture shows."""
    left, right, other = seen.part.datum
    shapes = list(seen.shapes())
    arrows = list(arrows_in(shapes))
    solid = [shape.contours[0] for shape in shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    knots = [_middle(contour) for contour in solid if len(contour.steps) != 2]
    lines = [shape for shape in shapes if isinstance(shape, Path) and len(shape.steps) == 1]
    faces = [line for line in lines if line.pen in (Pen.THREAD, Pen.THREAD_BACK)]
    inside = [arrow for arrow in arrows if left.x < arrow[0].x < right.x]
    low, high = sorted((left.y, other.y))
    passes = sorted(
        _passes((line for line in faces if line.start.x < right.x), left.y, other.y, inside, toward),
        key=lambda one: one.middle,
    )
    return Picture(
        toward,
        left.y,
        other.y,
        passes,
        [1 if ahead.x > 0 else -1 for at, ahead in arrows if at.y > high],
        [at for at in knots if left.x < at.x < right.x and low < at.y < high],
        [(at.x, (ahead.y > 0) == (other.y > left.y)) for at, ahead in arrows if at.x > right.x and at.y <= high],
        list(seen.words()),
    )


def _passes(lines: Iterator[Path], near: float, far: float, arrows: list[Arrow], toward: int) -> Iterator[Drawn]:
    """Lines that lead from one end to the other; what a frame end hides of one is gone on with."""
    for path in lines:
        one, other = sorted((path.start, path.steps[0].end), key=lambda at: abs(at.y - near))
        if abs(other.y - one.y) < abs(far - near) / 2:
            continue
        slope = (other.x - one.x) / (other.y - one.y)
        face = path.pen is Pen.THREAD
        at_near = one.x if face else one.x + slope * (near - one.y)
        at_far = other.x if face else one.x + slope * (far - one.y)
        own = [ahead for at, ahead in arrows if abs(one.x + slope * (at.y - one.y) - at.x) < _ON]
        ups = [(ahead.y > 0) == (far > near) for ahead in own if abs(ahead.x - slope * ahead.y) < _ON]
        yield Drawn(toward * at_near, toward * at_far, face, ups)


def _middle(contour: Path) -> Point:
    xs, ys = zip(*contour.points(), strict=True)
    return Point((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)
