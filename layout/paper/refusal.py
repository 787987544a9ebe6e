"""Why a part cannot be laid on a kit's paper, and which other lay or paper would do."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Literal

from layout.kit.kit import Paper
from layout.kit.paper_size import PAPERS, named_size
from layout.messages.catalogue import Figure, Message, Role
from layout.messages.roles import SheetNeed
from layout.paper.joints import LEAST_PIECE, Build
from layout.values.errors import FieldError

_LARGE = 'size = "600 x 3000 mm"'

Lay = Literal["auto", "straight", "diagonal", "tiles"]


def refusal(build: Build, paper: Paper, fits: Callable[[Paper], bool]) -> FieldError:
    """What cannot fit, and what would: other ways on this paper, then other papers, as far as a part `fits` on it."""
    part = build(True, ())
    on = {"width": plain(paper.width), "up": plain(paper.height)}
    lays: tuple[Lay, ...] = () if part.whole else ("straight", "diagonal", "tiles")
    others = {f'lay = "{lay}"': replace(paper, lay=lay) for lay in lays}
    others |= {f'size = "{name}"': _sized(paper, name) for name in PAPERS}
    fit = [words for words, other in others.items() if fits(other)]
    example = _either(fit) if fit else _LARGE
    if part.whole:
        size = {"part": part.title, "length": plain(part.length, 0), "height": plain(part.height, 0), **on}
        return FieldError("paper.size", SheetNeed.WHOLE, Message(SheetNeed.GOT_WHOLE, size), example)
    got = Message(SheetNeed.GOT_LENGTH, {"length": plain(part.length), **on})
    if paper.lay in _NEEDED:
        return FieldError("paper.lay", _NEEDED[paper.lay], got, example)
    return FieldError("paper.lay", SheetNeed.PIECES, got, example, least=f"{LEAST_PIECE:g}")


_NEEDED: Mapping[str, Role] = {"straight": SheetNeed.STRAIGHT, "diagonal": SheetNeed.DIAGONAL}


def plain(mm: float, places: int = 1) -> Figure:
    """A number of mm with so many decimals, in the figures of whatever language says it."""
    return Figure(f"{mm:.{places}f}")


def _either(ways: Sequence[str]) -> Message | str:
    said: Message | str = ways[0]
    for other in ways[1:]:
        said = Message(SheetNeed.OR, {"before": said, "after": other})
    return said


def _sized(paper: Paper, name: str) -> Paper:
    return replace(paper, size=named_size(name))
