"""A sheet that says why there is none."""

from __future__ import annotations

from layout.drawing.shapes import Point
from layout.drawing.sheet import Sheet
from layout.drawing.typeset import FIGURE, paragraph, wrap
from layout.plan import Plan
from templates_gen.lettering.fonts import metrics
from templates_gen.writers.screen import write

_MARGIN = 15.0


def refusal_picture(plan: Plan, sentence: str, language: str) -> str:
    """The sentence on the paper of a kit, as the SVG of a sheet; letters that the print font lacks become a dash."""
    paper, font = plan.kit.paper, metrics()
    lacking = font.missing(sentence)
    shown = "".join("-" if letter in lacking else letter for letter in sentence)
    lines = wrap(shown, FIGURE, paper.width - 2 * _MARGIN, font)
    text = paragraph(lines, FIGURE, Point(_MARGIN, paper.height - _MARGIN), font)
    return write(Sheet("", paper.width, paper.height, tuple(text)), shown, language)
