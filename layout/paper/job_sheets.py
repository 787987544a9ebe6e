"""The job sheets on the kit's paper: each of their parts as wide as the field, on a sheet of its own."""

from __future__ import annotations

from layout.cutting.job.job import Job
from layout.cutting.job.pages import bare_page, job_pages
from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Placing
from layout.drawing.sheet import Part, Piece
from layout.kit.kit import Paper
from layout.messages.catalogue import Message
from layout.messages.roles import SheetNeed
from layout.paper.choice import Laying
from layout.paper.regions import FIELD, regions
from layout.paper.sheets import Furnisher
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_number

_CROSSES = 1.1  # mm that the crosses of a part reach below its words


def job_laid(plan: Plan, job: Job, metrics: FontMetrics) -> Laying:
    """How the sheets of `job` lie; FieldError on paper.size where the paper is too small for one of them."""
    grid, paper = regions(plan.kit.paper), plan.kit.paper
    width = grid.right - grid.left
    area = Furnisher(plan, metrics)(bare_page(job, plan.words))
    top = min(box[1] for box in area.taken if box[3] >= grid.head[3] and box[2] - box[0] > width / 2)
    parts = tuple(job_pages(job, (width, top - FIELD), plan.words, metrics))
    for part in parts:
        if -part.box[1] > top - FIELD + _CROSSES:
            raise _too_large(part, paper)
    sheets = tuple((Piece(part, Placing(0, grid.left, top)),) for part in parts)
    return Laying("shared", parts[0], sheets, ())


def _too_large(part: Part, paper: Paper) -> FieldError:
    size = {"length": say_number(part.length, 0), "height": say_number(part.height, 0)}
    on = {"width": say_number(paper.width, 1), "up": say_number(paper.height, 1)}
    got = Message(SheetNeed.GOT_WHOLE, {"part": part.title, **size, **on})
    return FieldError("paper.size", SheetNeed.WHOLE, got, 'size = "a3"')
