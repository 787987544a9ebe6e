"""The sheets of a file on paper, each with the code that says which sheet of which file it is."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from layout.drawing.metrics import FontMetrics
from layout.paper.choice import Laying
from layout.paper.sheets import Printed, printed
from layout.plan import Plan
from templates_gen.codes.modules import codes_for
from templates_gen.document import About


def coded(plan: Plan, layings: Sequence[Laying], about: About, metrics: FontMetrics) -> tuple[Printed, ...]:
    """The sheets of the file that carries `about`, in order."""
    return printed(plan, layings, metrics, partial(codes_for, about, plan.kit.paper))
