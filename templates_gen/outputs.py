"""Every file of a kit: its name, the sheets it must hold, and the inputs that it carries."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part, Piece, Sheet, marks_on, sheet_of, stacked
from layout.errors import LayoutError, shown
from layout.kit.kit import kit_values
from layout.paper.choice import Laying
from layout.paper.sheets import lay, printed
from layout.plan import Plan
from layout.products import PRODUCTS, absent, suiting
from templates_gen.document import About
from templates_gen.formats import FORMATS
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
    """All files of a plan, each drawn when it is asked for.

    `only` picks products by name, of those that suit the plan; then there is no file that holds them all.
    """

    def __init__(self, plan: Plan, metrics: FontMetrics, only: Sequence[str] | None = None) -> None:
        self.plan, self.metrics = plan, metrics
        self.whole = only is None
        wanted = tuple(PRODUCTS) if only is None else only
        self.names = tuple(name for name in suiting(plan) if name in wanted)

    @property
    def files(self) -> tuple[str, ...]:
        """Every file's name, in the order of making."""
        own = (f"{name}.{form}" for name in self.names for form in PRODUCTS[name].forms)
        return (*own, KIT_FILE) if self.whole else tuple(own)

    @cached_property
    def layings(self) -> Mapping[str, tuple[Laying, ...]]:
        """How the parts of each product lie on the kit's paper; FieldError where one cannot."""
        return {name: self._laid(name) for name in self.names}

    def _laid(self, name: str) -> tuple[Laying, ...]:
        builds = PRODUCTS[name].builds(self.plan, self.metrics)
        return tuple(lay(self.plan, build, self.metrics) for build in builds)

    @property
    def notes(self) -> tuple[str, ...]:
        """What a person should know about how the parts were laid."""
        layings = (laying for each in self.layings.values() for laying in each)
        return tuple(f"{laying.part.title}: {note}" for laying in layings for note in laying.notes)

    @property
    def absent(self) -> tuple[str, ...]:
        """What is left out of a whole kit, and why."""
        return tuple(f"{name} is left out: {why}." for name, why in absent(self.plan).items() if self.whole)

    def output(self, file: str) -> Output:
        """The file of that name; LayoutError if there is none."""
        if file not in self.files:
            raise LayoutError(f"says that it is {shown(file)}, which is none of {', '.join(self.files)}")
        if file == KIT_FILE:
            return self._on_paper(file, (name for name in self.names if PRODUCTS[name].in_kit))
        name, _, form = file.rpartition(".")
        return self._on_paper(file, (name,)) if FORMATS[form].words else self._alone(file, name)

    def _alone(self, file: str, name: str) -> Output:
        parts = PRODUCTS[name].alone(self.plan, self.metrics)
        laid = tuple(Piece(part, placing) for part, placing in zip(parts, stacked(parts), strict=True))
        about = self._about(file, parts)
        return Output(file, _names(parts), (outlined(sheet_of(name, parts)),), (laid,), about, on_paper=False)

    def _on_paper(self, file: str, names: Iterable[str]) -> Output:
        layings = [laying for name in names for laying in self.layings[name]]
        sheets = printed(self.plan, layings, self.metrics)
        parts = [laying.part for laying in layings]
        laid = tuple(sheet.pieces for sheet in sheets)
        about = self._about(file, parts)
        return Output(file, _names(parts), tuple(sheet.sheet for sheet in sheets), laid, about, on_paper=True)

    def _about(self, file: str, parts: Sequence[Part]) -> About:
        what = "all guides" if file == KIT_FILE else " and ".join(part.title for part in parts)
        return About(f"{self.plan.kit.name}: {what}", inputs(self.plan, file))


def _names(parts: Iterable[Part]) -> tuple[str, ...]:
    return tuple(part.name for part in parts)


def inputs(plan: Plan, file: str) -> str:
    """What a file carries about its kit: only what the drawing needs, as one JSON text."""
    return json.dumps({"file": file, "kit": kit_values(plan.kit)}, ensure_ascii=False, separators=(",", ":"))
