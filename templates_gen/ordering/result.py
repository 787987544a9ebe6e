"""What became of one row."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

from templates_gen.ordering.order import Problem

State = Literal["made", "unchanged", "readable", "failed"]
"""`unchanged`: made by an earlier run from the same inputs; `readable`: only read, since nothing was to be made."""


class OrderFile(NamedTuple):
    """One proven file of an order: its name, digest, sheets, marks, and largest deviation in mm."""

    file: str
    sha256: str
    sheets: int
    marks: int
    deviation: float


class Amount(NamedTuple):
    """What one box takes of a thing that is bought: kind, name and colour as `layout.box.needs` has them.

    `figure` is by how much it is bought, its `spare` included, in `unit` ("g", "m", "piece"); `likely`, `low` and
    `high` are what is taken without it. `ball_g` is what a ball weighs, where the kit says so. `ordering.amounts` makes
    them of the needs of a plan.
    """

    kind: str
    name: str
    colour: str
    unit: str
    figure: float
    likely: float = 0.0
    low: float = 0.0
    high: float = 0.0
    spare: float = 0.0
    ball_g: float | None = None


@dataclass(frozen=True, slots=True)
class Result:
    """What became of one row: its files where it was made, its problems where it failed.

    `amounts` are those of one box, `ends` the ends of its warp, `notes` what to mind of it. What is of one box has to
    be taken `copies` times.
    """

    line: int
    number: str
    folder: str
    kit: str
    copies: int
    state: State
    files: tuple[OrderFile, ...] = ()
    problems: tuple[Problem, ...] = ()
    notes: tuple[str, ...] = ()
    amounts: tuple[Amount, ...] = ()
    ends: int = 0

    @property
    def sheets(self) -> int:
        """How many sheets are printed for one box: those of its PDF files."""
        return sum(each.sheets for each in self.files if each.file.endswith(".pdf"))
