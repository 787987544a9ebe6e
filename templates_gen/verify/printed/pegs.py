"""Pegs and the thread between them, from the kit alone: where they stand, and how a thread touches two of them."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.kit.kit import Kit
from templates_gen.verify.search import root

Spot = tuple[float, float]


# Least, likely and most thickness in mm of a soft yarn of 1 tex, and the density in g/cm3 of the fibre it is for.
_HARD = (0.038, 0.052, 0.066, 1.52)
_FIRM = (0.0397, 0.051, 0.0721, 1.31)
_SOFT = (0.0418, 0.08, 0.125, 1.31)
_GRAMS_PER_CM3 = {
    "cotton": 1.52, "wool": 1.31, "mohair": 1.31, "alpaca": 1.31, "silk": 1.34, "linen": 1.5, "hemp": 1.48,
    "jute": 1.46, "viscose": 1.52, "polyester": 1.38, "acrylic": 1.17, "nylon": 1.14,
}  # fmt: skip


def end_thickness(kit: Kit) -> float | None:
    """How thick an end lies on its pegs in mm: likely, by its weight and its wraps; None if neither is known.

    Two threads in one end lie as one round thread of twice the area.
    """
    warp = kit.amounts.warp
    yarn, wrap = warp.yarn(), warp.wrap
    twice = math.sqrt(2) if kit.weaving.doubled_warp else 1.0
    weighed = _by_weight(float(yarn.tex), warp.make, warp.fibre) if yarn else None
    if wrap is None:
        return twice * weighed[1] if weighed else None
    wide = float(wrap.window.mm)
    each = wide / wrap.turns / (1.4 if wrap.how == "side by side" else 1)
    if weighed is None:
        return twice * each
    low, high = _wrapped(wide, wrap.turns, pushed=wrap.how == "pushed together")
    least, _, most = weighed
    if max(low, least) > min(high, most) * (1 + 1e-9):
        return twice * each  # they contradict each other: the wrap was made with this very yarn
    return twice * min(max(each, low, least), high, most)


def _wrapped(wide: float, turns: int, *, pushed: bool) -> tuple[float, float]:
    """Between what a wrap lies, to one turn and 3 per cent; a loose one comes out up to 1.9 times as thick."""
    low = 0.97 * wide / (turns + 1) / (1 if pushed else 1.9)
    return low, 1.03 * (2 * wide if turns == 1 else wide / (turns - 1))


def _by_weight(tex: float, make: str | None, fibre: str | None) -> tuple[float, float, float]:
    """The least, likely and most that a yarn of this weight, make and fibre is thick while soft."""
    unstated = (_HARD, _FIRM) if fibre in ("cotton", "linen", "hemp", "jute") else (_SOFT, _FIRM)
    every = {"cord": (_HARD,), "firm": (_FIRM,), "soft": (_SOFT,), None: unstated}[make]
    own, root = _GRAMS_PER_CM3.get(fibre or ""), math.sqrt(tex)
    heaviest, lightest = max(_GRAMS_PER_CM3.values()), min(_GRAMS_PER_CM3.values())
    low = min(k * math.sqrt(dense / (own or heaviest)) for k, _, _, dense in every)
    high = max(k * math.sqrt(dense / (own or lightest)) for _, _, k, dense in every)
    _, likely, _, dense = every[0]
    return root * low, root * likely * (math.sqrt(dense / own) if own else 1), root * high


def peg_centres(ends: PeggedEnd, marks: Sequence[float]) -> list[Spot]:
    """The x of every peg and how far within the outer edge it stands, in the order of `marks`.

    The first, on which the warp is tied, stands nearest to the weaving; from there the pegs step out and in by turns.
    """
    step = float(ends.row_distance.mm)
    depth, found = float(ends.edge_distance.mm) + step, list[Spot]()
    for x in marks:
        found.append((x, depth))
        step = -step
        depth += step
    return found


def touching(low: Spot, high: Spot, radius: float, *, right: bool) -> Callable[[float], float]:
    """The x at every height of the straight thread that leaves the peg at `low` on its `right` side (or its left) and
    comes to the peg at `high` on the other side, its middle line `radius` from both centres.

    It is turned about the lower peg from lying flat to lying flat the other way until it touches the upper one.
    """
    side = 1 if right else -1

    def beyond(lean: float) -> float:
        """How far the upper peg's centre lies further than it should on the line's far side."""
        across = (high[0] - low[0]) * math.cos(lean) - (high[1] - low[1]) * math.sin(lean)
        return side * across - 2 * radius

    lean = root(beyond, -math.pi / 2, math.pi / 2)
    at = (low[0] + side * radius * math.cos(lean), low[1] - side * radius * math.sin(lean))
    return lambda height: at[0] + (height - at[1]) * math.tan(lean)
