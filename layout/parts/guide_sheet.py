"""What the sheet of the spacing guides says: how they are used, how they lie, how they are read."""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, filled, line
from layout.drawing.sheet import Block, Entry
from layout.drawing.signs import scissors
from layout.messages.catalogue import Role
from layout.messages.roles import Guide, Sheet, SheetName
from layout.parts.guide_picture import guide_picture, shown_at
from layout.parts.guide_words import ENDS, SEEN, leaves_thickness_out, lies
from layout.plan import Plan

_BY_THEMSELVES = {"near": Guide.BY_THEMSELVES_NEAR, "far": Guide.BY_THEMSELVES_FAR}
_OFF = {"near": Guide.OFF_NEAR, "far": Guide.OFF_FAR}
_ALWAYS = {"near": Guide.ALWAYS_PUSH_NEAR, "far": Guide.ALWAYS_PUSH_FAR}
_PUSH = {
    "all": (Guide.PUSH_LEFT, Guide.PUSH_RIGHT),
    "odd": (Guide.PUSH_LEFT_ODD, Guide.PUSH_RIGHT_ODD),
    "even": (Guide.PUSH_LEFT_EVEN, Guide.PUSH_RIGHT_EVEN),
    "mixed": (Guide.PUSH_LEFT_MIXED, Guide.PUSH_RIGHT_MIXED),
}


class GuideSheet(NamedTuple):
    """The words and pictures beside the guides, the same for both of them."""

    title: str
    purpose: str
    steps: tuple[str, ...]
    notes: tuple[str, ...]
    blocks: tuple[Block, ...]
    cautions: tuple[str, ...]


def guide_sheet(plan: Plan, metrics: FontMetrics) -> GuideSheet:
    """All that stands beside the guides of a plan."""
    say = plan.words.say
    return GuideSheet(
        say(SheetName.NAME_GUIDES),
        say(SheetName.PURPOSE_GUIDES),
        (say(Guide.GLUE), _lay(plan), say(_push(plan)), say(Guide.CHECK)),
        _notes(plan),
        (
            Block(say(Guide.HOW_IT_LIES), say(SEEN[shown_at(plan)]), *guide_picture(plan, metrics)),
            Block(say(Guide.READING), entries=tuple(_reading(plan))),
            Block(entries=tuple(_legend(plan)), in_a_row=True),
        ),
        (say(Sheet.KNIFE),),
    )


def _lay(plan: Plan) -> str:
    near, far = (lies(plan, end).away for end in ENDS)
    if plan.warp.kind == "rod":
        return plan.words.say(Guide.LAY_ROD, near=near)
    if near == far:
        return plan.words.say(Guide.LAY, away=near)
    return plan.words.say(Guide.LAY_BOTH, near=near, far=far)


def has_back(plan: Plan) -> bool:
    """Whether any end comes from behind to one of the headings."""
    return any("back" in plan.warp.layers_at(end) for end in ENDS)


def _push(plan: Plan) -> Role:
    """From which side ends are pushed, and which of them come from the face."""
    first = [plan.warp.layers_at(end)[:: plan.warp.toward][0] for end in ENDS]
    kind = "all" if not has_back(plan) else "mixed" if first[0] != first[1] else "odd" if first[0] == "face" else "even"
    return _PUSH[kind][plan.warp.toward < 0]


def _notes(plan: Plan) -> tuple[str, ...]:
    """How the ends lie at both headings before anyone pushes them."""
    say, said = plan.words.say, []
    for end in ENDS:
        away, off, free = lies(plan, end)
        if not off:
            said.append(say(_BY_THEMSELVES[end]))
        elif free is None:
            said.append(say(_ALWAYS[end], away=away, off=off))
        else:
            said.append(say(_OFF[end], away=away, off=off, free=free))
    return (*said, *([say(Guide.UNKNOWN_THICKNESS)] if leaves_thickness_out(plan) else []))


def _upright(pen: Pen, *xs: float, high: float = 3.0) -> tuple[Shape, ...]:
    return tuple(line(Point(x, -high / 2), Point(x, high / 2), pen) for x in xs)


def _reading(plan: Plan) -> list[Entry]:
    """What each sign on a guide means."""
    say, ticks = plan.words.say, (-5.0, -2.5, 0.0, 2.5, 5.0)
    triangle = filled([Point(-1, 1.2), Point(-1, -1.2), Point(1.4, -1.2)], Pen.SOLID)
    scale = tuple(line(Point(x, -1.2), Point(x, 1.2 if abs(x) == ticks[-1] else 0.0), Pen.UNIT) for x in ticks)
    back = [Entry(_upright(Pen.END_MARK_BACK, -2, 0, 2), say(Guide.BROKEN_MARK))] if has_back(plan) else []
    return [
        Entry(_upright(Pen.END_MARK, -2, 0, 2), say(Guide.FULL_MARK)),
        *back,
        Entry((triangle,), say(Guide.LIMIT)),
        Entry(scale, say(Guide.HALF_INCHES if plan.warp.sett.unit.imperial else Guide.CENTIMETRE_SCALE)),
        Entry((line(Point(-6, 0), Point(6, 0), Pen.EDGE),), say(Guide.THICK_EDGE)),
    ]


def _legend(plan: Plan) -> list[Entry]:
    say = plan.words.say
    cut = (line(Point(-6, 0), Point(6, 0), Pen.CUT), *scissors(Point(-4, 0)))
    behind = [Entry((line(Point(-6, 0), Point(6, 0), Pen.THREAD_BACK),), say(Guide.BEHIND))] if has_back(plan) else []
    return [
        Entry(cut, say(Guide.CUT)),
        *behind,
        Entry((line(Point(-6, 0), Point(6, 0), Pen.CENTRE),), say(Guide.CENTRE)),
    ]
