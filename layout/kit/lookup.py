"""All inputs of one kind of file together, so that they can be looked up: by key, by table, by likeness."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from layout.kit.input import Input, tables_of
from layout.kit.inputs import INPUTS


@dataclass(frozen=True, slots=True)
class Catalogue:
    """The `inputs` of one kind of file in their order, the same `by_key`, and the keys of their `tables`.

    Lists of tables stand among the inputs; the key of an entry ends in `[]`.
    """

    inputs: tuple[Input, ...]
    by_key: Mapping[str, Input]
    tables: tuple[str, ...]


def catalogue(inputs: Iterable[Input]) -> Catalogue:
    """The catalogue of these inputs."""
    every = tuple(inputs)
    return Catalogue(every, {spec.key: spec for spec in every}, tables_of(every))


KIT = catalogue(INPUTS)
"""The inputs of a kit file."""
