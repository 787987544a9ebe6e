"""One row of a table of orders: what it asks for, or why it cannot be read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple


class Problem(NamedTuple):
    """Why a row cannot be made: the header of the `column` it stands in (empty where it is of none), a sentence."""

    column: str
    sentence: str


@dataclass(frozen=True, slots=True)
class Order:
    """A row that asks for a kit: plain values alone, which another process or machine is sent.

    `line` is where the row begins in the file, from 1; `number` the order as it is written, `folder` the name of its
    folder; `kit` the kit of the range; `values` are those of the whole kit, the range's and the row's own, as
    `read_kit` takes them. `columns` names the header of each column by the dotted key that it gives.
    """

    line: int
    number: str
    folder: str
    kit: str
    copies: int
    values: Mapping[str, object]
    columns: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Unreadable:
    """A row that asks for nothing that can be made, and why; `number` and `kit` as far as they can be read."""

    line: int
    number: str
    kit: str
    problems: tuple[Problem, ...]
