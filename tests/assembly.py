"""Strips and guides put together from their pieces on a computer: each joint is off as a hand leaves it.

Places are complex numbers, x along the part and y across it, in mm; of many assemblies at once, in a row of an array.
"""

from __future__ import annotations

from itertools import combinations, pairwise
from typing import Any, NamedTuple

import numpy as np

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Part
from layout.paper.choice import Laying

Many = np.ndarray[Any, Any]


class Cut(NamedTuple):
    """A part as its pieces show it: the middle of the crosses of each joint, its outermost crosses, its marks."""

    joints: list[complex]
    ends: tuple[complex, complex]
    marks: list[complex]

    @property
    def lever(self) -> float:
        """How far the row of the outermost crosses lies beside the middle of those of a joint."""
        return abs(self.ends[1].imag - self.joints[0].imag)


class Joined(NamedTuple):
    """How far off many assemblies are: their proof distance; their marks from the centre on; gaps across joints."""

    distance: Many
    marks: Many
    gaps: Many


def cut_of(laying: Laying, name: str) -> Cut:
    """The pieces of the part of that name."""
    pieces = [piece.part for sheet in laying.sheets for piece in sheet if piece.part.name == name]
    shared = [[point for point in other.datum if point in one.datum] for one, other in pairwise(pieces)]
    assert all(len(crosses) == 3 for crosses in shared)
    joints = [sum(complex(*point) for point in crosses) / 3 for crosses in shared]
    (whole,) = [part for part in laying.parts if part.name == name]
    level = [pair for pair in combinations(sorted(whole.datum), 2) if abs(pair[0].y - pair[1].y) < 1e-6]
    low, high = max(level, key=lambda pair: pair[1].x - pair[0].x)
    return Cut(joints, (complex(*low), complex(*high)), [complex(x, high.y) for x in _marks(whole)])


def _marks(part: Part) -> list[float]:
    """Where the marks along a part are, each once."""
    pens = (Pen.MARK, Pen.TEN, Pen.END_MARK, Pen.TEN_BACK, Pen.END_MARK_BACK, Pen.HOLE)
    drawn = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen in pens]
    return sorted({round(min(point.x for point in shape.points()), 6) for shape in drawn})


def join(cut: Cut, shifts: Many, turns: Many) -> Joined:
    """Assemblies whose piece behind each joint is shifted (complex, mm) and turned (radians) about its crosses.

    Marks are found along the straight line between the outermost crosses, as the part is laid on its bar, its centre on
    the centre.
    """
    count = len(shifts)
    turned, moved = [np.ones(count, complex)], [np.zeros(count, complex)]
    for k, middle in enumerate(cut.joints):
        turn = np.exp(1j * turns[:, k])
        moved.append(turned[-1] * (middle - turn * middle + shifts[:, k]) + moved[-1])
        turned.append(turned[-1] * turn)
    low, high = cut.ends[0] * turned[0] + moved[0], cut.ends[1] * turned[-1] + moved[-1]
    along = (high - low) / abs(high - low)
    edges = [joint.real for joint in cut.joints]
    of = [int(np.searchsorted(edges, mark.real)) for mark in cut.marks]
    there = np.array(
        [((mark * turned[k] + moved[k] - low) / along).real for mark, k in zip(cut.marks, of, strict=True)]
    ).T
    k = int(np.searchsorted(edges, 0.0))
    centre = ((complex(0, cut.ends[1].imag) * turned[k] + moved[k] - low) / along).real
    marks = there - centre[:, None] - np.array([mark.real for mark in cut.marks])
    across = [n for n, (one, other) in enumerate(pairwise(of)) if one != other]
    return Joined(abs(high - low) - abs(cut.ends[1] - cut.ends[0]), marks, np.diff(marks, axis=1)[:, across])


def at_the_limit(cut: Cut, off: float, turn: float, count: int) -> tuple[Many, Many]:
    """Joints that are each off by so much, in any direction, and turned by so much, either way."""
    random, size = np.random.default_rng(1), (count, len(cut.joints))
    return off * np.exp(2j * np.pi * random.random(size)), turn * random.choice([-1, 1], size)


def within_the_limit(cut: Cut, off: float, turn: float, count: int) -> tuple[Many, Many]:
    """Joints that are each off and turned by anything up to that."""
    shifts, turns = at_the_limit(cut, off, turn, count)
    random = np.random.default_rng(2)
    return shifts * np.sqrt(random.random(shifts.shape)), turns * random.random(shifts.shape)
