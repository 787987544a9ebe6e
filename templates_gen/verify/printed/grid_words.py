"""Everything that a weaving grid and its sheets say: sizes and counts of its cells, its centres, how it is joined."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.shapes import Point
from layout.messages.english import ENGLISH
from layout.messages.roles import Grid
from layout.plan import Plan
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof import Words
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.grid_axes import Axis, Span
from templates_gen.verify.printed.height import asked_mm
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.said import check_heads, pieces_named

_APART = 10.0  # pieces of one column or row begin closer than this to each other, in mm
_WORD = 12.0  # the word at a centre begins at most so far before it, in mm


def check_grid_words(
    plan: Plan, axes: tuple[Axis, Axis], windows: Sequence[tuple[Span, Span]], pieces: Sequence[FoundPart]
) -> Findings:
    """Every word of all pieces, and the head of every sheet."""
    wrong = list[Finding]()
    labels, named, centres = pieces_named(pieces), list[str](), set[str]()
    for seen, window in zip(pieces, windows, strict=True):
        for at, words in seen.words():
            if words == ENGLISH.say(Grid.CENTRE) and (centre := _centre_at(axes, window, at)):
                centres.add(centre)
            elif words in labels:
                named.append(words)
            elif not words.isdigit():
                wrong.append(finding(Words.OTHER, words=words).at(seen.where))
    if len(centres) != len(axes):
        wrong.append(finding(Words.CENTRES))
    if sorted(named) != sorted(labels):
        wrong.append(finding(Words.PIECES))
    notes = [*_notes(plan, axes), *_joined(windows, pieces)]
    warp = said_of(plan.kit, plan.warp.sett.per_mm, plan.warp.sett.unit)
    return Findings(0.0, tuple(wrong)) + check_heads(pieces, ENGLISH.say(Grid.TITLE), warp, notes, joined=False)


def _centre_at(axes: tuple[Axis, Axis], window: tuple[Span, Span], at: Point) -> str:
    """Which centre a word names: under the middle column line, or to the left of the middle row line; or neither."""
    (left, _), (low, _) = window
    across, up = (axis.at(axis.count / 2) for axis in axes)
    if at.y < low and 0 < across - at.x < _WORD:
        return "across"
    return "up" if at.x < left and 0 < up - at.y < _WORD else ""


def _notes(plan: Plan, axes: tuple[Axis, Axis]) -> Iterator[str]:
    kit, (columns, rows) = plan.kit, axes
    unit = "in" if plan.warp.sett.unit.imperial else "mm"
    wide, high = (say_length(Length(abs(axis.cell), unit)) for axis in axes)
    values = {"columns": columns.count, "wide": wide, "rows": rows.count, "high": high}
    asked, like = asked_mm(kit), kit.weaving.height
    rest = asked - rows.count * rows.cell
    if rest:
        cells = ENGLISH.say(Grid.CELLS_LESS, **values, less=say_length(Length(rest, like.unit if like else unit)))
    else:
        cells = ENGLISH.say(Grid.CELLS, **values)
    weaving = kit.weaving
    side = Grid.FROM_FACE if weaving.woven_from == "face" else Grid.FROM_BACK
    sides = [Grid.USE_MIRRORED, Grid.MIRRORED] if weaving.cartoon == "mirrored" else [Grid.USE, side]
    yield ENGLISH.paragraph([cells, *map(ENGLISH.say, sides)])
    if not (kit.amounts.weft.picks or kit.amounts.weft.beads):
        yield ENGLISH.say(Grid.GUESS)


def _ranks(places: Sequence[float]) -> int:
    """In how many columns, or rows, pieces that begin at these places lie."""
    return 1 + sum(1 for one, other in pairwise(sorted(places)) if other - one > _APART)


def _joined(windows: Sequence[tuple[Span, Span]], pieces: Sequence[FoundPart]) -> Iterator[str]:
    """How pieces are joined: so many across and up, by the places where they begin."""
    if len(pieces) == 1:
        return
    across, up = (_ranks([window[k][0] for window in windows]) for k in (0, 1))
    points = [point for seen in pieces for point in seen.part.datum]
    xs, ys = [point.x for point in points], [point.y for point in points]
    role = Grid.JOIN_LEFT if up == 1 else Grid.JOIN_BELOW if across == 1 else Grid.JOIN_BOTH
    wide, high = f"{max(xs) - min(xs):.1f}", f"{max(ys) - min(ys):.1f}"
    yield ENGLISH.say(role, count=len(pieces), across=across, up=up, wide=wide, high=high)
