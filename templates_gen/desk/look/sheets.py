"""The pile: every file that would be made, and every sheet of it as it is seen on the screen."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.stock import Stock
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import SheetName as OnSheets
from layout.paper.steps import named
from layout.parts.strip import work_of
from layout.plan import Plan
from layout.products import PRODUCTS, absent, made_by_default
from layout.values.errors import FieldError, LayoutError
from templates_gen.desk.look.answers import SheetName, SheetView
from templates_gen.desk.look.drawn import drawn, known_files
from templates_gen.desk.look.refusal_picture import refusal_picture
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.roles.desk_numbers import Pile
from templates_gen.writers.screen import write

_CUT: Mapping[str, Role] = {
    "comb": Pile.COMB,
    "winding-comb": Pile.WINDING_COMBS,
    "wrap-gauge-cut": Pile.GAUGE_CUT,
    "spacing-guide-cut": Pile.GUIDE_CUT,
    "shed-stick": Pile.STICK,
    "end-bars": Pile.END_BARS,
    "peg-jig": Pile.JIGS,
    "trial-cut": Pile.TRIAL,
}
_OTHERS: Mapping[str, Role] = {"kit.pdf": Pile.GUIDES, "board.svg": Pile.BOARDS, "job.pdf": OnSheets.NAME_JOB}


def sheet_names(
    plan: Plan, stock: Stock | None, words: Catalogue | None = None, *, counted: bool = False
) -> tuple[SheetName, ...]:
    """Every file that is made unasked, in the order of making; what is left out is of no sheets, with the reason.

    A file is named by product and form ("comb.pdf", "board.svg"), as for `make --only`. Drawings take their time: only
    where it is asked that they be `counted` are they drawn; else `sheets` is 1 where it may be more, and what paper or
    stock do not allow is not known yet.
    """
    words = words or catalogue_of(plan.words.language)
    found = [SheetName(file, _title(plan, file, words), 1) for file in _files(plan, stock)]
    if counted:
        found = [_counted(plan, stock, each, words) for each in found]
    left = (
        SheetName(f"{name}.pdf", _title(plan, f"{name}.pdf", words), 0, words.again(why), _gives(plan, name))
        for name, why in absent(plan).items()
    )
    return (*found, *left)


def sheet_name(plan: Plan, stock: Stock | None, file: str, words: Catalogue | None = None) -> SheetName | None:
    """The same for one file, counted; None where no file has that name."""
    if file not in known_files(plan, stock):
        return None
    words = words or catalogue_of(plan.words.language)
    return _counted(plan, stock, SheetName(file, _title(plan, file, words), 1), words)


def _files(plan: Plan, stock: Stock | None) -> Iterator[str]:
    """Of every product the form that is looked at, on paper if there is one."""
    yield from (f"{name}.pdf" for name in made_by_default(plan) if "pdf" in PRODUCTS[name].forms)
    yield "kit.pdf"
    if stock is not None:
        yield from (f"{name}.pdf" for name in cut_suiting(plan) if not CUT_PRODUCTS[name].checks)
        yield from ("board.svg", "job.pdf")


def _title(plan: Plan, file: str, words: Catalogue) -> str:
    name = file.partition(".")[0]
    if role := _OTHERS.get(file) or _CUT.get(name):
        return words.say(role)
    roles = named(name, work_of(plan))
    return words.say(roles.name) if roles else name


def _gives(plan: Plan, name: str) -> str:
    """The line that would let a product be made that is left out."""
    if name != "weaving-grid":
        return "paper.size"
    return "weaving.width" if plan.amounts.picks_per_cm else "weft.beads.number"


def _counted(plan: Plan, stock: Stock | None, name: SheetName, words: Catalogue) -> SheetName:
    try:
        return name._replace(sheets=len(drawn(plan, stock, name.file).sheets))
    except LayoutError as error:
        return name._replace(
            sheets=0, why=error.said(words), gives=error.field if isinstance(error, FieldError) else ""
        )


def sheet_view(plan: Plan, stock: Stock | None, file: str, number: int, words: Catalogue | None = None) -> SheetView:
    """One sheet of a file, as it will print; the nearest there is where it has none of that `number`.

    Where it cannot be drawn, `why` says so with `words`, and the picture does.
    """
    words = words or catalogue_of(plan.words.language)
    try:
        found = drawn(plan, stock, file)
    except LayoutError as error:
        why = error.said(words)
        gives = error.field if isinstance(error, FieldError) else ""
        return SheetView(refusal_picture(plan, why, words.language), file, 1, 0, why, gives)
    number = min(max(number, 1), len(found.sheets))
    svg = write(found.sheets[number - 1], found.title, plan.words.language)
    return SheetView(svg, found.title, number, len(found.sheets))


def screen_sheet(plan: Plan, stock: Stock | None, file: str, number: int, words: Catalogue | None = None) -> str:
    """The SVG of one sheet of a file, from 1; where it cannot be drawn, one that says why."""
    return sheet_view(plan, stock, file, number, words).svg
