"""The wrap gauge without a kit: drawn, written, read back from disk and proven before it is kept."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import Printer
from layout.drawing.sheet import Piece, Sheet, sheet_of, stacked
from layout.kit.ends import counted_by
from layout.kit.kit import Paper
from layout.kit.paper_size import named_size
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge, SheetName
from layout.paper.head import Head
from layout.paper.sheets import sheet_alone
from layout.paper.steps import place_of
from layout.parts.gauge_table import any_table
from layout.parts.wrap_gauge import gauge_card_of, wrap_gauge_of
from layout.values.units import Length, exact_length, read_length
from templates_gen.codes.modules import codes_for
from templates_gen.disk.exchange import Exchange
from templates_gen.document import About, Document, ReadError
from templates_gen.files.for_printer import for_printer, judged_plain, notes_on
from templates_gen.files.generate import Report
from templates_gen.files.output import Output
from templates_gen.files.proof import write
from templates_gen.files.proven import judged
from templates_gen.lettering.outlines import outlined
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Carried
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings, said
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.printed.gauge import prove_any_gauge
from templates_gen.verify.said import outside

_PAPER, _ALONE = "gauge.pdf", "gauge.svg"
_SIZE = "common"


class GaugeAsked(NamedTuple):
    """A gauge for a marking `unit`, and for frame ends of a kind; its sheet is corrected for a `printer`, if any."""

    unit: Length
    ends: str
    printer: Printer | None = None


def make_gauge(
    asked: GaugeAsked, folder: Path, metrics: FontMetrics, tell: Callable[[str], None] = lambda _: None
) -> Report:
    """Writes the gauge into `folder`, on a sheet that prints at full size on A4 and Letter, and alone.

    Raises ProofError where a file did not come back right, FaultError where the folder cannot be written; the folder is
    then as it was.
    """
    with Exchange(folder, _ALONE, tell) as exchange:
        made = []
        for output in _outputs(asked, metrics):
            data = exchange.write(output.file, write(output))
            made.append(judged(output, data, partial(findings, asked, output)))
        exchange.settle(())
    return Report(tuple(made), notes_on(asked.printer, _SIZE))


def gauge_of(inputs: str, metrics: FontMetrics) -> Output:
    """The gauge on paper whose file carries these inputs; ReadError where they say of none."""
    try:
        said = json.loads(inputs)["gauge"]
        asked = GaugeAsked(read_length(said["unit"]), str(said["ends"]))
        return next(_outputs(asked, metrics))
    except (KeyError, TypeError, ValueError) as error:
        raise ReadError(message(Carried.NO_INPUTS)) from error


def _outputs(asked: GaugeAsked, metrics: FontMetrics) -> Iterator[Output]:
    table = any_table(asked.unit, counted_by(asked.ends))
    purpose = ENGLISH.say(Gauge.ANY, window=table.over)
    part, card = (make(table, purpose, metrics) for make in (wrap_gauge_of, gauge_card_of))
    head = Head(place_of(part.name).tile, part.title, part.purpose, "", "", "")
    paper = Paper(named_size(_SIZE))
    (modules,) = codes_for(_about(asked, _PAPER), paper, 1)
    printed = sheet_alone(part, paper, head, ENGLISH, metrics, modules)
    if printed is None:
        raise AssertionError(part.name)  # the card is made for any sheet
    plain = _output(asked, _PAPER, printed.sheet, printed.pieces, on_paper=True)
    yield for_printer(plain, asked.printer, [ENGLISH], metrics)
    laid = (Piece(card, stacked([card])[0]),)
    yield _output(asked, _ALONE, outlined(sheet_of(card.name, [card])), laid, on_paper=False)


def _output(asked: GaugeAsked, file: str, sheet: Sheet, laid: tuple[Piece, ...], *, on_paper: bool) -> Output:
    return Output(file, (laid[0].part.name,), (sheet,), (laid,), _about(asked, file), on_paper)


def _about(asked: GaugeAsked, file: str) -> About:
    values = {"file": file, "gauge": {"unit": exact_length(asked.unit), "ends": asked.ends}}
    return About(ENGLISH.say(SheetName.NAME_WRAP_GAUGE), json.dumps(values, separators=(",", ":")))


def findings(asked: GaugeAsked, output: Output, found: Document) -> Findings:
    """How a gauge that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    return judged_plain(partial(_findings, asked), output, found, [ENGLISH])


def _findings(asked: GaugeAsked, output: Output, found: Document) -> Findings:
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    where = said(Proof.SHEET, number=1)
    pieces, wrong = found_on(found.sheets[0], output.laid[0], where)
    result += wrong
    if output.on_paper:
        result += prove_codes(found)
        result += check_furniture(found.sheets[0], [piece.part.name for piece in output.laid[0]]).at(where)
        pieces = [replace(seen, outside=outside(found.sheets[0], pieces)) for seen in pieces]
    return (
        result
        if result.problems
        else result + prove_any_gauge(asked.unit, asked.ends, pieces, on_paper=output.on_paper)
    )
