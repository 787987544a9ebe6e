"""In which line each key of a kit file stands."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import Any

from templates_gen.data import text_of
from templates_gen.inputs.toml_places import Lines, lines_of

TEXT = """\
# a remark
name = "Weir frames"

[frame]
ends = "round bars"
[weft]
strands = [
    {number = 2},
    {number = 3},
]
beads = {number = 36, over = "5 cm"}

[[kits]]
name = "small"
frame = {outer_width = "30 cm",
    outer_height = "42 cm"}
[kits.weaving]
height = "20 cm"

[[kits]]
name = "large"
without = ["weft.beads"]
weaving.height = "30 cm"
"""


def test_lines_of_what_is_shared_and_of_each_kit() -> None:
    """Tables in braces, on several lines, under headings, and with dots."""
    lines = lines_of(TEXT)
    wanted = {"name": 2, "frame.ends": 5, "weft.strands": 7, "weft.beads": 11, "weft.beads.over": 11}
    assert {key: lines.of_shared(key) for key in wanted} == wanted
    assert lines.of_shared("weft.strands.number") == 7
    assert lines.of_shared("frame.margin") is None
    small = {"name": 14, "frame.outer_width": 15, "frame.outer_height": 16, "weaving.height": 18}
    assert {key: lines.of_kit(1, key) for key in small} == small
    large = {"name": 21, "without": 22, "weaving.height": 23}
    assert {key: lines.of_kit(2, key) for key in large} == large
    assert lines.of_kit(2, "frame.outer_width") is None


def test_kits_in_one_list_share_its_line() -> None:
    """What lists hold has no place of its own."""
    lines = lines_of('name = "x"\nkits = [{name = "a"}, {name = "b"}]\n')
    assert lines.kits == ()
    assert lines.of_kit(2, "name") == 2


def leaves(values: dict[str, Any], table: str = "") -> Iterator[str]:
    """Every dotted key that is no table."""
    for key, value in values.items():
        if isinstance(value, dict):
            yield from leaves(value, f"{table}{key}.")
        else:
            yield f"{table}{key}"


def test_every_key_of_the_starters_has_its_line() -> None:
    """The line that is found for a key names it."""
    for name in ("demo.toml", "range.toml"):
        text = text_of(name)
        found: Lines = lines_of(text)
        values = tomllib.loads(text)
        kits = values.pop("kits", [])
        places = [(key, found.of_shared(key)) for key in leaves(values)]
        places += [(key, found.of_kit(number, key)) for number, kit in enumerate(kits, 1) for key in leaves(kit)]
        assert len(places) > 20
        for key, line in places:
            assert line is not None
            assert key.split(".")[-1] in text.split("\n")[line - 1]
