"""Remarks of a TOML document that show a key which is not there, such as `# tension = "150 g"`."""

from __future__ import annotations

import re
from typing import NamedTuple

from templates_gen.inputs.toml_lines import open_brackets
from templates_gen.inputs.toml_splices import line_end, line_start
from templates_gen.inputs.toml_tree import Head, Tree, outlines

_REMARK = re.compile(r"^([ \t]*)#(.*)$", re.MULTILINE)


class Remark(NamedTuple):
    """Where a line with a remark ends, and how it is indented."""

    at: int
    indent: str


def behind_remark(tree: Tree, head: Head | None, key: str) -> Remark | None:
    """The remark below a header that shows `key`, its last line where its value has several."""
    start, end = head.span[1] if head else 0, tree.end_of(head)
    shown = re.compile(rf"[ \t]*{re.escape(key)}[ \t]*=")
    lines = _remarks(tree, start, end)
    for number, each in enumerate(lines):
        if shown.match(each[2]):
            return Remark(_last_of(tree.text, lines[number:]), each[1])
    return None


def behind_header_remark(tree: Tree, name: str) -> int | None:
    """Where the block of remarks ends that begins with `# [name]`."""
    shown = re.compile(rf"[ \t]*\[{re.escape(name)}\][ \t]*(#.*)?")
    lines = _remarks(tree, 0, len(tree.text))
    for number, each in enumerate(lines):
        if shown.fullmatch(each[2].rstrip("\r")):
            return _end_of_block(tree.text, [at for at, _, _ in lines[number:]])
    return None


def above(tree: Tree, at: int) -> int:
    """The start of the block of remarks that ends right above the line at `at`; the start of that line without one."""
    start = line_start(tree.text, at)
    while start and tree.text[line_start(tree.text, start - 1) : start].lstrip().startswith("#"):
        start = line_start(tree.text, start - 1)
    return start


def _remarks(tree: Tree, start: int, end: int) -> list[tuple[int, str, str]]:
    """Every line that is a remark alone: where it begins, its indent, its words."""
    values = list(outlines(tree))
    found = (each for each in _REMARK.finditer(tree.text, start, end))
    lines = ((each.start(), each[1], each[2]) for each in found)
    return [each for each in lines if not any(first < each[0] < last for first, last in values)]


def _last_of(text: str, lines: list[tuple[int, str, str]]) -> int:
    """The end of the line on which all brackets of a value that is shown are closed."""
    first = line_end(text, lines[0][0])
    words: list[str] = []
    before = None
    for at, _, said in lines:
        if before is not None and line_start(text, at) != before:
            break
        words.append(said)
        if not open_brackets(words):
            return line_end(text, at)
        before = text.find("\n", at) + 1
    return first


def _end_of_block(text: str, starts: list[int]) -> int:
    end = line_end(text, starts[0])
    for at in starts[1:]:
        if text[end:at].strip("\r") != "\n":
            break
        end = line_end(text, at)
    return end
