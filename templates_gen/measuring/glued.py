"""Joints that are seen glued: two sheets on one page of a scan, laid so that the crosses of a joint meet."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import permutations, product
from math import hypot, isinf
from typing import NamedTuple

from layout.drawing.shapes import Point
from templates_gen.measuring.groups import Group
from templates_gen.measuring.measured import MeasuredSheet

_GLUED = 2.0  # mm: crosses that are further apart lie beside each other, not glued
_JOINT = 12.0  # mm along a part within which all crosses of a joint stand
_SAME = 1e-6


class Misfit(NamedTuple):
    """How much too wide a joint was glued, in mm, and how sure that is."""

    off: float
    within: float


Misfits = Mapping[tuple[str, str, float], Misfit]
"""What is known of joints: by the digest of the file, the part's name and where the joint lies along it."""


def misfits_of(sheets: Sequence[MeasuredSheet]) -> Misfits:
    """Every joint whose two pieces lie on sheets of one page of a scan, glued."""
    return dict(_misfits(sheets))


def _misfits(sheets: Sequence[MeasuredSheet]) -> Iterator[tuple[tuple[str, str, float], Misfit]]:
    for one, other in permutations(sheets, 2):
        same = (one.scan, one.page, one.seen.label.digest) == (other.scan, other.page, other.seen.label.digest)
        if not same:
            continue
        for first, second in product(one.groups, other.groups):
            joint = second.group.joints[0]
            meet = not isinf(joint) and abs(first.group.joints[1] - joint) < _SAME
            if meet and first.group.part == second.group.part:
                misfit = _misfit(one, first.group, other, second.group, joint)
                if misfit:
                    yield (one.seen.label.digest, first.group.part, joint), misfit


def _misfit(one: MeasuredSheet, first: Group, other: MeasuredSheet, second: Group, joint: float) -> Misfit | None:
    """By the mean of the crosses of the joint; None where they do not meet."""
    places, meeting = _crosses(one, first, joint), _crosses(other, second, joint)
    if not places or len(places) != len(meeting):
        return None
    apart = [Point(to.x - at.x, to.y - at.y) for at, to in zip(places, meeting, strict=True)]
    if max(hypot(*each) for each in apart) > _GLUED or one.seen.on_bed is None:
        return None
    begin, end = one.seen.on_bed.at(Point(0, 0)), one.seen.on_bed.at(first.along)
    way = Point(end.x - begin.x, end.y - begin.y)
    mean = Point(sum(each.x for each in apart) / len(apart), sum(each.y for each in apart) / len(apart))
    off = (mean.x * way.x + mean.y * way.y) / hypot(*way)
    return Misfit(off, hypot(_sure(one), _sure(other)))


def _crosses(sheet: MeasuredSheet, group: Group, joint: float) -> list[Point]:
    """Where the crosses of a joint lie on the bed."""
    if sheet.seen.on_bed is None:
        return []
    return [sheet.seen.on_bed.at(place) for at, place in group.crosses if -_SAME < at - joint < _JOINT]


def _sure(sheet: MeasuredSheet) -> float:
    """How sure a place near the edge of a sheet is, in mm: by its scale from the middle on, and by what is uneven."""
    wide, high = sheet.seen.label.rectangle
    within = sheet.seen.within
    return hypot(within.x * wide / 2, within.y * high / 2, within.skew * high / 2, sheet.seen.uneven)
