"""One file's proof: its bytes read back and held against the plan, shape for shape and mark for mark."""

from __future__ import annotations

from layout.plan import Plan
from templates_gen.document import Document
from templates_gen.formats import FORMATS
from templates_gen.outputs import Output
from templates_gen.verify.compare import Findings, compare
from templates_gen.verify.prove import prove


def write(output: Output) -> bytes:
    """The bytes of `output` in its format."""
    return FORMATS[output.format].write(output.sheets, output.about)


def read(output: Output, data: bytes) -> Document:
    """What `data` shows, read by the reader of the output's format; ReadError where it is not one of ours."""
    return FORMATS[output.format].read(data)


def _names(source: Output | Document) -> list[str]:
    return [source.about.title, *(sheet.name for sheet in source.sheets)]


def findings(plan: Plan, output: Output, found: Document) -> Findings:
    """How `found` differs from what `output` of `plan` must be, its title and the names of its sheets included."""
    result = compare(output.sheets, found.sheets)
    for asked, said in zip(_names(output), _names(found), strict=False):
        if asked != said:
            result += Findings(0.0, (f"is called {said!r} where {asked!r} was wanted",))
    if result.problems:
        return result
    return result + prove(plan, found.sheets, output.laid, on_paper=output.on_paper)
