"""A number together with how it was come by. Knows nothing of yarns or frames."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class How(StrEnum):
    """How a number was come by; each is its own word in files and on the screen."""

    MEASURED = "measured"
    COMPUTED = "computed"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class Figure:
    """`value` in the unit that its owner states, `how` it was come by, and `because`, one sentence of reason.

    `assumptions` are the reasons of everything assumed that it rests on, each once; a figure that rests on any is
    itself assumed.
    """

    value: float
    how: How
    because: str
    assumptions: tuple[str, ...] = ()


def measured(value: float, because: str) -> Figure:
    """A number that someone counted, weighed or measured."""
    return Figure(value, How.MEASURED, because)


def assumed(value: float, because: str) -> Figure:
    """A number that nobody measured here; `because` says what it stands on."""
    return Figure(value, How.ASSUMED, because, (because,))


def computed(value: float, because: str, *sources: Figure) -> Figure:
    """A number reckoned from `sources`: computed, or assumed as soon as one of them is."""
    kept = tuple(dict.fromkeys(reason for source in sources for reason in source.assumptions))
    return Figure(value, How.ASSUMED if kept else How.COMPUTED, because, kept)
