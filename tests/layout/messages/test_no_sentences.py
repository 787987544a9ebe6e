"""No module of the layout has a sentence of its own: what a person reads stands in the catalogue."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

LAYOUT = Path(__file__).resolve().parents[3] / "layout"
MODULES = {
    path.relative_to(LAYOUT).as_posix(): path
    for path in sorted(LAYOUT.rglob("*.py"))
    if path.relative_to(LAYOUT).parts[0] != "messages"
}
_WORDS = re.compile(r"[A-Za-z']{2,},? [A-Za-z']+,? [A-Za-z']{2,}")  # three words in a row are a phrase

ALLOWED: dict[str, int] = {}
"""Modules that still have phrases of their own, and how many; none may get more, and a count that falls is lowered."""


def phrases(source: str) -> Iterator[str]:
    """Every text of the code with three words in a row, docstrings left out; values of f-strings count as a gap."""
    tree = ast.parse(source)
    silent = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for joined in ast.walk(tree):
        if isinstance(joined, ast.JoinedStr):
            silent |= {id(part) for part in joined.values}
    for node in ast.walk(tree):
        if id(node) in silent:
            continue
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            text = node.value
        elif isinstance(node, ast.JoinedStr):
            parts = (part.value if isinstance(part, ast.Constant) else "{}" for part in node.values)
            text = "".join(map(str, parts))
        else:
            continue
        if _WORDS.search(text):
            yield text


def test_phrases_are_found() -> None:
    """In plain texts and around values, and not in docstrings, keys, examples or numbers with units."""
    assert list(phrases('say("needs a length, please")')) == ["needs a length, please"]
    assert list(phrases('f"{n} ends of the warp"')) == ["{} ends of the warp"]
    assert list(phrases('"""What comes out here."""\nx = \'given = "8 per in"\'\ny = f"{a} mm"')) == []


@pytest.mark.parametrize("name", MODULES)
def test_a_module_has_no_sentence_of_its_own(name: str) -> None:
    """But for those that are counted."""
    found = list(phrases(MODULES[name].read_text("utf-8")))
    assert len(found) == ALLOWED.get(name, 0), found


def test_only_modules_that_there_are_may_have_phrases() -> None:
    """A module that is gone is taken off the list."""
    assert set(ALLOWED) <= set(MODULES)
