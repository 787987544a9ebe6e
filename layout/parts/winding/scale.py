"""The two sizes of the winding picture. All lengths are mm on the paper."""

from __future__ import annotations

from dataclasses import dataclass, replace


@dataclass(frozen=True, slots=True)
class Scale:
    """How large everything is drawn.

    From one pass to the next lie `steps` (where two passes share a mark, where each has its own); so many passes are
    `shown` before and after a `gap`, likewise. `reach` is the height from outermost line to outermost line, `inner` the
    width between the sides, each `side` wide and `past` longer than the frame ends, which are `bar` high. Knots lie
    `inset` inside an end. The middle of the view from the right is `aside` from the middle of the frame, and what
    stands beside that again begins at `beside`. Rings have a radius of `ring`, and all lies between `left` and `right`.
    With `knots` their pictures are drawn, and shed stick and heading rows. What is to do is listed from `list_from` on,
    where it has no room over the picture.
    """

    steps: tuple[float, float]
    shown: tuple[int, int]
    gap: float
    reach: float
    inner: float
    side: float
    bar: float
    past: float
    inset: float
    aside: float
    beside: float
    ring: float
    right: float
    knots: bool = True
    list_from: float | None = None

    @property
    def outer(self) -> float:
        """The width of the whole frame."""
        return self.inner + 2 * self.side

    @property
    def left(self) -> float:
        """Where the picture begins: at the left side of the frame."""
        return -self.outer / 2


FULL = Scale(
    steps=(4.5, 6.5),
    shown=(6, 4),
    gap=14.0,
    reach=102.0,
    inner=88.0,
    side=9.0,
    bar=11.0,
    past=5.0,
    inset=3.4,
    aside=70.0,
    beside=83.8,
    ring=3.2,
    right=113.0,
)
LOW = Scale(
    steps=(3.0, 5.0),
    shown=(4, 2),
    gap=12.0,
    reach=40.0,
    inner=54.0,
    side=3.0,
    bar=6.8,
    past=4.6,
    inset=2.2,
    aside=46.0,
    beside=62.0,
    ring=2.4,
    right=62.0,
    knots=False,
)
LOWEST = replace(LOW, reach=28.0)
WIDE = replace(LOW, right=136.0, list_from=65.0)
WIDE_LOWEST = replace(LOWEST, right=136.0)
"""On small paper: upright, and lower than that; across, with a list beside, and lower than that without."""
