from __future__ import annotations

import json

import pytest
from kits import font_metrics, plan_of

from layout.kit.kit import kit_values
from layout.values.errors import FieldErrors
from templates_gen.files.embedded import embedded_inputs


def test_inputs_that_are_equal_in_python_are_not_taken_for_each_other() -> None:
    """One doubled selvedge is read; "true", which Python holds equal to 1, is refused before and after that."""
    values = kit_values(plan_of({"weaving.doubled_selvedges": 1}).kit)
    right = json.dumps({"file": "kit.pdf", "kit": values})
    wrong = right.replace('"doubled_selvedges": 1', '"doubled_selvedges": true')
    assert wrong != right
    for _ in range(2):
        with pytest.raises(FieldErrors, match="doubled_selvedges"):
            embedded_inputs(wrong, font_metrics())
        assert embedded_inputs(right, font_metrics()).kit.weaving.doubled_selvedges == 1
