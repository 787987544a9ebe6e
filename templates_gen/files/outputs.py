"""The one table of a kit's files, and what a person should know about them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cached_property
from typing import TYPE_CHECKING

from layout.drawing.metrics import FontMetrics
from layout.parts.held import can_have
from layout.plan import Plan
from layout.products import PRODUCTS, absent, made_by_default
from layout.values.errors import FieldError, LayoutError, shown
from templates_gen.files.drawings import PrintedDrawings
from templates_gen.files.for_printer import printer_notes
from templates_gen.files.kept import cut_drawings, printed_drawings
from templates_gen.files.output import Output
from templates_gen.files.printed_records import KIT_FILE, in_kit, kit_records, printed_notes, printed_records
from templates_gen.files.record import FileRecord
from templates_gen.inputs.families import BOARD, BOX, JOB, KIT, Selection
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left

if TYPE_CHECKING:
    from layout.cutting.stock.stock import Stock
    from templates_gen.files.board_drawings import BoardDrawings
    from templates_gen.files.cut_drawings import CutDrawings


class Outputs:
    """The files of a plan that are asked for, each drawn when it is asked for.

    What lies in a box is made of a kit that is `boxed` whether the kit says what does or not; the boards of its run
    hold its cut parts.
    `only` picks products and families by name (`families`), of those that suit the plan; None is all. Without a `stock`
    nothing is cut. `printed` and `cut` are drawings of the same plan and stock, if there are any.

    A cut product that the stock does not allow is left out and named in the notes; if it was asked for, and nothing of
    that name is printed either, FieldError says why.
    """

    def __init__(
        self,
        plan: Plan,
        metrics: FontMetrics,
        only: Sequence[str] | None = None,
        stock: Stock | None = None,
        *,
        printed: PrintedDrawings | None = None,
        cut: CutDrawings | None = None,
        boxed: bool = False,
    ) -> None:
        self.plan, self.metrics, self.boxed = plan, metrics, boxed
        self.asked = Selection(only)
        self.whole = self.asked.whole
        self.printed = printed or PrintedDrawings(plan, metrics)
        self.cut = (cut or _cut_drawings(plan, metrics, stock)) if stock else None

    @cached_property
    def records(self) -> Mapping[str, FileRecord]:
        """Every file by its name, in the order of making."""
        every = (record for records in self._all() for record in records)
        return {record.name: record for record in every if self.asked.takes(record.product, record.form)}

    def _all(self) -> Iterator[Iterator[FileRecord]]:
        """The records of all that is asked for, product by product; whatever else there is stays undrawn."""
        for name in self._printed_names:
            yield printed_records(self.printed, name)
        if self.asked.has(KIT):
            yield kit_records(self.printed)
        if self.cut is not None:
            self._raise_refused(self.cut)
            yield from self._cut_records(self.cut)

    def _cut_records(self, cut: CutDrawings) -> Iterator[Iterator[FileRecord]]:
        from templates_gen.files.board_records import board_records, job_records
        from templates_gen.files.cut_records import cut_records

        for name, forms in self._cut_forms.items():
            yield cut_records(cut, name, forms)
        if self.boards is not None:
            yield board_records(self.boards) if self.asked.has(BOARD) else iter(())
            yield job_records(self.boards) if self.asked.has(JOB) else iter(())

    @cached_property
    def _printed_names(self) -> tuple[str, ...]:
        asked = [name for name in self.printed.names if self.asked.has(name)]
        unasked = made_by_default(self.plan)
        in_box = self.plan.kit.box.has
        return tuple(name for name in asked if not self.whole or name in unasked or (self.boxed and in_box(name)))

    @cached_property
    def _cut_forms(self) -> Mapping[str, tuple[str, ...]]:
        """The forms that are asked for of every cut product."""
        if self.cut is None:
            return {}
        takes = self.asked.takes
        return {
            name: tuple(form for form in self.cut.forms(name) if takes(name, form))
            for name in (self.cut.unasked if self.whole else self.cut.names)
            if self.asked.has(name)
        }

    def _raise_refused(self, cut: CutDrawings) -> None:
        """FieldError where a product was asked for by name and can neither be cut nor printed."""
        for name, error in {} if self.whole else cut.refused(self._cut_forms).items():
            if name not in PRODUCTS:
                raise error

    @property
    def boards(self) -> BoardDrawings | None:
        """The boards, where they or the job sheet are asked for; they hold every part, whatever else is asked for."""
        wanted = self.cut is not None and not self.boxed and (self.asked.has(BOARD) or self.asked.has(JOB))
        return self.cut.boards if wanted and self.cut else None

    @property
    def files(self) -> tuple[str, ...]:
        """Every file's name, in the order of making."""
        return tuple(self.records)

    def output(self, file: str) -> Output:
        """The file of that name; LayoutError if there is none."""
        if file not in self.records:
            raise LayoutError(message(Left.NONE_OF, file=shown(file), files=", ".join(self.files)))
        return self.records[file].draw()

    @property
    def notes(self) -> tuple[str, ...]:
        """What a person should mind of how the parts were laid and of cut parts, and what the boards take."""
        inside = in_kit(self.printed) if self.asked.has(KIT) else ()
        names = dict.fromkeys((*self._printed_names, *inside))
        own = (*printed_notes(self.printed, names), *self._cut_notes(), *self.box_notes, *self.board_notes)
        return (*printer_notes(self.plan), *own)

    @property
    def board_notes(self) -> tuple[str, ...]:
        """What the boards take, where there are any, and why there is no job sheet, where there is none."""
        if self.boards is None:
            return ()
        from templates_gen.files.board_records import board_notes

        return board_notes(self.boards)

    def _cut_notes(self) -> Iterator[str]:
        """What asks for care, and what is not made."""
        if self.cut is None:
            return
        from templates_gen.files.cut_records import PAPER, care_notes

        drawn = [name for name, forms in self._cut_forms.items() if PAPER in forms]
        for name in self._cut_forms:
            yield from care_notes(self.cut, name)
        unboxed = {
            name for name in self.cut.refused(self._cut_forms) if name not in self.plan.refused or not self._shows_box
        }
        for name, why in self.cut.refused(unboxed).items():
            yield message(Left.NOT_MADE, name=name, why=why)
        for name in drawn:
            if isinstance(error := self.cut.layings(name), FieldError):
                yield message(Left.NOT_DRAWN, name=name, why=error)

    @property
    def absent(self) -> tuple[str, ...]:
        """What is left out of a whole kit, and why, where that is not said of its box."""
        boxed = self._not_in_box
        return tuple(
            message(Left.LEFT_OUT, name=name, why=why)
            for name, why in absent(self.plan).items()
            if self.whole and name not in boxed
        )

    @property
    def box_notes(self) -> tuple[str, ...]:
        """Why something that the kit names for its box is not in it, where sheets say what is."""
        return tuple(message(Left.NOT_IN_BOX, name=name, why=why) for name, why in self._not_in_box.items())

    @property
    def _shows_box(self) -> bool:
        return any(name in BOX for name in self._printed_names)

    @cached_property
    def _not_in_box(self) -> Mapping[str, str | FieldError]:
        """Why, by its name."""
        box, lacking = self.plan.kit.box, absent(self.plan)
        named = [
            name for name in (*box.each_holds, *box.run_holds) if self._shows_box and not can_have(self.plan, name)
        ]
        cut = self.cut.refused(name for name in named if name in self.plan.refused) if self.cut else {}
        printed = {name: message(Left.AS_SAID, why=lacking[name]) for name in named if name in lacking}
        others = {name: message(Left.NO_WINDS) for name in named if name not in cut and name not in printed}
        return {**printed, **cut, **others}

    @property
    def without(self) -> frozenset[str]:
        """The names of what the plan asks for and its numbers or the stock do not allow; notes say why."""
        return frozenset(absent(self.plan)) | (self.cut.refused().keys() if self.cut else frozenset())


def _cut_drawings(plan: Plan, metrics: FontMetrics, stock: Stock) -> CutDrawings:
    from templates_gen.files.cut_drawings import CutDrawings

    return CutDrawings(plan, metrics, stock)


def kept_outputs(
    plan: Plan,
    metrics: FontMetrics,
    only: Sequence[str] | None = None,
    stock: Stock | None = None,
    *,
    boxed: bool = False,
) -> Outputs:
    """The files that are asked for, from the drawings that this process keeps."""
    cut = cut_drawings(plan, stock, metrics) if stock else None
    return Outputs(plan, metrics, only, stock, printed=printed_drawings(plan, metrics), cut=cut, boxed=boxed)


__all__ = ["KIT_FILE", "Output", "Outputs", "kept_outputs"]
