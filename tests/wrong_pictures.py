"""Wrong builders of pictures: how to wind, and the frame check."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any

from kits import FLAT, NAILS, NOTCHED, PEGGED, TRAVEL
from wrong_builders import Wrong, returns, swap, value

import layout.parts.winding.actions as actions_module
import layout.parts.winding.kinds.nailed as nailed_module
import layout.parts.winding.kinds.pegged as pegged_module
import layout.parts.winding.kinds.wound as wound_module
import layout.parts.winding.legend as legend_module
import layout.parts.winding.rings as rings_module
import layout.parts.winding.shed as shed_module
import layout.parts.winding.side as side_module
import layout.parts.winding.winding as winding_module
import layout.parts.winding.words as words_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Text
from layout.frames.frame import Frame
from layout.messages.english import ENGLISH
from layout.messages.roles import Shed, Winding, WindStep
from layout.parts.winding.actions import Action
from layout.parts.winding.face import Face
from layout.parts.winding.kinds.picture_kind import Section
from layout.plan import Plan

PICTURE = "winding.pdf"
ODD: Mapping[str, object] = {"weaving.tie_off": "far end"}
FROM_RIGHT = NOTCHED | {"weaving.start": "right", "weaving.near_end": "top"}
DOUBLED = PEGGED | {"weaving.doubled_selvedges": 3}
ALONE = actions_module._ALONE
SMALL: Mapping[str, object] = {"paper.size": "148 x 210 mm"}
ACROSS: Mapping[str, object] = {"paper.size": "210 x 148 mm"}


def shifted(dx: float, dy: float) -> Callable[[Any], Any]:
    """Everything elsewhere."""
    return lambda shapes: list(Placing(0, dx, dy).shapes(shapes))


def exchanged(one: str, other: str) -> Callable[[Any], Any]:
    """Each of two messages where the other stood."""
    words = {one: other, other: one}

    def change(shapes: Any) -> Any:
        return [
            each._replace(words=words.get(each.words, each.words)) if isinstance(each, Text) else each
            for each in shapes
        ]

    return change


def said(one: Winding, other: Winding) -> Callable[[Any], Any]:
    """Each of two messages where the other stood."""
    return exchanged(ENGLISH.say(one), ENGLISH.say(other))


def knot_at_the_far_end(section: Section) -> Section:
    """The side view with its knot as far from the other end."""
    ys = [point.y for shape in section.shapes if isinstance(shape, Curve) for point in shape.points()]
    return section._replace(knot=Point(section.knot.x, min(ys) + max(ys) - section.knot.y))


def other_layer(shapes: Any) -> Any:
    """A line on the face where one behind was drawn, and the other way round."""
    pens = {Pen.THREAD: Pen.THREAD_BACK, Pen.THREAD_BACK: Pen.THREAD}
    return [each._replace(pen=pens[each.pen]) if isinstance(each, Curve) else each for each in shapes]


def beside_its_nail(right: Any) -> Any:
    """A knot a little beside the nail it is tied to."""
    return lambda *given: Placing(0, 2.0, 0).points([right(*given)])[0]


def one_on(numbers: Any) -> Any:
    """Each number at the next one's place."""
    places = [number.at for number in numbers]
    return [number._replace(at=at) for number, at in zip(numbers, [*places[1:], places[0]], strict=True)]


def in_rings(change: Callable[[Sequence[Action]], Sequence[Action]]) -> Callable[[Any], Any]:
    """The rings of other things to do than those that are listed."""
    return lambda right: lambda face, section, done, *given: right(face, section, change(done), *given)


def moved_ring(number: str, dx: float, dy: float) -> Callable[[Any], Any]:
    """All that is drawn of a ring, elsewhere."""

    def change(shapes: Any) -> Any:
        start = next(k for k, each in enumerate(shapes) if isinstance(each, Text) and each.words == number) - 2
        return [*shapes[:start], *Placing(0, dx, dy).shapes(shapes[start : start + 3]), *shapes[start + 3 :]]

    return change


