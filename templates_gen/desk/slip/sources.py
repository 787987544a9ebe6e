"""Where the value of each line comes from."""

from __future__ import annotations

from collections.abc import Collection
from typing import Literal

from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.shape import Typed

Source = Literal["yours", "example", "assumed"]


def sources(typed: Typed, examples: Collection[str]) -> dict[str, Source]:
    """By the name of each line: typed by the person, still the example's, or left out and so assumed."""
    return {name: _source(typed.get(name, ""), name in examples) for name in lines(typed)}


def _source(text: str, of_the_example: bool) -> Source:
    if not text.strip():
        return "assumed"
    return "example" if of_the_example else "yours"
