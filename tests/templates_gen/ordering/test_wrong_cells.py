"""Whatever stands in a cell, it is read or refused in a sentence that names its column, and nothing else happens."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from order_files import one_kit, rows

from layout.kit.inputs import BY_KEY, INPUTS
from layout.kit.kit import read_kit
from layout.values.errors import FieldErrors
from templates_gen.lettering.fonts import metrics
from templates_gen.ordering.order import Problem, Unreadable
from templates_gen.ordering.problems import read_problems

_ELSEWHERE = ("name", "version", "paper.language", "order.number", "order.buyer")
KEYS = [spec.key for spec in INPUTS if "[]" not in spec.key and spec.key not in _ELSEWHERE]
COLUMNS = ("order", "copies", "buyer", "language", *KEYS)
OWN_WORDS = ("name", "text")
"""Kinds of key at which any words will do."""

odd = st.one_of(
    st.text(max_size=12),
    st.text("0123456789.,-/ %cmin\"'½x", max_size=9),
    st.text('[]{}=,"1a\n', max_size=20).map(lambda text: f"[{text}]"),
    st.sampled_from(
        ["1" * 400, "[" * 500, "9e999", "nan", "-0", "../..", "=1+1", "@x", "con", "\ud7ff", "1,000", "0x10"]
    ),
    st.sampled_from([spec.example.strip('"') for spec in INPUTS]),
)


def found_in(folder: Path, cells: dict[str, str]) -> tuple[Problem, ...]:
    """What is wrong with a row of these cells, in whichever way it is found out; nothing where it can be made."""
    file = io.StringIO(newline="")
    csv.writer(file).writerows([cells.keys(), cells.values()])
    (row,) = rows(folder, file.getvalue(), one_kit())
    if isinstance(row, Unreadable):
        return row.problems
    json.dumps([row.number, row.values, row.columns])
    try:
        read_kit(row.values, metrics())
    except FieldErrors as error:
        return read_problems(row, error)
    return ()


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=100)
@given(cells=st.dictionaries(st.sampled_from(COLUMNS), odd, min_size=1, max_size=4))
def test_any_cell_is_read_or_refused(cells: dict[str, str], tmp_path: Path) -> None:
    """Every refusal is one short sentence of a column of the row, or of a key of the range that it clashes with."""
    cells = {"order": "1"} | cells
    assume(any(cell.strip() for cell in cells.values()))
    for column, sentence in found_in(tmp_path, cells):
        assert column in cells or (column == "" and sentence.split(": ")[0].split("[")[0] in BY_KEY), (column, sentence)
        assert sentence.isprintable()
        assert "needs " in sentence
        assert len(sentence) < 1000


@pytest.mark.parametrize(
    "name", [name for name in COLUMNS if name == "copies" or (name in KEYS and BY_KEY[name].kind not in OWN_WORDS)]
)
def test_no_column_takes_nonsense(name: str, tmp_path: Path) -> None:
    """A cell that is no number, length, choice, list or address is refused, and its column named."""
    found = found_in(tmp_path, {"order": "1", name: "?!"})
    assert [problem.column for problem in found if "'?!'" in problem.sentence] == [name]
