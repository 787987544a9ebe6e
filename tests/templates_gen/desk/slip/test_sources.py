"""Where the value of each line comes from."""

from __future__ import annotations

from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.sources import sources
from templates_gen.desk.slip.typed import example


def test_a_line_is_the_examples_until_it_is_touched() -> None:
    """Of the slip to start from every line that is filled in is the example's, and every other is assumed."""
    typed = example()
    found = sources(typed, frozenset(typed))
    assert set(found) == set(lines(typed))
    assert found["name"] == "example"
    assert found["frame.side_thickness"] == "assumed"
    touched = sources({**typed, "name": "Mine"}, frozenset(typed) - {"name"})
    assert touched["name"] == "yours"
    assert sources({**typed, "name": " "}, frozenset(typed) - {"name"})["name"] == "assumed"
