"""A TOML document that is made to say other values: it says them, and all else of its text stays."""

from __future__ import annotations

import difflib
import re
import tomllib
from copy import deepcopy
from typing import Any

import pytest
import tomlkit
from hypothesis import assume, given
from hypothesis import strategies as st

from templates_gen.data import text_of
from templates_gen.inputs.toml_literal import key_literal, literal
from templates_gen.inputs.toml_order import Order
from templates_gen.inputs.toml_rewrite import alike, rewritten

KIT = Order(text_of("demo.toml"))
NONE = Order("")

_texts = st.text(st.characters(codec="utf-8"), max_size=12)
_scalars = st.one_of(
    _texts, st.integers(-(2**53), 2**53), st.booleans(), st.floats(allow_nan=False, allow_infinity=False)
)
_keys = st.one_of(st.sampled_from("abcdefg"), st.sampled_from(["a b", "ä", 'q"', "x.y", "1"]))
_values = st.recursive(
    _scalars,
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(_keys, inner, min_size=1, max_size=3)),
    max_leaves=8,
)
_documents = st.dictionaries(_keys, _values, max_size=5)


class Styles:
    """Writes values as a document: tables by headers, dotted or in braces, rows by headers or in lists, remarks."""

    def __init__(self, draw: st.DrawFn) -> None:
        self.draw, self.remarks = draw, 0

    def document(self, values: dict[str, Any]) -> str:
        """The whole document."""
        lines = self.table((), values)
        end = self.draw(st.sampled_from(["\n", "\r\n"]))
        return end.join(lines) + (end if self.draw(st.booleans()) else "")

    def remark(self) -> str:
        """A remark, now and then."""
        if not self.draw(st.integers(0, 3)):
            self.remarks += 1
            return f"# remark {self.remarks}."
        return ""

    def table(self, path: tuple[str, ...], values: dict[str, Any]) -> list[str]:
        """The lines of a table, those of tables below it last."""
        lines: list[str] = []
        below: list[str] = []
        for key, value in values.items():
            name = ".".join(map(key_literal, (*path, key)))
            if isinstance(value, dict) and value and self.draw(st.booleans()):
                if self.draw(st.booleans()):
                    below += [*filter(None, ["", self.remark()]), f"[{name}] {self.remark()}"]
                    below += self.table((*path, key), value)
                else:
                    lines += self.dotted(key_literal(key), value)
            elif value and isinstance(value, list) and all(map(_table, value)) and self.draw(st.booleans()):
                for row in value:
                    below += [*filter(None, [self.remark()]), f"[[{name}]]", *self.table((*path, key), row)]
            else:
                lines += filter(None, [self.remark()])
                lines.append(f"{key_literal(key)} = {self.value(value)}  {self.remark()}")
        return [*lines, *below]

    def dotted(self, start: str, values: dict[str, Any]) -> list[str]:
        """A table whose name is part of its keys."""
        return [f"{start}.{key_literal(key)} = {self.value(value)} {self.remark()}" for key, value in values.items()]

    def value(self, value: Any) -> str:
        """A value, a list now and then over several lines."""
        if isinstance(value, list) and value and self.draw(st.booleans()):
            rows = [f"  {literal(row)}, {self.remark()}" for row in value]
            return "\n".join([f"[ {self.remark()}", *rows, "]"])
        return literal(value)


def _table(value: object) -> bool:
    return isinstance(value, dict)


@st.composite
def texts(draw: st.DrawFn) -> tuple[dict[str, Any], str]:
    """Values, and a document that says them."""
    values = draw(_documents)
    text = Styles(draw).document(values)
    assume(alike(tomllib.loads(text), values))
    return values, text


@st.composite
def changes(draw: st.DrawFn) -> tuple[str, dict[str, Any]]:
    """A document, and other values that share some with it."""
    values, text = draw(texts())
    wanted = deepcopy(values)
    for _ in range(draw(st.integers(1, 4))):
        _change(draw, wanted)
    return text, wanted


def _change(draw: st.DrawFn, values: Any) -> None:
    """One change somewhere in these values."""
    inner = [
        each for each in (values.values() if isinstance(values, dict) else values) if isinstance(each, dict | list)
    ]
    if inner and draw(st.booleans()):
        _change(draw, draw(st.sampled_from(inner)))
    elif isinstance(values, list):
        at = draw(st.integers(0, len(values)))
        values[at : at + draw(st.integers(0, 1))] = draw(st.lists(_values, max_size=2))
    elif values and draw(st.booleans()):
        del values[draw(st.sampled_from(sorted(values)))]
    else:
        values[draw(_keys)] = draw(_values)


@given(changes())
def test_the_text_says_what_is_wanted(change: tuple[str, dict[str, Any]]) -> None:
    """Whatever is changed, the result is a TOML document that says the wanted values, by another library too."""
    text, wanted = change
    found = rewritten(text, wanted, NONE)
    assert alike(tomllib.loads(found), wanted)
    assert alike(tomllib.loads(found), tomlkit.parse(found).unwrap())
    assert rewritten(found, wanted, NONE) == found


