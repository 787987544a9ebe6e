"""How several parts lie that share their sheets where they can: strips or guides of both frame ends."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cache
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.paper.area import Area
from layout.paper.choice import Furnish, Laying, choose, uprights, why_low
from layout.paper.joints import Build
from layout.paper.regions import regions
from layout.paper.tall import stand_whole
from layout.values.errors import LayoutError


class _Headed(NamedTuple):
    """The area that is left under the words which sheets of a part have in the end."""

    furnish: Furnish
    heading: Callable[[Part], Part]

    @property
    def words(self) -> Catalogue:
        return self.furnish.words

    def __call__(self, part: Part, *, mirrored: bool = False, bare: bool = False) -> Area:
        return self.furnish(_with_heading(part, self.heading), mirrored=mirrored, bare=bare)


def _with_heading(part: Part, heading: Callable[[Part], Part]) -> Part:
    return heading(part) if part.joint_rows else part


def choose_together(
    builds: Sequence[Build], paper: Paper, furnish: Furnish, metrics: FontMetrics, heading: Callable[[Part], Part]
) -> tuple[Laying, ...]:
    """How several parts lie: side by side on one sheet, else each in one piece on its own, else all in pieces.

    `heading` gives a part the name that their sheets have where they share them.
    """
    made: list[Build] = [cache(build) for build in builds]
    if laying := _side_by_side(made, paper, furnish, heading):
        return (laying,)
    headed = _Headed(furnish, heading)
    alone = tuple(choose(build, paper, headed, metrics) for build in made)
    if any(laying.way == "tiles" for laying in alone):
        for low in (False, True):
            if laying := uprights(made, paper, furnish, metrics, low=low, heading=heading):
                return (laying,)
    return tuple(_headed(laying, heading) if laying.part.joint_rows else laying for laying in alone)


def _headed(laying: Laying, heading: Callable[[Part], Part]) -> Laying:
    return laying._replace(part=heading(laying.part), together=(laying.part,))


def _side_by_side(
    builds: Sequence[Build], paper: Paper, furnish: Furnish, heading: Callable[[Part], Part]
) -> Laying | None:
    """Upright beside one column of text, in the low form where there is no full one."""
    grid = regions(paper)
    low = False
    try:
        parts = [build(False, ()) for build in builds]
    except LayoutError:
        low, parts = True, [build(True, ()) for build in builds]
    why = why_low(builds[0], furnish.words, low=low)
    said = heading(replace(parts[0], notes=(*parts[0].notes, *why)))
    alike = said.title == parts[0].title  # else only parts that are read together have words for both
    standing = grid.roomy and all(part.narrow and (part.joint_rows or alike) for part in parts)
    if not standing or paper.lay not in ("auto", "straight"):
        return None
    found = stand_whole(parts, grid, furnish(said))
    return Laying("tall", said, (found,), why, together=tuple(parts)) if found else None
