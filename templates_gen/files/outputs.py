"""Every file of a kit: its name, the sheets it must hold, and the inputs that it carries."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cached_property

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part, Piece, sheet_of, stacked
from layout.paper.choice import Laying
from layout.paper.sheets import lay, printed
from layout.plan import Plan
from layout.products import PRODUCTS, absent, suiting
from layout.values.errors import LayoutError, shown
from templates_gen.document import About
from templates_gen.files.board_outputs import BoardOutputs
from templates_gen.files.cut_outputs import CutOutputs
from templates_gen.files.formats import FORMATS
from templates_gen.files.output import Output, names_of, titled
from templates_gen.inputs.families import BOARD, JOB, KIT, Selection
from templates_gen.lettering.outlines import outlined

KIT_FILE = "kit.pdf"


class Outputs:
    """All files of a plan, each drawn when it is asked for.

    `only` picks products and families by name (`families`), of those that suit the plan. Without a `stock` nothing is
    cut.
    """

    def __init__(
        self, plan: Plan, metrics: FontMetrics, only: Sequence[str] | None = None, stock: Stock | None = None
    ) -> None:
        self.plan, self.metrics = plan, metrics
        self._laid: dict[str, tuple[Laying, ...]] = {}  # only as asked for: one file needs one product
        self.asked = Selection(only)
        self.whole = self.asked.whole
        self.cut = CutOutputs(plan, stock, metrics, self.asked.names) if stock else None
        self.boards = self._boards(stock) if stock and (self.asked.has(BOARD) or self.asked.has(JOB)) else None
        self.names = tuple(name for name in suiting(plan) if self.asked.has(name))

    def _boards(self, stock: Stock) -> BoardOutputs:
        """The boards hold every part, whatever else is asked for."""
        every = self.cut if self.whole and self.cut else CutOutputs(self.plan, stock, self.metrics, None)
        return BoardOutputs(self.plan, stock, self.metrics, *every.built)

    @cached_property
    def files(self) -> tuple[str, ...]:
        """Every file's name, in the order of making."""
        takes = self.asked.takes
        own = (f"{name}.{form}" for name in self.names for form in PRODUCTS[name].forms if takes(name, form))
        kit = (KIT_FILE,) if self.asked.has(KIT) else ()
        cut = (file for each in self._cut for file in each.files if takes(each.product(file), file.rpartition(".")[2]))
        return (*own, *kit, *cut)

    @property
    def _in_kit(self) -> tuple[str, ...]:
        """The products in the one file of all guides, if that is asked for."""
        return tuple(name for name in suiting(self.plan) if PRODUCTS[name].in_kit) if self.asked.has(KIT) else ()

    @property
    def _cut(self) -> tuple[CutOutputs | BoardOutputs, ...]:
        """The files of what is cut: part by part, and on boards."""
        return tuple(each for each in (self.cut, self.boards) if each)

    def layings(self, name: str) -> tuple[Laying, ...]:
        """How the parts of a product lie on the kit's paper; FieldError where they cannot."""
        if name not in self._laid:
            builds = PRODUCTS[name].builds(self.plan, self.metrics)
            self._laid[name] = tuple(lay(self.plan, build, self.metrics) for build in builds)
        return self._laid[name]

    @property
    def notes(self) -> tuple[str, ...]:
        """What a person should know about how the parts were laid."""
        names = dict.fromkeys((*self.names, *self._in_kit))
        layings = (laying for name in names for laying in self.layings(name))
        own = (f"{laying.part.title}: {note}" for laying in layings for note in laying.notes)
        return (*own, *(note for each in self._cut for note in each.notes))

    @property
    def absent(self) -> tuple[str, ...]:
        """What is left out of a whole kit, and why."""
        return tuple(f"{name} is left out: {why}." for name, why in absent(self.plan).items() if self.whole)

    @property
    def without(self) -> frozenset[str]:
        """The names of what the plan asks for and its numbers or the stock do not allow; why is told."""
        return frozenset(absent(self.plan)) | (self.cut.refused if self.cut else frozenset())

    def output(self, file: str) -> Output:
        """The file of that name; LayoutError if there is none."""
        if file not in self.files:
            raise LayoutError(f"says that it is {shown(file)}, which is none of {', '.join(self.files)}")
        if cut := next((each for each in self._cut if file in each.files), None):
            return cut.output(file)
        if file == KIT_FILE:
            return self._on_paper(file, self._in_kit)
        name, _, form = file.rpartition(".")
        return self._on_paper(file, (name,)) if FORMATS[form].words else self._alone(file, name)

    def _alone(self, file: str, name: str) -> Output:
        parts = PRODUCTS[name].alone(self.plan, self.metrics)
        laid = tuple(Piece(part, placing) for part, placing in zip(parts, stacked(parts), strict=True))
        about = self._about(file, parts)
        return Output(file, names_of(parts), (outlined(sheet_of(name, parts)),), (laid,), about, on_paper=False)

    def _on_paper(self, file: str, names: Iterable[str]) -> Output:
        layings = [laying for name in names for laying in self.layings(name)]
        sheets = printed(self.plan, layings, self.metrics)
        parts = [laying.part for laying in layings]
        laid = tuple(sheet.pieces for sheet in sheets)
        about = self._about(file, parts)
        return Output(file, names_of(parts), tuple(sheet.sheet for sheet in sheets), laid, about, on_paper=True)

    def _about(self, file: str, parts: Sequence[Part]) -> About:
        what = "all guides" if file == KIT_FILE else " and ".join(part.title for part in parts)
        return titled(self.plan, what, file)
