"""A file of a print run, read back and proven: each piece by the numbers and the number of its own order."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import partial
from typing import Any

from layout.drawing.metrics import FontMetrics
from templates_gen.document import Document
from templates_gen.files.embedded import embedded_run
from templates_gen.files.for_printer import judged_plain
from templates_gen.files.kept import planned
from templates_gen.files.output import Output
from templates_gen.files.print_run import PrintRun, printable, printed_of
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings, said
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.prove import prove
from templates_gen.verify.run.orders import Shown, wrong_parts
from templates_gen.verify.run.pages import PlacedPage, RunKit
from templates_gen.verify.run.placed import prove_placed


def print_run_findings(run: PrintRun, output: Output, found: Document) -> Findings:
    """How a file that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    return judged_plain(partial(_findings, run), output, found, run.spoken)


def _findings(run: PrintRun, output: Output, found: Document) -> Findings:
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    result += prove_codes(found)
    kits = tuple(RunKit(each.plan, often) for each, often in zip(run.prints, run.copies, strict=True))
    total = len(run.placed)
    pages = [
        PlacedPage(sheet, each.pieces, each.kits, each.cuts, number, total, 1)
        for number, (sheet, each) in enumerate(zip(found.sheets, run.placed, strict=False), 1)
    ]
    for number, page in enumerate(pages, 1):
        result += prove_placed(page, kits, run.name, number)
    products = [printed_of(kit.plan, run.asked) for kit in kits]
    wrong = tuple(wrong_parts(_shown(run, output, pages), kits, products))
    return result + _own_pages(run, output, found) + Findings(0.0, wrong)


def _own_pages(run: PrintRun, output: Output, found: Document) -> Findings:
    """The pages of each box that lie beside nothing, by the plan of its order."""
    total = Findings(0.0, ())
    at = len(run.placed)
    for box in run.boxes:
        sheets, laid = found.sheets[at : at + box.count], output.laid[at : at + box.count]
        for first, last in box.spans:
            there = prove(box.plan, sheets[first:last], laid[first:last], on_paper=True)
            total += there.at(said(Proof.SHEET, number=at + first + 1))
        at += box.count
    return total


def _shown(run: PrintRun, output: Output, pages: Sequence[PlacedPage]) -> Shown:
    """How often each part is there: of those beside others, and of those on pages of their own, in pieces or not."""
    shown: Shown = Counter(
        (kit, each.part.name) for page in pages for each, kit in zip(page.pieces, page.kits, strict=True)
    )
    at = len(run.placed)
    for box in run.boxes:
        for (first, last), own in zip(box.spans, box.pages, strict=True):
            laid = output.laid[at + first : at + last]
            shown.update({(own.kit, piece.part.name) for pieces in laid for piece in pieces})
        at += box.count
    return shown


def carried_print_run(found: Document, metrics: FontMetrics) -> PrintRun | None:
    """The print run that a file carries, drawn from that alone; None where it carries none."""
    values: Mapping[str, Any] = json.loads(found.about.inputs)
    about = values.get("print_run")
    if not isinstance(about, dict):
        return None
    run = embedded_run(found.about.inputs, metrics)
    number, asked = about.get("number"), about.get("asked")
    if type(number) is not int or not isinstance(asked, list) or not all(isinstance(each, str) for each in asked):
        return None
    plans = [
        replace(planned(each.kit), refused=without, printer=run.printer)
        for each, without in zip(run.kits, run.without, strict=True)
    ]
    prints = tuple(printable(plan, asked, metrics) for plan in plans)
    return PrintRun(number, tuple(asked), prints, tuple(each.copies for each in run.kits), metrics)
