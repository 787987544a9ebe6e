"""A value taken out of a TOML document: remarks stay, lines that held nothing else go."""

from __future__ import annotations

import re

from templates_gen.inputs.toml_splices import end_at, line_end, line_start, spliced
from templates_gen.inputs.toml_tree import Head, Path, Place, Tree

_COMMA_AFTER, _COMMA_BEFORE = re.compile(r"[ \t]*,[ \t]*"), re.compile(r"[ \t]*,[ \t]*$")


def removed(text: str, path: Path, *, shown: bool = False, whole: bool = False) -> str:
    """The text without what stands at `path`: one value, or all lines and headers of a table or of a row of a list.

    The header of a table at the top stays, since the remarks below it are of its keys, unless the `whole` goes. Where
    the value is still to be `shown`, its lines become remarks.
    """
    tree = Tree(text)
    if place := tree.place(path):
        return _without(text, place, shown=shown)
    heads = [head for head in tree.heads if head.path[: len(path)] == path and (whole or len(head.path) > 1)]
    lines: list[Place | Head] = [*tree.inside(path), *heads]
    for each in sorted(lines, key=_start, reverse=True):
        text = _without(text, each, shown=shown) if isinstance(each, Place) else _without_line(text, each.span)
    return text


def _start(each: Place | Head) -> int:
    return each.key[0] if isinstance(each, Place) else each.span[0]


def _without(text: str, place: Place, *, shown: bool) -> str:
    span = (place.key[0], place.value[1])
    if shown and place.holder == "line":
        start = line_start(text, span[0])
        return spliced(text, (start, span[1]), "# " + text[start : span[1]].replace("\n", "\n# "))
    return _without_line(text, span) if place.holder == "line" else _without_comma(text, span, place.holder)


def _without_line(text: str, span: tuple[int, int], rest: str = "") -> str:
    """Without an entry or a header, and its line where no remark stands there."""
    start, end = line_start(text, span[0]), line_end(text, span[1])
    remark = text[span[1] : end].strip().removeprefix(rest).strip()
    if remark:
        return spliced(text, (span[0], end), remark)
    return spliced(text, (start, end + len(end_at(text, end))), "")


def _without_comma(text: str, span: tuple[int, int], holder: str) -> str:
    """Without an entry of braces or a row of brackets, and the comma that stood between it and its neighbour."""
    start, end = span
    alone = not text[line_start(text, start) : start].strip()
    if holder == "list" and alone and re.match(r"[ \t]*,?[ \t]*(#[^\n]*)?\r?\n", text[end:]):
        return _without_line(text, span, ",")
    if after := _COMMA_AFTER.match(text, end):
        return spliced(text, (start, after.end()), "")
    before = _COMMA_BEFORE.search(text[:start])
    return spliced(text, (before.start() if before else start, end), "")
