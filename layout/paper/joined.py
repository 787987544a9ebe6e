"""How the pieces of a part are joined, and what must be true of the whole then: as its sheets say it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import permutations

from layout.drawing.shapes import Point
from layout.drawing.sheet import Part, Piece
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Sheet
from layout.paper.joint_tolerance import joint_tolerance, to_a_tenth
from layout.paper.joints import crosses_of
from layout.paper.refusal import plain

_LEVEL = 1e-6


def ends_of(part: Part) -> tuple[Point, Point]:
    """The crosses of `part` that are measured: of those level with each other the ones furthest apart."""
    pairs = [pair for pair in permutations(part.datum, 2) if abs(pair[0].y - pair[1].y) < _LEVEL]
    return max(pairs, key=lambda pair: pair[1].x - pair[0].x)


def proof_distance(part: Part) -> float:
    """The distance in mm between these crosses, over all joints."""
    left, right = ends_of(part)
    return right.x - left.x


def proof_tolerance(part: Part, joints: int) -> float:
    """How far in mm that distance may be off over so many `joints`, to a tenth of a mm as the sheets say it."""
    lever = ends_of(part)[1].y - sum(point.y for point in crosses_of(0.0, part)) / 3
    return to_a_tenth(joint_tolerance(proof_distance(part), joints, lever))


def how_joined(part: Part, count: int, words: Catalogue) -> str:
    """What the sheets of `part` say of its `count` pieces."""
    proof = {"distance": plain(proof_distance(part)), "within": plain(proof_tolerance(part, count - 1))}
    return words.say(Sheet.JOIN, **proof) if part.joint_rows else words.say(Sheet.IN_PIECES, count=count, **proof)


def said_of_all(sheets: Sequence[Sequence[Piece]], wholes: Sequence[Part], words: Catalogue) -> set[str]:
    """What the `sheets` must say of the parts on them: of each what is true of the one that is in the most pieces."""
    pieces_of = Counter(piece.part.name for sheet in sheets for piece in sheet)
    return {how_joined(each, max(pieces_of.values()), words) for each in wholes}
