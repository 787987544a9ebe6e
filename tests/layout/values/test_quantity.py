"""Figures carry how they are known."""

from __future__ import annotations

from layout.values.quantity import Origin, assumed, computed, measured


def test_a_figure_reckoned_from_measured_ones_is_computed() -> None:
    """Nothing assumed goes in, nothing assumed comes out."""
    assert computed(3, "Sum.", measured(1, "Counted."), measured(2, "Counted.")).origin is Origin.COMPUTED


def test_an_assumption_is_never_lost_on_the_way() -> None:
    """A figure that rests on an assumption two steps down is assumed, and names it once."""
    guess = assumed(2, "Guessed.")
    first = computed(3, "Sum.", measured(1, "Counted."), guess)
    second = computed(6, "Twice.", first, guess)
    assert (first.origin, second.origin) == (Origin.ASSUMED, Origin.ASSUMED)
    assert second.assumptions == ("Guessed.",)


def test_the_three_words_are_the_ones_people_read() -> None:
    """How is a plain word, fit for JSON."""
    assert [str(how) for how in Origin] == ["measured", "computed", "assumed"]
