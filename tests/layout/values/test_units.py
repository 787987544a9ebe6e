"""Numbers and units as people write them: what has to be read, what has to be refused, and the way back."""

from __future__ import annotations

import subprocess
import sys
import unicodedata
from decimal import Decimal
from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from layout.values.numerals import VULGAR, say_fixed, say_mixed, say_number, say_root
from layout.values.units import (
    WORDS,
    Length,
    Sett,
    exact_length,
    exact_sett,
    mm_by_pint,
    mm_in,
    read_length,
    read_sett,
    read_size,
    say_length,
    say_sett,
)

# The inch is 25.4 mm exactly (international yard and pound agreement of 1959; ISO 31-1 Annex).
INCH = Fraction(254, 10)

LENGTHS_READ = [
    ("12 in", 12 * INCH, "in"),
    ('12"', 12 * INCH, "in"),
    ("12″", 12 * INCH, "in"),
    ("12”", 12 * INCH, "in"),
    ("12''", 12 * INCH, "in"),
    ("12 inches", 12 * INCH, "in"),
    ("12 IN.", 12 * INCH, "in"),
    ("5 1/2 in", Fraction(11, 2) * INCH, "in"),
    ("5-1/2 in", Fraction(11, 2) * INCH, "in"),
    ('11-3/4"', Fraction(47, 4) * INCH, "in"),
    ("5½ in", Fraction(11, 2) * INCH, "in"),
    ("5 ½ in", Fraction(11, 2) * INCH, "in"),
    ("5-½ in", Fraction(11, 2) * INCH, "in"),
    ("⅛ in", INCH / 8, "in"),
    ("5 1\u20442 in", Fraction(11, 2) * INCH, "in"),
    ("3/8 in", 3 * INCH / 8, "in"),
    (".5 in", INCH / 2, "in"),
    ("1.375 in", Fraction(11, 8) * INCH, "in"),
    ("0,375 in", Fraction(3, 8) * INCH, "in"),
    ("30cm", Fraction(300), "cm"),
    ("30\u00a0cm", Fraction(300), "cm"),
    ("  30 cm ", Fraction(300), "cm"),
    ("300 mm", Fraction(300), "mm"),
    ("300 MM", Fraction(300), "mm"),
    ("3,5 cm", Fraction(35), "cm"),
    ("1,5mm", Fraction(3, 2), "mm"),
    ("1,25 mm", Fraction(5, 4), "mm"),
    ("1524/5 mm", Fraction(1524, 5), "mm"),
    ("0.3 m", Fraction(300), "m"),
    ("3 dm", Fraction(300), "dm"),
    ("2 ft", 24 * INCH, "ft"),
    ("2'", 24 * INCH, "ft"),
    ("1 yd", 36 * INCH, "yd"),
    ("-5 mm", Fraction(-5), "mm"),
    ("\u22125 1/2 in", Fraction(-11, 2) * INCH, "in"),
    ("0 mm", Fraction(0), "mm"),
    ("25.400000000000 mm", INCH, "mm"),
    ("0.000000000000000001 m", Fraction(1, 10**15), "m"),
    ("12.5" + "0" * 50 + " cm", Fraction(125), "cm"),
    ("999999999999.999999999999999999 in", Fraction(10**30 - 1, 10**18) * INCH, "in"),
]

LENGTHS_REFUSED = [
    "12 mmm", "--5mm", "+5 mm", "- 5 mm", "abc", "5 in 2", "2**3 mm", "NaN in", "nan", "inf cm", "-inf cm",
    "1e400 mm", "1e9 mm", "12", "", "   ", "mm", "1.000,5 mm", "1,000.5 mm", "1.5.2 mm", "1,500 mm", "12,345 in",
    "1,500,000 mm", "1 2 mm", "1/0 mm", "5 1/0 in", "5 3/2 in", "5 5/5 in", "5 - 1/2 in", "1//2 in", "1/2/3 in",
    "5ft 2in", "5 ms", "5 mms", "5 km", "5 µm", "5 em", "5 px", "5 pt", "5 cm2", "5 mm^2", "5 mm*2", "5. mm",
    "5 mm mm", "12 in;", "٣ mm", "３ mm", "5²", "5 i\u0274", "0x10 mm", "1_000 mm", "12\n34 mm", "1" * 13 + " mm",
    "1 mm" + " " * 100 + ".", "9" * 5000 + " mm",
]  # fmt: skip

