"""The class sheet of a run as a file, and what proves it."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.parts.class_sheet import Lesson, class_pages
from templates_gen.document import Document
from templates_gen.files.output import Output
from templates_gen.files.run_about import SoldKit, in_one_language
from templates_gen.files.run_sheets import room_of, run_output
from templates_gen.verify.compare import compare
from templates_gen.verify.finding import Findings
from templates_gen.verify.printed.code import prove_codes
from templates_gen.verify.run.class_sheet import prove_class_sheet

CLASS_FILE = "class-sheet.pdf"

_ANY = (166.0, 160.0)  # mm: whatever it holds, its sheet says the same round it
_EDGE = 2.0  # mm that the crosses of a part reach past its field, above and below


def class_output(name: str, kits: Sequence[SoldKit], lesson: Lesson, metrics: FontMetrics) -> Output:
    """The file as it must be; FieldError where the paper of the first kit is too small for it."""
    plans, words = [each.plan for each in in_one_language(kits)], kits[0].plan.words
    (probe, *_) = class_pages(plans, lesson, _ANY, words, metrics)
    width, height = room_of(name, kits, probe, metrics)
    parts = class_pages(plans, lesson, (width, height - _EDGE), words, metrics)
    return run_output(name, kits, parts, CLASS_FILE, metrics, lesson=(lesson.people, lesson.at_a_table))


def class_findings(name: str, kits: Sequence[SoldKit], lesson: Lesson, output: Output, found: Document) -> Findings:
    """How a class sheet that was read back differs from what was drawn, and from what it must be whatever was drawn."""
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    boxes = sum(each.copies for each in kits)
    plans = [each.plan for each in in_one_language(kits)]
    return result + prove_codes(found) + prove_class_sheet(found.sheets, output.laid, (name, boxes), plans, *lesson)
