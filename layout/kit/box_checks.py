"""What the cards of a box must be beside the paper that they are printed on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from math import floor
from typing import Any

from layout.kit.box import Box, CardSize
from layout.messages.roles.ranges import BoxNeed
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_GUTTERS, _HEAD_AND_FOOT = Fraction("43.9"), Fraction("73.6")
"""What a sheet needs beside a card and above and below it, in mm: its head, targets and code."""


def box_errors(got: Mapping[str, Any]) -> Iterator[FieldError]:
    """Cards that no sheet of the kit's paper can show; a card that was left out is never refused here."""
    box, paper = got.get("box"), got.get("paper.size")
    if not isinstance(box, Box) or paper is None:
        return
    width, height = paper.sides_mm
    across = floor(width - float(_GUTTERS))
    room = across, min(floor(height - float(_HEAD_AND_FOOT)), across)  # no card is higher than wide
    for key in ("label", "list", "help"):
        card: CardSize | None = getattr(box, key)
        if card and (card.width.mm > room[0] or card.height.mm > room[1]):
            said = f"{say_number(card.width.mm)} x {say_number(card.height.mm)} mm"
            values = {"width": room[0], "height": room[1]}
            sides = (min(floor(side.mm), most) for side, most in zip((card.width, card.height), room, strict=True))
            example = f'{key} = "{" x ".join(map(str, sides))} mm"'
            yield FieldError(f"box.{key}", BoxNeed.CARD_ON_SHEET, said, example, **values)
