"""Forces as people write them, against pint's own definitions."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from layout.values.forces import NEWTONS, Force, exact_force, read_force, say_force

_PINT = {"N": "newton", "cN": "centinewton", "g": "force_gram", "kg": "force_kilogram"}
_PINT |= {"oz": "force_ounce", "lb": "force_pound"}


@pytest.mark.parametrize("unit", NEWTONS)
def test_units_are_what_pint_has_them_to_be(unit: str) -> None:
    """pint's default registry: weights by standard gravity, pounds and ounces avoirdupois."""
    registry = pint.UnitRegistry()
    assert float(NEWTONS[unit]) == pytest.approx(registry.Quantity(1, _PINT[unit]).to("newton").magnitude, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "newtons"),
    [
        ("2 N", Fraction(2)),
        ("1,5 N", Fraction(3, 2)),
        ("150 cN", Fraction(3, 2)),
        ("200 g", Fraction("1.96133")),
        ("0.2kg", Fraction("1.96133")),
        ("7 oz", Fraction(7, 16) * Fraction("4.4482216152605")),
        ("1/2 lb", Fraction("4.4482216152605") / 2),
        ("1 Newton", Fraction(1)),
    ],
)
def test_forces_are_read_as_people_write_them(text: str, newtons: Fraction) -> None:
    """A pound weighs 4.4482216152605 N exactly (NIST SP 811, pound-force)."""
    assert read_force(text).newtons == newtons


@pytest.mark.parametrize(
    "text", ["2", "2 newtonn", "N", "", "nan N", "1e3 N", "2**3 N", "2 N 3", "--2 N", None, 2, "2 m"]
)
def test_what_is_no_force_is_refused(text: object) -> None:
    """One sentence with an example that works."""
    with pytest.raises(FieldError, match="needs a pull with its unit") as caught:
        read_force(text)
    assert read_force(caught.value.example) == Force(Fraction(3, 2))


@given(st.fractions(Fraction(1, 100), 100, max_denominator=1000), st.sampled_from(sorted(NEWTONS)))
def test_forces_read_back_as_the_very_same(newtons: Fraction, unit: str) -> None:
    """What a file carries is exact."""
    force = Force(newtons * NEWTONS[unit], unit)
    assert read_force(exact_force(force)) == force


def test_forces_are_said_in_their_own_unit() -> None:
    """150 g stay 150 g."""
    assert [say_force(read_force(text)) for text in ("150 g", "1,5 N", "7 oz")] == ["150 g", "1.5 N", "7 oz"]
