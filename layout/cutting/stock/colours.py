"""Colours in words, for a page that is printed black and grey."""

from __future__ import annotations

from collections.abc import Mapping
from colorsys import rgb_to_hls

from layout.messages.catalogue import Message
from layout.messages.roles import Colour

OWN: Mapping[str, Colour] = {"#c39a6b": Colour.SAND, "#7a6f8f": Colour.HEATHER, "#4a2c2a": Colour.BARK}
"""The three colours of the built-in stock, which are far apart in lightness too: they have names of their own."""

_HUES = (
    (15, Colour.RED),
    (45, Colour.ORANGE),
    (70, Colour.YELLOW),
    (165, Colour.GREEN),
    (195, Colour.CYAN),
    (255, Colour.BLUE),
    (290, Colour.VIOLET),
    (345, Colour.MAGENTA),
    (360, Colour.RED),
)
"""Up to which hue, in degrees round the wheel, each word goes. Our own division; no standard sets one."""

_GREY, _DARK, _LIGHT = 0.12, 0.35, 0.7


def called(colour: str) -> Message:
    """What "#rrggbb" is called: dark blue, red, light grey, black."""
    if own := OWN.get(colour):
        return Message(own)
    red, green, blue = (int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5))
    hue, light, _ = rgb_to_hls(red, green, blue)
    if max(red, green, blue) - min(red, green, blue) >= _GREY:
        return _shaded(next(word for upto, word in _HUES if hue * 360 <= upto), light)
    if light < 0.1:
        return Message(Colour.BLACK)
    return Message(Colour.WHITE) if light > 0.95 else _shaded(Colour.GREY, light)


def _shaded(colour: Colour, light: float) -> Message:
    if _DARK <= light <= _LIGHT:
        return Message(colour)
    return Message(Colour.DARK if light < _DARK else Colour.LIGHT, {"colour": colour})
