"""How thick a yarn is, pressed and soft, each between a least and a most: by its weight, by its wraps, by both.

d = k sqrt(tex). Published k in mm: .0374 cotton "under moderate pressure" (F. T. Peirce 1937, v = 1.1 cm3/g), .0380
wrapped "without compression" (J. T. Taylor, Cotton Weaving and Designing, sqrt(yd/lb) less 5 %), .0396 to .0429
(Ashenhurst's .91 to .84), .0721 for loose wraps of knitters (half as many), .100 to .108 in a chart for handspinners.
How the ranges of a class lie between these is our choice.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import NamedTuple

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, MakeWord
from layout.messages.roles import Thickness as Why
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, combine, computed, measured, met
from layout.yarns.diameter import DENSITIES


class Make(StrEnum):
    """How a yarn is made, in the words of a kit file."""

    CORD = "cord"
    FIRM = "firm"
    SOFT = "soft"


class Wrapped(StrEnum):
    """How a yarn was wrapped, in the words of a kit file."""

    PUSHED = "pushed together"
    BESIDE = "side by side"


class _Class(NamedTuple):
    """k pressed and k soft, each least, likely, most, in mm for 1 tex, at a fibre of this density in g/cm3."""

    pressed: tuple[float, float, float]
    soft: tuple[float, float, float]
    density: float


CLASSES: Mapping[Make, _Class] = MappingProxyType(
    {
        Make.CORD: _Class((0.0350, 0.0374, 0.0430), (0.0380, 0.0520, 0.0660), 1.52),
        Make.FIRM: _Class((0.0360, 0.0403, 0.0460), (0.0397, 0.0510, 0.0721), 1.31),
        Make.SOFT: _Class((0.0360, 0.0403, 0.0500), (0.0418, 0.0800, 0.1250), 1.31),
    }
)


class Spun(NamedTuple):
    """What a yarn may be, the likely one first, its `word`, and the assumption where the kit does not state it."""

    makes: tuple[Make, ...]
    word: MakeWord
    taken: Assumed | None = None


STATED: Mapping[Make, Spun] = MappingProxyType(
    {
        Make.CORD: Spun((Make.CORD,), MakeWord.CORD),
        Make.FIRM: Spun((Make.FIRM,), MakeWord.FIRM),
        Make.SOFT: Spun((Make.SOFT,), MakeWord.SOFT),
    }
)
UNSTATED = Spun((Make.SOFT, Make.FIRM), MakeWord.FIRM_OR_SOFT, Assumed.FIRM_OR_SOFT)
WARP_UNSTATED = Spun((Make.CORD, Make.FIRM), MakeWord.CORD_OR_FIRM, Assumed.CORD_OR_FIRM)
"""What a warp of one of the fibres `OF_CORDS` may be. Our choice."""
OF_CORDS = ("cotton", "linen", "hemp", "jute")

COUNTED_OFF = 0.03
"""By how much of it a window, or a wrap, may be off; our choice."""
LOOSE = 1.9
"""How many times thicker than packed a yarn may come out that was laid side by side: .0721 / .0380."""
_LIKELY_LOOSE = 1.4  # our choice
SOFTEST = 3.2
"""How many times thicker than pressed a yarn may lie at most; our choice, from .125 / .0360 and a little more."""
_LIKELY_SOFT = 1.5  # our choice
FLATTENED = 1.3
"""How many times thinner than wrapped a warp may lie in the weaving; our choice."""


@dataclass(frozen=True, slots=True)
class Thickness:
    """A yarn in mm: `pressed` in cloth, `soft` as it is wrapped, and `in_use` as an end of the warp lies."""

    pressed: Quantity
    soft: Quantity
    in_use: Quantity


def of_label(tex: float, spun: Spun, fibre: str | None) -> Thickness:
    """The thickness of a yarn of `tex`; where its fibre is not known, it may be any of the table."""
    root = math.sqrt(tex)
    sources = [assumed(0, ENGLISH.say(role)) for role in (spun.taken, None if fibre else Assumed.ANY_FIBRE) if role]
    classes, said = [CLASSES[make] for make in spun.makes], {"tex": plain(round(tex, 1)), "make": spun.word}
    hard = [_scaled(each.pressed, each.density, fibre) for each in classes]
    slack = [_scaled(each.soft, each.density, fibre) for each in classes]
    pressed = _figure(root, hard, ENGLISH.say(Why.LABEL_PRESSED, **said), sources)
    soft = _figure(root, slack, ENGLISH.say(Why.LABEL_SOFT, **said), sources)
    return Thickness(pressed, soft, _in_use(soft, pressed.low))


def _scaled(k: tuple[float, float, float], density: float, fibre: str | None) -> tuple[float, float, float]:
    """k for a fibre: area goes by volume, so k by the root of the densities."""
    low, likely, high = k
    if fibre:
        own = math.sqrt(density / DENSITIES[fibre])
        return low * own, likely * own, high * own
    heaviest, lightest = max(DENSITIES.values()), min(DENSITIES.values())
    return low * math.sqrt(density / heaviest), likely, high * math.sqrt(density / lightest)


def _figure(
    root: float, every: Sequence[tuple[float, float, float]], said: str, sources: Sequence[Quantity]
) -> Quantity:
    low, high = min(each[0] for each in every), max(each[2] for each in every)
    return computed(root * every[0][1], said, *sources, spread=(root * low, root * high))


def of_wrap(turns: int, window_mm: float, how: Wrapped | None) -> Quantity:
    """The soft thickness in mm of a yarn of which `turns` fill a window, to half a turn more or less on each side.

    Pushed together until the window takes no more, this is it. Laid side by side, a yarn comes out up to `LOOSE` times
    as thick; where the kit does not say how it was wrapped, either may be.
    """
    likely = window_mm / turns
    low = window_mm / (turns + 1) * (1 - COUNTED_OFF)
    high = (window_mm / (turns - 1) if turns > 1 else 2 * window_mm) * (1 + COUNTED_OFF)
    values = {"turns": turns, "window": plain(window_mm)}
    if how is Wrapped.PUSHED:
        return measured(likely, ENGLISH.say(Why.PUSHED, **values), low, high)
    if how is Wrapped.BESIDE:
        return measured(likely / _LIKELY_LOOSE, ENGLISH.say(Why.BESIDE_LAID, **values), low / LOOSE, high)
    return measured(likely, ENGLISH.say(Why.WRAPPED_SOMEHOW, **values), low / LOOSE, high)


def known(
    label: Thickness | None, wrap: Quantity | None, said: Callable[[Quantity, Quantity], str]
) -> Thickness | None:
    """What label and wrap leave together; `said` is the sentence about a wrap that the label does not allow."""
    if wrap is None:
        return label
    if label is None:
        ratio = assumed(_LIKELY_SOFT, ENGLISH.say(Assumed.PRESSED_SHARE))
        spread = (wrap.low / SOFTEST, wrap.high)
        pressed = computed(wrap.value / _LIKELY_SOFT, ENGLISH.say(Why.WRAP_PRESSED), wrap, ratio, spread=spread)
        return Thickness(pressed, wrap, _in_use(wrap, wrap.low / FLATTENED))
    soft = met(label.soft, wrap, said)
    if len(soft.conflicts) > len({*label.soft.conflicts, *wrap.conflicts}):
        spread = (min(label.pressed.low, wrap.low / SOFTEST), max(label.pressed.high, wrap.high))
        pressed = computed(label.pressed.value, label.pressed.reason, label.pressed, soft, spread=spread)
        return Thickness(pressed, soft, _in_use(soft, pressed.low))
    pressed = _no_thicker(label.pressed, soft)
    return Thickness(pressed, soft, _in_use(soft, max(pressed.low, soft.low / FLATTENED, label.in_use.low)))


def _no_thicker(pressed: Quantity, soft: Quantity) -> Quantity:
    """A pressed thickness once it is known how thick the yarn lies soft: never more, nor less than a share of it."""
    low, high = max(pressed.low, soft.low / SOFTEST), min(pressed.high, soft.high)
    value = min(max(pressed.value, low), high, soft.value)
    return computed(value, pressed.reason, pressed, soft, spread=(min(low, value), max(high, value)))


def _in_use(soft: Quantity, low: float) -> Quantity:
    return computed(soft.value, ENGLISH.say(Why.IN_USE), soft, spread=(min(low, soft.value), soft.high))


def bunched(each: Sequence[Thickness]) -> Thickness:
    """Strands gathered into one round bundle: areas add, so four equal strands are twice as thick as one."""
    if len(each) == 1:
        return each[0]
    return Thickness(
        _bunched([one.pressed for one in each]),
        _bunched([one.soft for one in each]),
        _bunched([one.in_use for one in each]),
    )


def _bunched(figures: Sequence[Quantity]) -> Quantity:
    round_ = assumed(0, ENGLISH.say(Why.ROUND))
    return combine(_bunch, ENGLISH.say(Why.STRANDS, strands=len(figures)), *figures, round_)


def _bunch(*sizes: float) -> float:
    return math.hypot(*sizes)
