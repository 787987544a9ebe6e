"""Finished sheets: the pieces of a file laid out, each sheet with its head, its words, its number and its code."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import Paned
from layout.drawing.sheet import Block, Part, Piece, Sheet, painted
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Count
from layout.messages.roles import Sheet as Sheets
from layout.paper.area import Area
from layout.paper.choice import Laying, choose
from layout.paper.code import Modules
from layout.paper.furniture import Furnished, Page, finished, furnish
from layout.paper.head import Head
from layout.paper.joints import Build
from layout.paper.key_map import Setting, with_key_maps
from layout.paper.laying import straight
from layout.paper.leaves import Leaf, leaves_of, without_words
from layout.paper.panes import lay_in_panes
from layout.paper.regions import COLUMN_RIGHT, regions
from layout.paper.steps import place_of
from layout.paper.together import choose_together
from layout.plan import Plan

_MOST = 999  # sheets: a number for which every head keeps room


@dataclass(frozen=True, slots=True)
class Printed:
    """A sheet and the pieces that lie on it, in the order in which their crosses were drawn.

    A sheet that goes on with the words of the one before holds no piece. `title` is what its head calls it.
    """

    sheet: Sheet
    pieces: tuple[Piece, ...]
    title: str = ""


def lay(plan: Plan, build: Build | Paned, metrics: FontMetrics) -> Laying:
    """How the part that `build` makes lies on the kit's paper; FieldError where it cannot.

    A paned drawing is cut both ways where it must be, however the kit wants its strips to lie.
    """
    take_room = Furnisher(plan, metrics)
    if isinstance(build, Paned):
        return lay_in_panes(build, plan.kit.paper, take_room)
    return choose(build, plan.kit.paper, take_room, metrics)


def lay_together(
    plan: Plan, builds: Sequence[Build], metrics: FontMetrics, heading: Callable[[Part], Part]
) -> tuple[Laying, ...]:
    """How parts lie that share their sheets where they can, under the name that `heading` gives a part."""
    return choose_together(builds, plan.kit.paper, Furnisher(plan, metrics), metrics, heading)


@dataclass(frozen=True, slots=True)
class Furnisher:
    """Finds the area that head, words and scales leave; the same for every lay of a part whose words stay."""

    plan: Plan
    metrics: FontMetrics
    kept: dict[object, Area] = field(default_factory=dict)

    @property
    def words(self) -> Catalogue:
        """What the sheets are said with."""
        return self.plan.words

    def __call__(self, part: Part, *, mirrored: bool = False, bare: bool = False) -> Area:
        """The area for that part."""
        said = (part.title, part.purpose, part.numbered, part.notes, part.steps, part.cautions)
        key = (
            mirrored,
            bare,
            *said,
            part.measured,
            part.narrow,
            part.below,
            *((*block[:2], block.high, len(block.entries)) for block in part.blocks),
        )
        if key not in self.kept:
            shown = without_words(part) if bare else part
            self.kept[key] = _furnished(self.plan, shown, (_MOST, _MOST), self.metrics, mirrored=mirrored).area
        return self.kept[key]


def _furnished(
    plan: Plan, part: Part, number: tuple[int, int], metrics: FontMetrics, *, mirrored: bool = False
) -> Furnished:
    return furnish(_page(plan, mirrored=mirrored), _head(plan, part, number), part, metrics)


def _page(plan: Plan, *, mirrored: bool) -> Page:
    paper = plan.kit.paper
    return Page(paper, plan.words, printing=paper.buyer_prints, mirrored=mirrored)


def leaves(plan: Plan, layings: Sequence[Laying], metrics: FontMetrics) -> tuple[Leaf, ...]:
    """The sheets of one file, not yet drawn: those of the parts, and those of words that find no room beside one."""

    def rest(part: Part, mirrored: bool) -> tuple[Block, ...]:
        return _furnished(plan, part, (_MOST, _MOST), metrics, mirrored=mirrored).rest if part.blocks else ()

    return tuple(leaves_of(layings, rest))


def printed(
    plan: Plan,
    layings: Sequence[Laying],
    metrics: FontMetrics,
    codes: Callable[[int], Sequence[Modules | None]] = lambda total: [None] * total,
) -> tuple[Printed, ...]:
    """The sheets of one file, numbered through; `codes` gives the modules of the code of each of so many sheets."""
    found = _with_key_maps(plan, leaves(plan, layings, metrics), layings, metrics)
    numbered = enumerate(zip(found, codes(len(found)), strict=True), 1)
    return tuple(_sheet(plan, leaf, (k, len(found)), each, metrics) for k, (leaf, each) in numbered)


def _with_key_maps(
    plan: Plan, found: Sequence[Leaf], layings: Sequence[Laying], metrics: FontMetrics
) -> tuple[Leaf, ...]:
    """Maps of parts in pieces, as wide as the column of text or the field, the parts in order as the frame stands."""
    upper = "far" if plan.kit.weaving.near_end == "bottom" else "near"
    grid = regions(plan.kit.paper)
    setting = Setting(plan.words, metrics, min(COLUMN_RIGHT, grid.right) - grid.left)

    def furnished(leaf: Leaf) -> Furnished:
        return _furnished(plan, leaf.part, (_MOST, _MOST), metrics, mirrored=leaf.mirrored)

    return with_key_maps(found, layings, upper, furnished, setting)


def _sheet(plan: Plan, leaf: Leaf, number: tuple[int, int], modules: Modules | None, metrics: FontMetrics) -> Printed:
    furnished = _furnished(plan, leaf.part, number, metrics, mirrored=leaf.mirrored)
    name = f"{leaf.part.name} {number[0]} of {number[1]}"
    drawn = _drawn(name, _page(plan, mirrored=leaf.mirrored), furnished, leaf.pieces, modules)
    return replace(drawn, title=leaf.part.title)


def _drawn(
    name: str, page: Page, furnished: Furnished, pieces: tuple[Piece, ...], modules: Modules | None = None
) -> Printed:
    shapes = [*furnished.shapes, *finished(page, furnished.area, pieces, modules)]
    for part, placing in pieces:
        shapes += placing.shapes(part.shapes)
    return Printed(Sheet(name, page.paper.width, page.paper.height, painted(shapes)), pieces)


def sheet_alone(
    part: Part, paper: Paper, head: Head, words: Catalogue, metrics: FontMetrics, modules: Modules | None = None
) -> Printed | None:
    """A part that no kit asks for, straight on a sheet of its own under its head; None where it finds no room."""
    page = Page(paper, words)
    furnished = furnish(page, head, part, metrics)
    placing = straight(part, furnished.area)
    return _drawn(part.name, page, furnished, (Piece(part, placing),), modules) if placing else None


def _head(plan: Plan, part: Part, number: tuple[int, int]) -> Head:
    place, words = place_of(part.name), plan.words
    return Head(
        place.tile,
        part.title,
        part.purpose,
        plan.named,
        words.listed((plan.sett_brief, words.say(Count.ENDS, ends=plan.warp.ends), *plan.doubled)),
        part.numbered or words.say(Sheets.NUMBER, number=number[0], total=number[1]),
        place.step,
        widest=words.say(Sheets.NUMBER, number=_MOST, total=_MOST),
    )
