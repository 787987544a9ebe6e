from __future__ import annotations

import itertools

import pytest
from fontTools.ttLib import TTFont
from hypothesis import given
from hypothesis import strategies as st
from kits import font_metrics

from layout.drawing.shapes import Point
from layout.drawing.typeset import (
    FIGURE,
    LEAD,
    LEADING,
    NAME,
    SMALL,
    is_tall,
    left,
    longest_word,
    paragraph,
    paragraph_height,
    right,
    wrap,
)
from templates_gen.lettering.fonts import font_path

METRICS = font_metrics()
sentences = st.text("abcdefW, .éŁж", min_size=1, max_size=120)
widths = st.floats(6, 120)


def test_sizes_are_four_and_none_too_small() -> None:
    """The type scale has four sizes, the smallest 7.5 pt (1 pt is 1/72 in)."""
    assert [size / (25.4 / 72) for size in (NAME, FIGURE, LEAD, SMALL)] == pytest.approx([22, 13, 9.5, 7.5])


@given(sentences, widths)
def test_lines_keep_to_their_width(words: str, width: float) -> None:
    """No line is wider than asked, and nothing but spaces is lost on the way."""
    lines = wrap(words, SMALL, width, METRICS)
    assert all(METRICS.width(line, SMALL) <= width for line in lines)
    assert "".join(lines).replace(" ", "") == "".join(words.split())


@given(st.lists(st.text("abc", min_size=1, max_size=8), min_size=1, max_size=12), st.floats(20, 120))
def test_lines_are_as_full_as_can_be(words: list[str], width: float) -> None:
    """The first word of a line would not have fitted on the line before."""
    lines = wrap(" ".join(words), SMALL, width, METRICS)
    for before, after in itertools.pairwise(lines):
        assert METRICS.width(f"{before} {after.split()[0]}", SMALL) > width


def test_a_word_wider_than_a_line_is_broken() -> None:
    """A name without a space goes on in the next line instead of leaving the sheet."""
    lines = wrap("W" * 40, NAME, 60, METRICS)
    assert len(lines) > 1
    assert "".join(lines) == "W" * 40


TOGETHER = [
    "Leave 10 cm of yarn; a bar of 5 1/2 in, 12.5 mm thick (3 ft) or 1 250 mm.",
    "Trois tours : poser « la bande » sur la traverse ; serrer ! Pourquoi ? À 100 % seulement, à 1,5 po du bord.",
    "Die Kante „Gewebe“ zum Gewebe hin, mit 12 N ziehen, bei 5 000 Hz in 30 cm/s.",
]
KEPT = ["10 cm", "5 1/2 in,", "12.5 mm", "(3 ft)", "1 250 mm.", "tours :", "« la", "bande »", "traverse ;", "serrer !"]
KEPT += ["Pourquoi ?", "100 %", "1,5 po", "12 N", "5 000 Hz"]


@given(st.sampled_from(TOGETHER), st.floats(0, 60))
def test_what_belongs_together_stays_on_a_line(words: str, more: float) -> None:
    """Figure and unit, mixed numbers, thousands, and the signs that French sets apart; and no line is too wide.

    No break between a figure and its unit: DIN 5008; before : ; ! ? and within guillemets: Lexique des règles
    typographiques en usage à l'Imprimerie nationale. Both from memory.
    """
    width = longest_word(words, SMALL, METRICS) + more
    lines = wrap(words, SMALL, width, METRICS)
    assert " ".join(lines) == words
    assert all(METRICS.width(line, SMALL) <= width for line in lines)
    for kept in KEPT:
        assert (kept in words) == any(kept in line for line in lines)


def test_a_line_narrower_than_what_belongs_together_breaks_it_at_its_spaces() -> None:
    """A figure may then end a line; no word is broken for it."""
    width = METRICS.width("« bandeau", SMALL)
    assert wrap("« bandeau »", SMALL, width, METRICS) == ["« bandeau", "»"]


def test_the_longest_word_is_the_narrowest_block() -> None:
    """In a block as wide as it no word is broken; in one that is narrower, one is."""
    words = "Halbrunde Querleistenverlängerung aus Buche"
    longest = longest_word(words, LEAD, METRICS)
    assert longest == METRICS.width("Querleistenverlängerung", LEAD)
    assert " ".join(wrap(words, LEAD, longest, METRICS)) == words
    assert " ".join(wrap(words, LEAD, longest - 1, METRICS)) != words
    assert longest_word("", LEAD, METRICS) == 0


def test_words_end_where_they_are_told() -> None:
    """Words set to the right end at the point, by the advance widths that fontTools reads from the font."""
    font = TTFont(font_path())
    advance = sum(font["hmtx"][font.getBestCmap()[ord(letter)]][0] for letter in "fibre") / font["head"].unitsPerEm
    assert right("fibre", 10, Point(50, 7), METRICS).at == pytest.approx((50 - 10 * advance, 7))
    assert left("fibre", 10, Point(50, 7)).at == Point(50, 7)


@given(st.integers(1, 12))
def test_a_paragraph_is_as_high_as_it_says(count: int) -> None:
    """Lines stand one leading apart, the tallest letter below the top, the deepest above the foot."""
    lines = paragraph(["x"] * count, LEAD, Point(3, 100), METRICS)
    steps = {round(one.at.y - other.at.y, 9) for one, other in itertools.pairwise(lines)}
    assert steps <= {round(LEADING * LEAD, 9)}
    assert lines[0].at.y + METRICS.ascent * LEAD == pytest.approx(100)
    assert lines[-1].at.y + METRICS.descent * LEAD == pytest.approx(100 - paragraph_height(count, LEAD, METRICS))
    assert paragraph_height(0, LEAD, METRICS) == 0


def test_tall_words_hold_capitals_with_accents() -> None:
    """A capital with an accent or a letter with two is tall; plain words, small accents and figures are not."""
    assert all(map(is_tall, ["Éva", "Łódź Śnieg", "gỗ", "Йод", "ĥ"]))
    assert not any(map(is_tall, ["Eva", "Zoë", "brücke", "щавель", "2.5 (cm)", ""]))
