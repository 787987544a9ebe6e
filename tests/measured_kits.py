"""A kit of which only the labels are known, to which tests add what somebody measured."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from plain_kits import ROUND
from yarn_kits import amounts_of

from layout.values.quantity import Quantity
from layout.yardage.amounts import Amounts

BASE: dict[str, Any] = ROUND | {
    "frame": ROUND["frame"] | {"bar_diameter": "20 mm", "outer_width": "50 cm", "outer_height": "60 cm"},
    "weaving": {"width": "200 mm", "height": "250 mm", "hem": "20 mm"},
}


def labelled(warp_tex: int, weft_tex: int, per_inch: int, *, make: bool = True, **known: Any) -> Amounts:
    """The amounts of a cotton cord and a firm wool by their labels, their `make`, and whatever else is known."""
    warp, weft = ({"make": "cord"}, {"make": "firm"}) if make else ({}, {})
    kit = {
        "sett": {"given": f"{per_inch} epi"},
        "warp": {"count": warp_tex, "system": "tex", "fibre": "cotton"} | warp,
        "weft": {
            "strands": [{"count": weft_tex, "system": "tex", "fibre": "wool"} | weft],
            "colours": [{"name": "red", "share": 60, "lengths": 5}, {"name": "grey", "share": 40}],
        },
    }
    return amounts_of(BASE | kit, **known)


def figures(amounts: Amounts) -> Iterator[tuple[str, Quantity]]:
    """Every figure that there is, the colours' too, by its name."""
    for name, figure in amounts.figures.items():
        if figure is not None:
            yield name, figure
    for need in amounts.weft_by_colour:
        yield f"{need.name} m", need.length_m
        yield f"{need.name} g", need.weight_g
