"""The templates of every kind of frame end that is notched, drilled or nailed, by the kind's name."""

from __future__ import annotations

from typing import Any

from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.parts.template.notched import HeldTemplate, SawnTemplate
from layout.parts.template.pinned import DrilledTemplate, NailedTemplate
from layout.parts.template.template_kind import TemplateKind
from layout.plan import Plan

TEMPLATES: ByKind[TemplateKind[Any]] = ByKind(
    "templates",
    {NotchedEnd.name: SawnTemplate(), PeggedEnd.name: DrilledTemplate(), NailEnd.name: NailedTemplate()},
)
_HELD_KIND = HeldTemplate()


def template_kind(plan: Plan) -> TemplateKind[Any]:
    """The kind of template for the frame ends of a plan: notches may be there already."""
    ends = plan.kit.frame.ends
    return _HELD_KIND if isinstance(ends, NotchedEnd) and ends.density else TEMPLATES.of(ends)
