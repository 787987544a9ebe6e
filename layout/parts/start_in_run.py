"""The first sheet of a kit in a run: for whoever packs or teaches, so that it says what lies in the box, not on which
sheet it was printed.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from layout.messages.roles import Start
from layout.parts.held import held_each, held_once, is_held
from layout.parts.leaflet.steps import LeafletStep, leaflet_steps
from layout.parts.start_here import GRID, Contents
from layout.parts.start_steps import WorkStep, work_steps
from layout.plan import Plan

_PARTS: Mapping[str, tuple[str, ...]] = {
    "1": ("frame-check",),
    "G": ("wrap-gauge", "wrap-gauge-cut"),
    "2": ("strips",),
    "3": ("winding",),
    "5": ("spacing-guide", "spacing-guide-cut", "comb"),
    GRID: ("weaving-grid",),
    "8": ("help",),
}
"""What a step is done with, by its tile; a step without any is work alone."""

_WORK_ALONE = (GRID, "8")
"""Steps that are done whether anything for them is there or not."""

_LEAFLET: Mapping[str, str] = {
    "1": "frame",
    "2": "marks",
    "3": "winding",
    "4": "rows",
    "5": "space",
    "6": "leashes",
    GRID: "sheds",
    "8": "finish",
}
"""Which step of the leaflet it is, by the picture of that; the gauge has none there."""


def contents_in_run(plan: Plan) -> Contents:
    """Each step with the place of what it is done with.

    A step whose part lies neither in the box nor once in the run is that of the leaflet, where that lies there, else
    it is left out.
    """
    steps, places = list[WorkStep](), dict[str, str]()
    for step, place in _placed(plan):
        steps.append(step)
        places[step.tile] = place
    return Contents({}, places=places, steps=tuple(steps))


def _placed(plan: Plan) -> Iterator[tuple[WorkStep, str]]:
    leaflet = {step.picture: (k, step) for k, step in enumerate(leaflet_steps(plan), 1)}
    known = leaflet if is_held(plan, "leaflet") else {}
    for step in work_steps(plan, grid=is_held(plan, "weaving-grid")):
        parts = _PARTS.get(step.tile, ())
        if place := _held(plan, parts):
            yield step, place
        elif found := known.get(_LEAFLET.get(step.tile, "")):
            number, said = found
            own = not parts or step.tile in _WORK_ALONE
            yield (step if own else _as_there(step, said)), plan.words.say(Start.LEAFLET_STEP, number=number)
        elif not parts or step.tile in _WORK_ALONE:
            yield step, ""


def _held(plan: Plan, parts: tuple[str, ...]) -> str:
    """Where any of these lies; nothing where none does."""
    if any(name in held_each(plan) for name in parts):
        return plan.words.say(Start.IN_BOX)
    return plan.words.say(Start.ONE_FOR_ALL) if any(name in held_once(plan) for name in parts) else ""


def _as_there(step: WorkStep, said: LeafletStep) -> WorkStep:
    """A step in the words of the leaflet, which name nothing that is not there."""
    return step._replace(name=said.title, does=said.words)
