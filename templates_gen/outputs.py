"""Every file of a kit: its name, the sheets it must hold, and the inputs that it carries."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from layout.kit import kit_values
from layout.metrics import FontMetrics
from layout.paper.choice import Laying, Piece
from layout.paper.sheets import Printed, lay, printed
from layout.plan import Plan
from layout.products import PRODUCTS
from layout.shapes import Placing
from layout.sheet import Sheet, marks_on, sheet_of
from templates_gen.document import About

KIT_FILE = "kit.pdf"


@dataclass(frozen=True, slots=True)
class Output:
    """One file to be made: `sheets` as they must be read back, `laid` the pieces on each, `parts` by name."""

    file: str
    parts: tuple[str, ...]
    sheets: tuple[Sheet, ...]
    laid: tuple[tuple[Piece, ...], ...]
    about: About
    on_paper: bool

    @property
    def format(self) -> str:
        return self.file.rpartition(".")[2]

    @property
    def marks(self) -> int:
        return sum(map(marks_on, self.sheets))


@dataclass(frozen=True, slots=True)
class Outputs:
    """All files of a kit, and what a person should know about how they were laid."""

    files: tuple[Output, ...]
    notes: tuple[str, ...]


def outputs(plan: Plan, metrics: FontMetrics, names: Iterable[str] = PRODUCTS) -> Outputs:
    """The files of the parts called `names`, and the kit's file with every printed sheet."""
    chosen = [name for name in PRODUCTS if name in set(names)]
    layings = {name: lay(plan, PRODUCTS[name].build(plan, metrics), metrics) for name in chosen}
    files = [output for name in chosen for output in _part_files(plan, name, layings, metrics)]
    sheets = printed(plan, [layings[name] for name in chosen], metrics)
    files.append(_on_paper(plan, KIT_FILE, chosen, sheets))
    notes = dict.fromkeys(f"{laying.part.title}: {note}" for laying in layings.values() for note in laying.notes)
    return Outputs(tuple(files), tuple(notes))


def inputs(plan: Plan, file: str) -> str:
    """What a file carries about its kit: only what the drawing needs, as one JSON text."""
    return json.dumps({"file": file, "kit": kit_values(plan.kit)}, ensure_ascii=False, separators=(",", ":"))


def _part_files(plan: Plan, name: str, layings: Mapping[str, Laying], metrics: FontMetrics) -> list[Output]:
    part = PRODUCTS[name].alone(plan, metrics)
    file = f"{name}.svg"
    left, bottom, _, _ = part.box
    alone = ((Piece(part, Placing(0, -left, -bottom)),),)
    about = About(f"{plan.kit.name}: {part.title}", inputs(plan, file))
    return [
        _on_paper(plan, f"{name}.pdf", (name,), printed(plan, [layings[name]], metrics)),
        Output(file, (name,), (sheet_of(part),), alone, about, on_paper=False),
    ]


def _on_paper(plan: Plan, file: str, names: Sequence[str], sheets: Sequence[Printed]) -> Output:
    title = plan.kit.name if file == KIT_FILE else f"{plan.kit.name}: {sheets[0].pieces[0].part.title}"
    laid = tuple(sheet.pieces for sheet in sheets)
    about = About(title, inputs(plan, file))
    return Output(file, tuple(names), tuple(sheet.sheet for sheet in sheets), laid, about, on_paper=True)
