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
from templates_gen.cli import main

README = Path(__file__).parents[1] / "README.md"
BLOCK = re.compile(r"^```console\n\$ (?P<command>.*)\n(?P<output>(?:.*\n)*?)```$", re.MULTILINE)


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


def test_readme_explains_every_key() -> None:
    """Whoever adds an input to the kit explains it in the README."""
    text = README.read_text(encoding="utf-8")
    keys = [spec.key for spec in INPUTS if "[]" not in spec.key]
    assert [key for key in keys if f"`{key}`" not in text] == []
