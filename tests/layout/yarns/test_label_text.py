"""Yarns as labels say them: what is read, and what is never guessed."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from layout.values.quantity import Origin
from layout.yarns.label_text import EXAMPLE, fibre_of, read_label
from layout.yarns.yarn import yarn_from_ball, yarn_of
from layout.yarns.yarn_counts import SYSTEMS

_WRITTEN = {"nm": "Nm", "ne": "Ne", "run": "woollen run", "lea": "linen lea"}


@given(st.sampled_from(["tex", "dtex", "denier", "nm", "ne", "worsted", "run", "lea"]), st.integers(40, 90))
def test_a_count_is_read_with_its_system_on_either_side(key: str, count: int) -> None:
    """ "8 Ne" and "Ne 8" are one yarn, in every system of counts."""
    word = _WRITTEN.get(key, key)
    if SYSTEMS[key].tex(Fraction(count)) < 1:
        return
    for text in (f"{count} {word}", f"{word} {count}", f"{count}{word.upper()}", f" {count}  {word} "):
        label = read_label(text)
        assert (label.yarn.tex, label.system) == (yarn_of(count, key).tex, key)


@pytest.mark.parametrize("text", ["40 tex x 2", "40 tex × 2", "40tex×2", "40 tex  X 2", "tex 40"])
def test_plies_follow_the_count_of_one_thread(text: str) -> None:
    """Single before fold, as ISO 1139 writes (from memory): 40 tex x 2 is two threads of 40 tex, so 80 tex."""
    assert read_label(text, 2 if text == "tex 40" else None).yarn.tex == 80


@pytest.mark.parametrize(
    "text",
    ["50 g in 120 m", "120 m / 50 g", "50 g = 120 m", "120 m, 50 g", "50g 120m", "240 m/100 g", "2400 mm/g",
     "120 metres to 50 grams", "2,4 m per g", "1 kg; 2400 m"],
)  # fmt: skip
def test_a_ball_is_read_whichever_way_round(text: str) -> None:
    """Arithmetic: all of these are 2.4 m to the gram, and none is of a system of counts."""
    label = read_label(text)
    assert label.yarn.tex == yarn_from_ball(50, 120).tex
    assert (label.yarn.origin, label.system) == (Origin.COMPUTED, "")


@pytest.mark.parametrize("text", ["3360 yd/lb", "1 lb = 3360 yd", "210 yd per oz", "840 yards for 4 oz."])
def test_yards_and_pounds_are_read(text: str) -> None:
    """As sold to craft weavers: 8/2 cotton, which is 8s folded 2-ply, has 3360 yd in a pound."""
    assert read_label(text).yarn.tex == yarn_of(8, "ne", 2).tex


def test_a_weighed_thread_is_measured() -> None:
    """J. T. Taylor, Cotton Weaving: 120 yd of cotton that weigh 20 grains are 50s."""
    yarn = read_label("20 grains in 120 yd", weighed=True).yarn
    assert yarn.numbers()["ne"] == 50
    assert yarn.origin is Origin.MEASURED


@pytest.mark.parametrize("text", ["8/2", "8/2 Ne", "Nm 28/2", "2/40s", "8 x 2", "Ne 8x2", "20 / 2 worsted"])
def test_a_folded_count_as_one_is_never_guessed(text: str) -> None:
    """Books write ply before count, craft labels count before ply: both are named, and the advice is read."""
    with pytest.raises(FieldError, match=r"craft labels.*older books") as caught:
        read_label(text)
    advised = re.match(r'"([^"]*)" for the first meaning', caught.value.example)
    assert advised
    assert read_label(advised[1]).yarn.tex > 0


@pytest.mark.parametrize("text", ["12 cut", "cut 12", "12 cuts"])
def test_cut_is_refused_with_its_two_meanings(text: str) -> None:
    """300 yd a pound in America, 200 yd a pound in Galashiels (handbooks)."""
    with pytest.raises(FieldError, match=r"300 yd a pound .American. or 200 yd a pound .Galashiels."):
        read_label(text)


@pytest.mark.parametrize("text", ["8", "8.5", "12 foo", "100 m", "50 g", "8 Ne 9", "9 tex 2", "8 Ne x 2 x 3"])
def test_a_count_without_one_system_is_refused_with_those_there_are(text: str) -> None:
    """The sentence lists them all, and its examples are read."""
    with pytest.raises(FieldError, match="tex, dtex, denier, Nm, Ne, worsted, run or lea") as caught:
        read_label(text, field="weft")
    assert caught.value.field == "weft"
    assert all(read_label(example).yarn.tex > 0 for example in re.findall('"([^"]*)"', caught.value.example))


@pytest.mark.parametrize(
    "text",
    ["", " ", "abc", "tex 8 Ne", "-8 Ne", "0 Ne", "NaN tex", "inf tex", "1e9 tex", "8 Ne x 0", "8 Ne x 101", "0.5 tex",
     "60 000 tex", "50 g in 0 m", "0 g in 50 m", "50 g in 120 m x 2", "3 m 20 g in 4 m", "8 tex" * 30, 8, None, "٨ Ne",
     "R 74 tex", "3,500 tex", "1,680 yd/lb"],
)  # fmt: skip
def test_what_is_no_yarn_is_refused_in_one_sentence(text: object) -> None:
    """One line that begins with the field and ends with something that works; a comma is never guessed."""
    with pytest.raises(FieldError, match=r"^yarn: needs .*; for example ") as caught:
        read_label(text)
    assert len(str(caught.value).splitlines()) == 1
    assert caught.value.example == EXAMPLE or caught.value.example.startswith('"')


def test_plies_belong_to_a_count_and_are_said_once() -> None:
    """No plies beside a ball, none twice, none of a fraction, and no count is weighed."""
    for text, plies in (("50 g in 120 m", 2), ("8 Ne x 2", 2), ("8 Ne", 0), ("8 Ne", 1.5)):
        with pytest.raises(FieldError):
            read_label(text, plies)
    with pytest.raises(FieldError, match="weighed"):
        read_label("8 Ne", weighed=True)


@pytest.mark.parametrize(
    ("labels", "fibre"),
    [(["8 Ne"], 1.1), (["20 lea"], 1.1 * 1.52 / 1.50), (["2 run"], 1.1 * 1.52 / 1.31), (["400 tex"], 1.1 * 1.52 / 1.31),
     (["8 Ne", "20 lea"], 1.1 * 1.52 / 1.31), (["2 run", "12 worsted"], 1.1 * 1.52 / 1.31)],
)  # fmt: skip
def test_a_fibre_that_is_not_stated_is_assumed(labels: list[str], fibre: float) -> None:
    """That of the count's name, else wool; cotton takes up Peirce's 1.1 cm3/g, the densities are from memory."""
    volume = fibre_of([read_label(text) for text in labels])
    assert volume.value == pytest.approx(fibre)
    assert volume.origin is Origin.ASSUMED
    assert "No fibre stated" in volume.assumptions[0]


def test_a_stroke_is_read_in_the_order_that_is_said() -> None:
    """Craft labels write count/plies (8/2 is two 8s, 4 in all), older books plies/count (Taylor: 2/40s is two 40s)."""
    assert read_label("8/2 Ne", order="count/plies").yarn.numbers()["ne"] == 4
    assert read_label("Ne 2/40", order="plies/count").yarn.numbers()["ne"] == 20
    for text in ("8 Ne", "8/2 Ne x 2", "8/2"):
        with pytest.raises(FieldError):
            read_label(text, order="count/plies")
    with pytest.raises(FieldError, match="once only"):
        read_label("8/2 Ne", 2, "count/plies")
