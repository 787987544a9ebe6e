"""Plural rules, against gettext of the standard library and the plurals of CLDR as Babel has them."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from gettext import c2py

import pytest
from babel import Locale
from hypothesis import given
from hypothesis import strategies as st

from layout.messages.catalogue import CatalogueError, one_or_many
from layout.messages.plural_rule import rule

OURS = {"en": "(n != 1)", "es": "n != 1", "de": "n != 1", "fr": "n >= 2"}
OTHERS = {
    "pl": "n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2",
    "ru": "n%10==1 && n%100!=11 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2",
    "ar": "n==0 ? 0 : n==1 ? 1 : n==2 ? 2 : n%100>=3 && n%100<=10 ? 3 : n%100>=11 ? 4 : 5",
    "odd": "(!(n/3 - 2*2 < 1)) + (!n)",
}
WRONG = ("", "m != 1", "n !=", "(n", "n)", "n 1", "n ? 1", "__import__('os')", "n ** 2", "(" * 60 + "n" + ")" * 60)


@pytest.mark.parametrize("expression", [*OURS.values(), *OTHERS.values()])
def test_whole_numbers_are_as_gettext_has_them(expression: str) -> None:
    """For 0 to 1000, by the standard library's own reading of the same expression."""
    ours, theirs = rule(expression), c2py(expression)
    assert [ours(n) for n in range(1001)] == [theirs(n) for n in range(1001)]


@pytest.mark.parametrize("language", OURS)
@pytest.mark.parametrize("number", ["0", "0.5", "1", "1.5", "2", "2.5", "7.62", "12", "999"])
def test_fractions_are_as_cldr_has_them(language: str, number: str) -> None:
    """1.5 threads are "1,5 fil" in French and plural in the other three (CLDR, plural rules)."""
    theirs = Locale(language).plural_form(Decimal(number))
    assert {"one": 0, "other": 1}[theirs] == rule(OURS[language])(Fraction(number))


@given(st.fractions(0, 2000))
def test_the_rule_of_english_is_that_of_its_header(number: Fraction) -> None:
    """Said as an expression, or as it stands in the code."""
    assert one_or_many(number) == rule(OURS["en"])(number)


@pytest.mark.parametrize("expression", WRONG)
def test_what_is_no_rule_is_refused(expression: str) -> None:
    """Nothing else is evaluated, and nothing is nested endlessly."""
    with pytest.raises(CatalogueError, match="no rule of plural forms"):
        rule(expression)
