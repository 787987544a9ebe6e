from __future__ import annotations

from itertools import pairwise

import pytest

from layout.cutting.stock.colours import OWN, called
from layout.cutting.stock.stock import OPERATIONS
from layout.messages.english import ENGLISH
from templates_gen.inputs.stock_file import built_in


def in_words(colour: str) -> str:
    """What a colour is called in English."""
    return ENGLISH.words_of(called(colour))


@pytest.mark.parametrize(
    ("colour", "words"),
    [
        ("#ff0000", "red"),
        ("#008000", "dark green"),
        ("#0000ff", "blue"),
        ("#00ffff", "cyan"),
        ("#ff00ff", "magenta"),
        ("#ffff00", "yellow"),
        ("#ffa500", "orange"),
        ("#8a2be2", "violet"),
        ("#000000", "black"),
        ("#ffffff", "white"),
        ("#808080", "grey"),
        ("#000080", "dark blue"),
    ],
)
def test_colours_are_called_as_the_web_calls_them(colour: str, words: str) -> None:
    """Red to navy and blue violet as W3C's CSS Color Module names them, stated dark where they are dark."""
    assert in_words(colour) == words


def test_the_built_in_operations_differ_in_words_too() -> None:
    """A person can tell them apart by name."""
    operations = built_in().operations
    assert len({in_words(operations[each].colour) for each in OPERATIONS}) == len(OPERATIONS)


def test_every_colour_has_a_word() -> None:
    """A coarse walk through all colours finds a word for each."""
    steps = range(0, 256, 17)
    found = {in_words(f"#{red:02x}{green:02x}{blue:02x}") for red in steps for green in steps for blue in steps}
    assert {"red", "orange", "yellow", "green", "cyan", "blue", "violet", "magenta", "grey"} <= found


def test_our_own_colours_are_told_apart_by_lightness_too() -> None:
    """Sand, heather and bark: even printed grey, each two differ by a sixth of the way from black to white.

    Relative luminance by W3C's Web Content Accessibility Guidelines, taken back to lightness (CIE 1976 L*).
    """
    assert [in_words(built_in().operations[each].colour) for each in OPERATIONS[:-1]] == ["sand", "heather", "bark"]
    lightness = sorted(_lightness(colour) for colour in OWN)
    assert all(other - one > 100 / 6 for one, other in pairwise(lightness))


def _lightness(colour: str) -> float:
    parts = [int(colour[k : k + 2], 16) / 255 for k in (1, 3, 5)]
    red, green, blue = (each / 12.92 if each <= 0.04045 else ((each + 0.055) / 1.055) ** 2.4 for each in parts)
    return float(116 * (0.2126 * red + 0.7152 * green + 0.0722 * blue) ** (1 / 3) - 16)
