"""A strip or guide in pieces, put together from the sheets that its pieces lie on.

Each piece is laid by the crosses of its joint on the one before, as a person does. From one joint to the next a piece
comes out as its sheet's scale says. A joint that is seen glued is measured; any other is off by what usual care leaves.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot, inf, isinf
from typing import NamedTuple

from layout.paper.joint_tolerance import joint_tolerance
from templates_gen.measuring.glued import Misfit, Misfits
from templates_gen.measuring.groups import Group, Mark
from templates_gen.measuring.measured import Length, Measured, MeasuredSheet

_SAME = 1e-6


@dataclass(frozen=True)
class Joined:
    """A part in `pieces`, from the first mark to the last; of its joints, `seen` were measured where they are glued.

    `places` are the marks and how far each is off its place, in mm, once the mean scale of the part is taken out;
    `marks` is how many there are. `tolerance` is what the joints that were not seen may take or give, in mm.
    """

    part: str
    title: str
    pieces: int
    length: Length
    places: tuple[tuple[Mark, float], ...]
    marks: int
    seen: int
    tolerance: float

    @property
    def worst(self) -> tuple[Mark, float]:
        """The mark that is furthest off its place."""
        return max(self.places, key=lambda each: abs(each[1]))


class _Piece(NamedTuple):
    """A piece as it was measured on a sheet, which a number stands for."""

    row: Measured
    sheet: int
    scale: float
    within: float
    sure: bool


def joined(sheets: Sequence[MeasuredSheet], misfits: Misfits | None = None) -> tuple[Joined, ...]:
    """Every part in pieces of which all pieces were measured."""
    found: dict[tuple[str, str], dict[float, _Piece]] = {}
    for number, sheet in enumerate(sheets):
        for row in sheet.groups:
            if row.scale is not None and row.enough and not all(map(isinf, row.group.joints)):
                piece = _Piece(row, number, *row.scale)
                found.setdefault((sheet.seen.label.digest, row.group.part), {}).setdefault(row.group.joints[0], piece)
    parts = {key: [pieces[begin] for begin in sorted(pieces)] for key, pieces in found.items()}
    return tuple(_together(digest, pieces, misfits or {}) for (digest, _), pieces in parts.items() if _whole(pieces))


def _whole(pieces: Sequence[_Piece]) -> bool:
    ends = [piece.row.group.joints for piece in pieces]
    meet = all(abs(one[1] - other[0]) < _SAME for one, other in pairwise(ends))
    return ends[0][0] == -inf and ends[-1][1] == inf and meet


def _together(digest: str, pieces: Sequence[_Piece], misfits: Misfits) -> Joined:
    group = pieces[0].row.group
    known = [misfits.get((digest, group.part, piece.row.group.joints[0])) for piece in pieces]
    placed = list(_placed(pieces, known))
    (first, begin, one), *_, (last, end, other) = placed
    nominal, long = last.at - first.at, end - begin
    seen = [misfit for misfit in known if misfit]
    unseen = len(pieces) - 1 - len(seen)
    tolerance = joint_tolerance(nominal, unseen, max(_lever(piece.row.group) for piece in pieces))
    of_scale = _by_scale(pieces, first.at, last.at)
    within = hypot(of_scale, one, other, tolerance, *(misfit.within for misfit in seen))
    length = Length(nominal, long, within, all(piece.sure for piece in pieces))
    mean = long / nominal
    places = tuple((mark, at - begin - mean * (mark.at - first.at)) for mark, at, _ in placed)
    marks = {mark.mark.at for piece in pieces for mark in piece.row.marks}
    return Joined(group.part, group.title, len(pieces), length, places, len(marks), len(seen), tolerance)


def _placed(pieces: Sequence[_Piece], known: Sequence[Misfit | None]) -> Iterator[tuple[Mark, float, float]]:
    """Each mark of every piece between its joints, where it comes to lie, and how sure its own place is."""
    begun, at, before = 0.0, 0.0, pieces[0].scale
    for piece, misfit in zip(pieces, known, strict=True):
        begin, end = piece.row.group.joints
        if not isinf(begin):
            begun, at = begun + before * (begin - at) + (misfit.off if misfit else 0.0), begin
        for mark, off, within in piece.row.found:
            if begin <= mark.at < end:
                yield mark, begun + piece.scale * (mark.at - at) + off, within
        before = piece.scale


def _by_scale(pieces: Sequence[_Piece], first: float, last: float) -> float:
    """What the scales of the sheets leave open of the length: pieces of one sheet are off together."""
    sheets: dict[int, float] = {}
    for piece in pieces:
        begin, end = piece.row.group.joints
        long = min(end, last) - max(begin, first)
        sheets[piece.sheet] = sheets.get(piece.sheet, 0.0) + long * piece.within
    return hypot(*sheets.values())


def _lever(group: Group) -> float:
    """How far beside the middle of a joint's crosses the marks run, in mm."""
    if not group.crosses:
        return 0.0

    def aside(x: float, y: float) -> float:
        return group.along.x * y - group.along.y * x

    marks = [aside((line.start.x + line.end.x) / 2, (line.start.y + line.end.y) / 2) for line in group.lines]
    crosses = [aside(*place) for _, place in group.crosses]
    return abs(sum(marks) / len(marks) - (min(crosses) + max(crosses)) / 2)
