"""The command `printers`: what is kept is listed, shown and forgotten, for people and for programs."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from commands import run
from printers import SLANTED, USUAL, printer_of

from templates_gen.inputs import printer_store


@pytest.fixture(autouse=True)
def kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder of this test's printers."""
    folder = tmp_path / "printers"
    monkeypatch.setenv(printer_store.FOLDER, str(folder))
    return folder


def test_without_any_it_says_how_to_begin() -> None:
    """No printer is no error."""
    done = run("printers")
    assert (done.exit_code, done.stderr) == (0, "")
    assert done.stdout == "No printer is stored yet. Measure one with printer-check, and store it under a name.\n"
    assert json.loads(run("printers", "--json").stdout)["printers"] == []


def test_each_is_a_line() -> None:
    """Its name, paper and day, and what 100 mm come out as, with how sure that is."""
    printer_store.store(USUAL)
    printer_store.store(printer_of(1.0, 1.0, 0.0, "attic"))
    printer_store.store(printer_of(1.0, 1.0, 0.004, "Zoe"))
    done = run("printers")
    assert done.exit_code == 0
    first, second, third = done.stdout.splitlines()
    assert first.split()[:3] == ["attic", "a4", "2026-03-01"]
    assert first.endswith("and do not lean, within 0.002")
    assert second.startswith("Office printer  a4  2026-03-01  100 mm across come out 99.810 mm long, within 0.003; ")
    assert second.endswith("100 mm up come out 100.120 mm, within 0.004, and lean 0.030 mm to the left, within 0.002")
    assert third.endswith("and lean 0.400 mm to the right, within 0.002")


def test_programs_get_the_factors(kept: Path) -> None:
    """All of them, the file, and what is wrong with one."""
    place = printer_store.store(SLANTED)
    (kept / "broken.toml").write_text("x = 1", encoding="utf-8")
    done = run("printers", "--json")
    assert done.exit_code == 2
    found = json.loads(done.stdout)
    assert found["folder"] == str(kept)
    broken, whole = found["printers"]
    assert broken["name"] == "broken"
    assert "version: needs to be 1" in broken["problem"]
    assert whole == {
        "name": "Office printer",
        "x": 0.9935,
        "y": 1.0061,
        "skew": 0.004,
        "within": {"x": 0.00003, "y": 0.00004, "skew": 0.00002},
        "paper": "a4",
        "day": "2026-03-01",
        "file": str(place),
        "problem": None,
    }
    assert json.loads(run("printers", "show", "office printer", "--json").stdout) == whole


def test_a_bad_file_hides_no_other(kept: Path) -> None:
    """The others are listed, and one sentence says which file is wrong; code 2."""
    printer_store.store(USUAL)
    (kept / "broken.toml").write_text("x = 1", encoding="utf-8")
    done = run("printers")
    assert done.exit_code == 2
    assert done.stdout.startswith("Office printer")
    assert len(done.stdout.splitlines()) == len(done.stderr.splitlines()) == 1
    assert done.stderr.startswith(str(kept / "broken.toml"))


def test_one_is_shown_and_forgotten(kept: Path) -> None:
    """With the line that draws for it."""
    place = printer_store.store(USUAL)
    shown = run("printers", "show", "OFFICE printer")
    assert shown.exit_code == 0
    assert "Office printer: measured on 2026-03-01, on a4." in shown.stdout
    assert 'templates-gen make --printer "Office printer"' in shown.stdout
    assert str(place) in shown.stdout
    gone = run("printers", "forget", "Office printer")
    assert (gone.exit_code, gone.stdout) == (0, f"Forgot Office printer; {place} is gone.\n")
    assert list(kept.iterdir()) == []


@pytest.mark.parametrize("what", ["show", "forget"])
def test_a_name_that_is_none_is_refused(what: str, kept: Path) -> None:
    """In one sentence, with the name that was probably meant; nothing is taken away."""
    printer_store.store(USUAL)
    done = run("printers", what, "Ofice printer")
    assert (done.exit_code, done.stdout) == (2, "")
    assert done.stderr == (
        'NAME: needs a printer that was stored ("Office printer") (did you mean Office printer?), got '
        "'Ofice printer'; for example \"Office printer\"\n"
    )
    for name in ("../x", "", "con", "a\nb"):
        wrong = run("printers", what, name)
        assert wrong.exit_code == 2
        assert wrong.stderr.startswith("NAME: needs ")
        assert len(wrong.stderr.splitlines()) == 1
    assert len(list(kept.iterdir())) == 1
