"""A kit as it is woven on: a frame whose height can be adjusted then stands at its greatest."""

from __future__ import annotations

from dataclasses import replace

from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Winding
from layout.values.units import Length, say_length


def as_woven(kit: Kit) -> Kit:
    """The same kit on a frame that is as high as it becomes by its travel."""
    return replace(kit, frame=replace(kit.frame, outer_height=woven_at(kit), travel=None))


def woven_at(kit: Kit) -> Length:
    """How high the frame is while it is woven on."""
    lowest, travel = kit.frame.outer_height, kit.frame.travel
    return lowest if travel is None else Length(travel.mm + lowest.mm, lowest.unit)


def tightening(kit: Kit, words: Catalogue) -> list[str]:
    """What a picture says of tightening."""
    if kit.frame.travel is None:
        return []
    low, tight = say_length(kit.frame.outer_height), say_length(woven_at(kit))
    return [words.say(Winding.TIGHTEN, low=low, tight=tight)]
