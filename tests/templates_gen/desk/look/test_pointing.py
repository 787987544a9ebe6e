"""Which marks belong to each end of the warp."""

from __future__ import annotations

from itertools import pairwise

import pytest
from kits import KINDS, plan_of

from layout.parts.strip import numbered_marks
from templates_gen.desk.look.pointing import labels, marks_of, sentences
from templates_gen.messages.english import ENGLISH


@pytest.mark.parametrize("name", KINDS)
def test_an_end_lies_at_its_marks(name: str) -> None:
    """No end lies further from the mark that is named for it than half of what is from mark to mark."""
    warp = plan_of(KINDS[name]).warp
    for one, at in zip(warp.passes, marks_of(plan_of(KINDS[name])), strict=True):
        assert abs(one.near - warp.near[at.near]) < warp.spacing / 2
        assert abs(one.far - warp.far[at.far]) < warp.spacing / 2


@pytest.mark.parametrize("name", KINDS)
def test_the_thread_goes_on_from_mark_to_mark(name: str) -> None:
    """Where an end stops the next one begins: at the same mark, or at the next one of notches and a loose rod."""
    marks = marks_of(plan_of(KINDS[name]))
    for k, (one, other) in enumerate(pairwise(marks)):
        step = other.near - one.near if k % 2 else other.far - one.far
        assert step in (0, 1)
    assert marks[0] == (0, 0)


def test_a_wound_warp_by_hand() -> None:
    """Of 50 ends, wound from the tie-on 0: end 23 goes up from near mark 11 to far mark 12, in wind 12."""
    plan = plan_of()
    assert plan.warp.ends == 50
    said = sentences(plan, ENGLISH)
    assert said[22] == "End 23 of 50, on the face: wind 12, near strip 11, far strip 12"
    assert said[23] == "End 24 of 50, behind: wind 12, near strip 12, far strip 12"
    assert said[0].endswith("near strip 0 (tied on), far strip 1")
    assert said[49].endswith("near strip 25 (tied off), far strip 25")


@pytest.mark.parametrize("name", KINDS)
def test_labels_are_the_numbers_on_the_strip(name: str) -> None:
    """Every label begins with the number that the strip counts by, and there is one for each mark."""
    plan = plan_of(KINDS[name])
    for end in ("near", "far"):
        numbers = [number for number, _ in numbered_marks(plan, end)]  # type: ignore[arg-type]
        said = labels(plan, end, ENGLISH)  # type: ignore[arg-type]
        assert [int(each.split()[0]) for each in said] == numbers
