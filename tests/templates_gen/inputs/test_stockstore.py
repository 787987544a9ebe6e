"""Values put into stock files of every form: they are there afterwards, and nothing else has changed by a byte."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from stock_texts import CHANGING, stock_texts

import templates_gen.inputs.stock_store as store_module
from templates_gen.inputs.stock_file import StockFileError, load, write_starter
from templates_gen.inputs.stock_store import changed, kept

_BOTH: Mapping[str, str | None] = {
    "kerf": None,
    "kerf_x": "0.31 mm",
    "kerf_y": "0.29 mm",
    "kerf_uncertainty": "0.01 mm",
}
_ONE: Mapping[str, str | None] = {"kerf": "0.3 mm", "kerf_x": None, "kerf_y": None, "kerf_uncertainty": "0.01 mm"}
STORES: list[dict[str, Mapping[str, str | None]]] = [
    {"cutting": _BOTH, "trial": {"kerf": "0.2 mm"}},
    {"cutting": _ONE, "trial": {"kerf": "0.2 mm"}},
    {"cutting": {**_BOTH, "ease": "0.25 mm"}, "trial": {"kerf": "0.2 mm", "slot": "0.2 mm"}},
    {"cutting": {**_ONE, "ease": "0.25 mm"}, "trial": {"kerf": "0.2 mm", "slot": "0.2 mm"}},
    {"cutting": {"ease": "0.25 mm"}, "trial": {"kerf": "0.2 mm", "slot": "0.2 mm"}},
]
stores = st.sampled_from(STORES)
REMARK = re.compile("\N{BULLET}\\d+\N{BULLET}")


def said(text: str, tables: Mapping[str, Mapping[str, str | None]]) -> dict[str, Any]:
    """What the old text says, with the same change made in plain values."""
    values = tomllib.loads(text)
    for table, entries in tables.items():
        merged = values.get(table, {}) | entries
        values[table] = {key: value for key, value in merged.items() if value is not None}
    return values


def others(text: str, ours: set[str]) -> str:
    """The lines that a store has no business with: neither entries of its tables nor what is left of their remarks."""
    lines = text.splitlines(keepends=True)
    return "".join(line for line in lines if not CHANGING.match(line) and ours.isdisjoint(REMARK.findall(line)))


@settings(max_examples=80)
@given(stock_texts(), stores)
def test_nothing_else_changes_by_a_byte(text: str, tables: dict[str, Mapping[str, str | None]]) -> None:
    """The new text says the new values; its other lines are the old bytes, and every remark stands in its old order."""
    new = changed(text, tables)
    assert tomllib.loads(new) == said(text, tables)
    ours = {mark for line in text.splitlines() if CHANGING.match(line) for mark in REMARK.findall(line)}
    before, after = others(text, ours), others(new, ours)
    assert after.startswith(before)
    more = after[len(before) :]  # line ends: of the last line if it had none, and before a table that is new
    assert more.strip("\r\n") == ""
    assert more.count("\n") <= (not text.endswith("\n")) + ("trial" not in tomllib.loads(text))
    assert REMARK.findall(new) == REMARK.findall(text)


@settings(max_examples=40)
@given(stock_texts(), stores)
def test_storing_again_changes_nothing(text: str, tables: dict[str, Mapping[str, str | None]]) -> None:
    """The same values a second time leave the same text."""
    once = changed(text, tables)
    assert changed(once, tables) == once


@settings(max_examples=30)
@given(text=stock_texts(), tables=stores, mark=st.sampled_from([b"", b"\xef\xbb\xbf"]))
def test_a_file_is_changed_as_its_text_is(
    tmp_path_factory: pytest.TempPathFactory, text: str, tables: dict[str, Mapping[str, str | None]], mark: bytes
) -> None:
    """Byte order mark and line ends come through; no lock and no temporary file is left."""
    path = tmp_path_factory.mktemp("stocks") / "stock.toml"
    path.write_bytes(mark + text.encode())
    with kept(path) as (_, put):
        put(tables)
    assert path.read_bytes() == mark + changed(text, tables).encode()
    assert list(path.parent.iterdir()) == [path]


def test_a_remark_stays_on_the_line_of_its_kerf() -> None:
    """x takes the line of kerf, with its remark; y comes below; back again the remark of y stays too."""
    text = '[cutting]\r\nkerf = "0.2 mm"  # mine\n\n# of colours\n[colours]\n'
    apart = changed(text, {"cutting": {"kerf": None, "kerf_x": "0.31 mm", "kerf_y": "0.29 mm"}})
    assert apart == ('[cutting]\r\nkerf_x = "0.31 mm"  # mine\nkerf_y = "0.29 mm"\n\n# of colours\n[colours]\n')
    stated = apart.replace('"0.29 mm"\n', '"0.29 mm" # across\n')
    back = changed(stated, {"cutting": {"kerf": "0.3 mm", "kerf_x": None, "kerf_y": None}})
    assert back == '[cutting]\r\nkerf = "0.3 mm"  # mine\n# across\n\n# of colours\n[colours]\n'


def test_no_key_comes_between_a_table_and_its_remark() -> None:
    """What is new stands right behind its neighbour, not at the end of the table where the next one's remark is."""
    text = '[cutting]\nkerf = "0.2 mm"\nease = "0.1 mm"\n# The sheet as it lies.\n[sheet]\nwidth = "600 mm"\n'
    new = changed(text, {"cutting": {"kerf": "0.3 mm", "kerf_uncertainty": "0.01 mm", "ease": "0.2 mm"}})
    assert new == (
        '[cutting]\nkerf = "0.3 mm"\nkerf_uncertainty = "0.01 mm"\nease = "0.2 mm"\n'
        '# The sheet as it lies.\n[sheet]\nwidth = "600 mm"\n'
    )


def test_a_store_that_would_say_another_thing_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Should the text not come out as the values do, the file stays and one sentence says so."""
    path = tmp_path / "stock.toml"
    write_starter(path)
    before = path.read_bytes()
    monkeypatch.setattr(store_module, "changed", lambda text, _: text.replace("0.20", "0.91"))
    with pytest.raises(StockFileError, match=r"stock\.toml is written in a way that no value can be put into"):  # noqa: SIM117
        with kept(path) as (_, put):
            put({"cutting": {"kerf": "0.19 mm"}})
    assert path.read_bytes() == before
    assert load(path).kerf_x == 0.2