def _placed(done: Sequence[Action], one: int, other: int) -> Sequence[Action]:
    """Two things to do at each other's place."""
    places = {done[one]: done[other].place, done[other]: done[one].place}
    return [action._replace(place=places.get(action, action.place)) for action in done]


def _four_rows(planned: Plan) -> list[str]:
    return [planned.words.say(Shed.ROWS, rows=4)]


PICTURES: Mapping[str, Wrong] = {
    "one heading row too few": Wrong({}, PICTURE, returns(shed_module._Section, "rows", lambda dots: dots[1:])),
    "the heading rows drawn at one bar": Wrong(
        NOTCHED, "winding.svg", returns(shed_module._Section, "rows", lambda dots: [*dots[:2], *dots[:2]][:2])
    ),
    "heading rows that the kit does not ask for": Wrong(
        {"room": {"heading_rows": 0}},
        PICTURE,
        value(shed_module, "_rows_words", lambda plan: [plan.words.say(Shed.ROWS, rows=2)]),
    ),
    "one more heading row said": Wrong(
        {"room": {"heading_rows": 3}},
        PICTURE,
        value(shed_module, "_rows_words", _four_rows),
    ),
    "the shed stick by the near bar": Wrong({}, "winding.svg", value(shed_module, "_STICK", 20.0)),
    "the shed stick under the face ends of one layer": Wrong(
        PEGGED, PICTURE, value(shed_module, "_stick_role", lambda _: Shed.STICK_FACE)
    ),
    "the ring of the shed stick elsewhere": Wrong(
        {}, PICTURE, returns(shed_module._Section, "rings", lambda r: [*Placing(0, 9, 0).shapes(r[:3]), *r[3:]])
    ),
    "heading rows marked as another step": Wrong(
        {}, PICTURE, swap(shed_module, "step_tile", lambda right: lambda at, _, metrics: right(at, "5", metrics))
    ),
    "the knot seen from the right at the far end": Wrong(
        {}, PICTURE, returns(wound_module.RoundBarPicture, "section", knot_at_the_far_end)
    ),
    "the knot seen from the right at the back": Wrong(
        FLAT,
        "winding.svg",
        returns(
            wound_module.FlatEndPicture,
            "section",
            lambda s: s._replace(knot=Point(s.knot.x + 2 * s.half, s.knot.y)),
        ),
    ),
    "the tie-off knotted at the near end": Wrong(
        ODD, PICTURE, returns(Face, "knots", lambda knots: [knots[0], (Point(knots[1][0].x, knots[0][0].y), "near")])
    ),
    "the knots in the middle of the frame": Wrong({}, PICTURE, returns(Face, "tied", shifted(0, 30))),
    "a knot beside its thread": Wrong({}, "winding.svg", returns(Face, "tied", shifted(0.5, 0))),
    "near and far end exchanged in a picture": Wrong(
        FROM_RIGHT, PICTURE, returns(winding_module, "words", said(Winding.NEAR_BAR, Winding.FAR_BAR))
    ),
    "face and back exchanged in the legend": Wrong(
        {}, PICTURE, value(wound_module.RoundBarPicture, "behind", Winding.ON_FACE)
    ),
    "samples of face and back exchanged": Wrong(
        {}, PICTURE, returns(legend_module, "_sample", lambda s: other_layer([s])[0])
    ),
    "face and back exchanged in the side view": Wrong(
        {}, PICTURE, returns(side_module, "_names", said(Winding.SIDE_FACE, Winding.SIDE_BEHIND))
    ),
    "numbers of winds one on": Wrong({}, PICTURE, returns(words_module, "_numbers", one_on)),
    "numbers of the near end from 1": Wrong(
        {}, PICTURE, returns(words_module, "_marks", lambda marks: {number + 1: x for number, x in marks.items()})
    ),
    "numbers of passes": Wrong(
        NAILS, PICTURE, value(nailed_module.NailedPicture, "number", lambda _, __, k, ___: k + 1)
    ),
    "one wind too few left out": Wrong(
        {}, PICTURE, returns(words_module, "_left_out", lambda t: [*t[:-1], t[-1]._replace(words="4 to 21")])
    ),
    "numbers said to be of other templates": Wrong(
        PEGGED, PICTURE, value(pegged_module.PeggedPicture, "source", lambda *_: Winding.BY_STRIPS)
    ),
    "the turns of pegs for nails": Wrong(
        NAILS,
        PICTURE,
        value(actions_module, "_ALONE", ALONE | {"nailed": ALONE["pegged"]}),
    ),
    "the teeth of every notch for every second one": Wrong(
        NOTCHED | {"frame.notch_density": "5 per cm"}, PICTURE, value(actions_module, "_EVERY_SECOND", 7)
    ),
    "the way of a warp that begins behind": Wrong(
        {"weaving.first_pass": "back"},
        PICTURE,
        value(actions_module, "_OPEN", dict.fromkeys(("face", "back"), actions_module._OPEN["face"])),
    ),
    "the last mark but one as the last": Wrong(
        {},
        PICTURE,
        value(actions_module, "_to_the_last", lambda face, **_: face.plan.words.say(WindStep.LAST_FAR_MARK, mark=24)),
    ),
    "another length cut past the bar": Wrong(
        {"warp": {"knot": "15 cm"}}, PICTURE, value(actions_module, "_SHORT", 200)
    ),
    "a thing to do without its ring": Wrong(
        {}, PICTURE, swap(winding_module, "rings", in_rings(lambda done: done[:-1]))
    ),
    "the rings of both knots exchanged": Wrong(
        {},
        PICTURE,
        swap(
            winding_module,
            "rings",
            in_rings(lambda done: _placed(done, 0, -1)),
        ),
    ),
    "the rings of both turns exchanged": Wrong(
        FLAT,
        PICTURE,
        swap(
            winding_module,
            "rings",
            in_rings(lambda done: _placed(done, 2, 3)),
        ),
    ),
    "a ring on a thread": Wrong({}, PICTURE, returns(winding_module, "rings", moved_ring("2", 5, 0))),
    "the slack pulled nowhere": Wrong({}, PICTURE, value(rings_module, "_pull", lambda *_: [])),
    "the knots of nails on the wood": Wrong(NAILS, PICTURE, swap(nailed_module.NailedPicture, "knot", beside_its_nail)),
    "nothing said of the tension": Wrong({}, PICTURE, value(winding_module, "cautions", lambda _: [])),
    "nothing said of tightening": Wrong(TRAVEL, PICTURE, returns(winding_module, "cautions", lambda each: [*each][:1])),
    "wound at its highest": Wrong(
        TRAVEL,
        PICTURE,
        swap(
            winding_module,
            "cautions",
            lambda right: lambda plan: right(replace(plan, kit=replace(plan.kit, frame=_higher(plan.kit.frame)))),
        ),
    ),
    "doubled ends not said on its sheet": Wrong(DOUBLED, PICTURE, value(Plan, "doubled", property(lambda _: ()))),
    "heading rows of a small sheet at the wrong bar": Wrong(
        SMALL, PICTURE, returns(shed_module._Section, "rows", shifted(-50, 0))
    ),
    "a list beside a picture in another order": Wrong(
        ACROSS, PICTURE, swap(winding_module, "listed", lambda right: lambda e, *given: right(_swapped(e), *given))
    ),
}
"""By a name that says what is wrong."""


def _higher(frame: Frame) -> Frame:
    return replace(frame, outer_height=frame.tightened.outer_height)


def _swapped(entries: Any) -> Any:
    one, other, *rest = entries
    return [(one[0], other[1]), (other[0], one[1] + "."), *rest]
