"""The proof's own way of the thread, against passes written down by hand, and against the plan's."""

from __future__ import annotations

from fractions import Fraction

import pytest
from kits import NAILS, NOTCHED, PEGGED, plan_of
from pictures import EVERY

from templates_gen.verify.printed.expected_passes import ExpectedPass, expected_passes

F = Fraction


def found(changes: dict[str, object]) -> tuple[ExpectedPass, ...]:
    """The passes of a kit at 2.5 ends per cm, so a pitch of 4 mm."""
    plan = plan_of(changes)
    return expected_passes(plan.kit, F(1, 4), plan.warp.sett.unit.mm)


def test_two_winds_by_hand() -> None:
    """Shared: both passes lean a pitch. Face straight: the face none, the back two, backward as it comes down."""
    two = {"weaving.width": "16 mm"}
    assert found(two)[:2] == (
        ExpectedPass(F(2), F(4), True, True, True),
        ExpectedPass(F(6), F(-4), False, False, False),
    )
    straight = found(two | {"weaving.slant": "face straight"})
    assert straight[2:] == (
        ExpectedPass(F(10), F(0), True, True, True),
        ExpectedPass(F(14), F(-8), False, False, False),
    )
    back = found(two | {"weaving.slant": "face straight", "weaving.first_pass": "back"})
    assert back[:2] == (ExpectedPass(F(2), F(8), False, True, False), ExpectedPass(F(6), F(0), True, False, True))


def test_notches_and_pegs_by_hand() -> None:
    """Upright at notches; in pairs every second pass leads two pitches on; pegs of 2.5 mm leave 1.5 of 4 mm, nails
    of 1.8 mm leave 2.2.
    """
    assert found(NOTCHED | {"weaving.width": "8 mm"}) == (
        ExpectedPass(F(2), F(0), True, True, True),
        ExpectedPass(F(6), F(0), True, False, True),
    )
    pairs = found(NOTCHED | {"weaving.width": "12 mm", "frame.notch_density": "1.25 per cm"})
    assert [way.lean for way in pairs] == [0, 8, 0]
    assert [way.lean for way in found(PEGGED | {"weaving.width": "8 mm"})] == [F(3, 2), F(-3, 2)]
    assert [way.lean for way in found(NAILS | {"weaving.width": "8 mm"})] == [F(11, 5), F(-11, 5)]


@pytest.mark.parametrize("name", EVERY)
def test_the_plan_comes_to_the_same(name: str) -> None:
    """Two computations, one answer, for every kind of frame and every turn."""
    plan = plan_of(EVERY[name])
    warp, half = plan.warp, plan.warp.width / 2
    planned = [
        ExpectedPass(
            warp.toward * (one.near + one.far) / 2 + half,
            warp.toward * (one.far - one.near),
            one.layer == "face",
            one.direction == "up",
            one.layer_at("far") == "face",
        )
        for one in warp.passes
    ]
    assert list(expected_passes(plan.kit, warp.sett.per_mm, warp.sett.unit.mm)) == planned
