"""The strip of one frame end alone, as it is printed, and where its marks are."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Sheet, sheet_of
from layout.messages.catalogue import Catalogue
from layout.parts.strip import numbered_marks
from layout.plan import Plan
from layout.products import PRODUCTS
from layout.values.errors import LayoutError
from layout.warps.warp import End
from templates_gen.desk.look.answers import StripView
from templates_gen.desk.look.pointing import labels
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.desk_numbers import Strips
from templates_gen.writers.screen import write

_ABOUT = {"near": Strips.NEAR, "far": Strips.FAR}
_MARKS = (Pen.MARK, Pen.TEN)


def strip(plan: Plan, end: End, words: Catalogue | None = None) -> StripView:
    """The strip of `end` by itself, drawn in the language of the sheets; what is said of it, in that of `words`.

    Where it cannot be drawn, `why` says so and there is no picture.
    """
    words = words or catalogue_of(plan.words.language)
    said = labels(plan, end, words)
    about = words.say(_ABOUT[end], marks=len(said))
    try:
        (part,) = PRODUCTS[f"strip-{end}"].alone(plan, metrics())
    except LayoutError as error:
        return StripView("", (0.0, 0.0), (), said, (0.0, 0.0), about, error.said(words))
    sheet = sheet_of(part.name, [part])
    marks = tuple(x - part.box[0] for _, x in numbered_marks(plan, end))
    svg = write(sheet, about, plan.words.language)
    return StripView(svg, (sheet.width, sheet.height), marks, said, _span(sheet), about)


def _span(sheet: Sheet) -> tuple[float, float]:
    """From where to where a plain mark reaches, from the top; the whole height where they are no lines."""
    for shape in sheet.shapes:
        if isinstance(shape, Curve) and shape.pen in _MARKS and len(shape.steps) == 1:
            ys = shape.start.y, shape.steps[0].end.y
            return sheet.height - max(ys), sheet.height - min(ys)
    return 0.0, sheet.height
