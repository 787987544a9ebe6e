"""Messages by their roles: said whole, or not at all."""

from __future__ import annotations

import pytest

from layout.messages import roles
from layout.messages.catalogue import Between, Catalogue, CatalogueError, Plural, Role, fields_of
from layout.messages.english import ENGLISH


class Said(Role):
    """Roles of this test alone."""

    PEGS = "said.pegs"
    COUNT = "said.count"
    PLAIN = "said.plain"


SPOKEN = Catalogue(
    {
        Said.PEGS: "pegs of {peg}",
        Said.COUNT: Plural("count", "one end", "{count} ends"),
        Said.PLAIN: "left",
        Between.LIST: "{before}; {after}",
    }
)
EVERY = [role for kind in Role.__subclasses__() if kind.__module__.startswith("layout") for role in kind]


def test_a_message_is_said_with_its_values() -> None:
    """Values stand where their names stood; one and many are known apart, as number or as figures."""
    assert SPOKEN.say(Said.PEGS, peg="2.5 mm") == "pegs of 2.5 mm"
    assert [SPOKEN.say(Said.COUNT, count=n) for n in (1, "1", 2, "1.5")] == ["one end", "one end", "2 ends", "1.5 ends"]
    assert SPOKEN.listed(["left", "right", "up"]) == "left; right; up"
    assert SPOKEN.listed([]) == ""


@pytest.mark.parametrize("values", [{}, {"peg": "2 mm", "hole": "3 mm"}, {"hole": "3 mm"}])
def test_other_values_than_a_message_has_are_refused(values: dict[str, str]) -> None:
    """A value that is missing or not known is a fault, and named."""
    with pytest.raises(CatalogueError, match=r"said\.pegs has the values peg, not"):
        SPOKEN.say(Said.PEGS, **values)


def test_a_role_without_a_message_is_refused() -> None:
    """Nothing is said in the place of a message that is lacking."""
    with pytest.raises(CatalogueError, match=r"no message for marking\.left"):
        SPOKEN.say(roles.Marking.LEFT)


def test_every_role_has_its_message_in_english() -> None:
    """English says every role, and nothing else."""
    assert len(EVERY) == len(set(EVERY)) > 50
    assert set(ENGLISH.messages) == set(EVERY)


@pytest.mark.parametrize("role", EVERY)
def test_a_message_can_be_said(role: Role) -> None:
    """Both forms of a message take the values that it names, and keep each apart from the words around it."""
    values = dict.fromkeys(fields_of(ENGLISH.messages[role]), "7")
    said = ENGLISH.say(role, **values)
    assert said.strip() == said
    assert said.count("7") >= len(values)
    assert not set(said) & set("{}")
