"""The printer check: drawn, written, read back from disk and proven before it is kept."""

from __future__ import annotations

import json
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import Printer
from layout.kit.kit import Paper
from layout.messages.roles import SheetName
from layout.paper.printer_check.pages import NAME, Asked
from layout.paper.printer_check.sheets import printer_check
from templates_gen.codes.modules import codes_for
from templates_gen.disk.exchange import Exchange
from templates_gen.document import About, Document
from templates_gen.files.for_printer import for_printer, judged_plain, notes_on
from templates_gen.files.generate import Report
from templates_gen.files.output import Output
from templates_gen.files.proof import write
from templates_gen.files.proven import judged
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings, said
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.printed.printer_check import prove_measured
from templates_gen.verify.printed.printer_check_words import prove_words

FILE = "printer-check.pdf"
"""What the file is called."""


class CheckAsked(NamedTuple):
    """A printer check on `paper`, in the language of that paper; corrected for a `printer`, if any."""

    paper: Paper
    printer: Printer | None = None


def make_check(
    asked: CheckAsked, folder: Path, metrics: FontMetrics, tell: Callable[[str], None] = lambda _: None
) -> Report:
    """Writes the printer check into `folder`.

    Raises ProofError where it did not come back right, FaultError where the folder cannot be written; the folder is
    then as it was.
    """
    with Exchange(folder, FILE, tell) as exchange:
        output = check_output(asked, metrics)
        made = judged(output, exchange.write(FILE, write(output)), partial(findings, asked, output))
        exchange.settle(())
    return Report((made,), notes_on(asked.printer, asked.paper.size.words))


def about_check(asked: CheckAsked) -> About:
    """What the file says of itself."""
    paper = asked.paper
    values = {"file": FILE, "check": {"paper": paper.size.words, "language": paper.language}}
    title = catalogue_of(paper.language).say(SheetName.NAME_PRINTER_CHECK)
    return About(title, json.dumps(values, separators=(",", ":")))


def check_output(asked: CheckAsked, metrics: FontMetrics) -> Output:
    """The file as it must be."""
    words, paper, about = catalogue_of(asked.paper.language), asked.paper, about_check(asked)
    sheets = printer_check(Asked(paper, words), metrics, partial(codes_for, about, paper))
    plain = Output(FILE, (NAME,), sheets, tuple(() for _ in sheets), about, on_paper=True)
    return for_printer(plain, asked.printer, [words] * len(sheets), metrics)


def findings(asked: CheckAsked, output: Output, found: Document) -> Findings:
    """How a check that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    spoken = [catalogue_of(asked.paper.language)] * len(output.sheets)
    return judged_plain(partial(_findings, asked), output, found, spoken)


def _findings(asked: CheckAsked, output: Output, found: Document) -> Findings:
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    words = catalogue_of(asked.paper.language)
    first, *others = found.sheets
    result += prove_codes(found) + prove_measured(first, words).at(said(Proof.SHEET, number=1))
    for number, sheet in enumerate(others, 2):
        result += check_furniture(sheet, [NAME]).at(said(Proof.SHEET, number=number))
    return result if result.problems else result + Findings(0.0, tuple(prove_words(found.sheets, asked.paper, words)))
