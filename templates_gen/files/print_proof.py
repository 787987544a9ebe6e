"""The files of a print run, read back and proven: page by page, and all of them together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from layout.run.sets import placeable
from templates_gen.document import Document
from templates_gen.files.output import Output
from templates_gen.files.print_files import PrintFiles
from templates_gen.files.print_pages import PrintFile
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Finding, Findings, said
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.printed.held import held_each
from templates_gen.verify.prove import prove
from templates_gen.verify.run.counts import Stack, wrong_copies, wrong_list, wrong_names
from templates_gen.verify.run.list_cells import Listed
from templates_gen.verify.run.pages import PlacedPage, RunKit
from templates_gen.verify.run.placed import prove_placed


def print_findings(files: PrintFiles, output: Output, found: Document) -> Findings:
    """How a file that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    result += prove_codes(found)
    file = next(each for each in files.pages.files if each.name == output.file)
    kits = _kits(files)
    at = 0
    if file.has_list:
        at = len(files.lists)
        result += _list(files, output, found, at)
    for own in file.own:
        count = files.pages.page_count(own)
        sheets, laid = found.sheets[at : at + count], output.laid[at : at + count]
        result += prove(kits[own.kit].plan, sheets, laid, on_paper=True).at(said(Proof.SHEET, number=at + 1))
        at += count
    for k, page in enumerate(_placed(file, found, at)):
        result += prove_placed(page, kits, files.run.name, at + k + 1)
    return result


def _kits(files: PrintFiles) -> tuple[RunKit, ...]:
    return tuple(RunKit(kit.plan, kit.copies) for kit in files.run.kits)


def _placed(file: PrintFile, found: Document | None, at: int) -> Iterator[PlacedPage]:
    for k, page in enumerate(file.placed):
        placed = page.placed
        if found is not None:
            sheet = found.sheets[at + k]
            yield PlacedPage(sheet, placed.pieces, placed.kits, placed.cuts, page.number, page.total, placed.times)


def _list(files: PrintFiles, output: Output, found: Document, count: int) -> Findings:
    """The run list, and the whole run that it lists."""
    total = Findings(0.0, ())
    for k, (sheet, pieces) in enumerate(zip(found.sheets[:count], output.laid[:count], strict=True), 1):
        where = said(Proof.SHEET, number=k)
        total += found_on(sheet, pieces, where)[1] + check_furniture(sheet, [piece.part.name for piece in pieces]).at(
            where
        )
    return total + Findings(0.0, tuple(_whole(files, found, count)))


def _whole(files: PrintFiles, found: Document, count: int) -> Iterator[Finding]:
    kits, pages = _kits(files), files.pages
    stacks = [Stack(file.name, file.times, files.count(file)) for file in pages.files]
    rows = [
        Listed(each.file, each.times, each.first, each.last, each.holds, each.kits) for each in pages.printings(count)
    ]
    drawn = {file.name: files.output(file.name) for file in pages.files if file.placed}
    placed = [
        PlacedPage(sheet, page.placed.pieces, page.placed.kits, page.placed.cuts, page.number, page.total, file.times)
        for file in pages.files
        if file.placed
        for page, sheet in zip(file.placed, drawn[file.name].sheets[-len(file.placed) :], strict=True)
    ]
    yield from wrong_names(stacks)
    yield from wrong_copies(placed, _wanted(files), kits)
    singly = sum(each.singly for each in pages.prints)
    yield from wrong_list(found.sheets[:count], rows, stacks, placed, singly, files.run.name, kits)


def _wanted(files: PrintFiles) -> Mapping[tuple[int, str], int]:
    """How often each part must be printed beside others: the parts of what each box holds, for every box."""
    wanted: dict[tuple[int, str], int] = {}
    for k, kit in enumerate(files.run.kits):
        for name in held_each(kit.plan):
            for part in placeable(kit.plan, name, files.metrics):  # a long list is on two cards of one name
                wanted[k, part.name] = wanted.get((k, part.name), 0) + kit.copies
    return wanted
