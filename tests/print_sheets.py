"""A page of every kind of sheet that the project prints, on one paper: what print paths are tried with."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from kits import INCHES, NAILS, NOTCHED, PEGGED, ROD, font_metrics, plan_of

from layout.kit.paper_size import PAPERS
from layout.plan import plan
from templates_gen.document import About
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.printer_check import CheckAsked, check_output
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.inputs import stock_file
from templates_gen.inputs.range_file import Range, load_range
from templates_gen.writers.pdf import write

OWN = "148 x 210 mm"
"""A sheet that no paper is called after."""
SIZES = (*PAPERS, OWN)
RANGE = Path(__file__).parent / "sample_ranges" / "weir-frames.toml"

_WIDE: dict[str, object] = {"weaving.width": "90 cm", "frame.outer_width": "1 m"}
_ACROSS: dict[str, object] = {"weaving.width": "12 in", "frame.outer_width": "18 in", "frame.bar_diameter": "12 mm"}
_OTHER_KITS: dict[str, dict[str, object]] = {
    "in pieces": _WIDE | ROD,
    "across": _ACROSS,
    "notched": NOTCHED | INCHES,
    "pegged in pieces": PEGGED | _WIDE,
    "nails": NAILS,
}


def pages(size: str, folder: Path, *, whole: bool) -> tuple[list[str], bytes]:
    """What the pages are, and one PDF of all of them: of a kit with a box, its drawings and its job sheet, and checks.

    The `whole` is those of other kinds of frame and forms of strips too, and of a print run.
    """
    found, inputs = {}, "{}"
    for name, output in _outputs(size, folder, whole=whole):
        for sheet in output.sheets:
            found.setdefault(f"{name}: {sheet.name.split()[0]}", sheet)
        if output.file == "job.pdf":
            inputs = output.about.inputs  # it carries the stock, and so the colours of its signs
    return list(found), write(list(found.values()), About("Every kind of sheet", inputs))


def _outputs(size: str, folder: Path, *, whole: bool) -> Iterator[tuple[str, Output]]:
    stock, metrics = stock_file.built_in(), font_metrics()
    run = _run_on(size, folder)
    plans = [plan(each.kit) for each in run.kits]
    yield from (("kit", output) for output in _printed(Outputs(plans[0], metrics, stock=stock)))
    yield from (("check", output) for output in _printed(Outputs(plans[0], metrics, ["square-check"], stock)))
    yield "check", check_output(CheckAsked(plans[0].kit.paper), metrics)
    if not whole:
        return
    for name, changes in _OTHER_KITS.items():
        outputs = Outputs(plan_of(changes | {"paper.size": size}), metrics, ["strips", "spacing-guide", "winding"])
        yield from ((name, output) for output in _printed(outputs))
    if size != OWN:  # too small for the sheets of a run
        made = RunOutputs(run, plans, metrics, stock)
        yield from (("run", file.draw()) for file in made.files if file.name.endswith(".pdf"))


def _printed(outputs: Outputs) -> Iterator[Output]:
    return (outputs.output(file) for file in outputs.files if file.endswith(".pdf"))


def _run_on(size: str, folder: Path) -> Range:
    """The first kit of the sample range, on that paper."""
    text = RANGE.read_text(encoding="utf-8")
    assert "[paper]" not in text
    path = folder / "range.toml"
    path.write_text(f'{text}\n[paper]\nsize = "{size}"\n', encoding="utf-8")
    found = load_range(path)
    return replace(found, kits=found.kits[:1])
