"""What is done before the beam goes on, and what has to be minded."""

from __future__ import annotations

from collections.abc import Sequence

from layout.cutting.job.job import kerf_words, scale_words
from layout.cutting.job.lists import RING_UP, WORDS_X, Section, ended
from layout.cutting.stock.stock import Stock
from layout.drawing.correction import TRUE
from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Point, Shape, Text
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD, is_tall, leading, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet

_STEP = 6.2

STEPS: Sequence[JobSheet] = (JobSheet.STEP_PEOPLE, JobSheet.STEP_MATERIAL)
CARES: Sequence[JobSheet] = (
    JobSheet.CARE_RULES,
    JobSheet.CARE_FIRE,
    JobSheet.CARE_EYES,
    JobSheet.CARE_FUMES,
    JobSheet.CARE_PARTS,
)
"""Common rules of workshops, in our own words; IEC 60825-1 and ISO 11553-1 are about the machines themselves."""


def steps_section(stock: Stock, width: float, words: Catalogue, metrics: FontMetrics) -> Section:
    """What to do before the beam goes on, with numbers in rings, and what to mind in small letters."""
    scale = [] if stock.scale == TRUE else [scale_words(stock, words)]
    steps = [words.say(JobSheet.STEP_SQUARE), kerf_words(stock, words), *scale, *map(words.say, STEPS)]
    shapes: list[Shape] = []
    y = -metrics.cap * LEAD
    for number, step in enumerate(steps, 1):
        shapes += ring(Point(RING, y + RING_UP), str(number), metrics)
        rows = wrap(step, LEAD, width - WORDS_X, metrics)
        for k, row in enumerate(rows):
            y -= leading(LEAD, tall=is_tall(row)) if k else 0.0
            shapes.append(Text(Point(WORDS_X, y), LEAD, row))
        y -= _STEP
    return ended(shapes, y + _STEP, [words.paragraph(list(map(words.say, CARES)))], width, metrics)
