"""The files of cut parts, part by part: for the cutter as SVG and DXF, for the eye as PDF."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from layout.cutting.products import CUT_PRODUCTS
from layout.drawing.correction import TRUE
from layout.drawing.sheet import STACK_GAP, Care, Part
from layout.messages.english import ENGLISH
from layout.paper.choice import Laying
from layout.values.errors import FieldError
from templates_gen.document import About
from templates_gen.files.coded import coded
from templates_gen.files.cut_drawings import CutDrawings
from templates_gen.files.for_printer import for_plan
from templates_gen.files.output import Output, joined_of, kerf_in_name, names_of, settings_in_name, titled
from templates_gen.files.record import FileRecord
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left

PAPER = "pdf"
"""The form of a drawing for the eye."""


def cut_records(drawn: CutDrawings, name: str, forms: Sequence[str]) -> Iterator[FileRecord]:
    """The files of one product in those `forms`; what stock or paper does not allow is no file."""
    parts = drawn.parts(name)
    if isinstance(parts, FieldError):
        return
    size = _size(parts)
    for form in forms:
        plain = form == PAPER or drawn.scale_of(name) == TRUE
        settings = kerf_in_name(drawn.stock) if plain else settings_in_name(drawn.stock)
        file = f"{name}-{size}-{settings}.{form}"
        if form != PAPER:
            yield FileRecord(file, name, form, partial(_for_cutter, drawn, file, name))
        elif not isinstance(layings := drawn.layings(name), FieldError):
            yield FileRecord(file, name, form, partial(_on_paper, drawn, file, name, layings))


def _for_cutter(drawn: CutDrawings, file: str, name: str) -> Output:
    sheet, laid = drawn.for_cutter(name)
    names = names_of(piece.part for piece in laid)
    about = _about(drawn, file, name)._replace(operations=drawn.stock.operations)
    return Output(file, names, (sheet,), (laid,), about, on_paper=False, stock=drawn.stock)


def _on_paper(drawn: CutDrawings, file: str, name: str, layings: Sequence[Laying]) -> Output:
    """The parts one after the other; a part in one piece is proven by its own coordinates, as it is cut."""
    parts, about = drawn.built(name), _about(drawn, file, name)
    sheets = coded(drawn.plan, layings, about, drawn.metrics)
    tiled = any(laying.way == "tiles" for laying in layings)
    laid = tuple(sheet.pieces for sheet in sheets)
    if not tiled:
        own = iter(parts)  # a sheet of words alone holds none
        laid = tuple(
            tuple(each for piece in pieces for each in drawn.as_cut(next(own), piece.placing)) for pieces in laid
        )
    shown = tuple(sheet.sheet for sheet in sheets)
    plain = Output(file, names_of(parts), shown, laid, about, True, drawn.stock, tiled, joined_of(layings))
    return for_plan(plain, drawn.plan, drawn.metrics)


def _about(drawn: CutDrawings, file: str, name: str) -> About:
    what = drawn.plan.words.all_of([*dict.fromkeys(part.title for part in drawn.built(name))])
    return titled(drawn.plan, what, file, drawn.stock)


def _size(parts: Sequence[Part]) -> str:
    """How large all that is cut is, as it lies in the file."""
    height = sum(part.height for part in parts) + STACK_GAP * (len(parts) - 1)
    return f"{max(part.length for part in parts):.0f}x{height:.0f}mm"


def care_notes(drawn: CutDrawings, name: str) -> list[str]:
    """What a person should know before cutting a product, of what its sheets say."""
    care = ((part.title, note) for part in drawn.built(name) for note in part.notes if isinstance(note, Care))
    return [message(Left.OF_PART, part=ENGLISH.again(title), note=ENGLISH.again(note)) for title, note in care]


def cut_products_of(file: str) -> tuple[str, ...]:
    """The products that a file of that name may be of."""
    return tuple(name for name in CUT_PRODUCTS if file.startswith(f"{name}-"))
