"""What joints do to a strip: put together with each joint a quarter of a mm and half a degree off, by the thousand."""

from __future__ import annotations

import re
from functools import cache
from math import hypot, radians

import numpy as np
import pytest
from assembly import Cut, at_the_limit, cut_of, join, within_the_limit
from kits import FLAT, KINDS, NOTCHED, PEGGED, font_metrics, plan_of
from pages import ROOT, table_between

from layout.paper.choice import Laying
from layout.paper.joint_tolerance import OFF, TURN, joint_tolerance, to_a_tenth
from layout.products import PRODUCTS, laid

_MANY = 4000
_WIDE = {"weaving.width": "55 cm", "frame.outer_width": "65 cm"}
PARTS: dict[str, tuple[dict[str, object], str, str]] = {
    "strip, 42 cm": ({"weaving.width": "42 cm", "frame.outer_width": "50 cm"}, "strip-near", "strip-near"),
    "strip, 80 cm": ({"weaving.width": "80 cm", "frame.outer_width": "90 cm"}, "strip-near", "strip-near"),
    "guide, 1.2 m": ({"weaving.width": "1.2 m", "frame.outer_width": "1.3 m"}, "spacing-guide", "spacing-near"),
    "drilling template, 1.2 m": (
        {"weaving.width": "1.2 m", "frame.outer_width": "1.3 m"} | PEGGED,
        "strip-near",
        "strip-near",
    ),
    "strip, 3 m": ({"weaving.width": "2.9 m", "frame.outer_width": "3 m"}, "strip-near", "strip-near"),
}


@cache
def cut(name: str) -> tuple[Laying, Cut]:
    """How the part lies, and its pieces."""
    changes, product, part = PARTS[name]
    (laying,) = laid(product, plan_of(changes), font_metrics())
    return laying, cut_of(laying, part)


def said(name: str) -> float:
    """The tolerance that its sheets say, in mm."""
    found = re.search(r"mm apart, ±([\d.]+) mm; if not, join again", " ".join(cut(name)[0].notes))
    assert found
    return float(found[1])


def worst(whole: Cut) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """The proof distance where all joints are off the same way, longer, shorter, and bent to one side."""
    size = (1, len(whole.joints))
    over = np.sign(whole.joints[0].imag - whole.ends[1].imag)
    each = [(way * OFF, turn * over * TURN) for way, turn in ((1, 1), (-1, -1), (-1, 1), (-1, -1))]
    return np.concatenate([join(whole, np.full(size, d, complex), np.full(size, t)).distance for d, t in each])


@pytest.mark.parametrize("name", PARTS)
def test_what_is_said_holds_for_95_of_100(name: str) -> None:
    """Where each joint is as far off as it may be, 95 of 100 parts are within what is said, which is hardly more."""
    _, whole = cut(name)
    off = abs(join(whole, *at_the_limit(whole, OFF, TURN, _MANY)).distance)
    assert (off <= said(name)).mean() >= 0.945
    assert said(name) <= np.quantile(off, 0.95) * 1.15 + 0.1


@pytest.mark.parametrize("kind", KINDS)
def test_the_distance_is_between_two_crosses_on_one_row(kind: str) -> None:
    """Of every kind of frame: what a rule shows between the two end crosses that are level, not on a slant."""
    for laying in laid("strips", plan_of(KINDS[kind] | _WIDE), font_metrics()):
        found = re.search(r"must be ([\d.]+) mm apart", " ".join(laying.notes))
        assert found
        for part in laying.parts:
            low, high = cut_of(laying, part.name).ends
            assert low.imag == pytest.approx(high.imag)
            assert f"{abs(high - low):.1f}" == found[1]


@pytest.mark.parametrize("name", PARTS)
def test_usual_care_passes(name: str) -> None:
    """Where joints are off by anything up to the limits, 99 of 100 parts pass."""
    _, whole = cut(name)
    off = abs(join(whole, *within_the_limit(whole, OFF, TURN, _MANY)).distance)
    assert (off <= said(name)).mean() >= 0.99


