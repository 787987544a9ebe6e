"""The second step of a leaflet: where the warp will lie on the frame ends."""

from __future__ import annotations

from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.roles import Leaflet
from layout.parts.held import is_held
from layout.plan import Plan
from layout.values.units import Length, say_length


def marks_step(plan: Plan) -> tuple[str, str]:
    """Its title, and what is done with the strips or templates of the box; without them, with a rule and a pencil."""
    say, ends, words = plan.words.say, plan.kit.frame.ends, plan.words
    counts = {"near": len(plan.warp.near), "far": len(plan.warp.far)}
    if not is_held(plan, "strips", "strip-near", "strip-far"):
        spacing = Length(plan.warp.spacing, "in" if plan.warp.sett.unit.imperial else "mm")
        return say(Leaflet.MARK), say(Leaflet.MARK_BARS, spacing=say_length(spacing, words), **counts)
    if isinstance(ends, NotchedEnd):
        if ends.density:
            return say(Leaflet.NOTCHES_FIND), say(Leaflet.NOTCHES_THERE, **counts)
        deep = say_length(ends.notch_depth, words)
        return say(Leaflet.NOTCHES), say(Leaflet.NOTCHES_SAW, deep=deep, **counts)
    if isinstance(ends, PeggedEnd):
        return say(Leaflet.PEGS), say(Leaflet.PEGS_DRILL, wide=say_length(ends.peg_diameter, words), **counts)
    if plan.warp.kind == "nailed":
        return say(Leaflet.NAILS), say(Leaflet.NAILS_DRIVE, **counts)
    return say(Leaflet.STRIPS), say(Leaflet.STRIPS_ROUND if ends.name == "round bars" else Leaflet.STRIPS_FLAT)
