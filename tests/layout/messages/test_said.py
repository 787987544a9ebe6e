"""A text that was said knows what it says, and can be said again in another language."""

from __future__ import annotations

import copy
import json
import pickle
from fractions import Fraction

import pytest

from layout.messages.catalogue import Catalogue, CatalogueError, Figure, Message, Plural, Role, Said
from layout.values.numerals import say_fixed, say_number, say_root


class Loom(Role):
    """Roles of this test alone."""

    WIDTH = "loom.width"
    ENDS = "loom.ends"
    WORSE = "loom.worse"
    WARP = "loom.warp"


ENGLISH = Catalogue(
    {
        Loom.WIDTH: "{width} mm wide",
        Loom.ENDS: Plural("ends", "{ends} end", "{ends} ends"),
        Loom.WORSE: "{first}; and {second} of {what}",
        Loom.WARP: "warp",
    }
)
GERMAN = Catalogue(
    {
        Loom.WIDTH: "{width} mm breit",
        Loom.ENDS: Plural("ends", "{ends} Kettfaden", "{ends} Kettfäden"),
        Loom.WORSE: "{first}; außerdem {what}: {second}",
        Loom.WARP: "Kette",
    },
    "de",
    decimal=",",
    thousands=" ",
)


def test_a_text_is_said_again_with_all_that_it_holds() -> None:
    """Texts within texts, roles, messages and figures too; and back again it is the same English."""
    inner = ENGLISH.say(Loom.WIDTH, width=say_number(12.5))
    outer = ENGLISH.say(Loom.WORSE, first=inner, second=Message(Loom.ENDS, {"ends": 1}), what=Loom.WARP)
    whole = ENGLISH.say(Loom.WORSE, first=outer, second="Willow", what=Loom.WARP)
    assert outer == "12.5 mm wide; and 1 end of warp"
    assert GERMAN.again(outer) == "12,5 mm breit; außerdem Kette: 1 Kettfaden"
    assert GERMAN.again(whole) == "12,5 mm breit; außerdem Kette: 1 Kettfaden; außerdem Kette: Willow"
    assert ENGLISH.again(GERMAN.again(whole)) == whole


def test_what_was_said_in_a_language_or_by_nobody_stays() -> None:
    """The same text comes back."""
    said = ENGLISH.say(Loom.ENDS, ends=3)
    assert ENGLISH.again(said) is said
    assert GERMAN.again("12.5 mm wide") == "12.5 mm wide"


def test_it_is_a_text_like_any_other() -> None:
    """Equal to it, a key like it, written as it; copies and pickles still know what they say."""
    said = ENGLISH.say(Loom.ENDS, ends=3)
    assert isinstance(said, Said)
    assert {said: 1}["3 ends"] == 1
    assert json.dumps([said]) == '["3 ends"]'
    assert repr(said) == "'3 ends'"
    for other in (copy.copy(said), copy.deepcopy(said), pickle.loads(pickle.dumps(said))):  # noqa: S301 - our own
        assert GERMAN.again(other) == "3 Kettfäden"


def test_figures_get_the_signs_of_the_language() -> None:
    """The decimal sign and the one between thousands, once; English keeps what is written."""
    assert [GERMAN.figure(text) for text in ("1,234.5", "12,345.6", "1,234,567")] == ["1234,5", "12 345,6", "1 234 567"]
    assert ENGLISH.figure("1,234.5") == "1,234.5"
    for figure in (say_number(Fraction(7, 2)), say_fixed(3.5, 1), say_root(Fraction(49, 4))):
        assert isinstance(figure, Figure)
        assert GERMAN.say(Loom.WIDTH, width=figure) == "3,5 mm breit"
    assert GERMAN.say(Loom.WIDTH, width="12.5") == "12.5 mm breit"


@pytest.mark.parametrize(("ends", "said"), [(1, "1 end"), ("1.5", "1.5 ends"), ("1,001", "1,001 ends"), (0, "0 ends")])
def test_a_form_is_taken_by_the_number(ends: int | str, said: str) -> None:
    """By a whole number or by figures, fractions too."""
    assert ENGLISH.say(Loom.ENDS, ends=ends) == said


def test_what_is_no_number_has_no_form() -> None:
    """It is a fault of the code."""
    with pytest.raises(CatalogueError, match=r"loom\.ends counts by 'some'"):
        ENGLISH.say(Loom.ENDS, ends="some")