@pytest.mark.parametrize("name", PARTS)
def test_a_bad_joint_is_found(name: str) -> None:
    """One joint that is off along the part by 0.1 mm more than is said, the others right, does not pass."""
    _, whole = cut(name)
    for k in range(len(whole.joints)):
        for way in (1, -1):
            shifts = np.zeros((1, len(whole.joints)), complex)
            shifts[0, k] = way * (said(name) + 0.1)
            assert abs(join(whole, shifts, np.zeros(shifts.shape)).distance[0]) > said(name)


@pytest.mark.parametrize("name", PARTS)
def test_the_worst_is_bounded(name: str) -> None:
    """No assembly is further off than all joints the same way, and their angles, allow."""
    _, whole = cut(name)
    joints = len(whole.joints)
    bent = abs(whole.ends[1] - whole.ends[0]) * (joints * TURN / 2) ** 2 / 2
    most = joints * (OFF + TURN * whole.lever) + bent
    assert abs(worst(whole)).max() <= most + 0.01
    assert abs(worst(whole)).max() >= joints * OFF
    assert abs(join(whole, *at_the_limit(whole, OFF, TURN, _MANY)).distance).max() <= most + 0.01


@pytest.mark.parametrize("name", PARTS)
def test_neighbours_stay_neighbours(name: str) -> None:
    """From the last mark before a joint to the first one behind it no more is lost or won than one joint allows."""
    _, whole = cut(name)
    joined = join(whole, *at_the_limit(whole, OFF, TURN, _MANY))
    bent = radians(0.5) * len(whole.joints)  # by how much a piece may lie askew
    assert abs(joined.gaps).max() <= hypot(OFF, TURN * whole.lever) * 1.5 + 0.5 * bent**2 * 20


def test_more_joints_allow_more() -> None:
    """The tolerance grows with joints, and with how far the crosses lie beside the row that is measured."""
    values = [joint_tolerance(250.0 * (n + 1), n, 12.0) for n in range(20)]
    assert values[0] == 0
    assert values == sorted(values)
    assert joint_tolerance(1000, 3, 30) > joint_tolerance(1000, 3, -12) == joint_tolerance(1000, 3, 12)


def test_tenths_are_rounded_up() -> None:
    """A tolerance that is a tenth stays one, whatever floats make of it; anything above it is the next."""
    assert [f"{to_a_tenth(mm):.1f}" for mm in (0.3, 0.1 + 0.2, 0.31, 0.3999, 1.2)] == [
        "0.3",
        "0.3",
        "0.4",
        "0.4",
        "1.2",
    ]


@pytest.mark.parametrize("changes", [_WIDE | FLAT, _WIDE | NOTCHED, _WIDE | PEGGED], ids=["flat", "notched", "pegged"])
def test_parts_that_share_sheets_share_the_sentence(changes: dict[str, object]) -> None:
    """Near and far in unlike numbers of pieces: what is said is true of the one with more joints."""
    for laying in laid("strips", plan_of(changes), font_metrics()):
        found = re.search(r"±([\d.]+) mm", " ".join(laying.notes))
        assert found
        for part in laying.parts:
            whole = cut_of(laying, part.name)
            off = abs(join(whole, *at_the_limit(whole, OFF, TURN, 500)).distance)
            assert (off <= float(found[1])).mean() >= 0.93


def row(name: str) -> str:
    """What docs/proof.md says of the part."""
    _, whole = cut(name)
    joined = join(whole, *at_the_limit(whole, OFF, TURN, _MANY))
    marks = np.quantile(abs(joined.marks).max(1), 0.95)
    figures = abs(whole.ends[1] - whole.ends[0]), said(name), np.quantile(abs(joined.distance), 0.95)
    cells = [f"{mm:.1f}" for mm in (*figures, abs(worst(whole)).max(), marks, abs(joined.gaps).max())]
    return f"| {name} | {len(whole.joints) + 1} | {' | '.join(cells)} |"


def test_the_table_is_true() -> None:
    """docs/proof.md shows what these assemblies come to."""
    text = table_between((ROOT / "docs" / "proof.md").read_text(encoding="utf-8"), "joints")[2]
    assert text.splitlines()[2:] == list(map(row, PARTS))
    assert set(PRODUCTS) >= {product for _, product, _ in PARTS.values()}
