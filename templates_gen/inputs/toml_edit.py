"""Values put into the text of a TOML document: every character that does not have to change stays."""

from __future__ import annotations

import re
from collections.abc import Mapping

from templates_gen.inputs.toml_spans import Entry, Header, Keys, spans
from templates_gen.inputs.toml_splices import end_at, line_end, line_start, spliced, usual_end, with_line

Values = Mapping[str, str | None]
"""What a table is to say by key, as text for quotes; None takes an entry out."""


def with_entries(text: str, table: str, values: Values) -> str:
    """The document with these `values` in its `table`, in the order of `values` where entries are new.

    A new entry stands on a line of its own behind the one before it; an entry that goes gives its line, and the remark
    there, to one that comes. Values and keys must need no escape in TOML.
    """
    text = _renamed(text, table, values)
    before = ""
    for leaf, value in values.items():
        entry = _entry(text, (table, leaf))
        if value is None:
            text = _without(text, entry) if entry else text
            continue
        text = _with_value(text, entry, value) if entry else _with_new(text, table, (before, leaf), value)
        before = leaf
    return text


def _renamed(text: str, table: str, values: Values) -> str:
    """Gives the lines of entries that go to entries that come."""
    old = [leaf for leaf, value in values.items() if value is None and _entry(text, (table, leaf))]
    new = [leaf for leaf, value in values.items() if value is not None and not _entry(text, (table, leaf))]
    for gone, come in zip(old, new, strict=False):
        if entry := _entry(text, (table, gone)):
            text = spliced(text, entry.leaf, come)
    return text


def _with_value(text: str, entry: Entry, value: str) -> str:
    quote = "'" if text[entry.value[0]] == "'" else '"'
    return spliced(text, entry.value, f"{quote}{value}{quote}")


def _with_new(text: str, table: str, leaves: tuple[str, str], value: str) -> str:
    """A new entry behind the one before it, else behind the last of the table, else at the head of the table."""
    before, leaf = leaves
    own = [each for each in spans(text) if isinstance(each, Entry) and each.keys[:-1] == (table,)]
    entry = next((each for each in own if each.keys[-1] == before), own[-1] if own else None)
    new = f'{leaf} = "{value}"'
    if entry is None:
        return _in_empty(text, table, new)
    start = text[entry.key[0] : entry.leaf[0]]
    if entry.inline:
        return spliced(text, (entry.value[1], entry.value[1]), f", {start}{new}")
    indent = text[line_start(text, entry.key[0]) : entry.key[0]]
    return with_line(text, line_end(text, entry.value[1]), f"{indent}{start}{new}")


def _in_empty(text: str, table: str, new: str) -> str:
    """The first entry of a table, which may not be there at all."""
    for each in spans(text):
        if isinstance(each, Header) and each.keys == (table,):
            return with_line(text, line_end(text, each.span[1]), new)
        if isinstance(each, Entry) and each.keys == (table,):
            return spliced(text, (each.value[0] + 1, each.value[0] + 1), new)
    end = usual_end(text)
    whole = text if text.endswith("\n") else text + end
    return f"{whole}{end}[{table}]{end}{new}{end}"


def _without(text: str, entry: Entry) -> str:
    """An entry taken out: with its line where nothing else stands there, with its comma in braces."""
    if entry.inline:
        return _without_inline(text, entry)
    start, end = line_start(text, entry.key[0]), line_end(text, entry.value[1])
    rest = text[entry.value[1] : end].lstrip(" \t")
    if rest:
        return spliced(text, (entry.key[0], end - len(rest)), "")
    return spliced(text, (start, end + len(end_at(text, end))), "")


def _without_inline(text: str, entry: Entry) -> str:
    start, end = entry.key[0], entry.value[1]
    if after := re.compile(r"[ \t]*,[ \t]*").match(text, end):
        return spliced(text, (start, after.end()), "")
    before = re.search(r"[ \t]*,[ \t]*$", text[:start])
    return spliced(text, (before.start() if before else start, end), "")


def _entry(text: str, keys: Keys) -> Entry | None:
    return next((each for each in spans(text) if isinstance(each, Entry) and each.keys == keys), None)
