"""What is printed for a plan: every part, laying and sheet once, and only when something needs it."""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part, Piece, Sheet, sheet_of, stacked
from layout.kit.box import START
from layout.paper.choice import Laying
from layout.plan import Plan
from layout.products import PRODUCTS, laid, suiting
from templates_gen.lettering.outlines import outlined

Laid = tuple[Sheet, tuple[Piece, ...]]
"""A sheet and the pieces on it."""


class PrintedDrawings:
    """What is printed for `plan`."""

    def __init__(self, plan: Plan, metrics: FontMetrics) -> None:
        self.plan, self.metrics = plan, metrics
        self.names = suiting(plan)
        self._layings: dict[str, tuple[Laying, ...]] = {}

    def layings(self, name: str) -> tuple[Laying, ...]:
        """How the parts of a product lie on the kit's paper; FieldError where they cannot.

        The first sheet is that of a run: one before other sheets is laid with these.
        """
        if name not in self._layings:
            self._layings[name] = self._first() if name == START else laid(name, self.plan, self.metrics)
        return self._layings[name]

    def _first(self) -> tuple[Laying, ...]:
        from layout.paper.first_sheet import first_in_run

        return first_in_run(self.plan, self.metrics)

    def alone(self, name: str) -> Laid:
        """The parts of a product on a sheet of their own size, words in outlines."""
        return alone(name, PRODUCTS[name].alone(self.plan, self.metrics))


def alone(name: str, parts: tuple[Part, ...]) -> Laid:
    """Parts on one sheet of their own size, words in outlines."""
    laid = tuple(Piece(part, placing) for part, placing in zip(parts, stacked(parts), strict=True))
    return outlined(sheet_of(name, parts)), laid
