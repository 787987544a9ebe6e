"""The measured marks of a sheet, in the order in which they stand along a strip, a guide, a grid or a gauge."""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.shapes import Point
from layout.messages.catalogue import Message
from templates_gen.scan.seen import Line


class Mark(NamedTuple):
    """A mark: its `name`, where it lies `at` along its group in mm, and the straight lines that show its place.

    A notch has two lines, of which each shows one side; most marks have one. On the sheet these run so that along the
    group is to their left.
    """

    name: Message
    at: float
    lines: tuple[Line, ...]


class Group(NamedTuple):
    """Marks of a part that stand in one row: at least two.

    `along` is the direction on the sheet, of length 1, in which `at` grows. `title` is the part's, `kind` says what is
    measured of it, where a part has several rows. Of a part in pieces, `joints` are where this piece begins and ends;
    infinite where the part itself does. `crosses` are the crosses of these joints on the sheet, by `at` and place.
    """

    part: str
    title: str
    kind: Message | None
    along: Point
    marks: tuple[Mark, ...]
    joints: tuple[float, float] = (float("-inf"), float("inf"))
    crosses: tuple[tuple[float, Point], ...] = ()

    @property
    def lines(self) -> tuple[Line, ...]:
        """The lines of all marks, in order."""
        return tuple(line for mark in self.marks for line in mark.lines)

    @property
    def length(self) -> float:
        """From the first mark to the last, in mm."""
        return self.marks[-1].at - self.marks[0].at
