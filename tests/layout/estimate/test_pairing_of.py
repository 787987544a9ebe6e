"""What the plan says of a pair of yarns: warnings with their reasons, and kinds of thickness kept apart."""

from __future__ import annotations

import pytest

from tests.plain_kits import LEFT_OUT
from tests.yarn_kits import amounts_of


def wrapped(warp: int, weft: int, **changes: object) -> tuple[str, ...]:
    """Warnings on yarns that take so many turns in 2 cm, at a pitch of 4 mm unless changed."""
    window = {"window": "2 cm", "how": "pushed together"}
    stated = {"warp": {"wrap": {"turns": warp} | window}, "weft": {"wrap": {"turns": weft} | window}}
    return amounts_of(**(stated | changes)).warnings


def test_the_ideal_pair_is_not_warned_of() -> None:
    """American Tapestry Alliance: warp near half the pitch, weft as thick as the gap: 2 and 2 mm at 4 mm."""
    assert wrapped(10, 10) == ()


@pytest.mark.parametrize(
    ("warp", "weft", "said"),
    [
        (45, 10, "is 11 % of the pitch, far too thin"),
        (5, 20, "is 100 % of the pitch, too thick"),
        (10, 40, "is 25 % of the gap between the ends, too thin"),
        (10, 4, "too thick: it cannot be beaten down to cover the warp"),
        (4, 10, "no gap to lie in"),
    ],
)
def test_faults_of_a_pair_are_named(warp: int, weft: int, said: str) -> None:
    """Our own limits about the ideal; each sentence gives its reason."""
    assert said in " ".join(wrapped(warp, weft))


def test_the_sett_off_the_ladder_is_said() -> None:
    """Metric ladder of a yarn supplier's technical article: 2, 2.5, 3 per cm; 2.7 is none of them."""
    assert any("off the usual ladder" in said for said in wrapped(10, 10, sett={"given": "2.7 per cm"}))


def test_the_wrap_of_the_pair_stands_against_yarns_apart() -> None:
    """Two yarns of 2 mm suggest 2.5 ends per cm, 15 % either way; a pair wrapped at 3.4 per cm is doubted, and kept."""
    readings = {"readings": [{"pairs": 34, "measure": "10 cm"}], "as_measured": True}
    doubted = [said for said in wrapped(10, 10, sett=readings) if "apart make likely" in said]
    assert len(doubted) == 1
    assert "3.4 ends per cm" in doubted[0]
    assert not any("apart" in said for said in wrapped(10, 10, sett={"given": "2.7 per cm"}))


def test_a_first_guess_says_how_far_off_it_can_be() -> None:
    """By hand: 2 and 2 mm make 2.5 ends per cm; wrapped to a turn and 3 %, 1.764 to 2.289 mm each, 2.2 to 2.8."""
    window = {"turns": 10, "window": "2 cm", "how": "pushed together"}
    said = amounts_of(warp={"wrap": window}, weft={"wrap": window}).notes[0]
    for guess in ("would be 2.5 ends per cm (6.35 epi)", "2.2 ends per cm", "to 2.8 ends per cm"):
        assert guess in said


def test_a_wrap_and_a_label_are_compared() -> None:
    """One yarn wrapped, the other known by its weight: both have a soft thickness, so the pair is judged."""
    found = amounts_of(warp={"wrap": {"turns": 10, "window": "2 cm"}}, weft__wrap=LEFT_OUT)
    assert "A first guess" in found.notes[0]
    assert found.weft_take_up is not None


def test_both_thicknesses_are_named() -> None:
    """2 mm as it was wrapped, thinner as it is pressed in the cloth."""
    found = amounts_of()
    assert found.weft_soft_mm is not None
    assert found.weft_pressed_mm is not None
    assert found.weft_soft_mm.value == 2 > found.weft_pressed_mm.value


def test_a_bundle_without_a_wrap_of_its_own_is_bunched_from_its_strands() -> None:
    """Areas add: four strands of 1 mm are 2 mm thick together, and that is assumed."""
    strands = [{"number": 4, "wrap": {"turns": 20, "window": "2 cm"}}]
    soft = amounts_of(weft={"strands": strands}).weft_soft_mm
    assert soft is not None
    assert soft.value == pytest.approx(2)
    assert soft.assumptions


def pressed(*strands: dict[str, object]) -> float:
    """How thick in mm a weft of these strands is in the cloth."""
    found = amounts_of(weft={"strands": list(strands)}).weft_pressed_mm
    assert found is not None
    return found.value


def test_unlike_fibres_are_bunched_from_their_areas() -> None:
    """Two strands of one yarn are as thick, stated once or known apart as two fibres of one volume."""
    yarn = {"count": 300, "system": "tex", "fibre": "wool"}
    assert pressed(yarn, yarn | {"fibre": "mohair"}) == pytest.approx(pressed(yarn | {"number": 2}))


def test_each_fibre_of_a_bundle_takes_up_its_own_room() -> None:
    """Areas add: 300 tex of cotton at 1.1 cm3/g (Peirce) and 300 of wool make one round thread of both areas."""
    yarn = {"count": 300, "system": "tex"}
    alone = [pressed(yarn | {"fibre": each}) for each in ("cotton", "wool")]
    assert pressed(yarn | {"fibre": "wool"}, yarn | {"fibre": "cotton"}) ** 2 == pytest.approx(
        sum(each**2 for each in alone)
    )
