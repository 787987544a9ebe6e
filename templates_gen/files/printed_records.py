"""The files of what is printed: each product on paper and as a drawing alone, and the one file of all guides."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import partial

from layout.drawing.sheet import Care, OnScreen, Part
from layout.kit.box import LEAFLET, START
from layout.messages.english import ENGLISH
from layout.messages.roles import Titles
from layout.paper.choice import Laying
from layout.paper.sheets import Printed
from layout.products import PRODUCTS
from templates_gen.document import About, Entry
from templates_gen.files.drawings import PrintedDrawings
from templates_gen.files.for_printer import for_plan
from templates_gen.files.output import Output, joined_of, names_of, titled
from templates_gen.files.record import FileRecord
from templates_gen.inputs.families import KIT
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left

KIT_FILE = "kit.pdf"

_PAPER, _GRID = "pdf", "weaving-grid"
LEGAL_FILE = "label.pdf"
"""The one file of a kit that shows the maker's legal words."""
BUYER_FILE = f"{LEAFLET}.pdf"
"""The one file of a kit that shows for whom it was made."""
_SEVERAL = (START, LEAFLET, "packing-list", "folded-label", "help")  # of as many sheets or cards as they need


def printed_records(drawn: PrintedDrawings, name: str) -> Iterator[FileRecord]:
    """The files of one product."""
    for form in PRODUCTS[name].forms:
        file = f"{name}.{form}"
        draw = partial(_on_paper, drawn, file, (name,)) if form == _PAPER else partial(_alone, drawn, file, name)
        yield FileRecord(file, name, form, draw)


def kit_records(drawn: PrintedDrawings) -> Iterator[FileRecord]:
    """The one file of all guides."""
    yield FileRecord(KIT_FILE, KIT, _PAPER, partial(_on_paper, drawn, KIT_FILE, in_kit(drawn)))


def in_kit(drawn: PrintedDrawings) -> tuple[str, ...]:
    """The products in the one file of all guides."""
    return tuple(name for name in drawn.names if PRODUCTS[name].in_kit)


def printed_notes(drawn: PrintedDrawings, names: Iterable[str]) -> tuple[str, ...]:
    """What to mind in how the parts of these products lie on paper, in English.

    How pieces are joined stands on their sheets.
    """
    again = ENGLISH.again
    layings = (laying for name in names for laying in drawn.layings(name))
    notes = ((laying.part.title, note) for laying in layings for note in _minded(laying))
    return tuple(message(Left.OF_PART, part=again(title), note=again(note)) for title, note in notes)


def _minded(laying: Laying) -> Iterator[Care]:
    """What is to be minded in how a part lies, and in the part itself."""
    yield from (note for note in laying.notes if isinstance(note, Care))
    yield from (note for note in laying.part.notes if isinstance(note, OnScreen) and note not in laying.notes)


def _alone(drawn: PrintedDrawings, file: str, name: str) -> Output:
    sheet, laid = drawn.alone(name)
    parts = [piece.part for piece in laid]
    return Output(file, names_of(parts), (sheet,), (laid,), _about(drawn, file, parts), on_paper=False)


def _on_paper(drawn: PrintedDrawings, file: str, names: Iterable[str]) -> Output:
    from templates_gen.files.coded import coded

    layings = [laying for name in names for laying in drawn.layings(name)]
    if file == KIT_FILE:
        from layout.paper.first_sheet import with_first_sheet

        grid = f"{_GRID}.{_PAPER}" if _GRID in drawn.names else ""
        layings = [*with_first_sheet(drawn.plan, layings, drawn.metrics, grid)]
    parts = [part for laying in layings for part in laying.parts]
    about = _about(drawn, file, parts)
    sheets = coded(drawn.plan, layings, about, drawn.metrics)
    if file == KIT_FILE:
        about = about._replace(outline=tuple(_outline(sheets)))
    laid = tuple(sheet.pieces for sheet in sheets)
    shown = tuple(sheet.sheet for sheet in sheets)
    names = _once(names_of(parts))
    plain = Output(file, names, shown, laid, about, on_paper=True, joined=joined_of(layings))
    return for_plan(plain, drawn.plan, drawn.metrics)


def _once(names: Sequence[str]) -> tuple[str, ...]:
    """The first sheet, a leaflet and a packing list named once, however many sheets or cards they take."""
    return tuple(name for k, name in enumerate(names) if not (name in _SEVERAL and name in names[:k]))


def _outline(sheets: Sequence[Printed]) -> Iterator[Entry]:
    """Where each sheet of another name than the one before begins."""
    last = ""
    for number, sheet in enumerate(sheets, 1):
        if sheet.title != last:
            yield Entry(sheet.title, number)
        last = sheet.title


def _about(drawn: PrintedDrawings, file: str, parts: Sequence[Part]) -> About:
    words = drawn.plan.words
    what = (
        words.say(Titles.GUIDES) if file == KIT_FILE else words.all_of([*dict.fromkeys(part.title for part in parts)])
    )
    return titled(drawn.plan, what, file, legal=file == LEGAL_FILE, buyer=file == BUYER_FILE)
