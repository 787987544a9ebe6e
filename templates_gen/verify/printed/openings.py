"""The notches, holes and ticks at empty notches of a template, checked against the kit's numbers alone."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layout.drawing.shapes import Box
from layout.kit.kit import Kit
from layout.messages.catalogue import Message
from templates_gen.messages.roles.proof_printed import Mark, Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, end_place, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.opening import Opening
from templates_gen.verify.kinds.truths import truth_of


def prove_openings(kit: Kit, end: str, marks: Sequence[Fraction], pieces: Sequence[FoundPart]) -> Findings:
    """Every opening that stands whole on a piece is there once and right, and each stands whole on some piece."""
    truth, ends = truth_of(kit), kit.frame.ends
    to_weaving = 1 if (end == "near") == (kit.weaving.near_end == "bottom") else -1
    wanted, name = sorted(truth.wanted(ends, marks, to_weaving)), truth.opening
    total, whole = NOTHING, set[int]()
    for seen in pieces:
        found = sorted(truth.find(ends, seen))
        own = [k for k, each in enumerate(wanted) if _belongs(each, seen.part.box, found)]
        whole.update(own)
        total += _matched([wanted[k] for k in own], found, name, seen.where)
    lost = len(wanted) - len(whole)
    return total + Findings(0.0, (finding(Strips.LOST, number=lost, what=name).at(end_place(end)),) if lost else ())


def _belongs(each: Opening, box: Box, found: Sequence[Opening]) -> bool:
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
