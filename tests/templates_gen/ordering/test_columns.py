"""The names of columns: every key of a kit, and every wrong name said at once."""

from __future__ import annotations

from pathlib import Path

import pytest
from order_files import one_kit, opened, order

from layout.kit.inputs import INPUTS
from layout.values.errors import FieldErrors

WRONG = {
    "ordr": "did you mean order?",
    "byer": "did you mean buyer?",
    "Langauge": "did you mean language?",
    "weaving.widht": "did you mean weaving.width?",
    "width": "did you mean weaving.width?",
    "outer width": "did you mean frame.outer_width?",
    "telephone": "order, kit, copies, buyer, language, or a key of a kit file",
    "sett": "one of the keys of this table, got 'sett'; for example sett.readings",
    "weft.beads": "for example weft.beads.number",
    "sett.readings[].pairs": "the whole list in one column, as TOML.*example sett.readings",
    "weft.strands.grams": "example weft.strands",
    "name": "to come from the range",
    "version": "to come from the range",
    "kits": "to stand in the range",
    "buy.currency": "to stand in the range",
    "sell": "to stand in the range",
    "class.people": "to stand in the range",
    "without": "to stand in the range",
    "ORDER": "each column once .column 1",
    "order.number": "each column once .column 1",
    "order.buyer": "each column once .column 2",
    "paper.language": "each column once .column 3",
    "order\u0007": "did you mean order",
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_name_is_refused(name: str, tmp_path: Path) -> None:
    """In one sentence, which names file, line and column, and what was meant."""
    with pytest.raises(FieldErrors, match=WRONG[name]) as error:
        opened(tmp_path, f"order,buyer,language,{name}\n1,,,\n", one_kit())
    (only,) = error.value.errors
    assert str(only).startswith(f"{tmp_path / 'orders.csv'}, line 1, column 4: needs ")
    assert str(only).isprintable()


def test_every_wrong_name_is_said_at_once(tmp_path: Path) -> None:
    """So are columns that are missing: the number of the order, and the kit where the range has several."""
    with pytest.raises(FieldErrors) as error:
        opened(tmp_path, "\ncopis;name\n1;2\n")
    first, second, third, fourth = map(str, error.value.errors)
    assert "line 2, column 1: needs a known column (did you mean copies?), or to be deleted" in first
    assert "line 2, column 2: " in second
    assert third.endswith("got 'copis, name'; for example order")
    assert "a column kit, since the range has 3 kits" in fourth


def test_a_misspelt_column_is_not_missing_too(tmp_path: Path) -> None:
    """What was meant is said once."""
    with pytest.raises(FieldErrors) as error:
        opened(tmp_path, "ordr;kitt\n1;2\n")
    assert len(error.value.errors) == 2


def test_a_range_of_one_needs_no_column_kit(tmp_path: Path) -> None:
    """Its one kit is meant, be the column absent or its cell empty."""
    for text in ("order\n1\n", "order,kit\n1,\n"):
        assert order(tmp_path, text, one_kit()).kit == one_kit().kits[0].kit.name


@pytest.mark.parametrize("name", [" Order ", "ORDER", "order.number", "'Order"[1:], '"order"'])
def test_capitals_and_spaces_do_not_count(name: str, tmp_path: Path) -> None:
    """The header is remembered as it was written, without the spaces round it."""
    found = order(tmp_path, f"{name},WEAVING.Width\n7,20 cm\n", one_kit())
    assert found.columns == {"order.number": name.strip(' "'), "weaving.width": "WEAVING.Width"}


def test_every_key_of_a_kit_is_a_column(tmp_path: Path) -> None:
    """But for its name and version, which come with the kit, and keys inside of lists."""
    keys = [spec.key for spec in INPUTS if "[]" not in spec.key and spec.key not in ("name", "version")]
    found = opened(tmp_path, f"{','.join(keys)}\n1\n", one_kit())
    assert [column.key for column in found.columns] == keys


def test_a_row_of_names_is_needed(tmp_path: Path) -> None:
    """Numbers in the first line are wrong names, all of them."""
    with pytest.raises(FieldErrors, match=r"column 1: .*\n.*column 2"):
        opened(tmp_path, "1042,Weir frame\n1043,Weir frame\n", one_kit())
