"""How many columns and rows cartoon paper has, where their lines lie, and when there is none for a kit.

Columns stand where the ends truly lie: the k-th from the left is (k + 1/2) p - W/2, give or take p/2, in a weaving of
width W at the pitch p. A bead is what shows of the weft up one end: two picks (a tapestry teacher).
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.estimate.height import bead_of, height_asked
from layout.messages.roles import Grid as Said
from layout.messages.roles import SheetNeed
from layout.plan import Plan
from layout.values.quantity import Origin
from layout.values.units import Length, say_length, say_number

LEAST_CELL = Fraction(6, 10)
"""Our own limit in mm: closer lines run together in print."""

LEAST_SIDE = 10
"""Our own limit in mm."""

MOST_SHEETS_LARGE = 24
"""Our own limit: a weaving larger than so many whole sheets is no longer pieced together from them."""


@dataclass(frozen=True, slots=True)
class Grid:
    """How many columns and rows, and how wide and high each is, in mm, exactly; `mirrored` counts from the right."""

    columns: int
    rows: int
    pitch: Fraction
    bead: Fraction
    mirrored: bool = False

    @property
    def width(self) -> Fraction:
        """From limit to limit, in mm."""
        return self.columns * self.pitch

    @property
    def height(self) -> Fraction:
        """From the bottom limit to the top one, in mm."""
        return self.rows * self.bead

    def column_line(self, number: int) -> float:
        """The x after so many columns, counted from the left, or from the right."""
        x = (2 * number - self.columns) * self.pitch.numerator / (2 * self.pitch.denominator)
        return -x if self.mirrored else x

    def row_line(self, number: int) -> float:
        """The y after so many rows, counted from the bottom."""
        return number * self.bead.numerator / self.bead.denominator


def grid_of(plan: Plan) -> Grid | None:
    """The grid of a plan, in whole rows; None where its picks are not known."""
    picks, warp = plan.amounts.picks_per_cm, plan.warp
    if not picks:
        return None
    bead, mirrored = bead_of(plan.kit.amounts.weft, picks), plan.kit.weaving.cartoon == "mirrored"
    return Grid(int(warp.width / warp.pitch), plan.amounts.woven_rows or 0, warp.pitch, bead, mirrored)


def left_out(plan: Plan) -> str:
    """Why a plan has no grid, in the words of its sheets; empty if it has one."""
    say, grid, paper = plan.words.say, grid_of(plan), plan.kit.paper
    if grid is None:
        return say(SheetNeed.GRID_NO_PICKS)
    finest = min(grid.pitch, grid.bead)
    if finest < LEAST_CELL:
        return say(SheetNeed.GRID_TOO_FINE, apart=say_number(finest), least=say_number(LEAST_CELL))
    if min(grid.width, grid.height) < LEAST_SIDE:
        size = {"width": say_number(grid.width, 1), "height": say_number(grid.height, 1)}
        return say(SheetNeed.GRID_TOO_SMALL, **size, least=LEAST_SIDE)
    if float(grid.width * grid.height) > MOST_SHEETS_LARGE * paper.width * paper.height:
        size = {"width": say_number(grid.width, 0), "height": say_number(grid.height, 0)}
        return say(SheetNeed.GRID_TOO_LARGE, **size, most=MOST_SHEETS_LARGE)
    return ""


def remarks_for(plan: Plan, grid: Grid) -> tuple[str, ...]:
    """How many columns and rows there are, how large they are, and what is left of the height asked for."""
    say, unit = plan.words.say, "in" if plan.warp.sett.unit.imperial else "mm"
    asked = plan.kit.weaving.height or Length(height_asked(plan.kit, plan.amounts.weavable_height_mm), unit)
    wide, high = (say_length(Length(cell, unit), plan.words) for cell in (grid.pitch, grid.bead))
    columns = Said.COLUMNS_MIRRORED if grid.mirrored else Said.COLUMNS
    said = [
        say(columns, columns=grid.columns, wide=wide),
        say(Said.ROWS, rows=grid.rows, picks=2 * grid.rows, high=high),
    ]
    if less := _readable(asked.mm - grid.height, imperial=asked.imperial):
        said.append(say(Said.LESS, less=say_length(less, plan.words)))
    return tuple(said)


def _readable(mm: Fraction, *, imperial: bool) -> Length | None:
    """A length as a rule shows it, in sixteenths of an inch or tenths of a millimetre; None where that is nothing."""
    step, unit = (Fraction(127, 80), "in") if imperial else (Fraction(1, 10), "mm")
    return Length(round(mm / step) * step, unit) if round(mm / step) else None


def notes_for(plan: Plan, grid: Grid) -> tuple[str, ...]:
    """From which side it is woven, and whether its picks are a guess."""
    weaving = plan.kit.weaving
    side = Said.MIRRORED if grid.mirrored else Said.FROM_FACE if weaving.woven_from == "face" else Said.FROM_BACK
    picks = plan.amounts.picks_per_cm
    guess = (plan.words.say(Said.GUESS),) if picks and picks.origin is Origin.ASSUMED else ()
    return plan.words.say(side), *guess
