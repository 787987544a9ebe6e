"""Refusals: a role and values, said in the language of a catalogue."""

from __future__ import annotations

import pytest

from layout.messages.catalogue import Catalogue, CatalogueError, Message, Role
from layout.messages.roles import Refusal, Value
from layout.values.errors import FieldError, FieldErrors, LayoutError


class Asked(Role):
    """Roles of this test alone."""

    LENGTH = "asked.length"
    NAME = "asked.name"


GERMAN = Catalogue(
    {
        Refusal.AT: "{field}: {sentence}",
        Refusal.SAID: "{sentence}",
        Value.LENGTH: "braucht eine Länge, nicht {got}; zum Beispiel {example}",
        Asked.LENGTH: "{got} ist keine {name} bis {most} mm; zum Beispiel {example}",
        Asked.NAME: "Höhe",
    }
)


def test_a_refusal_keeps_its_values_apart_from_its_words() -> None:
    """Field, what came and the example are plain; the sentence is the catalogue's, also around them."""
    error = FieldError("frame.height", Value.LENGTH, "'x'", "height = 40")
    assert (error.field, error.got, error.example) == ("frame.height", "'x'", "height = 40")
    assert (
        str(error)
        == "frame.height: needs a length with its unit (mm, cm, m, in, ft or yd), got 'x'; for example height = 40"
    )
    assert error.said(GERMAN) == "frame.height: braucht eine Länge, nicht 'x'; zum Beispiel height = 40"
    assert FieldErrors([error, error]).said(GERMAN) == "\n".join([error.said(GERMAN)] * 2)


def test_a_refusal_moves_to_another_key() -> None:
    """Only the key and the example change."""
    moved = FieldError("", Value.LENGTH, "'x'", "1 mm").at("frame.height", "height = 40")
    assert (
        str(moved)
        == "frame.height: needs a length with its unit (mm, cm, m, in, ft or yd), got 'x'; for example height = 40"
    )
    assert moved.at("frame.width").example == moved.example


def test_a_refusal_by_a_role_lacks_no_word(monkeypatch: pytest.MonkeyPatch) -> None:
    """A role that the language does not have is a fault of the code; one that it has is said, names and all."""
    with pytest.raises(CatalogueError):
        FieldError("frame.height", Asked.LENGTH, "'x'", "height = 40", most=5, name=Message(Asked.NAME))
    monkeypatch.setattr("layout.values.errors.ENGLISH", GERMAN)
    error = FieldError("frame.height", Asked.LENGTH, "'x'", "height = 40", most=5, name=Message(Asked.NAME))
    assert str(error) == "frame.height: 'x' ist keine Höhe bis 5 mm; zum Beispiel height = 40"
    assert error.needed == Message(Asked.LENGTH, {"most": 5, "name": Message(Asked.NAME)})


def test_what_came_and_the_example_may_be_messages(monkeypatch: pytest.MonkeyPatch) -> None:
    """They are said in the language of the refusal, and stay messages where it moves to another key."""
    monkeypatch.setattr("layout.values.errors.ENGLISH", GERMAN)
    error = FieldError("", Asked.LENGTH, Asked.NAME, Message(Asked.NAME), most=5, name=Asked.NAME).at("frame.height")
    assert str(error) == "frame.height: Höhe ist keine Höhe bis 5 mm; zum Beispiel Höhe"
    assert (error.example, error.suggestion) == ("Höhe", Message(Asked.NAME))


def test_a_sentence_that_was_said_before_stays_as_it_is() -> None:
    """In whatever language it is asked for."""
    assert str(LayoutError("nothing to draw")) == LayoutError("nothing to draw").said(GERMAN) == "nothing to draw"
