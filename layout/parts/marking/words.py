"""What stands on the flap of a marking strip, wish by wish from what matters most."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.messages.roles import Marking, Sheet
from layout.parts.marking.flap import Phrase, Stand
from layout.parts.marking.ties import sides, tied
from layout.parts.order_phrase import order_wishes
from layout.plan import Plan
from layout.warps.warp import End

_NAMES = {
    "near": (Marking.NEAR_BRIEF, Marking.NEAR, Marking.NEAR_PIECE),
    "far": (Marking.FAR_BRIEF, Marking.FAR, Marking.FAR_PIECE),
}
Span = tuple[int, int]


def wishes(plan: Plan, end: End, count: Span, edges: Sequence[float]) -> list[list[Phrase]]:
    """The phrases of the strip of `end`, whose marks count from one to another; its pieces have these `edges`."""
    say, warp = plan.words.say, plan.warp
    brief, name, piece = _NAMES[end]
    total = len(edges) - 1
    labels = [
        [Phrase(f"piece {k}", say(role, number=k, total=total), pen=Pen.STRONG, between=between)]
        for role in (Sheet.PIECE, piece)
        for k, between in enumerate(pairwise(edges), 1)
    ]
    whole = total == 1
    goes = Marking.ENDS_GO if warp.kind == "rod" else Marking.WINDS_GO
    found = [
        *([[Phrase("name", say(brief), pen=Pen.STRONG)]] if whole else labels),
        *order_wishes(plan, edges),
        sides(plan.words),
        [Phrase("centre", say(Marking.CENTRE), "centre")],
        *([Phrase(side, say(role, number=number), side)] for side, role, number in _tied(plan, end, *count)),
        [Phrase("way", say(goes), arrow=warp.toward)],
        *([[Phrase("name", say(name), pen=Pen.STRONG)]] if whole else []),
    ]
    if warp.winding == "figure eight":
        layer = warp.passes[0].layer_at(end)
        found.append([Phrase("layer", say(Marking.ODD if layer == "face" else Marking.EVEN))])
    return found


def _tied(plan: Plan, end: End, first: int, last: int) -> list[tuple[Stand, Marking, int]]:
    """Where the thread is tied to this bar: nowhere where it is tied to a rod."""
    return [] if plan.warp.kind == "rod" else tied(plan, end, first, last)
