"""What is cut for a plan from a stock: every part, laying and sheet once, and only when something needs it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property

from layout.cutting.parts.on_paper import drawing_of
from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.drawn_scale import drawn_against
from layout.cutting.stock.stock import Stock
from layout.drawing.correction import TRUE, Scale
from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Placing
from layout.drawing.sheet import Part, Piece
from layout.paper.broken import BrokenView, broken_view, is_plain
from layout.paper.choice import Laying
from layout.paper.regions import regions
from layout.paper.sheets import lay
from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.files.board_drawings import BoardDrawings, parts_of
from templates_gen.files.drawings import Laid, alone
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left


class CutDrawings:
    """What is cut for `plan` from `stock`."""

    def __init__(self, plan: Plan, metrics: FontMetrics, stock: Stock) -> None:
        self.plan, self.metrics, self.stock = plan, metrics, stock
        self.names = cut_suiting(plan)
        self.unasked = tuple(name for name in self.names if not CUT_PRODUCTS[name].checks)
        self._parts: dict[str, tuple[Part, ...] | FieldError] = {}
        self._layings: dict[str, tuple[Laying, ...] | FieldError] = {}
        self._sheets: dict[str, Laid] = {}
        self._broken: dict[str, BrokenView] = {}

    def parts(self, name: str) -> tuple[Part, ...] | FieldError:
        """The parts of a product, or why the stock does not allow them."""
        if name not in self._parts:
            try:
                self._parts[name] = CUT_PRODUCTS[name].builds(self.plan, self.stock, self.metrics)
            except FieldError as error:
                self._parts[name] = error
        return self._parts[name]

    def built(self, name: str) -> tuple[Part, ...]:
        """The parts of a product; none where the stock does not allow them."""
        parts = self.parts(name)
        return () if isinstance(parts, FieldError) else parts

    def refused(self, names: Iterable[str] | None = None) -> Mapping[str, FieldError]:
        """Why products of these names, or of all that are made unasked, cannot be cut."""
        every = {name: self.parts(name) for name in (self.unasked if names is None else names)}
        return {name: error for name, error in every.items() if isinstance(error, FieldError)}

    def layings(self, name: str) -> tuple[Laying, ...] | FieldError:
        """How drawings of a product's parts lie on the kit's paper, or why they cannot."""
        if name not in self._layings:
            try:
                scaled = self.scale_of(name) != TRUE
                self._layings[name] = tuple(self._lay(part, scaled=scaled) for part in self.built(name))
            except FieldError as error:
                self._layings[name] = error
        return self._layings[name]

    def _lay(self, part: Part, *, scaled: bool) -> Laying:
        """A plain stick that is too long in a broken view, where that has room."""
        drawing = drawing_of(part, self.plan.words, scaled=scaled)
        grid = regions(self.plan.kit.paper)
        width = grid.right - grid.left
        if is_plain(part) and (view := broken_view(part, drawing, width, self.plan.words, self.metrics)):
            try:
                laying = self._laid(view.drawing)
            except FieldError:
                return self._laid(drawing)
            self._broken[part.name] = view
            return laying
        return self._laid(drawing)

    def _laid(self, drawing: Part) -> Laying:
        def build(_low: bool, _joints: Sequence[float]) -> Part:
            return drawing

        return lay(self.plan, build, self.metrics)

    def as_cut(self, part: Part, placing: Placing) -> tuple[Piece, ...]:
        """`part`, whose drawing lies on a sheet by `placing`, as it is measured there: whole, or its two ends."""
        if view := self._broken.get(part.name):
            return tuple(Piece(end, placing.after(inner)) for end, inner in view.ends)
        return (Piece(part, placing),)

    def scale_of(self, name: str) -> Scale:
        """The scale that a product is drawn against: the stock's, but for what checks the cutter."""
        return TRUE if CUT_PRODUCTS[name].checks else self.stock.scale

    def forms(self, name: str) -> tuple[str, ...]:
        """The kinds of files in which a product comes."""
        return CUT_PRODUCTS[name].forms

    def alone(self, name: str) -> Laid:
        """A product as it is cut, words in outlines."""
        return alone(name, CUT_PRODUCTS[name].alone(self.plan, self.stock, self.metrics))

    def for_cutter(self, name: str) -> Laid:
        """A product as a cutter gets it: drawn against its scale, once for all files."""
        if name not in self._sheets:
            sheet, laid = self.alone(name)
            self._sheets[name] = drawn_against(sheet, self.scale_of(name)), laid
        return self._sheets[name]

    @cached_property
    def boards(self) -> BoardDrawings:
        """All parts on boards, and the job sheet."""
        built = {name: parts for name in self.unasked if (parts := self.built(name))}
        refused = [message(Left.NOT_MADE, name=name, why=error) for name, error in self.refused().items()]
        placed = parts_of(self.plan, self.stock, built)
        return BoardDrawings(self.plan, self.stock, self.metrics, placed, refused)
