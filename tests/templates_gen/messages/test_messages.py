"""What the program says stands in one place: every role has a message, every message is used, no sentence elsewhere."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from importlib import import_module
from pathlib import Path

import pytest

from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.inputs import INPUTS
from layout.messages.catalogue import Plural, Role, fields_of
from layout.messages.english import ENGLISH as ON_PARTS
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.language import message

PROGRAM = Path(__file__).resolve().parents[3] / "templates_gen"
MESSAGES = PROGRAM / "messages"
AREAS = sorted(path.stem for path in (MESSAGES / "roles").glob("*.py") if path.stem != "__init__")
FOUND_BY_KEY = ("DeskLabel", "DeskHelp", "DeskChoice")
"""Words of the lines of the slip; that each is used is tested there (`desk/slip/test_lines.py`)."""
OTHERS = sorted(path for path in PROGRAM.rglob("*.py") if MESSAGES not in path.parents)
TEMPLATES = sorted(PROGRAM.rglob("*.html"))


def roles_of(area: str) -> list[Role]:
    """Every role of one module of roles."""
    module = import_module(f"templates_gen.messages.roles.{area}")
    classes = [each for each in vars(module).values() if isinstance(each, type) and issubclass(each, Role)]
    return [role for each in classes if each is not Role for role in each]


@pytest.mark.parametrize("area", AREAS)
def test_every_role_has_a_message_and_every_message_a_role(area: str) -> None:
    """The English of an area says each of its roles, and nothing else."""
    said = import_module(f"templates_gen.messages.english.{area}").MESSAGES
    assert set(said) == set(roles_of(area))
    assert set(said) <= set(ENGLISH.messages)


def test_every_value_of_a_message_is_a_plain_name() -> None:
    """A value is given by its name, which a caller can write."""
    assert all(name.isidentifier() for said in ENGLISH.messages.values() for name in fields_of(said))


def test_no_article_depends_on_a_value() -> None:
    """English asks for "a" or "an" by the word that follows, so a value never follows one."""
    said = [
        form for each in ENGLISH.messages.values() for form in (each.forms if isinstance(each, Plural) else (each,))
    ]
    assert [form for form in said if re.search(r"\b[Aa]n? \{", form)] == []


def test_no_role_plays_two_parts() -> None:
    """No two areas give one value to two roles, nor does the layout: one would hide the other."""
    values = [role.value for area in AREAS for role in roles_of(area)]
    assert len({*values, *(role.value for role in ON_PARTS.messages)}) == len(values) + len(ON_PARTS.messages)


def test_every_message_is_used() -> None:
    """Each role is asked for somewhere outside the messages, but for those that are found by the key of an input."""
    asked = {
        (node.value.id, node.attr)
        for path in OTHERS
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name)
    }
    roles = [role for area in AREAS for role in roles_of(area) if type(role).__name__ not in FOUND_BY_KEY]
    asked |= {found for path in TEMPLATES for found in re.findall(r"\b(\w+)\.([A-Z_0-9]+)\b", path.read_text("utf-8"))}
    assert [role for role in roles if (type(role).__name__, role.name) not in asked] == []


def calls(path: Path) -> Iterator[tuple[Role, ast.Call]]:
    """Every call in a module that is given a role by its name, and that role."""
    tree = ast.parse(path.read_text("utf-8"))
    imports = [node for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) and node.module]
    classes = {
        name.asname or name.name: getattr(import_module(node.module), name.name)
        for node in imports
        if node.module and node.module.startswith("templates_gen.messages.roles")
        for name in node.names
    }
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and node.args and _speaks(node.func):
            role = node.args[0]
            if isinstance(role, ast.Attribute) and isinstance(role.value, ast.Name) and role.value.id in classes:
                yield getattr(classes[role.value.id], role.attr), node


def _speaks(function: ast.expr) -> bool:
    return isinstance(function, ast.Name) and function.id in ("message", "finding", "said", "place")


@pytest.mark.parametrize("path", OTHERS, ids=lambda path: path.relative_to(PROGRAM).as_posix())
def test_every_call_gives_a_message_its_values(path: Path) -> None:
    """Where a role and its values are written out, the values are those of the message."""
    for role, call in calls(path):
        given = [word.arg for word in call.keywords]
        if None not in given:
            assert fields_of(ENGLISH.messages[role]) == set(given), f"line {call.lineno}: {role}"


def test_a_message_holds_its_values() -> None:
    """Any role is said by the one function, and what it says is in the catalogue."""
    from templates_gen.messages.roles.screen import Command

    assert message(Command.INTO, folder="willow") == "Into willow:"


WORDS = re.compile(r"[A-Za-z]{2,}[,;:]? [A-Za-z]{2,}")
OPTION = re.compile(r"--?[a-z-]+( \S+)?")  # an example of what to type is the same in every language
MARKUP = re.compile(r"</?[a-z]+|[A-Za-z-]+=\"[^\"]*\"?")  # elements and their attributes
ALLOWED: dict[str, set[str]] = {
    "desk/server/files.py": {"text/css; charset=utf-8", "text/javascript; charset=utf-8"},
    "desk/server/printed.py": {'inline; filename="{}"'},
    "desk/server/serving.py": {"400 Bad Request", "413 Content Too Large", "text/plain; charset=utf-8"},
    "desk/look/room_rows.py": {"every second"},
    "inputs/toml_spans.py": {"no TOML document at character {}"},
    "languages/catalogues.py": {"there is no catalogue of the language {}", "a catalogue says {} of its plural forms"},
    "readers/dxf_skeleton.py": {"first handle", "second handle", "third handle", "seed handle"},
    "readers/screen.py": {"Sheet,Open Sans,sans-serif"},
    "screen/amounts_report.py": {"every second"},
    "screen/orders_command.py": {'pip install "templates-gen[dask]"'},
    "writers/screen.py": {"Sheet,Open Sans,sans-serif"},
}
"""What looks like a sentence and is none, by module: what is read in files, or means a fault of the code."""
FILE_WORDS = {choice for spec in (*INPUTS, *STOCK.inputs) for choice in spec.choices}
"""What may be written in a kit or stock file, which is the same in every language."""


def literals(path: Path) -> Iterator[str]:
    """Every text in a module but docstrings, regular expressions and the help of commands; values in it are "{}"."""
    tree = ast.parse(path.read_text("utf-8"))
    skipped: set[int] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            skipped.add(id(node.value))
        if isinstance(node, ast.Call) and _is_of(node.func, "re", "click"):
            skipped |= {id(each) for each in ast.walk(node)}
        if isinstance(node, ast.keyword) and node.arg == "short_help":
            skipped.add(id(node.value))
        if isinstance(node, ast.JoinedStr):
            skipped |= {id(each) for each in node.values if isinstance(each, ast.Constant)}
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr) and id(node) not in skipped:
            yield "".join(str(each.value) if isinstance(each, ast.Constant) else "{}" for each in node.values)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in skipped:
            yield node.value


def _is_of(function: ast.expr, *modules: str) -> bool:
    owner = function.value if isinstance(function, ast.Attribute) else None
    return isinstance(owner, ast.Name) and owner.id in modules


@pytest.mark.parametrize("path", OTHERS, ids=lambda path: path.relative_to(PROGRAM).as_posix())
def test_no_sentence_stands_elsewhere(path: Path) -> None:
    """No module outside the messages holds words in a row that could reach a person."""
    name = path.relative_to(PROGRAM).as_posix()
    said = {text for text in literals(path) if WORDS.search(MARKUP.sub("", OPTION.sub("", text)))}
    found = said - ALLOWED.get(name, set()) - FILE_WORDS
    assert found == set()
