"""The two sizes of the winding picture. All lengths are mm on the paper."""

from __future__ import annotations

from dataclasses import dataclass

from layout.drawing.shapes import Box


@dataclass(frozen=True, slots=True)
class Scale:
    """How large everything is drawn.

    A pitch is one of `steps` wide (wound, or on the face alone); so many passes are `shown` before and after a `gap`,
    whose break lines stand `inset` within it, past the most that a pass leans out (half a pitch). `reach` is the height
    from outermost line to outermost line, `inner` the width between the sides, each `side` wide and `past` longer than
    the frame ends, which are `bar` high. Words stand in rows of `row`. The side view lies `apart` from the frame and
    takes `beside`.
    """

    steps: tuple[float, float]
    shown: int
    gap: float
    inset: float
    reach: float
    inner: float
    side: float
    bar: float
    past: float
    row: float
    apart: float
    beside: float
    legend_rows: int

    def step(self, kind: str) -> float:
        """The width of a pitch."""
        return self.steps[kind != "wound"]

    @property
    def outer(self) -> float:
        """The width of the whole frame."""
        return self.inner + 2 * self.side

    @property
    def box(self) -> Box:
        """Left, bottom, right, top of the whole picture."""
        rows = self.past + 2 * self.row
        left, right = -self.outer / 2 - 2.0, self.outer / 2 + self.apart + self.beside
        return left, -rows - 1.5 - self.legend_rows * self.row, right, self.reach + rows + 6.0


FULL = Scale(
    steps=(4.0, 4.5),
    shown=8,
    gap=24.0,
    inset=2.5,
    reach=96.0,
    inner=104.0,
    side=9.0,
    bar=11.0,
    past=3.0,
    row=4.2,
    apart=10.0,
    beside=40.0,
    legend_rows=1,
)
LOW = Scale(
    steps=(3.5, 3.5),
    shown=4,
    gap=18.0,
    inset=2.25,
    reach=36.0,
    inner=54.0,
    side=3.0,
    bar=6.0,
    past=1.2,
    row=3.4,
    apart=3.0,
    beside=24.0,
    legend_rows=2,
)
