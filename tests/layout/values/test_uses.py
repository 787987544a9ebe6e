"""What a refusal offers can be written as it is."""

from __future__ import annotations

import pytest

from layout.box.shop_inputs import SHOP
from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.fields import example_of, read_field
from layout.kit.input import Input
from layout.kit.inputs import INPUTS
from layout.messages.roles import Refusal, WarpNeed
from layout.messages.roles.ranges import RangeNeed
from layout.values.errors import FieldError, Message, leave_out
from layout.values.uses import Use
from tests.kits import font_metrics

EVERY = [spec for spec in (*INPUTS, *STOCK.inputs, *SHOP.inputs) if spec.kind != "tables"]


def refused(field: str, example: Message | str) -> FieldError:
    """A refusal at that field with that example."""
    return FieldError(field, RangeNeed.NAME, "nothing", example)


@pytest.mark.parametrize("spec", EVERY, ids=lambda spec: spec.key)
def test_the_example_of_every_input_is_a_value_of_it(spec: Input) -> None:
    """The line that a refusal shows says its key and a plain value that can be read there."""
    key = spec.key.replace("[]", "[1]")
    (use,) = refused(key, example_of(spec)).use
    assert use.key == key
    assert read_field(spec, use.value, key, font_metrics()) is not None


def test_a_key_to_leave_out_is_offered_without_a_value() -> None:
    """Of two keys that contradict each other either can go; they stand beside the key that is refused."""
    assert refused("frame.dip", leave_out("dip")).use == (Use("frame.dip", None),)
    either = Message(Refusal.LEAVE_OUT_OR, {"key": "readings", "other": "given"})
    assert refused("sett.given", either).use == (Use("sett.readings", None), Use("sett.given", None))


def test_a_line_of_another_table_is_offered_there() -> None:
    """Pegs that stand too close may ask for another sett."""
    looser = Message(WarpNeed.SETT_LINE, {"sett": "3 per cm"})
    assert refused("frame.peg_diameter", looser).use == (Use("sett.given", "3 per cm"),)


def test_a_sentence_offers_nothing_unless_it_is_said() -> None:
    """What is no value is none; a refusal may bring its own, which stay with it at another key."""
    assert refused("weft.colours", "red = 60, grey = 40").use == ()
    own = refused("", "a sentence").offering(Use("sett.loosest", value=True))
    assert own.at("sett.readings").use == (Use("sett.loosest", value=True),)
    assert own.at("sett.given", 'given = "6 epi"').use == (Use("sett.given", "6 epi"),)
