"""Colours in words, for a page that is printed black and grey."""

from __future__ import annotations

from colorsys import rgb_to_hls

_HUES = (
    (15, "red"),
    (45, "orange"),
    (70, "yellow"),
    (165, "green"),
    (195, "cyan"),
    (255, "blue"),
    (290, "violet"),
    (345, "magenta"),
    (360, "red"),
)
"""Up to which hue, in degrees round the wheel, each word goes. Our own division; no standard sets one."""

_GREY, _DARK, _LIGHT = 0.12, 0.35, 0.7


def in_words(colour: str) -> str:
    """What "#rrggbb" looks like: "dark blue", "red", "light grey", "black"."""
    red, green, blue = (int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5))
    hue, light, _ = rgb_to_hls(red, green, blue)
    if max(red, green, blue) - min(red, green, blue) < _GREY:
        return "black" if light < 0.1 else "white" if light > 0.95 else f"{_shade(light)}grey"
    return _shade(light) + next(word for upto, word in _HUES if hue * 360 <= upto)


def _shade(light: float) -> str:
    return "dark " if light < _DARK else "light " if light > _LIGHT else ""
