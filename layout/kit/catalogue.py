"""All inputs of one kind of file together, so that they can be looked up: by key, by table, by likeness."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from layout.kit.inputs import INPUTS, Input


@dataclass(frozen=True, slots=True)
class Catalogue:
    """The `inputs` of one kind of file in their order, the same `by_key`, and the names of their `tables`."""

    inputs: tuple[Input, ...]
    by_key: Mapping[str, Input]
    tables: tuple[str, ...]


def catalogue(inputs: Iterable[Input]) -> Catalogue:
    """The catalogue of these inputs."""
    every = tuple(inputs)
    tables = tuple(dict.fromkeys(spec.key.split(".")[0] for spec in every if "." in spec.key))
    return Catalogue(every, {spec.key: spec for spec in every}, tables)


KIT = catalogue(INPUTS)
"""The inputs of a kit file."""
