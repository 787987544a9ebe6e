"""The frame check sheet held against the kit's numbers alone: its picture, and every number that it says."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from layout.drawing.pens import Pen
from layout.drawing.shapes import Path, Point
from layout.frames.bar import MODULI
from layout.frames.frame import NotchedEnd, RoundBar
from layout.kit.kit import Kit
from layout.numerals import say_number, say_root
from layout.plan import Plan
from templates_gen.verify import LIMIT
from templates_gen.verify.compare import Findings
from templates_gen.verify.seen import Seen
from templates_gen.verify.ways import ways

_TITLES = ("Diagonals", "Ends parallel", "Centre", "Pull of the warp", "A warped frame is under tension")
_DIMENSIONS = "untie the warp."  # what follows stands at the dimension lines
_ARMS = 2.0  # a longer line than this is no hair of a register cross
_INCH = Fraction(127, 5)
_PICTURE = 120.0  # a part longer than this shows the frame


def prove_frame_check(plan: Plan, pieces: Sequence[Seen], *, on_paper: bool) -> Findings:
    """The frame's outline and diagonals in its own proportions; where words are real, every number."""
    kit, sett = plan.kit, plan.warp.sett.per_mm
    off, problems = 0.0, list[str]()
    for seen in pieces:
        if seen.part.length > _PICTURE:
            wrong, far = _picture(kit, seen)
            off = max(off, far)
            problems += [*wrong, *(_dimensions(kit, seen) if on_paper else [])]
        problems += _words(_numbers(kit, sett), seen) if on_paper else []
    return Findings(off, tuple(f"frame check: {problem}" for problem in problems))


def _picture(kit: Kit, seen: Seen) -> tuple[list[str], float]:
    """Four edges in the frame's proportions, both diagonals from corner to corner, and the centre line between them."""
    edges, centres = (
        {tuple(path.points()) for path in seen.lines() if path.pen is pen and _length(path) > _ARMS}
        for pen in (Pen.REGISTER, Pen.CENTRE)
    )
    corners = [at for edge in edges for at in edge]
    if len(edges) != 4 or len(centres) != 3:
        return ["shows no frame with four edges, two diagonals and a centre line"], 0.0
    (left, low), (right, high) = map(min, zip(*corners, strict=True)), map(max, zip(*corners, strict=True))
    middle = (left + right) / 2
    ratio = float(kit.frame.outer_width.mm / kit.frame.outer_height.mm)
    wanted = {
        ((left, low), (right, high)),
        ((left, high), (right, low)),
        ((middle, low), (middle, high)),
    }
    ends = [min(_apart(found, each) for each in wanted) for found in centres]
    off = max(abs((right - left) - ratio * (high - low)), *ends)
    return ([f"its picture is {off * 1000:.1f} micrometres off"] if off > LIMIT else []), off


def _apart(found: Sequence[Point], other: Sequence[tuple[float, float]]) -> float:
    """How far the ends of two lines lie apart, whichever way each runs: what lies upright may begin at either end."""
    (a, b), (c, d) = found, other
    return min(max(math.dist(a, c), math.dist(b, d)), max(math.dist(a, d), math.dist(b, c)))


def _length(path: Path) -> float:
    return math.dist(path.start, path.steps[0].end)


_Told = list[tuple[str, str]]  # figures and the unit behind them


def _numbers(kit: Kit, sett: Fraction) -> Mapping[str, _Told]:
    """What each check must say, each length in both systems; the diagonals may differ by w p / d."""
    width, height = kit.frame.outer_width.mm, kit.frame.outer_height.mm
    squared = width * width + height * height
    pull = _both((width - 2 * kit.frame.side_width.mm) / 500, 2)
    if (bent := bending(kit, sett)) is not None:
        pull += _both(bent, 2)
    return {
        "Diagonals": _root(squared, 1) + _root((width / sett) ** 2 / squared, 2),
        "Ends parallel": _both(height, 1) + _both(1 / sett / 2, 2),
        "Centre": _both(width / 2, 1),
        "Pull of the warp": pull,
        _TITLES[-1]: [],
    }


def _words(numbers: Mapping[str, _Told], seen: Seen) -> Iterator[str]:
    """Each number in its own check, in both systems."""
    said = " ".join(words for _, words in seen.words())
    at = [said.find(title) for title in _TITLES]
    if -1 in at or at != sorted(at):
        yield "its checks are not all there, in order"
        return
    for title, begin, end in zip(_TITLES, at, (*at[1:], len(said)), strict=True):
        told = re.findall(r"([\d.]+) (mm|in)\b", said[begin:end].partition(_DIMENSIONS)[0])
        wanted = numbers[title]
        if sorted(told) != sorted(wanted):
            asked = ", ".join(" ".join(each) for each in wanted)
            yield f"{title.lower()} says other numbers than {asked}"


def _dimensions(kit: Kit, seen: Seen) -> list[str]:
    """The outer sizes at the picture, each also in the other system."""
    sizes = (kit.frame.outer_width, kit.frame.outer_height)
    wanted = [f"({' '.join(_both(size.mm, 1)[0 if size.imperial else 1])})" for size in sizes]
    told = [found[0] for _, words in seen.words() if (found := re.search(r"\([\d.]+ (mm|in)\)$", words))]
    return [] if sorted(told) == sorted(wanted) else ["its picture has other dimensions than the frame"]


def _both(mm: Fraction | float, places: int) -> _Told:
    return [(say_number(mm, places), "mm"), (say_number(mm / _INCH, places + 1), "in")]


def _root(squared: Fraction, places: int) -> _Told:
    return [(say_root(squared, places), "mm"), (say_root(squared / _INCH**2, places + 1), "in")]


def bending(kit: Kit, sett: Fraction) -> float | None:
    """How far the middle of a frame end gives way in mm; None where the kit does not say what that needs.

    By virtual work, the integral of M(x) x / 2 over half the beam, twice, over E I; Simpson's rule is exact for the
    cubics that it adds up.
    """
    inertia, material = _inertia(kit), kit.strength.material
    if inertia is None or material is None:
        return None
    frame, weaving = kit.frame, kit.weaving
    ends = len(ways(kit, sett, Fraction(10)))
    outer, each = weaving.doubled_selvedges, 2 if weaving.doubled_warp else 1
    tension = float(kit.strength.tension.newtons) if kit.strength.tension else 1.5
    force, width = (ends + 2 * outer) * each * tension, float(ends / sett)
    span = float(frame.outer_width.mm - 2 * frame.side_width.mm)
    begin = (span - width) / 2

    def work(x: float) -> float:
        return (force / 2 * x - force / width * max(0.0, x - begin) ** 2 / 2) * x / 2

    total = sum((b - a) / 6 * (work(a) + 4 * work((a + b) / 2) + work(b)) for a, b in ((0.0, begin), (begin, span / 2)))
    return 2 * total / (MODULI[material].value * inertia)


def _inertia(kit: Kit) -> float | None:
    """Second moment of area of a frame end in mm4: a round bar or tube, or a board as far as notches leave it."""
    ends, strength = kit.frame.ends, kit.strength
    if isinstance(ends, RoundBar):
        outer, inner = float(ends.diameter.mm) / 2, float(strength.bar_bore.mm) / 2 if strength.bar_bore else 0.0
        return math.pi / 4 * (outer**4 - inner**4)
    if strength.end_width is None:
        return None
    wide = float(strength.end_width.mm) - (float(ends.notch_depth.mm) if isinstance(ends, NotchedEnd) else 0.0)
    return float(ends.thickness.mm) * wide**3 / 12
