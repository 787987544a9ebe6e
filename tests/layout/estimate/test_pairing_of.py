"""What the plan says of a pair of yarns: warnings with their reasons, and kinds of thickness kept apart."""

from __future__ import annotations

import pytest

from tests.plain_kits import LEFT_OUT
from tests.yarn_kits import amounts_of


def wrapped(warp: int, weft: int, **changes: object) -> tuple[str, ...]:
    """Warnings on yarns that take so many turns in 2 cm, at a pitch of 4 mm unless changed."""
    stated = {"warp": {"wrap": {"turns": warp, "window": "2 cm"}}, "weft": {"wrap": {"turns": weft, "window": "2 cm"}}}
    return amounts_of(**(stated | changes)).warnings


def test_the_ideal_pair_is_not_warned_of() -> None:
    """American Tapestry Alliance: warp near half the pitch, weft as thick as the gap: 2 and 2 mm at 4 mm."""
    assert wrapped(10, 10) == ()


@pytest.mark.parametrize(
    ("warp", "weft", "said"),
    [
        (20, 10, "is 25% of the pitch, too thin"),
        (7, 20, "is 71% of the pitch, too thick"),
        (10, 20, "is 50% of the gap between the ends, too thin"),
        (10, 7, "too thick: it cannot be beaten down to cover the warp"),
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
    """Soft 15 % either way (our own guess); compressed a third only, as hand wraps of soft wool come out."""
    soft = amounts_of(warp__fibre=LEFT_OUT).notes[0]
    assert "soft diameters of the two yarns would be 2.5 ends per cm (6.35 epi)" in soft
    assert "2.125 ends per cm" in soft
    assert "to 2.875 ends per cm" in soft
    pressed = amounts_of(warp__wrap=LEFT_OUT, weft__wrap=LEFT_OUT).notes[0]
    assert "compressed diameters" in pressed
    assert "a half to a third" in pressed


def test_soft_and_compressed_are_never_mixed() -> None:
    """One yarn wrapped, the other computed: nothing is judged, and the plan says why."""
    stated = {"warp": {"wrap": {"turns": 10, "window": "2 cm"}}, "weft__wrap": LEFT_OUT}
    found = amounts_of(**stated)
    assert "never mixed" in found.notes[0]
    assert found.warnings == ()
    assert found.weft_take_up is None


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
