"""What a kit takes and holds, each number with how it is known; put together by `layout.estimate`."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal, NamedTuple

from layout.values.quantity import Quantity
from layout.yardage.weavable import Leashes


def scaled(figure: Quantity, factor: float) -> Quantity:
    """The same figure in another unit."""
    return figure.scaled(factor)


@dataclass(frozen=True, slots=True)
class ColourNeed:
    """The yarn of one colour: metres of it as it is bought (every strand counted) and grams."""

    name: str
    length_m: Quantity
    weight_g: Quantity


@dataclass(frozen=True, slots=True)
class BallsNeed:
    """Balls to buy of one yarn in one colour, and what is left over in g; `unsure` where a sample should come first.

    `yarn` is what the kit calls it, `colour` empty where it has none.
    """

    yarn: str
    colour: str
    balls: int
    left_g: Quantity
    unsure: bool


@dataclass(frozen=True, slots=True)
class PackNeed:
    """What is woven of one yarn in one colour, hems and tails with it, and the share to `spare` that comes on top.

    `of` is what it is for. `yarn` is what the kit calls it, `colour` empty where it has none. `grams` is None where it
    is not known how heavy the yarn is, `metres` where it is not known how long; one of both is. `ball_g` is what a ball
    of it weighs, where the kit says so; `sampled` where a sample was counted or weighed.
    """

    of: Literal["warp", "weft"]
    yarn: str
    colour: str
    grams: Quantity | None
    metres: Quantity | None
    spare: Quantity
    sampled: bool = False
    ball_g: float | None = None


class Narrowing(NamedTuple):
    """A measurement that would narrow a figure: the `key` of the kit that takes it, and the phrase that names it."""

    key: str
    said: str


def _nothing() -> None:
    """No measurement."""


@dataclass(frozen=True, slots=True)
class Amounts:
    """Figures in the units of their names; None where the kit does not say enough, and `to_add` says what to add.

    `weft_total_m` is the length of the bundle as it is woven, tails and all. `woven_mm` is width and height as woven,
    `finished_mm` what shrinkage leaves of it, `for_finished_mm` what to weave for the size woven to be left.
    `packs` are all yarns to buy, `balls` those that are sold by the ball.
    `weft_tails_m` is part of `weft_total_m`; `weft_hem_m` and `weft_spare_m` come on top, and `weft_to_buy_m` is all of
    it. `bead_mm` is the height of two picks, `bubble_rise` how high a pick is best laid, as a share of its width.
    `narrowing` finds which measurement would narrow the weft most; it computes the weft again for each, so only when
    asked. `first_guess_per_cm` is a sett by the yarns.
    """

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
    warp_thickness_mm: Quantity | None = None
    weft_pressed_mm: Quantity | None = None
    weft_soft_mm: Quantity | None = None
    bead_mm: Quantity | None = None
    bubble_rise: Quantity | None = None
    weft_g_per_m2: Quantity | None = None
    weft_tails_m: Quantity | None = None
    weft_hem_m: Quantity | None = None
    weft_spare_m: Quantity | None = None
    weft_to_buy_m: Quantity | None = None
    packs: tuple[PackNeed, ...] = ()
    balls: tuple[BallsNeed, ...] = ()
    woven_rows: int | None = None
    heading_rows: int | None = None
    narrowing: Callable[[], Narrowing | None] = field(default=_nothing, compare=False, repr=False)
    first_guess_per_cm: Quantity | None = None

    @property
    def narrows_most(self) -> Narrowing | None:
        """The measurement that would narrow the weft most; None where it is narrow or unknown."""
        return self.narrowing()

    @property
    def figures(self) -> Mapping[str, Quantity | None]:
        """The figures that programs are given, by their names."""
        names = (
            "warp_per_wind_mm", "warp_total_m", "warp_total_g", "heading_thread_m", "weft_take_up", "picks_per_cm",
            "weft_total_m", "weft_total_g", "weavable_height_mm", "warp_thickness_mm", "weft_pressed_mm",
            "weft_soft_mm", "bead_mm", "bubble_rise", "weft_g_per_m2", "weft_tails_m", "weft_hem_m", "weft_spare_m",
            "weft_to_buy_m",
        )  # fmt: skip
        return MappingProxyType({name: getattr(self, name) for name in names})

    @property
    def assumptions(self) -> tuple[str, ...]:
        """Everything assumed that any figure rests on, each once, in the order of the figures."""
        leashes = (self.leashes.together,)
        rest = (self.fringe_near_mm, self.shed_stick_mm, *leashes, *self.woven_mm, *self.finished_mm)
        every = (*self.figures.values(), *rest)
        return tuple(dict.fromkeys(reason for figure in every if figure for reason in figure.assumptions))

    @property
    def conflicts(self) -> tuple[str, ...]:
        """A sentence for each two facts of the kit that cannot both be true, each once."""
        figures = (*self.figures.values(), *self.woven_mm, *self.finished_mm)
        return tuple(dict.fromkeys(sentence for figure in figures if figure for sentence in figure.conflicts))
