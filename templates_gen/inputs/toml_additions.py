"""A value put into a TOML document where it belongs: behind the remark that shows it, else beside its neighbours."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from templates_gen.inputs.toml_literal import key_literal, literal
from templates_gen.inputs.toml_order import Order
from templates_gen.inputs.toml_remarks import above, behind_header_remark, behind_remark
from templates_gen.inputs.toml_splices import end_at, line_end, line_start, spliced, usual_end, with_line
from templates_gen.inputs.toml_tree import ROOT, Head, Path, Place, Tree


class NoPlaceError(ValueError):
    """A text that a value cannot be put into."""


def added(text: str, path: Path, value: object, before: Sequence[str], order: Order) -> str:
    """The text with a `value` at `path`, behind the nearest of the keys that stand `before` it in its table."""
    tree, (*outer, key) = Tree(text), path
    table, leaf = tuple(outer), str(key)
    entry = f"{key_literal(leaf)} = {literal(value)}"
    if (holder := tree.place(table)) and text[holder.value[0]] == "{":
        return _in_braces(tree, holder, entry, before)
    if table == ROOT and isinstance(value, Mapping):
        return _section(tree, leaf, value, order)
    if (head := tree.head(table)) or table == ROOT:
        return _in_section(tree, head, leaf, entry, before)
    if dotted := [each for each in tree.inside(table) if each.path[:-1] == table]:
        return _dotted(text, dotted, entry, before)
    if any(each.path[: len(table)] == table for each in tree.heads) and len(table) == 1:
        return _section(tree, str(table[0]), {leaf: value}, order)
    return added(text, table, {leaf: value}, (), order)


def added_to_list(text: str, path: Path, row: object) -> str:
    """The text with a `row` more in a list, before the one that has its place now."""
    *outer, number = path
    tree = Tree(text)
    listed = tree.place(tuple(outer))
    if listed is None:
        return _listed(tree, tuple(outer), int(number), row)
    rows = [each for each in tree.places if each.holder == "list" and each.path[:-1] == tuple(outer)]
    return _row(text, listed, rows, int(number), literal(row))


def _row(text: str, listed: Place, rows: list[Place], number: int, new: str) -> str:
    if not rows:
        return spliced(text, (listed.value[0] + 1, listed.value[0] + 1), new)
    if number == 0:
        first = rows[0].value[0]
        lead = text[line_start(text, first) : first]
        gap = end_at(text, line_end(text, first)) + lead if not lead.strip() else " "
        return spliced(text, (first, first), f"{new},{gap}")
    end = rows[number - 1].value[1]
    comma = re.compile(r"[ \t]*,").match(text, end)
    stop = line_end(text, end)
    if re.fullmatch(r"[ \t]*,?[ \t]*(#.*)?", text[end:stop]):
        indent = re.match(r"[ \t]*", text[line_start(text, rows[number - 1].value[0]) :])
        text = with_line(text, stop, f"{indent[0] if indent else ''}{new},")
        return text if comma else spliced(text, (end, end), ",")
    return spliced(text, (comma.end(), comma.end()), f" {new},") if comma else spliced(text, (end, end), f", {new}")


def _in_braces(tree: Tree, holder: Place, entry: str, before: Sequence[str]) -> str:
    own = [each for each in tree.places if each.holder == "braces" and each.path[:-1] == holder.path]
    if not own:
        return spliced(tree.text, holder.value, f"{{{entry}}}")
    known = {each.path[-1]: each for each in own}
    near = next((known[key] for key in before if key in known), None)
    if near is None:
        return spliced(tree.text, (own[0].key[0], own[0].key[0]), f"{entry}, ")
    return spliced(tree.text, (near.value[1], near.value[1]), f", {entry}")


def _dotted(text: str, own: list[Place], entry: str, before: Sequence[str]) -> str:
    """Beside entries whose keys name the table too."""
    known = {each.path[-1]: each for each in own}
    near = next((known[key] for key in before if key in known), own[-1])
    start, indent = text[near.key[0] : near.leaf[0]], text[line_start(text, near.key[0]) : near.key[0]]
    return with_line(text, line_end(text, near.value[1]), f"{indent}{start}{entry}")


def _in_section(tree: Tree, head: Head | None, leaf: str, entry: str, before: Sequence[str]) -> str:
    text, path = tree.text, head.path if head else ROOT
    if remark := behind_remark(tree, head, leaf):
        return with_line(text, remark.at, f"{remark.indent}{entry}")
    own = [each for each in tree.places if each.holder == "line" and each.table == path]
    for key in before:
        near = next((each for each in reversed(own) if each.path[: len(path) + 1] == (*path, key)), None)
        if near:
            indent = text[line_start(text, near.key[0]) : near.key[0]]
            return with_line(text, line_end(text, near.value[1]), f"{indent}{entry}")
    if head:
        return with_line(text, line_end(text, head.span[1]), entry)
    return _at_top(tree, own, entry)


def _at_top(tree: Tree, own: list[Place], entry: str) -> str:
    """Before the first entry of the document, else before its first header, else at its end."""
    text = tree.text
    end = usual_end(text)
    if own:
        at = line_start(text, own[0].key[0])
        return spliced(text, (at, at), entry + end)
    if tree.heads:
        at = above(tree, tree.heads[0].span[0])
        return spliced(text, (at, at), f"{entry}{end}{end}")
    return f"{_ended(text)}{entry}{end}"


def _section(tree: Tree, name: str, values: Mapping[str, Any], order: Order) -> str:
    """A table with a header of its own."""
    text = tree.text
    end = usual_end(text)
    lines = [f"[{key_literal(name)}]", *(f"{key_literal(key)} = {literal(value)}" for key, value in values.items())]
    if (remark := behind_header_remark(tree, name)) is not None:
        return with_line(text, remark, end.join(lines))
    block = end.join(lines) + end
    later = next((head for head in tree.heads if order.later(head.path, name)), None)
    if later:
        at = above(tree, later.span[0])
        return spliced(text, (at, at), block + end)
    whole = _ended(text)
    return f"{whole}{end if whole.strip() else ''}{block}"


def _listed(tree: Tree, path: Path, number: int, row: object) -> str:
    """A row of a list whose rows have headers."""
    if not isinstance(row, Mapping):
        raise NoPlaceError
    text, end = tree.text, usual_end(tree.text)
    heads = [head for head in tree.heads if head.listed and head.path[:-1] == path]
    lines = [text[slice(*heads[0].span)], *(f"{key_literal(key)} = {literal(each)}" for key, each in row.items())]
    block = end.join(lines) + end
    if number < len(heads):
        at = above(tree, heads[number].span[0])
        return spliced(text, (at, at), block + end)
    inside = [each.value[1] for each in tree.inside((*path, number - 1))]
    inside += [head.span[1] for head in tree.heads if head.path[: len(path) + 1] == (*path, number - 1)]
    return with_line(text, line_end(text, max(inside)), f"{end}{block}".removesuffix(end))


def _ended(text: str) -> str:
    return text if not text or text.endswith("\n") else text + usual_end(text)
