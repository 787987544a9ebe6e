"""Wrong builders of the leaflet: steps, panels, words and pictures exchanged."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from kits import CROSSED, FLAT, NAILS, NOTCHED, PEGGED, ROD, TRAVEL
from wrong_builders import Spoil, Wrong, returns, swap, value

import layout.paper.folded as folded_module
import layout.parts.leaflet.foot as foot_module
import layout.parts.leaflet.leaflet as leaflet_module
import layout.parts.leaflet.panels as panels_module
import layout.parts.leaflet.pictures.frame as frame_module
import layout.parts.leaflet.pictures.rows as rows_module
import layout.parts.leaflet.pictures.weaving as weaving_module
import layout.parts.leaflet.pictures.winding as winding_module
import layout.parts.leaflet.steps as steps_module
import layout.parts.leaflet.trimmed as trimmed_module
import layout.parts.leaflet.winds as winds_module
from layout.drawing.shapes import Curve, Placing, Point, Step
from layout.messages.english import ENGLISH
from layout.messages.roles import Leaflet
from layout.parts.leaflet.pictures.ground import Ground, mirrored
from layout.parts.winding.knots import BOW
from layout.yardage.heading import Heading

LEAFLET = "leaflet.pdf"
SMALL: Mapping[str, object] = {"paper.size": "148 x 210 mm"}
BY_BEADS: Mapping[str, object] = {
    "warp": {"count": 300, "system": "tex", "fibre": "cotton"},
    "weft": {"strands": [{"number": 2, "count": 200, "system": "tex", "fibre": "wool"}]},
}


def step(picture: str, /, **changes: object) -> Spoil:
    """A step that says something else."""
    return returns(
        leaflet_module,
        "leaflet_steps",
        lambda steps: tuple(each._replace(**changes) if each.picture == picture else each for each in steps),
    )


def exchanged(one: int, other: int) -> Spoil:
    """Two steps in each other's place."""

    def change(steps: Any) -> Any:
        found = list(steps)
        found[one], found[other] = steps[other], steps[one]
        return tuple(found)

    return returns(leaflet_module, "leaflet_steps", change)


def passes(change: Callable[[Any], Any]) -> Spoil:
    """The passes of the fourth picture changed."""
    return returns(winding_module, "_shown", lambda way: replace(way, groups=(tuple(change(list(way.groups[0]))),)))


def at(place: int, **changes: Any) -> Spoil:
    """One pass changed."""
    return passes(lambda legs: [each._replace(**changes) if k == place else each for k, each in enumerate(legs)])


def picture(name: str, change: Callable[[Any], Any]) -> Spoil:
    """The shapes of one picture changed."""

    def spoil(patch: Any) -> None:
        right = panels_module.STEP_PICTURES
        wrong = {**right, name: lambda plan, metrics: change(right[name](plan, metrics))}
        patch.setattr(panels_module, "STEP_PICTURES", wrong)

    return spoil


def other_lifted(module: Any) -> Spoil:
    """The pictures of one module take the other half of the ends."""

    class Other(Ground):
        """Ends that are lifted are not."""

        __slots__ = ()

        def lifted(self) -> tuple[bool, ...]:
            return tuple(not each for each in super().lifted())

    return value(module, "Ground", Other)


def shifted(dx: float, dy: float) -> Callable[[Any], Any]:
    """Everything elsewhere."""
    return lambda shapes: Placing(0, dx, dy).shapes(shapes)


def stretched(shapes: Any) -> list[Any]:
    """Everything a tenth wider."""

    def path(old: Curve) -> Curve:
        points = [Point(1.1 * at.x, at.y) for at in old.points()]
        return old._replace(start=points[0], steps=tuple(map(Step, points[1:])))

    return [
        path(shape) if isinstance(shape, Curve) else shape._replace(contours=tuple(map(path, shape.contours)))
        for shape in shapes
    ]


def first_curve(pen: str, dx: float) -> Callable[[Any], Any]:
    """The first line of a pen elsewhere."""

    def change(shapes: Any) -> Any:
        found = next(shape for shape in shapes if isinstance(shape, Curve) and shape.pen.value == pen)
        return [moved for shape in shapes for moved in (shifted(dx, 0)([shape]) if shape is found else [shape])]

    return change


def always_flat(patch: Any) -> None:
    """Both sheds drawn as the second one."""
    right = weaving_module._section
    patch.setattr(weaving_module, "_section", lambda plan, **_: right(plan, leashed=True))


