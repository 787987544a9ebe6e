"""Wrong builders of pictures: how to wind, and the frame check."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from kits import FLAT, NAILS, NOTCHED, PEGGED, TRAVEL
from wrong_builders import Wrong, returns, swap, value

import layout.parts.winding.kinds.nailed as nailed_module
import layout.parts.winding.kinds.pegged as pegged_module
import layout.parts.winding.kinds.wound as wound_module
import layout.parts.winding.side as side_module
import layout.parts.winding.winding as winding_module
import layout.parts.winding.words as words_module
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Region, Text
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from layout.parts.winding.face import Face
from layout.plan import Plan

PICTURE = "winding.pdf"
ODD: Mapping[str, object] = {"weaving.tie_off": "far end"}
FROM_RIGHT = NOTCHED | {"weaving.start": "right", "weaving.near_end": "top"}
DOUBLED = PEGGED | {"weaving.doubled_selvedges": 3}


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


def knot_at_the_far_end(right: Any) -> Any:
    """The side view with its knot at the other end."""

    def wrong(face: Face, *given: Any) -> Any:
        shapes = right(face, *given)
        up = face.height("far") + face.height("near")
        return [_turned(each, up) for each in shapes]

    return wrong


def _turned(shape: Any, up: float) -> Any:
    """A knot at the same distance from the other end."""
    if not isinstance(shape, Region) or shape.pen is not Pen.SOLID or len(shape.contours[0].steps) == 2:
        return shape
    ys = [point.y for point in shape.contours[0].points()]
    return Placing(0, 0, up - min(ys) - max(ys)).shapes([shape])[0]


def turned(arrows: Any) -> Any:
    """Arrow heads that point the other way, where they were."""
    return [Placing(180, *_twice_the_middle(each)).shapes([each])[0] for each in arrows]


def _twice_the_middle(shape: Region) -> tuple[float, float]:
    xs, ys = zip(*shape.contours[0].points(), strict=True)
    return min(xs) + max(xs), min(ys) + max(ys)


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


PICTURES: Mapping[str, Wrong] = {
    "both heading rows alike": Wrong({}, PICTURE, returns(Face, "under", lambda _: True)),
    "the heading rows exchanged": Wrong({}, PICTURE, returns(Face, "under", lambda under: not under)),
    "the heading rows of a warp on the face alone": Wrong(
        PEGGED, "winding.svg", value(Face, "under", lambda _, leg, row: (leg.number // 2 % 2 == 0) == (row == 0))
    ),
    "the heading rows beside the far end": Wrong(FLAT, "winding.svg", returns(Face, "heading", shifted(0, 60))),
    "one heading row": Wrong(
        NOTCHED, PICTURE, returns(Face, "heading", lambda rows: [r for r in rows if r.start.y == rows[0].start.y])
    ),
    "the knot seen from the right at the far end": Wrong({}, PICTURE, swap(wound_module, "_bars", knot_at_the_far_end)),
    "the knot seen from the right at the back": Wrong(
        FLAT,
        "winding.svg",
        returns(wound_module, "_boards", lambda shapes: [*shapes[:-1], *shifted(18, 0)(shapes[-1:])]),
    ),
    "the tie-off knotted at the near end": Wrong(
        ODD, PICTURE, returns(Face, "knots", lambda knots: [(at, "near") for at, _ in knots])
    ),
    "the knots in the middle of the frame": Wrong({}, PICTURE, returns(Face, "tied", shifted(0, 30))),
    "the way of the winding turned": Wrong(
        FROM_RIGHT, "winding.svg", returns(words_module, "_counts", lambda s: [*s[:2], *turned(s[2:])])
    ),
    "near and far end exchanged in a picture": Wrong(
        FROM_RIGHT, PICTURE, returns(winding_module, "words", said(Winding.NEAR_END, Winding.FAR_END))
    ),
    "tie-on and tie-off exchanged": Wrong(
        ODD, PICTURE, returns(words_module, "_tied", said(Winding.TIE_ON, Winding.TIE_OFF))
    ),
    "face and back exchanged in the legend": Wrong(
        {}, PICTURE, value(wound_module.RoundBarPicture, "behind", Winding.ON_FACE)
    ),
    "samples of face and back exchanged": Wrong({}, PICTURE, returns(words_module, "_sample", other_layer)),
    "face and back exchanged in the side view": Wrong(
        {}, PICTURE, returns(side_module, "_names", said(Winding.SIDE_FACE, Winding.SIDE_BEHIND))
    ),
    "numbers of winds one on": Wrong({}, PICTURE, returns(words_module, "_numbers", one_on)),
    "one wind too few left out": Wrong(
        {}, PICTURE, returns(words_module, "_left_out", lambda t: [t[0]._replace(words="16"), *t[1:]])
    ),
    "another note than the kind of frame asks for": Wrong(
        PEGGED,
        PICTURE,
        value(pegged_module.PeggedPicture, "note", Winding.NOTE_WOUND),
    ),
    "the note of pegs for nails": Wrong(
        NAILS, PICTURE, value(nailed_module.NailedPicture, "note", Winding.NOTE_PEGGED)
    ),
    "the knots of nails on the wood": Wrong(NAILS, PICTURE, swap(nailed_module.NailedPicture, "knot", beside_its_nail)),
    "nothing said of tightening": Wrong(TRAVEL, PICTURE, value(winding_module, "_tightening", lambda _: ())),
    "wound at its highest": Wrong(
        TRAVEL,
        PICTURE,
        swap(
            winding_module,
            "_tightening",
            lambda right: lambda frame: right(replace(frame, outer_height=frame.tightened.outer_height)),
        ),
    ),
    "doubled ends not said in a picture": Wrong(DOUBLED, PICTURE, value(Plan, "doubled", property(lambda _: ()))),
}
"""By a name that says what is wrong."""
