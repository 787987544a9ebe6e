"""The two sizes of the winding picture. All lengths are mm on the paper."""

from __future__ import annotations

from dataclasses import dataclass

Box = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Scale:
    """`step` mm a pitch, so many passes `shown` before and after a `gap`; `reach` from outermost line to outermost line.

    `inner` is the width between the sides, each `side` wide and `past` longer than the frame ends, which are `bar` high.
    Words stand in rows of `row`; the side view takes `beside`.
    """

    step: float
    shown: int
    gap: float
    reach: float
    inner: float
    side: float
    bar: float
    past: float
    row: float
    apart: float
    beside: float
    legend_rows: int

    @property
    def outer(self) -> float:
        """The width of the whole frame."""
        return self.inner + 2 * self.side

    @property
    def box(self) -> Box:
        """Left, bottom, right, top of the whole picture."""
        rows = self.past + 2 * self.row
        return (
            -self.outer / 2 - 2.0,
            -rows - 1.5 - self.legend_rows * self.row,
            self.outer / 2 + self.apart + self.beside,
            self.reach + rows + 6.0,
        )


FULL = Scale(4.0, 8, 24.0, 96.0, 104.0, 9.0, 11.0, 3.0, 4.2, 12.0, 38.0, 1)
LOW = Scale(3.5, 4, 16.0, 36.0, 50.0, 4.0, 6.0, 1.2, 3.4, 5.0, 24.0, 2)