ROWS: Mapping[str, object] = {"room.heading": None}
LEAFLETS: Mapping[str, Wrong] = {
    "a pass behind drawn on the face": Wrong({}, LEAFLET, at(1, layer="face", far_layer="face")),
    "an arrow turned round": Wrong(NOTCHED, LEAFLET, at(2, up=False)),
    "a pass that does not cross": Wrong(CROSSED, LEAFLET, at(1, far_layer="back")),
    "a pass at another place": Wrong({}, LEAFLET, passes(lambda legs: [*legs[:-1], legs[-1]._replace(far=13.0)])),
    "a pass left out": Wrong(PEGGED, LEAFLET, passes(lambda legs: legs[:-1])),
    "the tie-on at the second pass": Wrong(
        {}, LEAFLET, picture("winding", lambda shapes: [*shapes[:-1], *shifted(3.6, 0)(shapes[-1:])])
    ),
    "tied off at the other end": Wrong(NAILS, LEAFLET, value(winding_module, "tied_off", lambda _: "far")),
    "tied off at the other mark": Wrong(
        {}, LEAFLET, step("tension", words=ENGLISH.say(Leaflet.EVEN_WINDS_NEAR, mark=24))
    ),
    "slack pulled back to the tie-on": Wrong(
        {},
        LEAFLET,
        value(
            winding_module,
            "small_arrow",
            lambda tip, way, right=winding_module.small_arrow: right(tip, way._replace(x=-way.x)),
        ),
    ),
    "tied on at the other side": Wrong({}, LEAFLET, step("tie-on", words=ENGLISH.say(Leaflet.TIE_RIGHT, mark=0))),
    "the picture of the tie-on from the other side": Wrong(
        {}, LEAFLET, picture("tie-on", lambda shapes: mirrored(shapes, 17.0))
    ),
    "three hitches": Wrong({}, LEAFLET, value(winding_module, "HITCHES", (*BOW[:3], *BOW[4:]))),
    "a mark that is another": Wrong({}, LEAFLET, value(winds_module, "mark_of", lambda *_: 1)),
    "marks numbered from one": Wrong({}, LEAFLET, value(frame_module, "mark_of", lambda *_: 1)),
    "a mark out of line": Wrong({}, LEAFLET, picture("marks", first_curve("mark", 0.5))),
    "notches from the other side": Wrong(NOTCHED, LEAFLET, picture("marks", lambda shapes: mirrored(shapes, 17.0))),
    "a hole left out": Wrong(PEGGED, LEAFLET, picture("marks", lambda shapes: [*shapes[:3], *shapes[4:]])),
    "the triangle beside the pencil mark": Wrong(
        FLAT, LEAFLET, returns(frame_module, "_centre", lambda shapes: [shapes[0], *shifted(1, 0)(shapes[1:])])
    ),
    "a frame out of proportion": Wrong({}, LEAFLET, picture("frame", stretched)),
    "a diagonal to no corner": Wrong({}, LEAFLET, picture("frame", first_curve("centre", 0.5))),
    "the middle of one bar not marked": Wrong({}, LEAFLET, picture("frame", lambda shapes: shapes[:-1])),
    "the other ends lifted": Wrong({}, LEAFLET, other_lifted(rows_module)),
    "the stick by the near bar": Wrong({}, LEAFLET, value(rows_module, "_STICK", 5.0)),
    "a row too many": Wrong(
        ROWS, LEAFLET, returns(rows_module, "heading_of", lambda found: Heading(found.rows + 1, False, found.height))
    ),
    "a row at the rod": Wrong(
        ROWS | ROD, LEAFLET, picture("rows", lambda shapes: [*shapes, *shifted(0, -10)(shapes[-4:])])
    ),
    "a row over every end": Wrong(
        ROWS,
        LEAFLET,
        value(rows_module, "broken", lambda begin, end, gaps, right=rows_module.broken: right(begin, end, gaps[:1])),
    ),
    "a guide from the other side": Wrong({}, LEAFLET, step("space", words=ENGLISH.say(Leaflet.GUIDES_RIGHT))),
    "the numbers of a guide from the other side": Wrong(
        {}, LEAFLET, value(rows_module, "spread", lambda *given, right=rows_module.spread: right(*given)[::-1])
    ),
    "a loop left out": Wrong({}, LEAFLET, picture("leashes", lambda shapes: shapes[:-1])),
    "too few leashes": Wrong(
        {}, LEAFLET, step("leashes", words=ENGLISH.say(Leaflet.LEASHES_BEHIND, each="240 mm", number=24))
    ),
    "leashes for ends behind that are not there": Wrong(
        NAILS, LEAFLET, step("leashes", words=ENGLISH.say(Leaflet.LEASHES_BEHIND, each="240 mm", number=25))
    ),
    "the weft over the lifted ends": Wrong({}, LEAFLET, other_lifted(weaving_module)),
    "beaten to the far bar": Wrong(
        {},
        LEAFLET,
        value(
            weaving_module,
            "small_arrow",
            lambda tip, way, right=weaving_module.small_arrow: right(tip, way._replace(y=-way.y)),
        ),
    ),
    "a stick that lies flat for both sheds": Wrong({}, LEAFLET, always_flat),
    "the ends at the edge cut first": Wrong({}, LEAFLET, value(weaving_module, "_MIDDLE", (0, 1))),
    "arrows to the middle": Wrong(
        {},
        LEAFLET,
        value(weaving_module, "_arrow", lambda tip, y, side, right=weaving_module._arrow: right(tip, y, -side)),
    ),
    "a rod pushed in": Wrong(ROD, LEAFLET, picture("finish", lambda shapes: mirrored(shapes, 17.0))),
    "cut off from a rod": Wrong(ROD, LEAFLET, step("finish", words=ENGLISH.say(Leaflet.FINISH_CUT))),
    "nails to be drilled": Wrong(
        NAILS, LEAFLET, step("marks", words=ENGLISH.say(Leaflet.PEGS_DRILL, near=26, far=25, wide="1.8 mm"))
    ),
    "a step left out": Wrong({}, LEAFLET, returns(leaflet_module, "leaflet_steps", lambda steps: steps[:-1])),
    "spacing before the heading rows": Wrong(ROWS, LEAFLET, exchanged(6, 7)),
    "the title of another step": Wrong({}, LEAFLET, step("stick", title=ENGLISH.say(Leaflet.SPACE))),
    "the picture of another step": Wrong({}, LEAFLET, step("stick", picture="leashes")),
    "panels in another order": Wrong(
        {}, LEAFLET, returns(leaflet_module, "panels_of", lambda panels: (panels[0], *panels[2:0:-1], panels[3]))
    ),
    "a fold beside the middle": Wrong({}, LEAFLET, returns(leaflet_module, "_folds", shifted(0.1, 0))),
    "a fold left out": Wrong({}, LEAFLET, returns(leaflet_module, "_folds", lambda folds: folds[:1])),
    "a picture across a fold": Wrong({}, LEAFLET, picture("frame", shifted(66.0, 0))),
    "a block that is too wide": Wrong({"paper.size": "a3"}, LEAFLET, value(trimmed_module, "WIDE", 211.0)),
    "a block that is not trimmed": Wrong(
        {"paper.size": "a3"}, LEAFLET, returns(folded_module, "block_room", lambda room: room._replace(trimmed=False))
    ),
    "a mark of the block left out": Wrong(
        {"paper.size": "a3"}, LEAFLET, returns(leaflet_module, "trimmed", lambda shapes: shapes[1:])
    ),
    "four steps in a panel": Wrong({"paper.size": "230 x 345 mm"}, LEAFLET, value(panels_module, "_MOST", 4)),
    "a leaf lost": Wrong(SMALL, LEAFLET, returns(leaflet_module, "filled", lambda leaves: list(leaves)[:-1])),
    "leaves numbered from none": Wrong(
        SMALL,
        LEAFLET,
        swap(leaflet_module, "_part", lambda right: lambda *given: right(*given[:4], (given[4][0] - 1, given[4][1]))),
    ),
    "a number in another ring": Wrong(
        {},
        LEAFLET,
        value(
            panels_module,
            "ring",
            lambda at, said, metrics, right=panels_module.ring: right(
                at, {"5": "6", "6": "5"}.get(said, said), metrics
            ),
        ),
    ),
    "samples of the legend exchanged": Wrong(
        {}, LEAFLET, returns(foot_module, "_legend", lambda found: (_pens_exchanged(found[0]), found[1]))
    ),
    "a stick that does not lie in the box": Wrong({}, LEAFLET, value(steps_module, "is_held", lambda *_: True)),
    "a comb with a slot too few": Wrong(
        {"box": {"holds": ["leaflet", "comb"]}},
        LEAFLET,
        swap(rows_module, "notched_block", lambda right: lambda *given: right(*given[:4], given[4][1:], *given[5:])),
    ),
    "a guide with full marks alone": Wrong(
        {},
        LEAFLET,
        swap(rows_module, "_guide", lambda right: lambda xs, _, metrics: right(xs, [False] * len(xs), metrics)),
    ),
    "a guide with marks beside its ends": Wrong(
        {},
        LEAFLET,
        swap(rows_module, "_guide", lambda right: lambda xs, *given: right([x + 0.01 for x in xs], *given)),
    ),
    "a guide for a box that holds none": Wrong(
        {"box": {"holds": ["leaflet"]}}, LEAFLET, value(rows_module, "is_held", lambda *_: True)
    ),
    "a gauge that does not lie in the box": Wrong(
        {"box": {"holds": ["leaflet"]}},
        LEAFLET,
        value(foot_module, "beside_the_steps", lambda _: iter([ENGLISH.say(Leaflet.GAUGE)])),
    ),
    "a thing in the box that nothing names": Wrong(
        {"box": {"holds": ["leaflet", "help"]}}, LEAFLET, value(foot_module, "beside_the_steps", lambda _: iter(()))
    ),
    "a length one too long": Wrong(
        BY_BEADS, LEAFLET, value(steps_module, "ruled", lambda plan, mm, right=steps_module.ruled: right(plan, mm + 1))
    ),
    "a frame that is not tightened": Wrong(
        TRAVEL, LEAFLET, step("tension", words=ENGLISH.say(Leaflet.EVEN_WINDS_NEAR, mark=25))
    ),
}


def _pens_exchanged(shapes: Any) -> Any:
    lines = [shape for shape in shapes if isinstance(shape, Curve)]
    pens = {id(lines[0]): lines[1].pen, id(lines[1]): lines[0].pen}
    return [shape._replace(pen=pens[id(shape)]) if id(shape) in pens else shape for shape in shapes]
