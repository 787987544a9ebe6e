"""Stock files as people write them: every spacing, quote, order and line end that TOML allows, remarks anywhere."""

from __future__ import annotations

import re
from collections.abc import Callable

from hypothesis import strategies as st

Draw = Callable[[st.SearchStrategy[str]], str]

_SPACE = st.sampled_from(["", " ", "\t", "   "])
_END = st.sampled_from(["\n", "\r\n"])
_GAPS = st.lists(st.sampled_from(["", "  ", "# remark", "\t# [cutting]", '# kerf = "9 mm"']), max_size=3)
_REST = {
    "": ["version = 1", 'name = "birch # 3"', "material = 'ply = \"wood\"'", 'thickness = """3 mm"""'],
    "sheet": ['width = "600 mm"', 'height = "40\\u0030 mm"', '"grain" = "y"'],
    "colours": ['cut = "#000000"', "'score' = '''#00ff00'''"],
    "speeds": ["cut = 12", "engrave = 2_0.5e1"],
}
_KERFS = st.sampled_from([{"kerf": "0.2 mm"}, {"kerf_x": "0.21 mm", "kerf_y": "0.19 mm"}])
_MORE = st.dictionaries(st.sampled_from(["ease", "kerf_uncertainty"]), st.just("0.1 mm"))
_TRIALS = st.sampled_from([None, {}, {"kerf": "0.18 mm"}, {"kerf": "0.18 mm", "slot": "0.3 mm"}])

CHANGING = re.compile(
    r"""\s*(?:["']?(?:cutting|trial)["']?\s*[.=]|["']?(?:kerf|kerf_x|kerf_y|kerf_uncertainty|ease|slot)["']?\s*=|\[trial\])"""
)
"""The lines that a store may change, add or take away."""


@st.composite
def stock_texts(draw: st.DrawFn) -> str:
    """The text of a stock file that can be used."""
    blocks = [_block(draw, table, [_spaced(draw, line) for line in lines]) for table, lines in _REST.items()]
    root, others = blocks[0], blocks[1:]
    for table, values in (("cutting", draw(_KERFS) | draw(_MORE)), ("trial", draw(_TRIALS))):
        if values is None:
            continue
        way = draw(st.sampled_from(["header", "dotted", "inline"])) if values else "header"
        entries = [_entry(draw, key, value) for key, value in draw(st.permutations(list(values.items())))]
        if way == "header":
            others.append(_block(draw, table, entries))
        elif way == "dotted":
            root += [draw(_SPACE) + table + draw(_SPACE) + "." + draw(_SPACE) + entry for entry in entries]
        else:
            inner = (draw(_SPACE) + "," + draw(_SPACE)).join(entries)
            root.append(f"{table}{draw(_SPACE)}={draw(_SPACE)}{{{draw(_SPACE)}{inner}{draw(_SPACE)}}}")
    lines = [*root, *(line for block in draw(st.permutations(others)) for line in block)]
    text = "".join(_line(draw, number, line) for number, line in enumerate(lines))
    return text.rstrip("\r\n") if draw(st.booleans()) else text


def _block(draw: st.DrawFn, table: str, lines: list[str]) -> list[str]:
    name = draw(st.sampled_from([table, f'"{table}"', f"'{table}'"])) if table else ""
    header = [f"{draw(_SPACE)}[{draw(_SPACE)}{name}{draw(_SPACE)}]"] if table and table != "trial" else [f"[{table}]"]
    return [*draw(_GAPS), *(header if table else []), *draw(_GAPS), *draw(st.permutations(lines)), *draw(_GAPS)]


def _entry(draw: st.DrawFn, key: str, value: str) -> str:
    quote = draw(st.sampled_from(['"', "'"]))
    return _spaced(draw, f"{draw(st.sampled_from([key, repr(key)]))} = {quote}{value}{quote}")


def _spaced(draw: st.DrawFn, line: str) -> str:
    """Another space on both sides of the first equal sign."""
    key, _, value = line.partition(" = ")
    return f"{key}{draw(_SPACE)}={draw(_SPACE)}{value}"


def _line(draw: st.DrawFn, number: int, line: str) -> str:
    """A line with a remark of its own, or none, and a line end."""
    remark = f"{draw(_SPACE)}# \N{BULLET}{number}\N{BULLET}" if draw(st.booleans()) else ""
    return f"{line}{draw(_SPACE)}{remark}{draw(_END)}"
