"""What is bought of each yarn: all that is woven, once; the balls follow from it."""

from __future__ import annotations

import math

import pytest

from tests.yarn_kits import STATED, amounts_of

STRAND = STATED["weft"]["strands"][0]
TWO = {"strands": [{**STRAND, "ball": 50}, {"count": 8, "system": "ne", "number": 2, "colour": "rust", "ball": 100}]}
AREAS = {"colours": [{"name": "ash", "share": 30, "lengths": 3}, {"name": "plum", "share": 70}]}


def test_the_warp_is_packed_without_its_spare() -> None:
    """What is woven and its spare are all the warp thread, in m and in g."""
    found = amounts_of(warp__spare="25 %")
    pack = found.packs[0]
    assert (pack.of, pack.spare.value) == ("warp", 0.25)
    assert pack.metres is not None
    assert pack.metres.high * 1.25 == pytest.approx(found.warp_total_m.high)
    assert pack.grams is not None
    assert found.warp_total_g is not None
    assert pack.grams.value * 1.25 == pytest.approx(found.warp_total_g.value)


@pytest.mark.parametrize("weft", [TWO, TWO | AREAS, AREAS])
def test_the_weft_is_packed_once(weft: dict[str, object]) -> None:
    """Over all yarns and colours together the grams and metres are those of the whole weft; with hems, a fifth more."""
    for hem, more in ({}, 1.0), ({"weaving__hem": "30 mm"}, 1.2):
        found = amounts_of(weft=STATED["weft"] | weft, **hem)
        packs = [pack for pack in found.packs if pack.of == "weft"]
        assert found.weft_total_g is not None
        assert found.weft_total_m is not None
        assert found.weft_tails_m is not None
        bare = found.weft_total_m.value - found.weft_tails_m.value
        metres = found.weft_strands * (bare * more + found.weft_tails_m.value)
        grams = found.weft_total_g.value * (bare * more + found.weft_tails_m.value) / found.weft_total_m.value
        assert sum(pack.grams.value for pack in packs if pack.grams) == pytest.approx(grams)
        assert sum(pack.metres.value for pack in packs if pack.metres) == pytest.approx(metres)


def test_balls_are_packs_rounded_up() -> None:
    """For each yarn with a ball: enough balls for the highest figure and its spare, and not one more."""
    found = amounts_of(weft=STATED["weft"] | TWO | AREAS, warp__ball=20)
    packs = [pack for pack in found.packs if pack.ball_g is not None]
    assert [(pack.yarn, pack.colour) for pack in packs] == [(each.yarn, each.colour) for each in found.balls]
    assert len(packs) == 4
    for pack, each in zip(packs, found.balls, strict=True):
        assert pack.grams is not None
        assert pack.ball_g is not None
        wanted = (pack.grams.value if pack.sampled else pack.grams.high) * (1 + pack.spare.value)
        assert each.balls == max(1, math.ceil(wanted / pack.ball_g - 1e-9))


def test_a_weft_that_is_not_described_is_packed_by_its_sample() -> None:
    """Without strands the grams are those that a weighed sample gives, by the shares of the colours; no balls."""
    weft = {"sample": {"grams": 9.2, "width": "10 cm", "height": "12 cm"}} | AREAS
    found = amounts_of(weft=weft)
    packs = [pack for pack in found.packs if pack.of == "weft"]
    assert found.weft_total_g is not None
    assert [(pack.colour, pack.sampled) for pack in packs] == [("ash", True), ("plum", True)]
    assert [pack.grams.value for pack in packs if pack.grams] == [
        pytest.approx(share * found.weft_total_g.value) for share in (0.3, 0.7)
    ]
    assert not [each for each in found.balls if each.yarn == packs[0].yarn]
