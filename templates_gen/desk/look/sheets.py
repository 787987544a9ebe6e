"""The pile: every file that would be made, and every sheet of it as it is seen on the screen."""

from __future__ import annotations

from layout.cutting.stock.stock import Stock
from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from layout.products import absent
from layout.values.errors import LayoutError
from templates_gen.desk.look.answers import SheetName
from templates_gen.files.outputs import Outputs, kept_outputs
from templates_gen.lettering.fonts import metrics
from templates_gen.writers.screen import write

_SHOWN = ".pdf"


def _outputs(plan: Plan, stock: Stock | None) -> Outputs:
    return kept_outputs(plan, metrics(), None, stock)


def sheet_names(plan: Plan, stock: Stock | None, words: Catalogue | None = None) -> tuple[SheetName, ...]:
    """Every file that is made unasked, in the order of making; what is left out stands last, with the reason."""
    words = words or plan.words
    files = (file for file in _outputs(plan, stock).files if file.endswith(_SHOWN))
    found = [_named(plan, stock, file, words) for file in files]
    found += [SheetName(name, name, 0, words.again(why)) for name, why in absent(plan).items()]
    return tuple(found)


def sheet_name(plan: Plan, stock: Stock | None, file: str, words: Catalogue | None = None) -> SheetName | None:
    """The same for one file; None where no file has that name."""
    if not file.endswith(_SHOWN) or file not in _outputs(plan, stock).files:
        return None
    return _named(plan, stock, file, words or plan.words)


def _named(plan: Plan, stock: Stock | None, file: str, words: Catalogue) -> SheetName:
    try:
        drawn = _outputs(plan, stock).output(file)
    except LayoutError as error:
        return SheetName(file, file, 0, error.said(words))
    return SheetName(file, drawn.about.title.removeprefix(f"{plan.kit.name}: "), len(drawn.sheets))


def screen_sheet(plan: Plan, stock: Stock | None, file: str, number: int) -> str:
    """The SVG of the sheet of that number, from 1, of a file, as it will print. LayoutError where there is none."""
    drawn = _outputs(plan, stock).output(file)
    return write(drawn.sheets[number - 1], drawn.about.title, plan.words.language)
