"""The notches and holes of a template, checked against the kit's numbers alone."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.shapes import Box
from layout.messages.catalogue import Message
from templates_gen.messages.roles.proof_printed import Mark, Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, end_place, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.opening import Opening, filled, outlined


def prove_openings(
    wanted: Sequence[Opening], empty: Sequence[Opening], name: Mark, end: str, pieces: Sequence[FoundPart]
) -> Findings:
    """Every opening that stands whole on a piece is there once, filled and outlined, and each stands whole on some
    piece; those that stay `empty` are outlined alone.
    """
    total, whole = NOTHING, set[int]()
    every = sorted(wanted)
    for seen in pieces:
        grey, lines = sorted(filled(seen)), sorted(outlined(seen))
        own = [k for k, each in enumerate(every) if belongs(each, seen.part.box, grey)]
        whole.update(own)
        total += _matched([every[k] for k in own], grey, name, seen.where)
        bare = [each for each in empty if belongs(each, seen.part.box, lines)]
        total += _matched(sorted([*(every[k] for k in own), *bare]), lines, name, seen.where)
    lost = len(every) - len(whole)
    return total + Findings(0.0, (finding(Strips.LOST, number=lost, what=name).at(end_place(end)),) if lost else ())


def belongs(each: Opening, box: Box, found: Sequence[Opening]) -> bool:
    """Whether an opening stands whole on a piece; one that meets an edge of it does where it is drawn there."""
    room = min(each.x - each.across / 2 - box[0], box[2] - each.x - each.across / 2)
    return room > LIMIT or (room >= -LIMIT and any(abs(each.x - other.x) <= LIMIT for other in found))


def _matched(wanted: Sequence[Opening], found: Sequence[Opening], name: Mark, where: Message) -> Findings:
    if len(wanted) != len(found):
        return Findings(0.0, (finding(Strips.OUTLINES, found=len(found), what=name, wanted=len(wanted)).at(where),))
    pairs = zip(wanted, found, strict=True)
    off = max((abs(a - b) for one, other in pairs for a, b in zip(one, other, strict=True)), default=0.0)
    return Findings(
        off, () if off <= LIMIT else (finding(Strips.OUTLINE_OFF, what=name, micrometres=off * 1000).at(where),)
    )
