"""Every file of a kit: its name, the sheets it must hold, and the inputs that it carries."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Placing
from layout.drawing.sheet import Sheet, marks_on, sheet_of
from layout.errors import LayoutError, shown
from layout.kit.kit import kit_values
from layout.paper.choice import Laying, Piece
from layout.paper.sheets import lay, printed
from layout.plan import Plan
from layout.products import PRODUCTS
from templates_gen.document import About
from templates_gen.outlines import outlined

KIT_FILE = "kit.pdf"


@dataclass(frozen=True, slots=True)
class Output:
    """One file to be made: `sheets` as they must be read back, `laid` the pieces on each, `parts` by name.

    On paper the words are real words; a part alone has them as outlines, and stands straight at its own size.
    """

    file: str
    parts: tuple[str, ...]
    sheets: tuple[Sheet, ...]
    laid: tuple[tuple[Piece, ...], ...]
    about: About
    on_paper: bool

    @property
    def format(self) -> str:
        """The name of its format in the table of formats."""
        return self.file.rpartition(".")[2]

    @property
    def marks(self) -> int:
        """How many measured marks its sheets show."""
        return sum(map(marks_on, self.sheets))


class Outputs:
    """All files of a plan, each drawn when it is asked for; `names` picks the parts."""

    def __init__(self, plan: Plan, metrics: FontMetrics, names: Iterable[str] = PRODUCTS) -> None:
        self.plan, self.metrics = plan, metrics
        self.names = tuple(name for name in PRODUCTS if name in set(names))

    @property
    def files(self) -> tuple[str, ...]:
        """Every file's name, in the order of making."""
        return (*(f"{name}{suffix}" for name in self.names for suffix in (".pdf", ".svg")), KIT_FILE)

    @cached_property
    def layings(self) -> Mapping[str, Laying]:
        """How each part lies on the kit's paper; FieldError where one cannot."""
        return {
            name: lay(self.plan, PRODUCTS[name].build(self.plan, self.metrics), self.metrics) for name in self.names
        }

    @property
    def notes(self) -> tuple[str, ...]:
        """What a person should know about how the parts were laid."""
        layings = self.layings.values()
        return tuple(f"{laying.part.title}: {note}" for laying in layings for note in laying.notes)

    def output(self, file: str) -> Output:
        """The file of that name; LayoutError if there is none."""
        if file not in self.files:
            raise LayoutError(f"says that it is {shown(file)}, which is none of {', '.join(self.files)}")
        name, _, form = file.rpartition(".")
        names = self.names if file == KIT_FILE else (name,)
        return self._alone(file, name) if form == "svg" else self._on_paper(file, names)

    def _alone(self, file: str, name: str) -> Output:
        part = PRODUCTS[name].alone(self.plan, self.metrics)
        left, bottom, _, _ = part.box
        laid = ((Piece(part, Placing(0, -left, -bottom)),),)
        about = About(f"{self.plan.kit.name}: {part.title}", inputs(self.plan, file))
        return Output(file, (name,), (outlined(sheet_of(part)),), laid, about, on_paper=False)

    def _on_paper(self, file: str, names: Sequence[str]) -> Output:
        sheets = printed(self.plan, [self.layings[name] for name in names], self.metrics)
        part = "every sheet" if file == KIT_FILE else sheets[0].pieces[0].part.title
        about = About(f"{self.plan.kit.name}: {part}", inputs(self.plan, file))
        laid = tuple(sheet.pieces for sheet in sheets)
        return Output(file, tuple(names), tuple(sheet.sheet for sheet in sheets), laid, about, on_paper=True)


def inputs(plan: Plan, file: str) -> str:
    """What a file carries about its kit: only what the drawing needs, as one JSON text."""
    return json.dumps({"file": file, "kit": kit_values(plan.kit)}, ensure_ascii=False, separators=(",", ":"))
