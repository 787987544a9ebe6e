from __future__ import annotations

import math
from collections.abc import Callable

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from kits import kit_of
from scipy.optimize import brentq, minimize_scalar
from shapely import affinity

from layout.drawing.shapes import Placing
from layout.drawing.sheet import Part
from layout.paper.area import Area, printable
from layout.paper.laying import diagonal, straight


def part(length: float, height: float) -> Part:
    """An empty part of this size, its origin somewhere inside."""
    return Part("strip", "Strip", (), (), (-length / 3, -height / 4, length * 2 / 3, height * 3 / 4))


def bare(size: str) -> Area:
    """The empty printable area of a sheet."""
    return printable(kit_of({"paper.size": size}).paper)


def longest_by_turning(area: Area, height: float) -> float:
    """The longest box of this height that shapely can turn so that it fits, by scipy's search over the angle."""

    def sticking_out(length: float) -> float:
        def over(turn: float) -> float:
            left, bottom, right, top = affinity.rotate(shapely.box(0, 0, length, height), turn).bounds
            return max(right - left - area.width, top - bottom - area.height)

        return float(min(_least(over, start, start + 15) for start in range(30, 90, 15)))

    return float(brentq(sticking_out, 250, 400, xtol=1e-6))


def _least(over: Callable[[float], float], low: float, high: float) -> float:
    return float(minimize_scalar(over, bounds=(low, high), method="bounded", options={"xatol": 1e-9}).fun)


def most(fits: Callable[[float], object], low: float, high: float) -> float:
    """The largest number for which `fits` holds, by halving."""
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    return low


@pytest.mark.parametrize(("height", "longest"), [(10, 308.9), (15, 304.1), (20, 299.3)])
def test_the_longest_on_the_common_sheet(height: float, longest: float) -> None:
    """Inside the margins geometry allows 308.9 mm at 10 mm high, 304.1 at 15, 299.3 at 20; all of it is used."""
    area = bare("common")
    found = most(lambda length: diagonal(part(length, height), area), 250, 400)
    assert found == pytest.approx(longest, abs=0.06)
    assert found == pytest.approx(longest_by_turning(area, height), abs=1e-3)


@pytest.mark.parametrize(("size", "tallest"), [("common", 14.2), ("letter", 18.5), ("a4", 30.6)])
def test_the_tallest_for_twelve_inches(size: str, tallest: float) -> None:
    """A strip of 304.8 mm may be 14.2 mm high on the common sheet, 18.5 on Letter, 30.6 on A4 (rounded down)."""
    area = bare(size)
    found = most(lambda height: diagonal(part(304.8, height), area), 1, 100)
    assert math.floor(found * 10) / 10 == tallest
    assert longest_by_turning(area, found) == pytest.approx(304.8, abs=1e-3)


lengths, heights = st.floats(20, 420), st.floats(2, 90)


@given(lengths, heights)
def test_what_is_laid_lies_inside(length: float, height: float) -> None:
    """Straight or diagonal, a laid part is inside the margins and off the head, by shapely."""
    head = (8.0, 230.0, 150.0, 265.0)
    area = Area(8, 13, 200, 265, (head,))
    one = part(length, height)
    for placing in (straight(one, area), diagonal(one, area)):
        if placing:
            box = shapely.box(*one.box)
            laid = affinity.translate(affinity.rotate(box, placing.degrees, origin=(0, 0)), placing.dx, placing.dy)
            assert shapely.box(8, 13, 200, 265).buffer(1e-6).contains(laid)
            assert laid.intersection(shapely.box(*head)).area < 1e-6


@given(lengths, heights)
def test_straight_is_found_where_it_exists(length: float, height: float) -> None:
    """On an empty area a part lies straight wherever it fits lying or standing, and never otherwise."""
    area = Area(8, 13, 200, 265)
    fits = (length <= 192 and height <= 252) or (height <= 192 and length <= 252)
    assert (straight(part(length, height), area) is not None) == fits


def test_a_part_lies_along_the_sheet_if_it_can() -> None:
    """It lies centred under the head; only where it is too long does it stand."""
    area = Area(8, 13, 200, 265, ((8.0, 230.0, 150.0, 265.0),))
    lying, standing = straight(part(150, 20), area), straight(part(200, 20), area)
    assert lying == Placing(0, pytest.approx(104 - 150 / 6), pytest.approx(230 - 15))
    assert standing is not None
    assert standing.degrees == 90


def test_a_diagonal_rises_to_the_right() -> None:
    """A long part is turned by less than a quarter and lies across the middle of the sheet."""
    one, area = part(300, 10), bare("common")
    placing = diagonal(one, area)
    assert placing is not None
    assert 0 < placing.degrees < 90
    middle = affinity.rotate(shapely.box(*one.box), placing.degrees, origin=(0, 0)).centroid
    assert math.dist(
        (middle.x + placing.dx, middle.y + placing.dy),
        (area.left + area.width / 2, area.bottom + area.height / 2),
    ) == pytest.approx(0, abs=1e-9)