@given(texts())
def test_the_same_values_leave_every_byte(written: tuple[dict[str, Any], str]) -> None:
    """Where nothing differs, the text is the same."""
    values, text = written
    assert rewritten(text, values, KIT) == text


@given(changes())
def test_remarks_on_lines_of_their_own_stay(change: tuple[str, dict[str, Any]]) -> None:
    """Every remark outside values that go is still there, in its order."""
    text, wanted = change
    found = rewritten(text, wanted, NONE)
    before = _outside_values(text)
    kept = [line for line in _remarks(found) if line in before]
    assert kept == before


def _remarks(text: str) -> list[str]:
    return re.findall(r"# remark \d+\.", text)


def _outside_values(text: str) -> list[str]:
    """The remarks that stand in no list."""
    return _remarks(re.sub(r"\[ (?:# remark \d+\.)?\n(?:  .*\n)*\]", "[]", text))


def changed_lines(before: str, after: str) -> list[str]:
    """The lines that differ, with their signs."""
    lines = difflib.unified_diff(before.split("\n"), after.split("\n"), lineterm="", n=0)
    return [line for line in lines if line[:1] in "+-" and line[:3] not in ("+++", "---")]


def _kit_with(**tables: dict[str, Any]) -> list[str]:
    text = text_of("demo.toml")
    values = tomllib.loads(text)
    for table, entries in tables.items():
        own = values.setdefault(table, {})
        own.update(entries)
        for key in [key for key, value in own.items() if value is None]:
            del own[key]
    return changed_lines(text, rewritten(text, values, KIT))


def test_a_new_key_stands_behind_the_remark_that_shows_it() -> None:
    """A key that the starter shows in a remark comes right behind it, in the section of its table."""
    text = text_of("demo.toml")
    values = tomllib.loads(text)
    values["weaving"]["shrinkage"] = "4 %"
    lines = rewritten(text, values, KIT).split("\n")
    assert lines[lines.index('shrinkage = "4 %"') - 1] == '# shrinkage = "3 %"'


def test_a_change_touches_its_line_alone() -> None:
    """One value changed is one line changed, and the remark behind it stays."""
    line = next(line for line in text_of("demo.toml").split("\n") if line.startswith("margin"))
    assert _kit_with(frame={"margin": "12 mm"}) == [f"-{line}", f"+{line.replace('15 mm', '12 mm')}"]


def test_a_key_that_goes_leaves_its_remark() -> None:
    """What stands behind a value that is taken out stays as a line of its own."""
    line = next(line for line in text_of("demo.toml").split("\n") if line.startswith("bar_diameter"))
    assert _kit_with(frame={"bar_diameter": None}) == [f"-{line}", "+# round bars only"]


def test_an_empty_table_is_filled_below_its_header() -> None:
    """The starter's [legal] holds remarks alone; a key of it comes there, and no second header."""
    assert _kit_with(legal={"maker": "Shop by the Weir"}) == ['+maker = "Shop by the Weir"']


def test_a_new_table_stands_where_the_starter_has_it() -> None:
    """A table that a file lacks comes before the tables that follow it in the starter, with their remarks."""
    text = 'name = "a"\n\n# Yarns.\n[yarns]\nwarp = "b"\n\n# Paper.\n[paper]\nsize = "a4"\n'
    values = tomllib.loads(text) | {"frame": {"ends": "nails"}}
    after = rewritten(text, values, KIT)
    assert after == text.replace("# Paper.", '[frame]\nends = "nails"\n\n# Paper.')


@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_line_ends_stay(end: str) -> None:
    """New lines end as the others do."""
    text = f'[frame]{end}ends = "nails"{end}'
    found = rewritten(text, {"frame": {"ends": "nails", "thickness": "1 in"}, "copies": 2}, KIT)
    assert found.count("\n") == found.count(end) == 5


def test_rows_keep_their_writing() -> None:
    """Of a list in lines a changed row changes alone, and a new one gets a line of its own."""
    text = 'readings = [\n    {pairs = 13, window = "5 cm"},  # first\n    {pairs = 27, measure = "10 cm"}  # last\n]\n'
    rows = [{"pairs": 14, "window": "5 cm"}, {"pairs": 27, "measure": "10 cm"}, {"pairs": 9, "window": "1 in"}]
    assert rewritten(text, {"readings": rows}, NONE) == (
        'readings = [\n    {pairs = 14, window = "5 cm"},  # first\n'
        '    {pairs = 27, measure = "10 cm"},  # last\n    {pairs = 9, window = "1 in"},\n]\n'
    )


def test_single_quotes_stay() -> None:
    """A text in single quotes is written in them again, unless it holds one."""
    assert rewritten("a = 'b'  # c\n", {"a": "d"}, NONE) == "a = 'd'  # c\n"
    assert rewritten("a = 'b'\n", {"a": "it's"}, NONE) == 'a = "it\'s"\n'


def test_a_key_may_be_left_shown() -> None:
    """Where what goes is still to be shown, its lines become remarks."""
    text = "a = 1  # one\nrows = [\n    2,\n]\nb = 3\n"
    assert rewritten(text, {"b": 3}, NONE, shown=True) == "# a = 1  # one\n# rows = [\n#     2,\n# ]\nb = 3\n"
