"""No module of the layout has a sentence of its own: what a person reads stands in the catalogue."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from layout.cutting.stock.stock_inputs import STOCK
from layout.drawing.pens import Pen
from layout.kit.fields import example_of
from layout.kit.inputs import INPUTS
from layout.kit.range_values import RANGE_INPUTS
from layout.messages.catalogue import Role

LAYOUT = Path(__file__).resolve().parents[3] / "layout"
MODULES = {
    path.relative_to(LAYOUT).as_posix(): path
    for path in sorted(LAYOUT.rglob("*.py"))
    if path.relative_to(LAYOUT).parts[0] != "messages"
}
_WORDS = re.compile(r"[A-Za-z']{2,},? [A-Za-z']+,? [A-Za-z']{2,}")  # three words in a row are a phrase


FILE_WORDS = {
    words
    for spec in (*INPUTS, *STOCK.inputs, *RANGE_INPUTS)
    for words in (spec.default, spec.word, *spec.choices, spec.example, spec.example.strip('"'), example_of(spec))
} | {str(pen.value) for pen in Pen}
"""What stands in a file of any language as it is: choices and examples, and the names of pens."""


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
    assert list(phrases('x = f"{n} ends of the warp"')) == ["{} ends of the warp"]
    assert list(phrases('"""What comes out here."""\nx = \'given = "8 per in"\'\ny = f"{a} mm"')) == []


@pytest.mark.parametrize("name", MODULES)
def test_a_module_has_no_sentence_of_its_own(name: str) -> None:
    """But for words of the kit and stock file."""
    found = [text for text in phrases(MODULES[name].read_text("utf-8")) if text not in FILE_WORDS]
    assert found == []


def test_every_role_is_asked_for() -> None:
    """No message is left that no code says; names of roles stand in the code of both packages."""
    root = LAYOUT.parent
    code = [path for folder in ("layout", "templates_gen") for path in (root / folder).rglob("*.py")]
    said = "\n".join(path.read_text("utf-8") for path in code if "messages" not in path.parts)
    said += (LAYOUT / "values" / "errors.py").read_text("utf-8")
    asked = {(kind, name) for kind, name in re.findall(r"\b([A-Z]\w+)\.([A-Z][A-Z_0-9]+)\b", said)}
    renamed = dict(re.findall(r"\b([A-Z]\w+) as ([A-Z]\w+)\b", said))
    kinds = [kind for kind in Role.__subclasses__() if kind.__module__.startswith("layout.messages.roles")]
    for kind in kinds:
        names = {kind.__name__, renamed.get(kind.__name__, kind.__name__)}
        unused = [role.name for role in kind if not any((name, role.name) in asked for name in names)]
        assert not unused, f"{kind.__name__}: {unused}"