SETTS_READ = [
    ("8 epi", 8 / INCH, "in"),
    ("8 EPI", 8 / INCH, "in"),
    ("8epi", 8 / INCH, "in"),
    ("8/in", 8 / INCH, "in"),
    ('8/"', 8 / INCH, "in"),
    ("8 per inch", 8 / INCH, "in"),
    ("8 ends per inch", 8 / INCH, "in"),
    ("7 1/2 epi", Fraction(15, 2) / INCH, "in"),
    ("7½ per in", Fraction(15, 2) / INCH, "in"),
    ("3 ends/cm", Fraction(3, 10), "cm"),
    ("3 per cm", Fraction(3, 10), "cm"),
    ("2,5 ends per cm", Fraction(1, 4), "cm"),
    ("30 per 10 cm", Fraction(3, 10), "10 cm"),
    ("30/10 cm", Fraction(3, 10), "10 cm"),
    ("30 / 10cm", Fraction(3, 10), "10 cm"),
    ("30 per 100 mm", Fraction(3, 10), "10 cm"),
    ("30 per dm", Fraction(3, 10), "10 cm"),
    ("15/2 per 10 cm", Fraction(3, 40), "10 cm"),
    ("1/2/cm", Fraction(1, 20), "cm"),
    ("-8 epi", -8 / INCH, "in"),
    ("1.09890110989 ends per cm", Fraction(109890110989, 10**12), "cm"),
    ("-999999999999.999999999999999999 per 10 cm", Fraction(1 - 10**30, 10**20), "10 cm"),
]

SETTS_REFUSED = [
    "8", "8 in", "8 cm", "epi", "per inch", "8 per", "8 ends", "8 ends per", "8 per 2 in", "8 per 5 cm", "8 per px",
    "30/100 cm", "8 per m", "8 per ft", "8 per", "8 dpi", "8 epi 2", "--8 epi", "NaN epi", "inf epi", "1e3 epi",
    "1,500 epi", "", "8 per 10 in", "8 per 0 cm", "٣ epi", "8 ep\u0131", "8 end\u017f per cm", "9" * 200 + " epi",
]  # fmt: skip


@pytest.mark.parametrize(("text", "mm", "unit"), LENGTHS_READ)
def test_lengths_that_people_write_are_read_exactly(text: str, mm: Fraction, unit: str) -> None:
    """Each way of writing a length gives its exact millimetres and keeps its unit."""
    assert read_length(text) == Length(mm, unit)


@pytest.mark.parametrize("text", LENGTHS_REFUSED)
def test_what_is_no_length_is_refused_with_an_example(text: str) -> None:
    """A text that is not plainly one length is never read as something near it."""
    with pytest.raises(FieldError, match="for example") as caught:
        read_length(text)
    assert caught.value.field == ""
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize(
    "value", [12, 12.0, 0, float("nan"), float("inf"), True, None, ["12 in"], {"mm": 12}, b"12 in"]
)
def test_a_bare_number_is_refused_for_want_of_its_unit(value: object) -> None:
    """A number without a unit is no length, whatever number it is."""
    with pytest.raises(FieldError, match="needs a length with its unit"):
        read_length(value)


