"""The overview of a range as a file: drawn for the maker alone, and proven."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from layout.box.overview import Row, whole_of
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.kit.kit import kit_values
from layout.kit.merging import Values, leaves_of
from layout.kit.sources import Sourced, sources_of
from layout.parts.overview_sheet import overview_pages
from layout.parts.overview_tables import Shown
from templates_gen.document import Document
from templates_gen.files.output import Output
from templates_gen.files.run_about import MAKERS, SoldKit
from templates_gen.files.run_sheets import room_of, run_output
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.run.overview import Held
from templates_gen.verify.run.overview_sheet import Seen, prove_overview_sheet

OVERVIEW_FILE = f"{MAKERS}overview.pdf"

_ANY = (166.0, 160.0)  # mm: whatever it holds, its sheet says the same round it
_EDGE = 2.0  # mm that the crosses of a part reach past its field, above and below


@dataclass(frozen=True, slots=True)
class Overview:
    """What the overview shows of a range: its kits, a row for each, what the run takes, and what proves the rows.

    `sheets` of paper and `boards` are those of the whole run; the `stock` is what boards are.
    """

    found: Range
    kits: tuple[SoldKit, ...]
    rows: tuple[Row, ...]
    sheets: int
    boards: int
    held: Callable[[], Sequence[Held]]
    stock: Stock | None = None

    @property
    def sourced(self) -> tuple[Sourced, ...]:
        """The plain values of each kit, and which of them are its own."""
        return tuple(map(_sourced, self.found.kits))

    @property
    def source(self) -> Mapping[str, Any]:
        """The same for programs, as the file carries it."""
        kits = [{"values": each.values, "own": list(each.own)} for each in self.sourced]
        return {"shared": self.shared, "kits": kits}

    @property
    def shared(self) -> Values:
        """What the range says above its kits."""
        return self.found.shared

    @property
    def shown(self) -> Shown:
        """What is drawn."""
        return Shown(
            self.rows,
            whole_of(self.rows, self.sheets, self.boards),
            sources_of(self.shared, self.sourced),
            self.found.shop.currency,
            self.kits[0].plan.warp.sett.unit.imperial,
        )


def _sourced(each: RangeKit) -> Sourced:
    """A kit that came from no file says all its values itself."""
    if not each.values:
        values = kit_values(each.kit)
        return Sourced(values, leaves_of(values))
    return Sourced(each.values, tuple(key for key, origin in each.origins.items() if origin.table == "kit"))


def overview_output(run: Overview, metrics: FontMetrics) -> Output:
    """The file as it must be; FieldError where the paper of the first kit is too small for it."""
    words, name = run.kits[0].plan.words, run.found.name
    shown = run.shown
    (probe, *_) = overview_pages(shown, _ANY, words, metrics)
    width, height = room_of(name, run.kits, probe, metrics)
    parts = overview_pages(shown, (width, height - _EDGE), words, metrics)
    return run_output(name, run.kits, parts, OVERVIEW_FILE, metrics, run.stock, source=run.source)


def overview_findings(run: Overview, output: Output, found: Document) -> Findings:
    """How an overview that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    kits = [(each["values"], each["own"]) for each in run.source["kits"]]
    seen = Seen(run.found.name, tuple(run.held()), run.sheets, run.boards, run.shared, tuple(kits))
    return result + prove_codes(found) + prove_overview_sheet(found.sheets, output.laid, seen)
