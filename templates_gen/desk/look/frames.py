"""The frame to scale with every end of its warp, as an inline SVG whose units are millimetres."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape

from layout.frames.kinds.round_bars import RoundBar
from layout.messages.catalogue import Catalogue
from layout.parts.marking.kinds import MARKING
from layout.parts.marking.levels import FLAP
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.warp import End
from templates_gen.desk.look.answers import FrameDrawing, PassLine
from templates_gen.desk.look.frame_measures import HIGH, WIDE, measures_of
from templates_gen.desk.look.frame_pencil import short
from templates_gen.desk.look.frame_places import Places
from templates_gen.desk.look.pointing import sentences
from templates_gen.messages.roles.desk_numbers import FrameWords

SEPARATE = 1200
"""Of more ends than these, no end is an element of its own: a browser would become slow."""

_FINE = 3.0  # px: ends that lie closer are drawn with thinner lines
_PAST = 2.0  # mm: a strip reaches so far past its outer marks
_ENDS: tuple[End, End] = ("near", "far")


def frame(plan: Plan, words: Catalogue, unit: str) -> FrameDrawing:
    """The frame of a plan, said with `words`; lengths that nobody typed are in `unit` ("cm" or "in")."""
    at = Places(plan)
    passes, said = tuple(at.passes()), sentences(plan, words)
    measures = measures_of(at, words, unit)
    px, margins = measures.px, measures.margins
    about = words.say(
        FrameWords.ABOUT,
        width=say_length(plan.kit.frame.outer_width, words),
        height=say_length(plan.kit.frame.outer_height, words),
        ends=plan.warp.ends,
    )
    middle_x = at.width / 2 + (margins.right - margins.left) / 2 * px
    middle_y = at.height / 2 + (margins.below - margins.above) / 2 * px
    box = " ".join(map(short, (middle_x - WIDE / 2 * px, middle_y - HIGH / 2 * px, WIDE * px, HIGH * px)))
    inner = "".join((*_wood(at), *_warp(passes, said), *_piece(at), *measures.drawn()))
    fine = " fine" if float(plan.warp.pitch) < _FINE * px else ""
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="frame{fine}" viewBox="{box}" role="img" tabindex="0" '
        f'aria-label="{escape(about)}">{inner}</svg>'
    )
    return FrameDrawing(svg, passes, said, about)


def _rectangle(left: float, top: float, right: float, bottom: float) -> str:
    return f"M{short(left)} {short(top)}H{short(right)}V{short(bottom)}H{short(left)}Z"


def _wood(at: Places) -> Iterator[str]:
    """Sides and ends, and on them strips with their marks, notches, or pegs and nails."""
    wide, high, side, deep = at.width, at.height, at.side, at.wide
    rails = _rectangle(0, 0, side, high) + _rectangle(wide - side, 0, wide, high)
    rails += _rectangle(side, 0, wide - side, deep) + _rectangle(side, high - deep, wide - side, high)
    yield f'<path class="wood" d="{rails}"/>'
    if at.ends.name in MARKING:
        yield from _strips(at)
    if cut := "".join(_rectangle(x, y, x + w, y + h) for x, y, w, h in at.notches()):
        yield f'<path class="band" d="{cut}"/>'
    if pins := "".join(_circle(pin.x, pin.y, pin.wide / 2) for pin in at.pins()):
        yield f'<path class="pin" d="{pins}"/>'


def _strips(at: Places) -> Iterator[str]:
    """The marking strips on both frame ends."""
    warp = at.plan.warp
    deep = at.wide if isinstance(at.ends, RoundBar) else min(at.wide, FLAP + at.wide / 10)
    every = [float(x) for x in (*warp.near, *warp.far)]
    left, right = at.x(min(every)) - _PAST, at.x(max(every)) + _PAST
    bands, marks = "", ""
    for end in _ENDS:
        top, bottom = sorted((at.y(end, 0.06 * deep), at.y(end, 0.94 * deep)))
        bands += _rectangle(left, top, right, bottom)
        marks += "".join(f"M{short(at.x(float(x)))} {short(top)}V{short(bottom)}" for x in warp.marks(end))
    yield f'<path class="band" d="{bands}"/><path class="mk" d="{marks}"/>'


def _circle(x: float, y: float, radius: float) -> str:
    r, d = short(radius), short(2 * radius)
    return f"M{short(x - radius)} {short(y)}a{r} {r} 0 1 0 {d} 0a{r} {r} 0 1 0 -{d} 0z"


def _warp(passes: tuple[PassLine, ...], said: tuple[str, ...]) -> Iterator[str]:
    """Every end, those behind first; each an element that says which it is, where there are not too many."""
    lines = [(layer, each.end, line) for each in passes for layer, line in _lines(each)]
    for layer in ("back", "face"):
        own = [(end, line) for found, end, line in lines if found == layer]
        if len(passes) > SEPARATE:
            yield f'<path class="{layer}" d="{"".join(line for _, line in own)}"/>' if own else ""
            continue
        for end, line in own:
            yield f'<path class="{layer}" data-end="{end}" d="{line}"><title>{escape(said[end - 1])}</title></path>'


def _lines(each: PassLine) -> Iterator[tuple[str, str]]:
    """The one line of an end, or its two halves where it goes from the face to the back."""
    begin, end = f"M{short(each.x1)} {short(each.y1)}", f"L{short(each.x2)} {short(each.y2)}"
    if each.layer == each.far_layer:
        yield each.layer, begin + end
        return
    half = f"{short((each.x1 + each.x2) / 2)} {short((each.y1 + each.y2) / 2)}"
    yield each.layer, f"{begin}L{half}"
    yield each.far_layer, f"M{half}{end}"


def _piece(at: Places) -> Iterator[str]:
    """What is woven; and a loose rod behind the frame."""
    left, top, right, bottom = at.piece()
    if rod := at.rod():
        yield f'<path class="rod" d="{_rectangle(*rod)}"/>'
    yield f'<path class="piece" d="{_rectangle(left, top, right, bottom)}"/>'
