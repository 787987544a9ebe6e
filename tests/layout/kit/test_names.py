"""Names that can be printed, and the refusal of those that cannot."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from layout.kit.kit import read_kit
from layout.values.errors import FieldErrors
from tests.plain_kits import METRICS, ROUND, changed, only_refusal
from tests.strategies import NAME_LETTERS


def test_the_made_up_font_has_the_letters_of_the_made_up_names() -> None:
    """The tests' own names are not refused for want of a letter."""
    assert not METRICS.missing(NAME_LETTERS)


@pytest.mark.parametrize(
    "name",
    ["Zoë", "Łukasz", "Ольга", "Zoe\u0308", " Zoë ", "x" * 40, "½ & (two) / three"],
)
def test_names_that_the_font_carries_are_kept_in_composed_form(name: str) -> None:
    """A name may be of any script that the print font has; a loose accent joins its letter (Unicode NFC)."""
    kit = read_kit(changed(ROUND, name=name, yarns__warp=name, yarns__weft=name), METRICS)
    assert kit.name == kit.warp == kit.weft == unicodedata.normalize("NFC", name).strip()


@pytest.mark.parametrize(
    ("name", "point", "says"),
    [
        ("漢字", "'漢' (U+6F22)", "the print font has"),
        ("שרה", "'ש' (U+05E9)", "left to right"),
        ("سارة", "'س' (U+0633)", "left to right"),
        ("x\u0301y", "U+0301", "one character with their letter"),
        ("a\u200bb", "U+200B", "can be seen"),
        ("a\u202eb", "U+202E", "can be seen"),
        ("a\nb", "U+000A", "can be seen"),
        ("a\x1b[0mb", "U+001B", "can be seen"),
        ("a\u00a0b", "U+00A0", "can be seen"),
        ("☃", "'☃' (U+2603)", "the print font has"),
        ("\ud800", "U+D800", "can be seen"),
    ],
)
def test_names_that_would_print_wrong_are_refused_by_character(name: str, point: str, says: str) -> None:
    """The character and its code point are named; a terminal can show the sentence."""
    sentence = only_refusal(changed(ROUND, name=name), "name")
    assert point in sentence
    assert says in sentence
    assert sentence.isprintable()


@given(st.text(max_size=45))
@example("\u0344")
def test_any_name_is_kept_printable_or_refused(name: str) -> None:
    """What is kept is 1 to 40 characters, every one of them in the font, none a loose accent."""
    try:
        kit = read_kit(changed(ROUND, name=name), METRICS)
    except FieldErrors as refused:
        said = str(refused)
        assert len(said.splitlines()) == 1
    else:
        assert 1 <= len(kit.name) <= 40
        assert not METRICS.missing(kit.name)
        assert not any(map(unicodedata.combining, kit.name))
