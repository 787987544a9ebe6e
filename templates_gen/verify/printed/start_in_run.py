"""The steps of the first sheet of a run, found out again: what each is done with, and where that lies."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from layout.messages.roles import Start
from layout.plan import Plan
from templates_gen.verify.printed.held import held_each, held_once, holds
from templates_gen.verify.printed.leaflet_facts import facts_of
from templates_gen.verify.printed.leaflet_numbers import told


class Step(NamedTuple):
    """A step by its tile: its name, what is done, and where its sheet or part is."""

    tile: str
    name: str
    does: str
    where: str


class _Means(NamedTuple):
    """What a step is done with, which picture of the leaflet it has, and whether it is done without the former."""

    parts: tuple[str, ...]
    picture: str = ""
    always: bool = False


_MEANS = {
    "1": _Means(("frame-check",), "frame"),
    "G": _Means(("wrap-gauge", "wrap-gauge-cut")),
    "2": _Means(("strips",), "marks"),
    "3": _Means(("winding",), "winding"),
    "4": _Means((), "rows", always=True),
    "5": _Means(("spacing-guide", "spacing-guide-cut", "comb"), "space"),
    "6": _Means((), "leashes", always=True),
    "7": _Means(("weaving-grid",), "sheds", always=True),
    "8": _Means(("help",), "finish", always=True),
}


def steps_in_run(plan: Plan, steps: Iterable[Step]) -> list[Step]:
    """Those of all `steps` that a box knows, with the words and places that it gives them."""
    say, found = plan.words.say, list[Step]()
    each, once = set(held_each(plan)), set(held_once(plan))
    leaflet = told(plan, facts_of(plan)) if holds(plan, "leaflet") else []
    numbers = {one.picture: number for number, one in enumerate(leaflet, 1)}
    for step in steps:
        parts, picture, always = _MEANS[step.tile]
        where = say(Start.LEAFLET_STEP, number=numbers[picture]) if picture in numbers else ""
        if each.intersection(parts):
            found.append(step._replace(where=say(Start.IN_BOX)))
        elif once.intersection(parts):
            found.append(step._replace(where=say(Start.ONE_FOR_ALL)))
        elif always:
            found.append(step._replace(where=where))
        elif where:
            one = leaflet[numbers[picture] - 1]
            found.append(Step(step.tile, one.title, one.said, where))
    return found
