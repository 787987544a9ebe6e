"""Which messages a spacing guide carries, and what is known of the ends where it lies."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.typeset import SMALL
from layout.estimate.headings import heading_height
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Guide, Sheet
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.values.units import in_unit, say_number
from layout.warps.fan import fan_of
from layout.warps.warp import End

_INCH = 25.4
SEEN = {"near": Guide.NEAR_FROM_FACE, "far": Guide.FAR_FROM_FACE}
ENDS: tuple[End, End] = ("near", "far")
_PIECE = {"near": Guide.NEAR_PIECE, "far": Guide.FAR_PIECE}
_BESIDE = 24.0  # what crosses, the word at an end and white take of a piece, in mm


def phrases_for(
    plan: Plan, end: End, edges: Sequence[float], metrics: FontMetrics, *, up: int, brief: bool
) -> list[Phrase]:
    """The words of a guide, with the name of each piece between the `edges` of its pieces (x in mm).

    `up` is +1 where the weaving lies above it on the paper; a `brief` one spares rows.
    """
    say = plan.words.say
    return [
        *_pieces(plan, end, edges, metrics),
        Phrase(say(Guide.LEFT), "left"),
        Phrase(say(Guide.RIGHT), "right"),
        Phrase(say(Guide.CENTRE), "centre"),
        Phrase(say(SEEN[end]), pen=Pen.STRONG),
        *_order(plan, edges, metrics),
        Phrase(say(Guide.EDGE), arrow="up" if up > 0 else "down", optional=brief),
        Phrase(say(Guide.AWAY, away=lies(plan, end).away), optional=True),
    ]


def _order(plan: Plan, edges: Sequence[float], metrics: FontMetrics) -> list[Phrase]:
    """The order of a guide on each of its pieces that has room for it; a guide in one piece finds room."""
    least = metrics.width(plan.ordered, SMALL) + _BESIDE
    roomy = [span for span in pairwise(edges) if span[1] - span[0] >= least]
    spans = roomy if len(edges) > 2 and roomy else [None]
    return [Phrase(plan.ordered, between=span) for span in spans] if plan.ordered else []


def _pieces(plan: Plan, end: End, edges: Sequence[float], metrics: FontMetrics) -> list[Phrase]:
    """Which piece of which guide each one is; of how many only, where a piece has no room for more."""
    spans = list(pairwise(edges))
    if len(spans) == 1:
        return []
    for role in (_PIECE[end], Sheet.PIECE):
        said = [plan.words.say(role, number=k, total=len(spans)) for k in range(1, len(spans) + 1)]
        widest = max(metrics.width(words, SMALL, Pen.STRONG) for words in said)
        if widest + _BESIDE <= min(right - left for left, right in spans):
            break
    return [Phrase(words, pen=Pen.STRONG, between=span) for words, span in zip(said, spans, strict=True)]


class Lie(NamedTuple):
    """How the ends lie at a heading, lengths in words.

    `away` is how far it is from the outer edge of its frame end, `off` how far ends are off their places there, empty
    where they lie right by themselves; `free` from how far on they do, None where they do nowhere.
    """

    away: str
    off: str
    free: str | None


def lies(plan: Plan, end: End) -> Lie:
    """How the ends lie at the heading of `end`."""
    warp, fan = plan.warp, fan_of(plan.kit.frame, plan.warp)
    height, imperial = heading_height(plan.kit, plan.amounts.woven_mm[1], end), warp.sett.unit.imperial
    words = plan.words
    away = _said(height if end == "near" else fan.high - height, words, imperial=imperial)
    free = fan.needs_no_fingers()
    if free and free[0] <= height <= free[1]:
        return Lie(away, "", away)
    off = _fine(fan.off(height), words, imperial=imperial)
    if not free:
        return Lie(away, off, None)
    return Lie(away, off, _said(free[0] if end == "near" else fan.high - free[1], words, imperial=imperial))


def leaves_thickness_out(plan: Plan) -> bool:
    """Whether where ends lie depends on a thickness of the warp that nobody said."""
    return plan.kit.frame.ends.thread_moves_ends and plan.warp.thickness is None


def _said(mm: float, words: Catalogue, *, imperial: bool) -> str:
    """A height, to the millimetre or the tenth of an inch."""
    return in_unit(say_number(mm / _INCH, 1), "in", words) if imperial else in_unit(say_number(mm, 0), "mm", words)


def _fine(mm: float, words: Catalogue, *, imperial: bool) -> str:
    """A small distance, to the tenth of a millimetre or the hundredth of an inch; ten times finer where it is small."""
    if imperial:
        return in_unit(say_number(mm / _INCH, 2 if mm >= _INCH / 10 else 3), "in", words)
    return in_unit(say_number(mm, 1 if mm >= 1 else 2), "mm", words)
