"""Which sheets a file has: those of its parts, and those of the words that found no room beside a part."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from layout.drawing.sheet import Block, Part, Piece
from layout.paper.choice import Laying
from layout.values.errors import LayoutError


class Leaf(NamedTuple):
    """One sheet: what it says beside its pieces is that of `part`; a sheet of words alone holds none."""

    part: Part
    pieces: tuple[Piece, ...]
    mirrored: bool = False


Rest = Callable[[Part, bool], tuple[Block, ...]]
"""The blocks of a part that find no room on a sheet with its other words, which may be mirrored."""


def leaves_of(layings: Sequence[Laying], rest: Rest) -> Iterator[Leaf]:
    """The sheets of a file in order. What several parts say alike is not said again on a sheet of its own."""
    told: set[object] = set()
    for laying in layings:
        part, mirrored = laying.part, laying.way == "diagonal"
        said = _said(part)
        if laying.bare and said not in told:
            yield from _words(replace(part, measured=False, narrow=False), rest)
        for number, pieces in enumerate(laying.sheets):
            silent = laying.bare or (laying.once and number)
            yield Leaf(without_words(part) if silent else part, pieces, mirrored)
        left_over = () if laying.bare else rest(part, mirrored)
        if left_over and said not in told:
            more = replace(without_words(part), blocks=left_over, measured=False, narrow=False)
            yield from _words(more, rest)
        told.add(said)


def _said(part: Part) -> object:
    blocks = tuple((block.title, block.beside, block.high, len(block.entries)) for block in part.blocks)
    return part.title, part.steps, blocks, part.cautions


def without_words(part: Part) -> Part:
    """A part whose sheet has its head only."""
    return replace(part, steps=(), notes=(), blocks=(), cautions=())


def _words(part: Part, rest: Rest) -> Iterator[Leaf]:
    """As many sheets as the words of a part need, each with what the one before it had no room for."""
    while True:
        left_over = rest(part, False)
        if left_over and left_over == part.blocks and not part.steps:
            raise LayoutError(part.blocks[0].title)  # larger than any sheet: a fault of the part
        shown = part.blocks[: len(part.blocks) - len(left_over)]
        yield Leaf(replace(part, blocks=shown), ())
        if not left_over:
            return
        part = replace(without_words(part), blocks=left_over)
