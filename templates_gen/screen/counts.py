"""How much a file holds, in words."""

from __future__ import annotations

from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import Made, Measure


def counted(marks: int, cuts: int) -> str:
    """Marks are measured, outlines are cut; a file has the one or the other, a folder may have both."""
    if marks and cuts:
        return message(Made.BOTH, marks=marks, cuts=cuts)
    return message(Made.CUTS, cuts=cuts) if cuts else message(Made.MARKS, marks=marks)


def sheets_of(size: tuple[float, float], sheets: int) -> str:
    """How many sheets, and the size of the first in mm."""
    return message(Made.SHEETS, sheets=sheets, width=size[0], height=size[1])


def micrometres(mm: float) -> str:
    """A deviation in mm as micrometres."""
    return message(Measure.MICROMETRES, number=f"{mm * 1000:.2f}")
