"""What is bought is what is needed: the spare once, a hem at each end."""

from __future__ import annotations

import math

import pytest

from tests.yarn_kits import STATED, amounts_of


def test_the_warps_balls_hold_its_spare_once() -> None:
    """In balls of a gram: as many as the warp weighs at most, its spare with it."""
    found = amounts_of(warp__ball=1, warp__spare="25 %")
    assert found.warp_total_g is not None
    (warp,) = found.balls
    assert warp.balls == math.ceil(found.warp_total_g.high - 1e-9)


def test_the_wefts_balls_hold_a_hem_at_each_end() -> None:
    """Hems of 30 mm at both ends of 300 mm are a fifth more weft."""
    weft = {"strands": [{**STATED["weft"]["strands"][0], "ball": 1}], "spare": "0 %"}
    (bare,) = amounts_of(weft=STATED["weft"] | weft).balls
    (hemmed,) = amounts_of(weft=STATED["weft"] | weft, weaving__hem="30 mm").balls
    assert hemmed.balls == pytest.approx(1.2 * bare.balls, abs=1.2)
