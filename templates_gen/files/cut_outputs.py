"""Every file of what is cut for a kit from one stock: for the cutter as SVG and DXF, for the eye as PDF."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property

from layout.cutting.parts.on_paper import drawing_of
from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import STACK_GAP, Care, Part, Piece, Sheet, sheet_of, stacked
from layout.paper.choice import Laying
from layout.paper.sheets import lay, printed
from layout.plan import Plan
from layout.products import PRODUCTS
from layout.values.errors import FieldError
from templates_gen.document import About
from templates_gen.files.formats import FORMATS
from templates_gen.files.output import Output, kerf_in_name, names_of, titled
from templates_gen.lettering.outlines import outlined


class CutOutputs:
    """The files of the cut products among `only` (None: of all) that suit the plan, each drawn when it is asked for.

    A product that the stock does not allow is left out and told in the notes; if it was asked for, and nothing of that
    name is printed either, FieldError says why.
    """

    def __init__(self, plan: Plan, stock: Stock, metrics: FontMetrics, only: Sequence[str] | None) -> None:
        self.plan, self.stock, self.metrics = plan, stock, metrics
        self.names = tuple(name for name in cut_suiting(plan) if only is None or name in only)
        self.asked = only is not None
        self._laid: dict[str, tuple[Laying, ...]] = {}
        self._unlaid: list[str] = []
        self._for_cutters: dict[str, tuple[Sheet, tuple[Piece, ...]]] = {}

    @cached_property
    def built(self) -> tuple[Mapping[str, tuple[Part, ...]], tuple[str, ...]]:
        """The parts of every product that can be cut, by its name, and what is said of the others."""
        built, refused = {}, []
        for name in self.names:
            try:
                built[name] = CUT_PRODUCTS[name].builds(self.plan, self.stock, self.metrics)
            except FieldError as error:
                if self.asked and name not in PRODUCTS:
                    raise
                refused.append(f"{name} is not made: {error}")
        return built, tuple(refused)

    @property
    def refused(self) -> frozenset[str]:
        """The names of the products that the stock does not allow."""
        return frozenset(self.names) - self.built[0].keys()

    @cached_property
    def _products(self) -> Mapping[str, str]:
        """The product of every file; what its paper does not allow is no file."""
        found: dict[str, str] = {}
        for name, parts in self.built[0].items():
            stem = "-".join((name, _size(parts), kerf_in_name(self.stock)))
            forms = [form for form in CUT_PRODUCTS[name].forms if not FORMATS[form].words or self._layings(name)]
            found |= {f"{stem}.{form}": name for form in forms}
        return found

    @property
    def files(self) -> tuple[str, ...]:
        """Every file's name, in the order of making."""
        return tuple(self._products)

    def product(self, file: str) -> str:
        """The product that a file is of."""
        return self._products[file]

    def _layings(self, name: str) -> tuple[Laying, ...]:
        """How the parts of a product lie on the kit's paper; none where one of them cannot, which is noted."""
        if name not in self._laid:
            try:
                self._laid[name] = tuple(self._lay(drawing_of(part)) for part in self.built[0][name])
            except FieldError as error:
                self._laid[name] = ()
                self._unlaid.append(f"{name} is not drawn on paper: {error}")
        return self._laid[name]

    def _lay(self, drawing: Part) -> Laying:
        def build(_low: bool, _joints: Sequence[float]) -> Part:
            return drawing

        return lay(self.plan, build, self.metrics)

    @property
    def notes(self) -> tuple[str, ...]:
        """What asks for care, how the drawings lie on paper, and what is not made."""
        told = [f"{part.title}: {note}" for parts in self.built[0].values() for part in parts for note in _care(part)]
        for name, parts in self.built[0].items():
            for part, laying in zip(parts, self._layings(name), strict=False):
                told += [f"{part.title}: {note}" for note in laying.part.notes[len(part.notes) + 1 :]]
        return (*told, *self.built[1], *self._unlaid)

    def output(self, file: str) -> Output:
        """The file of that name, which must be one of `files`."""
        name = self._products[file]
        return self._on_paper(file, name) if FORMATS[file.rpartition(".")[2]].words else self._for_cutter(file, name)

    def _for_cutter(self, file: str, name: str) -> Output:
        sheet, laid = self._alone(name)
        names = names_of(piece.part for piece in laid)
        about = self._about(file, name)._replace(operations=self.stock.operations)
        return Output(file, names, (sheet,), (laid,), about, on_paper=False, stock=self.stock)

    def _alone(self, name: str) -> tuple[Sheet, tuple[Piece, ...]]:
        """A product as a cutter gets it, words in outlines, drawn once for all its files."""
        if name not in self._for_cutters:
            parts = CUT_PRODUCTS[name].alone(self.plan, self.stock, self.metrics)
            laid = tuple(Piece(part, placing) for part, placing in zip(parts, stacked(parts), strict=True))
            self._for_cutters[name] = outlined(sheet_of(name, parts)), laid
        return self._for_cutters[name]

    def _on_paper(self, file: str, name: str) -> Output:
        """The parts one after the other; a part in one piece is proven by its own coordinates, as it is cut."""
        parts, layings = self.built[0][name], self._layings(name)
        sheets = printed(self.plan, layings, self.metrics)
        tiled = any(laying.way == "tiles" for laying in layings)
        laid = tuple(sheet.pieces for sheet in sheets)
        if not tiled:
            laid = tuple((Piece(part, piece.placing),) for part, (piece,) in zip(parts, laid, strict=True))
        shown = tuple(sheet.sheet for sheet in sheets)
        about = self._about(file, name)
        return Output(file, names_of(parts), shown, laid, about, on_paper=True, stock=self.stock, tiled=tiled)

    def _about(self, file: str, name: str) -> About:
        what = " and ".join(part.title for part in self.built[0][name])
        return titled(self.plan, what, file, self.stock)


def _care(part: Part) -> list[str]:
    """Of what is said on its sheet, what a person should know before cutting."""
    return [note for note in part.notes if isinstance(note, Care)]


def _size(parts: Sequence[Part]) -> str:
    """How large all that is cut is, as it lies in the file."""
    height = sum(part.height for part in parts) + STACK_GAP * (len(parts) - 1)
    return f"{max(part.length for part in parts):.0f}x{height:.0f}mm"


def cut_products_of(file: str) -> tuple[str, ...]:
    """The products that a file of that name may be of."""
    return tuple(name for name in CUT_PRODUCTS if file.startswith(f"{name}-"))