@pytest.mark.parametrize(
    ("text", "example"),
    [
        ("1.0000000000000000001 mm", "1.00 mm"),
        (".1234567890123456789 ft", "0.12 ft"),
        ("1234567890123 cm", "123.5 cm"),
        ("-1,0123456789012345678 in", "1.01 in"),
    ],
)
def test_too_many_digits_are_named_and_the_example_is_read(text: str, example: str) -> None:
    """More than 12 digits before the decimal sign, or 18 after it, are refused in words that say so."""
    with pytest.raises(FieldError, match="at most 12 digits before the decimal sign and 18 after it") as caught:
        read_length(text)
    assert caught.value.example == example
    assert read_length(example).mm > 0


def test_a_text_too_long_to_be_a_number_says_how_long_it_may_be() -> None:
    """No length needs more than 64 characters."""
    with pytest.raises(FieldError, match="in at most 64 characters"):
        read_length("1." + "5" * 70 + " mm")


@given(st.decimals(0, 10**12 - 1, places=18, allow_nan=False, allow_infinity=False))
def test_eighteen_decimals_are_read_and_said_back_exactly(number: Decimal) -> None:
    """Source: Python's own decimal numbers."""
    length, sett = read_length(f"{number:f} in"), read_sett(f"{number:f} per 10 cm")
    assert (length.mm, sett.per_mm) == (Fraction(number) * INCH, Fraction(number) / 100)
    assert read_length(exact_length(length)) == length
    assert read_sett(exact_sett(sett)) == sett


def test_a_comma_before_three_digits_is_called_ambiguous() -> None:
    """`1,500 mm` may be 1500 or 1.5 mm, and the refusal says so."""
    with pytest.raises(FieldError, match=r"1500 or 1\.5"):
        read_length("1,500 mm")


@pytest.mark.parametrize(("text", "per_mm", "unit"), SETTS_READ)
def test_setts_that_people_write_are_read_exactly(text: str, per_mm: Fraction, unit: str) -> None:
    """Each way of writing a sett gives its exact ends per millimetre and keeps what it was counted over."""
    assert read_sett(text) == Sett(per_mm, unit)


@pytest.mark.parametrize("text", [*SETTS_REFUSED, 8, 8.0, None, True, ["8 epi"]])
def test_what_is_no_sett_is_refused_with_an_example(text: object) -> None:
    """A text without a count and what it was counted over is no sett."""
    with pytest.raises(FieldError, match="for example"):
        read_sett(text)


@pytest.mark.parametrize(
    ("text", "width", "height"),
    [
        ("210 x 297 mm", Length(Fraction(210)), Length(Fraction(297))),
        ("210×297mm", Length(Fraction(210)), Length(Fraction(297))),
        ("8 1/2 x 11 in", Length(Fraction(17, 2) * INCH, "in"), Length(11 * INCH, "in")),
        ('8.5" X 11"', Length(Fraction(17, 2) * INCH, "in"), Length(11 * INCH, "in")),
        ("21 cm x 297 mm", Length(Fraction(210), "cm"), Length(Fraction(297))),
    ],
)
def test_a_size_is_two_lengths(text: str, width: Length, height: Length) -> None:
    """A unit that stands once holds for both sides."""
    assert read_size(text) == (width, height)


@pytest.mark.parametrize(
    "text",
    ["210 x 297", "210 mm x 297", "210 mm", "3 x 4 x 5 mm", "1 mmm x 5 mm", "x 5 mm", "5 mm x", "", "x", None, 210],
)
def test_what_is_no_size_is_refused(text: object) -> None:
    """One side, three sides, or sides without a unit are no size."""
    with pytest.raises(FieldError, match="for example 210 x 297 mm"):
        read_size(text)


@pytest.fixture(scope="module")
def default_registry() -> pint.UnitRegistry[Fraction]:
    """All that pint knows by itself, in exact fractions."""
    return pint.UnitRegistry(non_int_type=Fraction)


