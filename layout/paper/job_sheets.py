"""The job sheet on the kit's paper: its cards and pictures share as few sheets as they can."""

from __future__ import annotations

from math import floor

from layout.cutting.job.job import Job, facts, safety
from layout.cutting.job.picture import picture
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.paper.choice import Laying
from layout.paper.shared import GAP, free_rectangle, share
from layout.paper.sheets import furnisher
from layout.plan import Plan

_TWO_CARDS, _PICTURE = 150.0, 75.0  # mm: from this width two cards stand side by side; no picture is given less height


def job_laid(plan: Plan, job: Job, metrics: FontMetrics) -> Laying:
    """How the cards and pictures of `job` lie; FieldError on paper.size where the paper is too small for them."""
    take_room, paper = furnisher(plan, metrics), plan.kit.paper
    probe = facts(job, _TWO_CARDS, metrics)
    width, height = map(floor, free_rectangle(take_room, probe).size)
    wide = width >= _TWO_CARDS
    card = (width - GAP) / 2 if wide else width
    cards = [facts(job, card, metrics), safety(card, metrics)]
    left_over = height - max(each.height for each in cards) - GAP
    high = left_over if wide and left_over >= _PICTURE else height
    pictures: list[Part] = [picture(job, k, width, high, metrics) for k in range(1, len(job.works) + 1)]
    return share([*cards, *pictures], paper, take_room)
