"""Wrong builders of strips and templates: how they are folded, what they say, where their arrows point."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from kits import FLAT, NAILS, NOTCHED, PEGGED
from wrong_builders import Wrong, returns, value

import layout.parts.strip as strip_module
import layout.parts.strip_words as wording
import layout.parts.strips.nailed as nailed_module
import layout.parts.strips.notched as notched_module
import layout.parts.strips.pegged as pegged_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, circle
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Count, Sheet, Strip
from layout.parts.phrases import Phrase
from layout.plan import Plan

ROUND: Mapping[str, object] = {"weaving.slant": "face straight"}
NEAR = "strip-near.pdf"
DOUBLED = NOTCHED | {"weaving.doubled_selvedges": 2}
HELD = NOTCHED | {"frame.notch_density": "5 per cm"}
NAILED = NAILS | {"frame.nail_length": "12 mm"}
ROUNDED = FLAT | {"frame.edge_radius": "4 mm"}
FROM_RIGHT = PEGGED | {"weaving.start": "right", "weaving.near_end": "top", "weaving.tie_off": "far end"}


def thick_nails(ends: Any, marks: list[float], up: int) -> Any:
    """Circles of 2 mm for nails of 1.8 mm."""
    return [circle(Point(x, up * float(ends.edge_distance.mm)), 1.0, Pen.REGISTER) for x in marks]


def crossed(phrases: list[Phrase]) -> list[Phrase]:
    """Both sides with each other's words."""
    left, right = phrases
    return [left._replace(words=right.words), right._replace(words=left.words)]


def moved(phrases: list[Phrase]) -> list[Phrase]:
    """Each side's words and arrow at the other side."""
    left, right = phrases
    return [left._replace(stand="right"), right._replace(stand="left")]


def pointed(old: Any, new: Any) -> Callable[[list[Phrase]], list[Phrase]]:
    """The last phrase with an arrow of that way has another one."""

    def change(phrases: list[Phrase]) -> list[Phrase]:
        last = max((k for k, phrase in enumerate(phrases) if phrase.arrow == old), default=None)
        return [phrase._replace(arrow=new) if k == last else phrase for k, phrase in enumerate(phrases)]

    return change


def says(old: Role, new: Role) -> Callable[[tuple[str, ...]], tuple[str, ...]]:
    """One message in the place of another."""
    return lambda notes: tuple(note.replace(ENGLISH.say(old), ENGLISH.say(new)) for note in notes)


def worded(old: str, new: str) -> Callable[[list[str]], list[str]]:
    """Other words in every sentence."""
    return lambda sentences: [sentence.replace(old, new) for sentence in sentences]


STRIPS: Mapping[str, Wrong] = {
    # what a strip is folded and cut to
    "a fold of a notch template inside the board": Wrong(
        NOTCHED, "strip-near.svg", returns(notched_module, "_notched", lambda b: replace(b, lines=((0.5, Pen.FOLD),)))
    ),
    "a flap as if the board were thinner": Wrong(
        NOTCHED, NEAR, returns(notched_module, "_notched", lambda b: replace(b, back=b.back + 2))
    ),
    "the line of a row of pegs aside": Wrong(
        PEGGED, NEAR, returns(pegged_module, "_pegged", lambda b: replace(b, lines=((21.0, Pen.REGISTER), b.lines[1])))
    ),
    "the line of a row of nails aside": Wrong(
        NAILS, NEAR, returns(nailed_module, "_nailed", lambda b: replace(b, lines=((9.99, Pen.REGISTER),)))
    ),
    "nails drawn thicker": Wrong(NAILED, "strip-far.svg", value(nailed_module, "_nails", thick_nails)),
    # what a strip says
    "left and right exchanged": Wrong(NOTCHED, NEAR, returns(wording, "_sides", crossed)),
    "right named at the left": Wrong(NOTCHED, "strip-far.pdf", returns(wording, "_sides", moved)),
    "the arrow to the weaving points away from it": Wrong(
        FROM_RIGHT, NEAR, returns(strip_module, "phrases_for", pointed("down", "up"))
    ),
    "top and bottom exchanged": Wrong(
        NOTCHED, NEAR, returns(strip_module, "notes_for", says(Sheet.FOR_BOTTOM, Sheet.FOR_TOP))
    ),
    "near and far exchanged in words": Wrong(
        FROM_RIGHT, NEAR, value(wording, "_SEEN", {"near": Strip.FAR_FROM_FACE, "far": Strip.NEAR_FROM_FACE})
    ),
    "another way through notches": Wrong(HELD, NEAR, returns(wording, "_way", lambda _: Strip.WAY_EVERY)),
    "doubled ends not said": Wrong(DOUBLED, NEAR, value(Plan, "doubled", property(lambda _: ()))),
    "one doubled end too many": Wrong(
        DOUBLED, NEAR, value(Plan, "doubled", property(lambda _: (ENGLISH.say(Count.DOUBLED_OUTER, outer=3),)))
    ),
    "the sett of winds said for ends": Wrong(
        NOTCHED,
        NEAR,
        value(
            Plan,
            "sett_words",
            property(lambda _: ENGLISH.say(Count.SETT_CM_WINDS, sett="1.25 ends per cm", count="5", unit="4 cm")),
        ),
    ),
    "pegs of another size in words": Wrong(PEGGED, NEAR, returns(pegged_module, "_drilling", worded("2.5 mm", "3 mm"))),
    "rows of pegs another distance apart in words": Wrong(
        PEGGED, NEAR, returns(pegged_module, "_drilling", worded("12 mm", "10 mm"))
    ),
    "nails of another size in words": Wrong(NAILED, NEAR, returns(nailed_module, "_nailing", worded("1.8 mm", "2 mm"))),
    "nails that stand out further in words": Wrong(
        NAILED, NEAR, returns(nailed_module, "_nailing", worded("12 mm", "14 mm"))
    ),
    "the caution of nails left out": Wrong(NAILED, NEAR, returns(nailed_module, "_nailing", lambda said: said[:-1])),
    "a nail template called one to drill by": Wrong(
        NAILED, NEAR, returns(strip_module, "title_of", lambda _: ENGLISH.say(Strip.DRILLING_NEAR))
    ),
    "pegs said for nails": Wrong(NAILED, NEAR, returns(wording, "_way", lambda _: Strip.WAY_PEGS)),
    "width and depth of a notch exchanged in words": Wrong(
        NOTCHED,
        "strip-far.pdf",
        returns(notched_module, "_notching", worded("1.2 mm wide and 6 mm", "6 mm wide and 1.2 mm")),
    ),
    "the title of the other end": Wrong(
        PEGGED, "strip-far.pdf", returns(strip_module, "title_of", lambda _: ENGLISH.say(Strip.DRILLING_NEAR))
    ),
}
"""By a name that says what is wrong."""
