"""What a kit takes and holds, each number with how it was come by; put together by `layout.reckoning`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from layout.amounts.weavable import Leashes
from layout.figure import Figure
from layout.yarns.diameter import Diameter


def scaled(figure: Figure, factor: float) -> Figure:
    """The same figure in another unit."""
    return replace(figure, value=figure.value * factor)


@dataclass(frozen=True, slots=True)
class ColourNeed:
    """The yarn of one colour: metres of it as it is bought (every strand counted) and grams."""

    name: str
    length_m: Figure
    weight_g: Figure


@dataclass(frozen=True, slots=True)
class Amounts:
    """Figures in the units of their names; None where the kit does not say enough, and `to_add` says what to add.

    `weft_total_m` is the length of the bundle as it is woven, tails and all. `woven_mm` is width and height as woven,
    `finished_mm` what shrinkage leaves of it, `for_finished_mm` what to weave for the size woven to be left.
    """

    warp_thickness: tuple[Diameter, ...]
    weft_thickness: tuple[Diameter, ...]
    warp_per_wind_mm: Figure
    warp_total_m: Figure
    warp_total_g: Figure | None
    heading_thread_m: Figure
    weavable_height_mm: Figure
    fringe_near_mm: Figure
    fringe_far_mm: Figure
    shed_stick_mm: Figure
    leashes: Leashes
    picks_per_cm: Figure | None
    weft_take_up: Figure | None
    weft_total_m: Figure | None
    weft_total_g: Figure | None
    weft_strands: int
    weft_by_colour: tuple[ColourNeed, ...]
    woven_mm: tuple[Figure, Figure]
    finished_mm: tuple[Figure, Figure]
    for_finished_mm: tuple[Figure, Figure]
    notes: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()
    to_add: tuple[str, ...] = ()

    @property
    def figures(self) -> Mapping[str, Figure | None]:
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
