from __future__ import annotations

import pytest

from layout.cutting.stock.colours import in_words
from layout.cutting.stock.stock import OPERATIONS
from templates_gen.inputs.stock_file import built_in


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
