"""The commands on a kit in another language: its sheets speak it, the screen stays English, and `check` agrees."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest
from catalogues import LANGUAGES
from commands import run
from pypdf import PdfReader

import templates_gen

PROGRAM = Path(templates_gen.__file__).parent
PRINTED = ("--only", "kit", "--only", "winding", "--only", "wrap-gauge-cut", "--only", "job.pdf")


def kit_file(folder: Path, language: str) -> Path:
    """A starter kit that asks for a language."""
    path = folder / f"{language}.toml"
    assert run("new", path).exit_code == 0
    path.write_text(path.read_text("utf-8").replace('# language = "en"', f'language = "{language}"'), "utf-8")
    return path


@pytest.mark.parametrize("language", LANGUAGES)
def test_make_speaks_the_language_of_the_kit(language: str, tmp_path: Path) -> None:
    """Made, read back by `check`, and made a second time without a change."""
    kit, out = kit_file(tmp_path, language), tmp_path / "out"
    made = run("make", kit, "-o", out, *PRINTED)
    assert made.exit_code == 0
    assert PdfReader(out / "kit.pdf").root_object["/Lang"] == language
    words = " ".join(page.extract_text() for page in PdfReader(out / "kit.pdf").pages)
    assert "Winding" not in words
    assert run("check", out).exit_code == 0
    assert run("check", out, "--kit", kit).exit_code == 0
    again = run("make", kit, "-o", out, *PRINTED)
    assert "0 new, 0 changed" in again.stdout


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_screen_stays_english(language: str, tmp_path: Path) -> None:
    """Numbers, notes and warnings are those of the same kit in English."""
    assert run("plan", kit_file(tmp_path, language)).stdout == run("plan", kit_file(tmp_path, "en")).stdout


def test_a_kit_is_planned_with_its_words_alone() -> None:
    """The program asks `kept` for plans, which knows the language of the kit; nothing else calls the core for one."""
    found = {
        path.relative_to(PROGRAM).as_posix()
        for path in PROGRAM.rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.ImportFrom) and node.module == "layout.plan"
        if any(each.name == "plan" for each in node.names)
    }
    assert found == {"files/kept.py"}
