"""One file of a print run over many orders: pieces placed together, then pages of their own, each printed once."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import accumulate, islice, pairwise

from layout.drawing.metrics import FontMetrics
from layout.messages.catalogue import Catalogue
from layout.messages.roles.order import PrintRunWord
from layout.messages.roles.run import RunList
from layout.paper.code import Modules
from layout.paper.sheets import Printed, leaves, printed
from layout.plan import Plan
from layout.products import PRODUCTS, made_by_default
from layout.run.bed import RunBed, run_bed
from layout.run.filling import Boxful, filled
from layout.run.imposing import Placed, RunPart
from layout.run.run_sheet import Gutter, called, names_on, run_sheet
from layout.run.sets import OwnPages, placeable
from templates_gen.codes.modules import codes_for
from templates_gen.document import About
from templates_gen.files.drawings import PrintedDrawings
from templates_gen.files.for_printer import for_printer
from templates_gen.files.output import Output, names_of
from templates_gen.files.run_about import SoldKit, about_run
from templates_gen.inputs.families import KIT, products_of
from templates_gen.inputs.range_file import NO_SHOP

PRINT_RUN = "print-run-"
"""The names of such files begin so."""

_BOTH, _EITHER = "strips", ("strip-near", "strip-far")


_NAMED = re.compile(re.escape(PRINT_RUN) + r"[1-9][0-9]*\.pdf", re.ASCII)


def print_run_name(number: int) -> str:
    """The name of the file of that number."""
    return f"{PRINT_RUN}{number}.pdf"


def is_print_run(name: str) -> bool:
    """Whether a file of that name is one."""
    return _NAMED.fullmatch(name) is not None


def printed_of(plan: Plan, asked: Sequence[str]) -> tuple[str, ...]:
    """The products that are printed of a plan, of those that are `asked` for as `make --only` does, each once."""
    named = products_of(plan, asked) or ()
    on_paper = [name.partition(".")[0] for name in named if not name.endswith((".svg", ".dxf"))]
    if KIT in on_paper:
        on_paper += [name for name in made_by_default(plan) if PRODUCTS[name].in_kit]
    wanted = [name for name in PRODUCTS if name in on_paper]
    return tuple(name for name in wanted if not (name in _EITHER and _BOTH in wanted))


@dataclass(frozen=True)
class Printable:
    """What one box of an order prints: `parts` beside others, and products on `pages` of their own.

    Of these each takes so many sheets as `counts` says.
    """

    plan: Plan
    parts: tuple[RunPart, ...]
    pages: tuple[OwnPages, ...]
    counts: tuple[int, ...]

    @property
    def count(self) -> int:
        """How many pages of its own it has."""
        return sum(self.counts)

    @property
    def spans(self) -> Iterator[tuple[int, int]]:
        """From which to which of them each product reaches."""
        return pairwise(accumulate(self.counts, initial=0))

    @property
    def box(self) -> Boxful:
        """The same for filling sheets."""
        return Boxful(self.parts, self.count)

    def as_kit(self, place: int) -> Printable:
        """The same as the kit of that place in a run."""
        parts = tuple(each._replace(kit=place) for each in self.parts)
        return replace(self, parts=parts, pages=tuple(each._replace(kit=place) for each in self.pages))


def printable(plan: Plan, asked: Sequence[str], metrics: FontMetrics) -> Printable:
    """What a plan prints of what is asked for."""
    drawings = PrintedDrawings(plan, metrics)
    parts: list[RunPart] = []
    pages: list[OwnPages] = []
    for name in printed_of(plan, asked):
        found = placeable(plan, name, metrics)
        parts += [RunPart(part, 0) for part in found]
        if not found:
            pages.append(OwnPages(name, 0, drawings.layings(name), 1))
    counts = tuple(len(leaves(plan, each.layings, metrics)) for each in pages)
    return Printable(plan, tuple(parts), tuple(pages), counts)


@dataclass(frozen=True)
class PrintRun:
    """The `number`th file: `prints` are those of its orders, in order, each for so many boxes as `copies` say."""

    number: int
    asked: tuple[str, ...]
    prints: tuple[Printable, ...]
    copies: tuple[int, ...]
    metrics: FontMetrics

    @property
    def file(self) -> str:
        """Its name."""
        return print_run_name(self.number)

    @property
    def words(self) -> Catalogue:
        """What is of all its orders is said in the language of the first."""
        return self.prints[0].plan.words

    @property
    def name(self) -> str:
        """What its sheets say of it."""
        return self.words.say(PrintRunWord.NAME, number=self.number)

    @cached_property
    def bed(self) -> RunBed:
        """Where parts lie on its paper."""
        return run_bed(self.prints[0].plan.kit.paper)

    @cached_property
    def boxes(self) -> tuple[Printable, ...]:
        """Box by box."""
        kits = [each.as_kit(place) for place, each in enumerate(self.prints)]
        return tuple(kit for kit, often in zip(kits, self.copies, strict=True) for _ in range(often))

    @cached_property
    def placed(self) -> tuple[Placed, ...]:
        """The sheets with parts beside each other."""
        found = filled([each.box for each in self.boxes], self.bed)
        return tuple(sheet for each in found for sheet in _one_by_one(each.sheets))

    @property
    def pages(self) -> tuple[OwnPages, ...]:
        """The pages of products that lie beside nothing, box by box."""
        return tuple(each for box in self.boxes for each in box.pages)

    @property
    def spoken(self) -> list[Catalogue]:
        """The language of each sheet."""
        own = [box.plan.words for box in self.boxes for _ in range(box.count)]
        return [self.words] * len(self.placed) + own

    @cached_property
    def about(self) -> About:
        """What the file carries: each order with the buyer that its leaflet names, its copies, and what was asked."""
        sold = [SoldKit(each.plan, often, NO_SHOP) for each, often in zip(self.prints, self.copies, strict=True)]
        first, last = (called(each.plan) for each in (self.prints[0], self.prints[-1]))
        what = self.words.say(RunList.FROM_TO, first=first, last=last)
        about = about_run(self.name, sold, what, self.file, legal=True)
        values = json.loads(about.inputs) | {"print_run": {"number": self.number, "asked": list(self.asked)}}
        return about._replace(inputs=json.dumps(values, ensure_ascii=False, separators=(",", ":")))

    def output(self) -> Output:
        """The file as it must be, for the printer of its plans where they have one."""
        total = len(self.spoken)
        sheets = tuple(self._sheets(codes_for(self.about, self.prints[0].plan.kit.paper, total)))
        laid = tuple(sheet.pieces for sheet in sheets)
        parts = tuple(dict.fromkeys(names_of(piece.part for pieces in laid for piece in pieces)))
        plain = Output(self.file, parts, tuple(each.sheet for each in sheets), laid, self.about, on_paper=True)
        return for_printer(plain, self.prints[0].plan.printer, self.spoken, self.metrics)

    def _sheets(self, codes: Sequence[Modules]) -> Iterator[Printed]:
        left = iter(codes)
        names = [called(each.plan) for each in self.prints]
        for number, placed in enumerate(self.placed, 1):
            said = Gutter(self.name, number, len(self.placed), 1, names_on(placed, names))
            yield run_sheet(placed, said, self.bed, self.words, self.metrics, next(left))
        for own in self.pages:
            plan = self.prints[own.kit].plan
            yield from printed(plan, own.layings, self.metrics, lambda total: list(islice(left, total)))


def _one_by_one(sheets: Sequence[Placed]) -> Iterator[Placed]:
    """Sheets that are alike, each for itself: every one has its own number and code."""
    return (sheet._replace(times=1) for sheet in sheets for _ in range(sheet.times))
