"""A number together with how it is known. Knows nothing of yarns or frames."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Origin(StrEnum):
    """How a number is known; each is its own word in files and on the screen."""

    MEASURED = "measured"
    COMPUTED = "computed"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class Quantity:
    """`value` in the unit that its owner states; `origin`, how it is known; `reason`, one sentence of why.

    `assumptions` are the reasons of everything assumed that it rests on, each once; a quantity that rests on any is
    itself assumed.
    """

    value: float
    origin: Origin
    reason: str
    assumptions: tuple[str, ...] = ()


def measured(value: float, reason: str) -> Quantity:
    """A number that someone counted, weighed or measured."""
    return Quantity(value, Origin.MEASURED, reason)


def assumed(value: float, reason: str) -> Quantity:
    """A number that nobody measured here; `reason` says what it stands on."""
    return Quantity(value, Origin.ASSUMED, reason, (reason,))


def computed(value: float, reason: str, *sources: Quantity) -> Quantity:
    """A number computed from `sources`: computed, or assumed as soon as one of them is."""
    kept = tuple(dict.fromkeys(each for source in sources for each in source.assumptions))
    return Quantity(value, Origin.ASSUMED if kept else Origin.COMPUTED, reason, kept)
