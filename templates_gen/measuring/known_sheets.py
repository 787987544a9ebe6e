"""From the code of a sheet to the sheet: which file of which kit it is of, where its targets stand, and its marks.

Only the inputs of every file are made to find the one whose digest the code says; that file alone is drawn.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.boxes import middle_of
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.messages.english import ENGLISH
from layout.plan import Plan
from layout.products import PRODUCTS
from templates_gen.codes.digest import digest_of
from templates_gen.files.kept import with_stock
from templates_gen.files.output import Output, titled
from templates_gen.files.outputs import kept_outputs
from templates_gen.files.printed_records import BUYER_FILE, LEGAL_FILE
from templates_gen.files.record import FileRecord
from templates_gen.inputs.families import KIT
from templates_gen.measuring.groups import Group
from templates_gen.measuring.marks import groups_on
from templates_gen.scan.seen import Label

PAPER = "pdf"


@dataclass(frozen=True)
class KnownSheet:
    """A sheet of a file: the kit or range that the file is of, the titles of its parts, targets and marks.

    Where the file is `corrected` for a printer, a scan of it shows what the correction has left over.
    """

    file: str
    kit: str
    titles: tuple[str, ...] = ()
    targets: tuple[Point, ...] = ()
    groups: tuple[Group, ...] = ()
    corrected: bool = False


class Source(NamedTuple):
    """A file whose sheets may be on a scan: its digest, its name, its kit's, and what draws it; None if nothing can.

    Marks are known of a file with a `plan`, of a gauge, and where `groups` tells those of a sheet by its number.
    """

    digest: str
    file: str
    kit: str
    draw: Callable[[], Output] | None = None
    plan: Plan | None = None
    corrected: bool = False
    groups: Callable[[int], tuple[Group, ...]] | None = None


def sources_of(plan: Plan, metrics: FontMetrics, stock: Stock) -> Iterator[Source]:
    """Every file on paper of a kit: first what is printed of it, then what is cut from `stock` or depends on that."""
    bare = with_stock(plan, None, metrics)
    for record in kept_outputs(bare, metrics, boxed=True).records.values():
        if record.form == PAPER:
            yield _source(bare, record, None)
    judged = with_stock(plan, stock, metrics)
    for boxed in (False, True):
        for record in kept_outputs(judged, metrics, None, stock, boxed=boxed).records.values():
            if record.form == PAPER:
                yield _source(judged, record, stock)


def _source(plan: Plan, record: FileRecord, stock: Stock | None) -> Source:
    cut = None if record.product in (*PRODUCTS, KIT) else stock
    legal, buyer = record.name == LEGAL_FILE, record.name == BUYER_FILE
    inputs = titled(plan, "", record.name, cut, legal=legal, buyer=buyer).inputs
    return Source(digest_of(inputs), record.name, plan.kit.name, record.draw, plan)


class Finder:
    """Finds the sheet that a code names among `sources`, which are looked at until there it is, and kept."""

    def __init__(self, sources: Iterable[Source]) -> None:
        self._left = iter(sources)
        self._looked_at: dict[str, Source] = {}
        self._drawn: dict[str, Output] = {}

    def __call__(self, label: Label) -> KnownSheet | None:
        """That sheet; None where no file has it, as they are drawn now."""
        source = self._source(label.digest)
        if source is None or source.draw is None:
            return source and KnownSheet(source.file, source.kit, corrected=source.corrected)
        if source.digest not in self._drawn:
            self._drawn[source.digest] = source.draw()
        return known(source, self._drawn[source.digest], label)

    def _source(self, digest: str) -> Source | None:
        while digest not in self._looked_at:
            source = next(self._left, None)
            if source is None:
                return None
            self._looked_at.setdefault(source.digest, source)
        return self._looked_at[digest]


def known(source: Source, output: Output, label: Label) -> KnownSheet | None:
    """The sheet of a file that a code names; None where the file, as it is drawn now, has no such sheet."""
    as_coded = digest_of(output.about.inputs) == label.digest and len(output.sheets) == label.total
    if not as_coded or not 1 <= label.number <= label.total:
        return None
    sheet, pieces = output.sheets[label.number - 1], output.laid[label.number - 1]
    every = [piece.part for each in output.laid for piece in each]
    titles = tuple(dict.fromkeys(str(ENGLISH.again(piece.part.title)) for piece in pieces if piece.part.title))
    rings = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    groups = source.groups(label.number) if source.groups else groups_on(pieces, source.plan, every)
    return KnownSheet(source.file, source.kit, titles, tuple(map(middle_of, rings)), groups, source.corrected)
