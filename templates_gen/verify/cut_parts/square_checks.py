"""The square check as a file shows it: four spans of 140 mm and two bands of 10 mm, whatever the kerf, and no scale."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.messages.roles import CutWord
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof_cut import CutMark
from templates_gen.verify.cut_parts.found_cuts import FoundCut, matched, straight_sides, xs, ys
from templates_gen.verify.cut_parts.lettering import Label, areas, broken, prove_engraved
from templates_gen.verify.finding import Findings
from templates_gen.verify.found_parts import FoundPart

_SPAN, _BAND, _DEEP, _HALF = 140.0, 10.0, 15.0, 10.0  # mm, stated again on purpose
_FLAT = 3  # a spot of more times its smaller width is drawn for by its shares of both ways
_LETTERS = {
    "X": ((-62, 0), (40, 0)),
    "Y": ((0, -62), (0, 40)),
    "A": ((-44, -44), (44, 44)),
    "B": ((-44, 44), (44, -44)),
}


def prove_square_check(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """Every side of the plate lies half a span from its middle, drawn for the kerf, and every window where it leaves
    its band.
    """
    cut = FoundCut(seen, replace(stock, grain="none"), "x")  # never turned: both ways are measured apart
    across, up = cut.beside("x"), cut.beside("y")
    cuts = cut.paths(Pen.THROUGH)
    plates, windows = [p for p in cuts if len(p.steps) == 7], [p for p in cuts if len(p.steps) == 3]
    wanted = [_SPAN / 2 + _reach(across, up, k) for k in range(8) for _ in range(2)]
    total = matched(CutMark.CHECK_SPAN, wanted, [far for plate in plates for far in _sides(plate)])
    near = _SPAN / 2 - _BAND
    for way, across_it, beside, along in ((xs, ys, across, up), (ys, xs, up, across)):
        own = [path for path in windows if min(way(path)) > _HALF]
        walls = [near - _DEEP + beside, near - beside, along - _HALF, _HALF - along]
        found = [end(places(path)) for path in own for places in (way, across_it) for end in (min, max)]
        total += matched(CutMark.CHECK_WINDOW, walls, found)
    text = plan.words.say(CutWord.ON_CHECK, stock=stock.name, span=say_number(_SPAN), band=say_number(_BAND))
    labels = [Label(letter, x, y - 3.0, y) for letter, middles in _LETTERS.items() for x, y in middles]
    return total + prove_engraved(areas(cut), labels, broken(text))


def _reach(across: float, up: float, eighth: int) -> float:
    """How far beside its edge a side is drawn that looks so many eighths of a turn from x."""
    if eighth % 2 == 0:
        return up if eighth % 4 else across
    flat = across != up and max(across, up) > _FLAT * min(across, up)
    return (across + up) / 2 if flat else math.hypot(across, up) / math.sqrt(2)


def _sides(plate: Curve) -> Sequence[float]:
    """How far both ends of every side lie out from the middle, the way that the side looks."""
    found = []
    for one, other in straight_sides([plate]):
        middle = Point((one.x + other.x) / 2, (one.y + other.y) / 2)
        turn = round(math.degrees(math.atan2(middle.y, middle.x)) / 45) * math.pi / 4
        found += [at.x * math.cos(turn) + at.y * math.sin(turn) for at in (one, other)]
    return found
