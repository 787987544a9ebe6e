"""The rule above the page, and the notes on the sheet, as templates read them."""

from __future__ import annotations

from typing import NamedTuple

from templates_gen.desk.page.asked import Asked
from templates_gen.desk.page.slip_views import SlipViews
from templates_gen.desk.page.step_views import TickView
from templates_gen.messages.roles.desk_page import DeskPage

_SHORT = {
    "measured": DeskPage.STEP_MEASURED,
    "frame": DeskPage.STEP_FRAME,
    "weaving": DeskPage.STEP_WEAVING,
    "yarns": DeskPage.STEP_YARNS,
    "box": DeskPage.STEP_BOX,
}
_AWAY = "away"


class RuleView(NamedTuple):
    """A step on the rule."""

    id: str
    number: int
    short: str
    said: str
    ticks: tuple[TickView, ...]
    here: bool


class NoteView(NamedTuple):
    """A note on the sheet; `line` is the line of the slip that it leads to."""

    bold: str
    rest: str
    line: str = ""


def rule_of(asked: Asked, slip: SlipViews) -> tuple[RuleView, ...]:
    """Every step with its ticks, and the last, which has none."""
    say = asked.words.say
    found = []
    for step in slip.bare_steps:
        ticks = slip.ticks(step)
        filled, wrong = (sum(each.look in looks for each in ticks) for looks in (("yours", "example"), ("wrong",)))
        values = {"filled": filled + wrong, "lines": len(ticks)}
        said = say(DeskPage.LINES_WRONG, **values, wrong=wrong) if wrong else say(DeskPage.LINES_FILLED, **values)
        found.append(RuleView(step.id, step.number, say(_SHORT[step.id]), said, ticks, asked.step == step.id))
    return (*found, RuleView(_AWAY, len(found) + 1, say(DeskPage.STEP_AWAY), "", (), asked.step == _AWAY))


def notes_of(asked: Asked, slip: SlipViews, *, drawn: bool) -> tuple[NoteView, ...]:
    """What must be known of the sheet that is shown: lines that cannot be read, and lines of the example."""
    say, notes = asked.words.say, []
    if slip.troubles:
        count = len(slip.troubles)
        bold = say(DeskPage.CANNOT_BOLD_ONE) if count == 1 else say(DeskPage.CANNOT_BOLD, count=count)
        first = next((name for name in slip.names if name in slip.troubles), "")
        notes.append(NoteView(bold, say(DeskPage.CANNOT_REST if drawn else DeskPage.CANNOT_FIRST), first))
    if slip.waiting and not notes:
        notes.append(NoteView(say(DeskPage.EXAMPLE_BOLD), say(DeskPage.EXAMPLE_REST, count=len(slip.waiting))))
    return tuple(notes)
