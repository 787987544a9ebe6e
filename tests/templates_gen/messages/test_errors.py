"""Refusals of options: a role of the program, said in its own catalogue."""

from __future__ import annotations

from layout.messages.catalogue import Message
from layout.messages.roles import Value
from layout.values.errors import FieldError, FieldErrors
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.inputs import TrialNeed, YarnOption

REFUSED = OptionError("--slot", TrialNeed.TO_KNOW, TrialNeed.NEITHER, Message(YarnOption.LEAVE_OUT))


def test_a_refusal_of_an_option_keeps_its_role() -> None:
    """What is needed, what came and what to do are roles; the text is English."""
    assert REFUSED.needed == Message(TrialNeed.TO_KNOW)
    assert str(REFUSED) == REFUSED.said(ENGLISH)
    assert str(REFUSED).startswith("--slot: needs the stock file")
    assert str(REFUSED).endswith("got neither; for example leave out --fibre or leave out --volume")


def test_it_moves_to_another_option_and_stands_beside_others() -> None:
    """As any other refusal does, in the program's words."""
    moved = REFUSED.at("--part", "--part 19.76")
    assert isinstance(moved, OptionError)
    assert str(moved).endswith("got neither; for example --part 19.76")
    other = FieldError("sett.given", Value.SETT, "nothing", "8 epi")
    assert str(FieldErrors([moved, other])) == f"{moved}\n{other}"
