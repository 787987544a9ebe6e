"""What a kit takes and holds, each number with how it is known; put together by `layout.estimate`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from layout.values.quantity import Quantity
from layout.yardage.weavable import Leashes
from layout.yarns.diameter import Diameter


def scaled(figure: Quantity, factor: float) -> Quantity:
    """The same figure in another unit."""
    return replace(figure, value=figure.value * factor)


@dataclass(frozen=True, slots=True)
class ColourNeed:
    """The yarn of one colour: metres of it as it is bought (every strand counted) and grams."""

    name: str
    length_m: Quantity
    weight_g: Quantity


@dataclass(frozen=True, slots=True)
class Amounts:
    """Figures in the units of their names; None where the kit does not say enough, and `to_add` says what to add.

    `weft_total_m` is the length of the bundle as it is woven, tails and all. `woven_mm` is width and height as woven,
    `finished_mm` what shrinkage leaves of it, `for_finished_mm` what to weave for the size woven to be left.
    """

    warp_thickness: tuple[Diameter, ...]
    weft_thickness: tuple[Diameter, ...]
    warp_per_wind_mm: Quantity
    warp_total_m: Quantity
    warp_total_g: Quantity | None
    heading_thread_m: Quantity
    weavable_height_mm: Quantity
    fringe_near_mm: Quantity
    fringe_far_mm: Quantity
    shed_stick_mm: Quantity
    leashes: Leashes
    picks_per_cm: Quantity | None
    weft_take_up: Quantity | None
    weft_total_m: Quantity | None
    weft_total_g: Quantity | None
    weft_strands: int
    weft_by_colour: tuple[ColourNeed, ...]
    woven_mm: tuple[Quantity, Quantity]
    finished_mm: tuple[Quantity, Quantity]
    for_finished_mm: tuple[Quantity, Quantity]
    notes: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()
    to_add: tuple[str, ...] = ()

    @property
    def figures(self) -> Mapping[str, Quantity | None]:
        """The figures that programs are given, by their names."""
        names = (
            "warp_per_wind_mm", "warp_total_m", "warp_total_g", "heading_thread_m", "weft_take_up", "picks_per_cm",
            "weft_total_m", "weft_total_g", "weavable_height_mm",
        )  # fmt: skip
        return MappingProxyType({name: getattr(self, name) for name in names})

    @property
    def assumptions(self) -> tuple[str, ...]:
        """Everything assumed that any figure rests on, each once, in the order of the figures."""
        leashes = (self.leashes.together,)
        rest = (self.fringe_near_mm, self.shed_stick_mm, *leashes, *self.woven_mm, *self.finished_mm)
        every = (*self.figures.values(), *rest)
        return tuple(dict.fromkeys(reason for figure in every if figure for reason in figure.assumptions))
