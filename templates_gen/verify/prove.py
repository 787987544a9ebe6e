"""What must be true of every part whatever its builder did: the table of proofs, by the part's name."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace

from layout.drawing.sheet import Piece, Sheet
from layout.plan import Plan
from templates_gen.messages.roles.proof import Laid, Proof
from templates_gen.verify.finding import NOTHING, Findings, finding, said
from templates_gen.verify.found_parts import FoundPart, found_on
from templates_gen.verify.heads import check_caption
from templates_gen.verify.printed.expected import sett_is_sound
from templates_gen.verify.printed.figures import check_figures
from templates_gen.verify.printed.frame_check import prove_frame_check
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.printed.gauge import prove_gauge
from templates_gen.verify.printed.grid import prove_grid
from templates_gen.verify.printed.guide import prove_guide
from templates_gen.verify.printed.help_card import prove_help
from templates_gen.verify.printed.key_map import Map, check_map, map_on
from templates_gen.verify.printed.label import prove_label
from templates_gen.verify.printed.leaflet import prove_leaflet
from templates_gen.verify.printed.legal_card import prove_legal_card
from templates_gen.verify.printed.packing_list import prove_folded, prove_packing_list
from templates_gen.verify.printed.shed_alone import prove_shed
from templates_gen.verify.printed.signs import check_signs
from templates_gen.verify.printed.start_here import prove_start_here
from templates_gen.verify.printed.strips import prove_strip
from templates_gen.verify.printed.winding import prove_winding
from templates_gen.verify.said import Word, outside

PROOFS: Mapping[str, Callable[..., Findings]] = {
    "start-here": prove_start_here,
    "winding": prove_winding,
    "heading-rows": prove_shed,
    "strip-near": prove_strip,
    "strip-far": prove_strip,
    "spacing-near": prove_guide,
    "spacing-far": prove_guide,
    "wrap-gauge": prove_gauge,
    "gauge-how": prove_gauge,
    "leaflet": prove_leaflet,
    "frame-check": prove_frame_check,
    "pull-check": prove_frame_check,
    "weaving-grid": prove_grid,
    "help": prove_help,
    "label": prove_label,
    "folded-label": prove_folded,
    "legal-card": prove_legal_card,
    "packing-list": prove_packing_list,
}
"""By the name of a part: `proof(plan, pieces, on_paper=)` over all pieces of that part in a file."""


def prove(plan: Plan, sheets: Sequence[Sheet], laid: Sequence[Sequence[Piece]], *, on_paper: bool) -> Findings:
    """Every part on `sheets`, piece by piece.

    `on_paper` sheets must carry check bars, and their words are read; elsewhere words are outlines and are only
    compared as shapes.
    """
    sett = plan.warp.sett
    if not sett_is_sound(plan.kit, sett.per_mm, sett.unit.mm):
        return Findings(0.0, (finding(Laid.SETT),))
    total = NOTHING
    pieces: dict[str, list[FoundPart]] = {}
    maps = [map_on(sheet, plan.words) if on_paper else None for sheet in sheets]
    alone = tuple(
        (k, _but(outside(sheet, ()), shown))
        for k, (sheet, there, shown) in enumerate(zip(sheets, laid, maps, strict=True), 1)
        if not there
    )
    for number, (sheet, there) in enumerate(zip(sheets, laid, strict=True), 1):
        where = said(Proof.SHEET, number=number)
        found, wrong = found_on(sheet, there, where)
        total += wrong
        if on_paper:
            names = [piece.part.name for piece in there]
            total += check_furniture(sheet, names).at(where) + check_signs(sheet, names, sett.unit, plan.words).at(
                where
            )
            total += check_caption(sheet, names, plan.words, printing=plan.kit.paper.use == "download").at(where)
            total += check_figures(sheet, found, plan.kit, sett.per_mm).at(where)
        said_there = _but(outside(sheet, found), maps[number - 1]) if on_paper else ()
        for seen in found:
            pieces.setdefault(seen.part.name, []).append(
                replace(
                    seen,
                    outside=said_there,
                    words_alone=alone,
                    number=(number, len(sheets)),
                    file=tuple(sheets),
                    spoken=plan.words,
                )
            )
    if total.problems:
        return total
    pieces = dict(_counted(pieces))
    below = plan.kit.weaving.near_end == "bottom"
    for number, (sheet, shown) in enumerate(zip(sheets, maps, strict=True), 1):
        if shown:
            wrong_there = tuple(check_map(shown, sheet, number, pieces, near_below=below))
            total += Findings(0.0, wrong_there).at(said(Proof.SHEET, number=number))
    return sum((PROOFS[name](plan, own, on_paper=on_paper) for name, own in pieces.items()), total)


def _counted(pieces: Mapping[str, Sequence[FoundPart]]) -> Iterator[tuple[str, list[FoundPart]]]:
    """All pieces by the name of their part, each with how many that part has, or the same of the other frame end."""
    for name, own in pieces.items():
        kind = name.rpartition("-")[0]
        alike = (len(each) for other, each in pieces.items() if kind and other.rpartition("-")[0] == kind)
        most = max(alike, default=len(own))
        yield name, [replace(seen, most=most) for seen in own]


def _but(words: tuple[Word, ...], shown: Map | None) -> tuple[Word, ...]:
    """Words without those of a map, which has a proof of its own."""
    return tuple(word for word in words if word not in shown.words) if shown else words
