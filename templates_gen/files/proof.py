"""One file's proof: its bytes read back and compared with the plan, shape for shape and mark for mark."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from layout.drawing.sheet import Sheet
from layout.plan import Plan
from layout.values.errors import shown
from templates_gen.document import Document
from templates_gen.files.for_printer import judged_plain
from templates_gen.files.formats import FORMATS
from templates_gen.files.output import Output
from templates_gen.messages.roles.proof import Compared, Laid, Proof
from templates_gen.verify.compare import compare
from templates_gen.verify.cut_parts.as_cut import as_cut
from templates_gen.verify.cut_parts.board_edges import prove_edges
from templates_gen.verify.cut_parts.job import prove_job
from templates_gen.verify.cut_parts.prove_cut import prove_cut
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.finding import said as place
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.heads import check_caption
from templates_gen.verify.outline import check_outline
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.prove import prove
from templates_gen.verify.whole import EVERY_SHEET
from templates_gen.verify.whole_boards import JOB, is_of_boards


def write(output: Output) -> bytes:
    """The bytes of `output` in its format."""
    return FORMATS[output.format].write(output.sheets, output.about)


def read(output: Output, data: bytes) -> Document:
    """What `data` shows, which this run has written, read by its format's reader; ReadError where it is not ours."""
    return FORMATS[output.format].read_back(data)


def _names(source: Output | Document) -> list[str]:
    return [source.about.title, *(sheet.name for sheet in source.sheets)]


def findings(plan: Plan, output: Output, found: Document) -> Findings:
    """How `found` differs from what `output` of `plan` must be, its title and the names of its sheets included."""
    return judged_plain(partial(_findings, plan), output, found, [plan.words] * len(output.sheets))


def _findings(plan: Plan, output: Output, found: Document) -> Findings:
    result = compare(output.sheets, found.sheets)
    for asked, said in zip(_names(output), _names(found), strict=False):
        if asked != said:
            result += Findings(0.0, (finding(Compared.CALLED, found=shown(said), wanted=shown(asked)),))
    if result.problems:
        return result
    outline = check_outline(found.sheets, found.about.outline) if output.file == EVERY_SHEET else ()
    if found.about.outline != output.about.outline or outline:
        result += Findings(0.0, (finding(Laid.OUTLINE),))
    if found.about.operations != output.about.operations:
        result += Findings(0.0, (finding(Compared.OPERATIONS),))
    if output.on_paper:
        result += prove_codes(found)
    if output.stock is not None:
        return result + prove_cut_file(plan, output, found.sheets)
    return result + prove(plan, found.sheets, output.laid, on_paper=output.on_paper)


def prove_cut_file(plan: Plan, output: Output, sheets: Sequence[Sheet]) -> Findings:
    """What is cut against kit and stock alone; in tiles, only that every piece lies true to scale."""
    total = NOTHING
    if output.stock is not None and output.file == JOB:
        total += prove_job(plan, output.stock, sheets, output.laid)
    for number, (read, pieces) in enumerate(zip(sheets, output.laid, strict=True), 1):
        sheet = read
        where = place(Proof.SHEET, number=number)
        if output.stock is not None and output.about.operations:
            sheet = as_cut(output.stock, sheet, [piece.part.name for piece in pieces])
            if is_of_boards(output.file):
                total += prove_edges(output.stock, sheet).at(where)
        if output.stock is not None and not output.tiled and output.file != JOB:
            total += prove_cut(plan, output.stock, sheet, pieces, where)
        else:
            total += found_on(sheet, pieces, where)[1]
        if output.on_paper:
            names = [piece.part.name for piece in pieces]
            total += check_furniture(sheet, names).at(where)
            total += check_caption(sheet, names, plan.words, printing=plan.kit.paper.use == "download").at(where)
    return total
