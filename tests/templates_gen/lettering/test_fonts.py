"""The print font's measures against a library that reads the font on its own."""

from __future__ import annotations

import io
import unicodedata
from typing import cast

import pytest
from reportlab.pdfbase.ttfonts import TTFont

from layout.drawing.pens import Face, Pen
from templates_gen.lettering import fonts


@pytest.fixture(scope="module", params=[Pen.TEXT, Pen.STRONG], ids=lambda pen: pen.value)
def pen(request: pytest.FixtureRequest) -> Pen:
    """A pen of either cut."""
    return cast(Pen, request.param)


@pytest.fixture(scope="module")
def font(pen: Pen) -> TTFont:
    """The same file as reportlab reads it."""
    return TTFont("measured", str(fonts.font_path(pen.ink.face)))


@pytest.mark.parametrize("words", ["Zoë Łukasz Ольга", "strip 3 of 12 · 100 %", "½ in = 12,7 mm", "AVAVA"])
def test_words_are_as_wide_as_another_library_finds_them(font: TTFont, pen: Pen, words: str) -> None:
    """The width of words agrees with reportlab's to its rounding of a thousandth of the em."""
    wide = font.stringWidth(words, 10.0)
    assert fonts.metrics().width(words, 10.0, pen) == pytest.approx(wide, abs=0.01 * len(words))


def test_both_cuts_carry_the_same_letters() -> None:
    """What can be said in regular letters can be said in semibold ones, and hardly any letter gets narrower."""
    metrics = fonts.metrics()
    assert metrics.strong.keys() == metrics.advances.keys()
    words = "Marking strips for a small frame"
    assert metrics.width(words, 10, Pen.STRONG) > metrics.width(words, 10)


def test_heights_are_as_another_library_finds_them(font: TTFont) -> None:
    """The height of a capital agrees with reportlab's, which counts in thousandths of the em."""
    assert fonts.metrics().cap * 1000 == pytest.approx(font.face.capHeight, abs=0.01)


def test_no_letter_reaches_beyond_ascent_and_descent(font: TTFont) -> None:
    """Ascent and descent bound the font's own box of all letters, accents on capitals included."""
    _, bottom, _, top = font.face.bbox
    metrics = fonts.metrics()
    assert metrics.descent * 1000 <= bottom < 0 < top <= metrics.ascent * 1000


def test_names_in_latin_greek_and_cyrillic_are_carried() -> None:
    """What a customer is called in these scripts can be printed."""
    assert fonts.metrics().missing("Zoë Łukasz Ольга Şule Nguyễn Θάλεια Þór ŷ") == ""


@pytest.mark.parametrize("words", ["織", "דנה", "ليلى", "→", "☐", "\U0001f9f6"])
def test_other_scripts_and_signs_are_missed(words: str) -> None:
    """What the font would draw as a box is said, letter by letter."""
    assert fonts.metrics().missing(words) == "".join(dict.fromkeys(words))


def test_what_shows_nothing_or_needs_shaping_is_missed() -> None:
    """Controls, zero-width signs, the soft hyphen, combining marks and the no-break space are not passed on."""
    for letter in "\0\n\r\t\x7f\xa0\xad\u200b\ufeff\u0301\u0323":
        assert fonts.metrics().missing(letter) == letter, unicodedata.name(letter, hex(ord(letter)))


def test_every_printable_letter_of_ascii_is_carried() -> None:
    """Plain text never fails."""
    assert fonts.metrics().missing("".join(map(chr, range(32, 127)))) == ""


def test_a_missing_font_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without its package the refusal names the package to install."""
    monkeypatch.setattr(fonts, "find_spec", lambda _: None)
    with pytest.raises(ValueError, match="ttf-opensans"):
        fonts.font_path.__wrapped__()


@pytest.mark.parametrize("face", Face)
def test_copies_of_a_process_read_the_font_each_for_itself(face: Face) -> None:
    """No file stays open: its place to read at would be one for all copies, and each would move it for the others."""
    file = fonts.opened(face).reader.file
    with pytest.raises(io.UnsupportedOperation):
        file.fileno()
