"""Strips in pieces, put together from the sheets of their pieces."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hand_seen import measured_sheet
from kits import kit_of

from layout.drawing.correction import Scale
from layout.drawing.shapes import Placing, Point
from templates_gen.measuring.glued import Misfit, misfits_of
from templates_gen.measuring.groups import Group, Mark
from templates_gen.measuring.joined import joined
from templates_gen.measuring.measured import MeasuredSheet
from templates_gen.scan.seen import OnBed

KIT = kit_of({"frame.outer_width": "90 cm", "weaving.width": "70 cm", "paper.lay": "tiles", "paper.size": "common"})
NEAR = (4, 5)  # sheets of kit.pdf on which the pieces of the near strip lie


def joint_between() -> float:
    """Where the piece that ends the first sheet meets the one that begins the second."""
    (sheet, _) = sheets(Scale(), Scale())
    return max(row.group.joints[1] for row in sheet.groups if row.group.part == "strip-near")


def sheets(*scales: Scale, numbers: tuple[int, ...] = NEAR) -> list[MeasuredSheet]:
    """The sheets of the near strip, each with its scale."""
    return [
        measured_sheet(scale, kit=KIT, number=number, scan=f"{number}.png")
        for scale, number in zip(scales, numbers, strict=True)
    ]


def test_all_pieces_make_the_whole_strip() -> None:
    """Every wind once, from the first to the last, as long as it is drawn; only joints and scale leave it open."""
    (strip,) = joined(sheets(Scale(), Scale()))
    assert (strip.part, strip.pieces, strip.seen, strip.marks) == ("strip-near", 4, 0, 88)
    assert [mark.name.values["number"] for mark, _ in strip.places] == list(range(88))
    assert strip.length.nominal == pytest.approx(696)
    assert strip.length.mm == pytest.approx(696, abs=1e-6)
    assert strip.length.within > strip.tolerance > 0.25
    assert max(abs(off) for _, off in strip.places) < 1e-6


def test_each_piece_comes_out_at_the_scale_of_its_sheet() -> None:
    """Pieces on a sheet at 99.8 % and on one at 100.1 %: the joint lies where the first sheet ends."""
    one, two = sheets(Scale(1, 0.998), Scale(1, 1.001))
    joint = max(row.group.joints[1] for row in one.groups if row.group.part == "strip-near")
    (strip,) = joined([two, one])
    first, last = strip.places[0][0].at, strip.places[-1][0].at
    assert strip.length.mm == pytest.approx(0.998 * (joint - first) + 1.001 * (last - joint))
    mark, off = strip.worst
    assert abs(mark.at - joint) < 8
    assert off < -0.3  # what lies before the joint is short, against the mean of the strip


def test_a_piece_that_is_missing_makes_no_strip() -> None:
    """Nor one on which too few marks were found."""
    one, two = sheets(Scale(), Scale())
    assert joined([one]) == ()
    assert joined([two]) == ()

    def hidden(group: Group, mark: Mark) -> float | None:
        return None if group.part == "strip-near" and mark.at > 0 else 0.0

    assert joined([one, measured_sheet(kit=KIT, number=NEAR[1], off=hidden)]) == ()


def test_joints_that_are_seen_take_the_place_of_usual_care() -> None:
    """Three joints glued 0.1 mm too wide make the strip 0.3 mm longer, and it is as sure as they were seen."""
    there = sheets(Scale(), Scale())
    digest = there[0].seen.label.digest
    begins = sorted(row.group.joints[0] for sheet in there for row in sheet.groups if row.group.part == "strip-near")
    misfits = {(digest, "strip-near", begin): Misfit(0.1, 0.02) for begin in begins[1:]}
    (strip,) = joined(there, misfits)
    assert (strip.seen, strip.tolerance) == (3, 0.0)
    assert strip.length.mm == pytest.approx(696.3, abs=1e-6)
    scale_alone = 696 * 0.0002
    assert strip.length.within == pytest.approx((scale_alone**2 + 3 * 0.02**2) ** 0.5, rel=0.3)


def test_whole_strips_are_not_joined() -> None:
    """A strip in one piece is on its sheet alone."""
    assert joined([measured_sheet()]) == ()


@pytest.mark.parametrize(("wide", "aside"), [(0.0, 0.0), (0.12, 0.3), (-0.2, 0.1)])
def test_a_joint_glued_on_one_scan_is_measured_where_it_lies(wide: float, aside: float) -> None:
    """Two sheets on one page, the second laid with its crosses on those of the first, so much too far along."""
    joint = joint_between()
    one, other = (replace(sheet, scan="both.png") for sheet in sheets(Scale(), Scale()))
    (first,), (second,) = (
        [row.group for row in sheet.groups if row.group.part == "strip-near" and row.group.joints[end] == joint]
        for sheet, end in ((one, 1), (other, 0))
    )
    at, place = next(each for each in first.crosses if each[0] == joint)
    meeting = next(point for each, point in second.crosses if each == at)
    along, lies = first.along, Placing(2.0, 11.0, 7.0)
    shift = Point(
        place.x - meeting.x + wide * along.x - aside * along.y, place.y - meeting.y + wide * along.y + aside * along.x
    )
    origin, right, up = lies.points([(0, 0), (1, 0), (0, 1)])
    moved = lies.points([shift])[0]
    across, upward = Point(right.x - origin.x, right.y - origin.y), Point(up.x - origin.x, up.y - origin.y)
    there_too = [
        replace(sheet, seen=replace(sheet.seen, on_bed=OnBed(begin, across, upward)))
        for sheet, begin in ((one, origin), (other, moved))
    ]
    found = misfits_of(there_too)
    digest = one.seen.label.digest
    assert list(found) == [(digest, "strip-near", joint)]
    assert found[digest, "strip-near", joint].off == pytest.approx(wide, abs=1e-9)
    (strip,) = joined(there_too, found)
    assert strip.seen == 1
    assert strip.length.mm == pytest.approx(696 + wide, abs=1e-6)
    assert strip.tolerance < joined([one, other])[0].tolerance
    apart = replace(there_too[1], scan="other.png")
    assert misfits_of([there_too[0], apart]) == {}
    beside = replace(other, seen=replace(other.seen, on_bed=OnBed(Point(moved.x + 220, moved.y), across, upward)))
    assert misfits_of([there_too[0], beside]) == {}
