"""Wrong builders of the first sheet of a kit: steps, sheets and numbers exchanged."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from kits import NAILS, NOTCHED
from wrong_builders import Spoil, Wrong, returns

import layout.parts.start_here as start_module
import layout.parts.start_numbers as numbers_module
from layout.messages.roles import Start
from layout.parts.start_here import Contents
from layout.parts.start_numbers import KitFigure

KIT = "kit.pdf"
SMALL: Mapping[str, object] = {"weaving.width": "8 cm", "frame.outer_width": "20 cm"}
WEIGHED = SMALL | {
    "warp": {"count": 300, "system": "tex", "fibre": "cotton"},
    "weft": {"strands": [{"number": 2, "count": 200, "system": "tex", "fibre": "wool"}]},
}


def step(tile: str, /, **changes: object) -> Spoil:
    """A step of the work that says something else."""
    return returns(
        start_module,
        "work_steps",
        lambda steps: tuple(each._replace(**changes) if each.tile == tile else each for each in steps),
    )


def figure(at: int, change: Callable[[KitFigure], KitFigure]) -> Spoil:
    """A number of the kit that says something else."""
    return returns(
        start_module,
        "kit_figures",
        lambda figures: tuple(change(each) if k == at else each for k, each in enumerate(figures)),
    )


def exchanged(one: int, other: int) -> Spoil:
    """Two steps in each other's place, their tiles left where they were."""

    def change(steps: Any) -> Any:
        found = list(steps)
        found[one], found[other] = (
            steps[other]._replace(tile=steps[one].tile),
            steps[one]._replace(tile=steps[other].tile),
        )
        return tuple(found)

    return returns(start_module, "work_steps", change)


FIRST: Mapping[str, Wrong] = {
    "a step that leads to the sheet after its own": Wrong(
        SMALL,
        KIT,
        lambda patch: patch.setattr(
            start_module,
            "sheets_of",
            lambda plan, tile, contents, right=start_module.sheets_of: right(
                plan, tile, Contents({key: (a + 1, b + 1) for key, (a, b) in contents.sheets.items()}, contents.grid)
            ),
        ),
    ),
    "a step that does not lead to its sheet": Wrong(
        SMALL, KIT, returns(start_module, "sheets_of", lambda said: "" if said == "sheet 2" else said)
    ),
    "spacing before the heading rows": Wrong(SMALL, KIT, exchanged(4, 5)),
    "a step left out": Wrong(SMALL, KIT, returns(start_module, "work_steps", lambda steps: steps[:-1])),
    "a step of another tile": Wrong(SMALL, KIT, step("2", tile="9")),
    "boards called bars": Wrong(SMALL | NOTCHED, KIT, step("1", does=Start.CHECK_BARS)),
    "nails to be drilled": Wrong(SMALL | NAILS, KIT, step("2", does=Start.PEGS)),
    "a stick for ends behind that are not there": Wrong(SMALL | NAILS, KIT, step("4", does=Start.HEADING)),
    "a warp cut off that slides off its rod": Wrong(
        SMALL | {"weaving.near_hold": "loose rod"}, KIT, step("8", does=Start.FINISH)
    ),
    "a rod where there is none": Wrong(SMALL, KIT, step("8", does=Start.FINISH_ON_ROD)),
    "an end too many": Wrong(SMALL, KIT, figure(1, lambda each: each._replace(value="10 winds, 21 ends"))),
    "the width as woven for that on the frame": Wrong(
        SMALL, KIT, figure(2, lambda each: each._replace(value="78 mm on the frame"))
    ),
    "the yarns exchanged": Wrong(
        WEIGHED, KIT, figure(5, lambda each: each._replace(remarks=(*each.remarks[:-1], "seine twine 12/6")))
    ),
    "a number left out": Wrong(SMALL, KIT, returns(start_module, "kit_figures", lambda figures: figures[:-1])),
    "grams called ounces": Wrong(WEIGHED, KIT, returns(numbers_module, "_imperial", lambda found: not found)),
}
