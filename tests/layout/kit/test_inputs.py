"""The table of inputs itself."""

from __future__ import annotations

import tomllib
from collections.abc import Sequence

import pytest

from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.input import Input
from layout.kit.inputs import INPUTS
from layout.kit.kit import read_kit
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import KitHelp, StockHelp
from tests.plain_kits import METRICS, placed


@pytest.mark.parametrize(("inputs", "roles"), [(INPUTS, KitHelp), (STOCK.inputs, StockHelp)], ids=["kit", "stock"])
def test_every_input_has_its_own_help_and_no_help_is_left_over(inputs: Sequence[Input], roles: type[Role]) -> None:
    """No key stands twice; a role of help ends with the key's own name."""
    assert len({spec.key for spec in inputs}) == len(inputs)
    assert {spec.help for spec in inputs} == set(roles)
    for spec in inputs:
        assert spec.help.name.endswith(spec.leaf.upper()), spec.key


@pytest.mark.parametrize("role", [*KitHelp, *StockHelp])
def test_help_is_a_phrase(role: Role) -> None:
    """It takes no values, and goes into a sentence as it is."""
    said = ENGLISH.say(role)
    assert said[0].islower()
    assert not said.endswith(".")


@pytest.mark.parametrize("spec", INPUTS, ids=lambda spec: spec.key)
def test_the_examples_in_refusals_work(spec: Input) -> None:
    """What a refusal offers as an example would be taken, word for word."""
    value = tomllib.loads(f"{spec.leaf} = {spec.example}")[spec.leaf]
    if spec.key == "frame.ends":
        value = "round bars"
    values, _ = placed(spec.key, value)
    read_kit(values, METRICS)
