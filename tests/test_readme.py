"""The README's commands are run, and what it shows is what they print. RENEW=1 writes their output into it."""

from __future__ import annotations

import os
import re
import shlex
from collections.abc import Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner

from layout.kit.inputs import INPUTS
from templates_gen.screen.cli import main

README = Path(__file__).parents[1] / "README.md"
BLOCK = re.compile(r"^```console\n\$ (?P<command>.*)\n(?P<output>(?:.*\n)*?)```$", re.MULTILINE)
KEYS = re.compile(r"(<!-- keys -->\n)(.*?)(\n?<!-- end of keys -->)", re.DOTALL)


def outputs(text: str) -> Iterator[tuple[re.Match[str], str]]:
    """Every command of the README in order, with what it prints, in one empty folder."""
    for block in BLOCK.finditer(text):
        name, *words = shlex.split(block["command"])
        assert name == "templates-gen"
        result = CliRunner().invoke(main, words)
        assert result.exit_code == 0, result.output
        yield block, result.stdout


def test_readme_shows_real_output(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each command of the README prints exactly what stands under it."""
    text = README.read_text(encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    runs = list(outputs(text))
    assert {shlex.split(block["command"])[1] for block, _ in runs} == set(main.commands)
    if os.environ.get("RENEW"):
        for block, printed in reversed(runs):
            shown = f"```console\n$ {block['command']}\n{printed}```"
            text = text[: block.start()] + shown + text[block.end() :]
        README.write_text(text, encoding="utf-8")
    assert [block["output"] for block in BLOCK.finditer(text)] == [printed for _, printed in runs]


def key_rows() -> Iterator[str]:
    """The README's table of keys, row by row, from the inputs' own words."""
    yield from ("| key | what it says | for example |", "|---|---|---|")
    for spec in INPUTS:
        if spec.key.count("[]") <= 1 and "threads[]" not in spec.key:
            left_out = f"; left out: `{spec.default}`" if isinstance(spec.default, str) else ""
            choices = " or ".join(f"`{choice}`" for choice in spec.choices)
            said = f"{spec.help.rstrip('.')}: {choices}" if choices and spec.kind == "choice" else spec.help.rstrip(".")
            yield f"| `{spec.key}` | {said}{left_out} | `{spec.example}` |"


def test_readme_explains_every_key() -> None:
    """The table of keys is what the inputs say of themselves; those of one thread of several are those of a yarn."""
    text = README.read_text(encoding="utf-8")
    table = "\n".join(key_rows())
    if os.environ.get("RENEW"):
        text = KEYS.sub(lambda found: f"{found[1]}{table}{found[3]}", text)
        README.write_text(text, encoding="utf-8")
    found = KEYS.search(text)
    assert found is not None
    assert found[2] == table
