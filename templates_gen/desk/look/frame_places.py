"""Where everything of a frame lies in its drawing: mm of the frame seen from its face, x to the right, y down."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import NamedTuple

from layout.estimate.room_left import apart_at, end_width
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.plan import Plan
from layout.warps.loose_rod import ROD
from layout.warps.pegged import peg_depth
from layout.warps.warp import End
from layout.yardage.heading import heading_of
from templates_gen.desk.look.answers import PassLine
from templates_gen.desk.look.pointing import marks_of


class Pin(NamedTuple):
    """A peg or a nail: its centre and how thick it is."""

    x: float
    y: float
    wide: float


class Places:
    """The places of one plan, from the upper left corner of its frame."""

    def __init__(self, plan: Plan) -> None:
        self.plan, self.ends = plan, plan.kit.frame.ends
        frame = plan.kit.frame
        self.width, self.height = float(frame.outer_width.mm), float(frame.outer_height.mm)
        self.side = float(frame.side_width.mm)
        self.wide = min(end_width(plan.kit).value, self.height / 2)
        self.near_low = plan.kit.weaving.near_end == "bottom"

    def x(self, along: float) -> float:
        """The x of a place that the plan counts from the centre of the weaving."""
        return self.width / 2 + along

    def y(self, end: End, depth: float) -> float:
        """The y of what lies so far within the outermost line of a frame end."""
        return self.height - depth if (end == "near") == self.near_low else depth

    def wound_at(self, face: bool) -> float:
        """How far within the outermost line a pass is seen first, on a frame end that it is wound round."""
        return 0.0 if face and not isinstance(self.ends, RoundBar) else self.wide

    def depths(self) -> Callable[[int], float]:
        """How far within the outermost line the warp turns at each mark, by its place."""
        ends = self.ends
        if isinstance(ends, PeggedEnd):
            return lambda mark: float(peg_depth(ends, mark))
        if isinstance(ends, NailEnd):
            row = float(ends.edge_distance.mm)
            return lambda _: row
        ground = float(ends.inset_mm)
        return lambda _: ground

    def passes(self) -> Iterator[PassLine]:
        """Every end, in the order of winding, from where it is seen first to where it is seen last."""
        warp, turns = self.plan.warp, self.depths()
        round_ends = warp.kind in ("wound", "rod")
        for k, (one, at) in enumerate(zip(warp.passes, marks_of(self.plan), strict=True), 1):
            layers = one.layer_at("near"), one.layer_at("far")
            near, far = float(one.near), float(one.far)
            if round_ends:
                first, last = (self.wound_at(layer == "face") for layer in layers)
                lean = (far - near) / self.height
                near, far = near + lean * first, far - lean * last
            else:
                first, last = turns(at.near), turns(at.far)
            ys = self.y("near", first), self.y("far", last)
            yield PassLine(k, self.x(near), ys[0], self.x(far), ys[1], *layers, *at)

    def pins(self) -> Iterator[Pin]:
        """All pegs or nails."""
        ends, warp = self.ends, self.plan.warp
        if not isinstance(ends, PeggedEnd | NailEnd):
            return
        wide = float((ends.peg_diameter if isinstance(ends, PeggedEnd) else ends.nail_diameter).mm)
        sides: tuple[End, End] = ("near", "far")
        for end in sides:
            depth = self.depths()
            for k, mark in enumerate(warp.marks(end)):
                yield Pin(self.x(float(mark)), self.y(end, depth(k)), wide)

    def notches(self) -> Iterator[tuple[float, float, float, float]]:
        """Left, top, width and height of every notch that is used."""
        if not isinstance(self.ends, NotchedEnd):
            return
        wide, deep = float(self.ends.notch_width.mm), float(self.ends.notch_depth.mm)
        sides: tuple[End, End] = ("near", "far")
        for end in sides:
            top = min(self.y(end, 0.0), self.y(end, deep))
            for mark in self.plan.warp.marks(end):
                yield self.x(float(mark)) - wide / 2, top, wide, deep

    def rod(self) -> tuple[float, float, float, float] | None:
        """Left, top, right and bottom of a loose rod behind the frame, where the warp may be anywhere at first."""
        warp = self.plan.warp
        if warp.kind != "rod":
            return None
        half, thick = float(warp.width) / 2 + 0.04 * self.width, float((warp.rod or ROD).mm)
        middle = self.y("far", self.wide + (self.height - 2 * self.wide) / 4)
        return self.x(-half), middle - thick / 2, self.x(half), middle + thick / 2

    def piece(self) -> tuple[float, float, float, float]:
        """Left, top, right and bottom of what is woven, as far as the frame shows it."""
        plan = self.plan
        half, inner = float(plan.warp.width) / 2, self.height - self.wide
        heading, apart = heading_of(plan.kit.amounts.room).height.value, apart_at(plan.kit).value
        start = self.wide + heading + apart
        end = min(start + plan.amounts.woven_mm[1].value, inner)
        ys = sorted((self.y("near", min(start, inner)), self.y("near", end)))
        return self.x(-half), ys[0], self.x(half), ys[1]