@pytest.mark.parametrize("word", WORDS)
def test_pint_agrees_on_every_unit_word(word: str, default_registry: pint.UnitRegistry[Fraction]) -> None:
    """Source: pint's default registry, which knows nothing of our definitions or our table. Both must be exactly it."""
    expected = default_registry.Quantity(Fraction(1), word).to("millimetre").magnitude
    assert mm_in(WORDS[word]) == expected
    assert mm_by_pint(WORDS[word]) == expected


@pytest.mark.parametrize("character", VULGAR)
def test_fraction_characters_are_worth_what_unicode_says(character: str) -> None:
    """Source: the numeric value in Python's Unicode database."""
    assert float(VULGAR[character]) == unicodedata.numeric(character)


def test_all_fraction_characters_of_unicode_are_known() -> None:
    """Source: every character that the Unicode database calls a fraction of two whole numbers."""
    fractions = {chr(c) for c in range(sys.maxunicode) if unicodedata.decomposition(chr(c)).startswith("<fraction>")}
    assert set(VULGAR) == fractions - {"\u215f"}  # a numerator one that waits for its denominator


def test_pint_is_loaded_for_a_rare_unit_alone() -> None:
    """The heavy library comes in with the first unit that the table lacks, not with the module or a usual unit."""
    code = (
        "import sys; from layout.values.units import read_length;"
        "[read_length(f'1 {unit}') for unit in ('mm', 'cm', 'm', 'in', 'ft', 'yd')]; before = 'pint' in sys.modules;"
        "read_length('1 dm'); print(before, 'pint' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["False", "True"]


@pytest.mark.parametrize(
    ("length", "said"),
    [
        (Length(12 * INCH, "in"), "12 in"),
        (Length(Fraction(11, 2) * INCH, "in"), "5 1/2 in"),
        (Length(Fraction(-11, 2) * INCH, "in"), "-5 1/2 in"),
        (Length(INCH / 64, "in"), "1/64 in"),
        (Length(INCH / 3, "in"), "0.333 in"),
        (Length(Fraction(0), "in"), "0 in"),
        (Length(Fraction(300), "cm"), "30 cm"),
        (Length(Fraction(35), "cm"), "3.5 cm"),
        (Length(Fraction(1524, 5), "mm"), "304.8 mm"),
        (Length(Fraction(2, 3), "mm"), "0.667 mm"),
        (Length(Fraction(19999, 10), "m"), "2 m"),
    ],
)
def test_lengths_are_said_as_people_write_them(length: Length, said: str) -> None:
    """Inches in fractions down to 1/64, all else in up to three decimals without idle zeros."""
    assert say_length(length) == said


@pytest.mark.parametrize(
    ("sett", "said"),
    [
        (Sett(8 / INCH, "in"), "8 epi"),
        (Sett(Fraction(1, 4), "cm"), "2.5 ends per cm"),
        (Sett(Fraction(1, 4), "10 cm"), "25 ends per 10 cm"),
        (Sett(Fraction(1, 30), "cm"), "0.333 ends per cm"),
    ],
)
def test_setts_are_said_in_the_words_of_the_trade(sett: Sett, said: str) -> None:
    """A sett is said over what it was counted over."""
    assert say_sett(sett) == said


units = st.sampled_from(["mm", "cm", "m", "in", "ft", "yd"])
numbers = st.fractions(min_value=-(10**12) + 1, max_value=10**12 - 1, max_denominator=10**10 - 1)


@given(numbers, units)
def test_a_length_said_exactly_reads_back_as_itself(number: Fraction, unit: str) -> None:
    """`exact_length` loses nothing, however odd the fraction."""
    length = Length(number * mm_in(unit), unit)
    assert read_length(exact_length(length)) == length


@given(numbers, st.sampled_from(["in", "cm", "10 cm"]))
def test_a_sett_said_exactly_reads_back_as_itself(number: Fraction, unit: str) -> None:
    """`exact_sett` loses nothing, however odd the fraction."""
    sett = Sett(number / {"in": INCH, "cm": Fraction(10), "10 cm": Fraction(100)}[unit], unit)
    assert read_sett(exact_sett(sett)) == sett


@given(st.text(max_size=70))
def test_any_text_is_read_or_refused_in_one_line(text: str) -> None:
    """Whatever comes, there is a length whose exact text reads back, or one sentence."""
    try:
        length = read_length(text)
    except FieldError as error:
        said = str(error)
        assert len(said.splitlines()) == 1
    else:
        assert read_length(exact_length(length)) == length


@given(st.from_regex(r"-?[0-9]{1,12}([.,][0-9]{1,9})? ?(mm|cm|m|in|ft|yd)", fullmatch=True))
def test_every_plain_decimal_is_worth_its_digits(text: str) -> None:
    """A decimal point and a decimal comma mean the same; source: Python's own Fraction."""
    digits = text.rstrip("mcinftyd ")
    unit = text[len(digits) :].strip()
    whole, comma, decimals = digits.partition(",")
    if comma and len(decimals) == 3 and int(whole):
        with pytest.raises(FieldError, match="one way only"):
            read_length(text)
    else:
        assert read_length(text) == Length(Fraction(digits.replace(",", ".")) * mm_in(unit), unit)


fractions = st.fractions(min_value=-(10**6), max_value=10**6)
places = st.integers(min_value=0, max_value=6)


def ties(figures: int) -> st.SearchStrategy[Fraction]:
    """Numbers midway between two of so many decimals."""
    return st.integers(-(10**9), 10**9).map(lambda k: Fraction(2 * k + 1, 2 * 10**figures))


@given(st.data(), places)
def test_a_number_is_said_as_its_nearest_decimal(data: st.DataObject, figures: int) -> None:
    """Off by half a last figure at most; midway between two it is the one further from zero."""
    value = data.draw(fractions | ties(figures))
    said = say_number(value, figures)
    off, half = abs(Fraction(said)) - abs(value), Fraction(1, 2 * 10**figures)
    assert -half < off <= half
    assert Fraction(said) * value >= 0
    assert not ("." in said and said.endswith("0"))
    assert said != "-0"
    assert said == say_fixed(value, figures).rstrip("0").rstrip(".") or figures == 0
    assert len(say_fixed(value, figures).partition(".")[2]) == figures


@given(st.data(), places)
def test_a_float_is_said_as_the_decimal_that_it_stands_for(data: st.DataObject, figures: int) -> None:
    """What two computations leave in the last digits of a float turns no figure, at ties and elsewhere."""
    value = data.draw(ties(figures).filter(lambda tie: abs(tie) < 10**4) | st.decimals(-9999, 9999, places=7))
    exact = float(value)
    for nudged in (exact, exact * (1 + 3e-16), exact * (1 - 3e-16)):
        assert say_number(nudged, figures) == say_number(Fraction(value), figures)


@given(fractions.map(abs), places)
def test_a_root_is_said_as_its_nearest_decimal(square: Fraction, figures: int) -> None:
    """Its square lies between those of the numbers half a last figure below and above."""
    said, half = Fraction(say_root(square, figures)), Fraction(1, 2 * 10**figures)
    assert max(said - half, Fraction(0)) ** 2 <= square < (said + half) ** 2


@given(fractions.map(abs) | ties(2).map(abs), places)
def test_the_root_of_a_square_is_said_as_its_side(side: Fraction, figures: int) -> None:
    """Ties among roots of fractions are said as those of fractions are."""
    assert say_root(side**2, figures) == say_number(side, figures)


@given(st.integers(min_value=-(10**6), max_value=10**6))
def test_a_mixed_fraction_is_worth_its_parts(sixty_fourths: int) -> None:
    """Whole number and fraction together are the value."""
    value = Fraction(sixty_fourths, 64)
    said = say_mixed(value)
    assert sum(map(Fraction, said.removeprefix("-").split())) == abs(value)
    assert said.startswith("-") == (value < 0)
