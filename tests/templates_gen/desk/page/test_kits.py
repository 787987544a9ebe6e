"""Kits at the desk: kept with their remarks, copied, compared, made, and asked about where a file changed elsewhere."""

from __future__ import annotations

import shutil
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from commands import run
from desk_browser import Person

from templates_gen.data import text_of

REMARK = "# a remark of mine, which stays"


@pytest.fixture
def folder(kits: Path) -> Iterator[Path]:
    """The folder of the desk with two kits in it, and nothing else before or after."""
    _empty(kits)
    starter = text_of("demo.toml")
    (kits / "willow.toml").write_text(f"{REMARK}\n{starter}", "utf-8")
    other = starter.replace("Willow frame, small", "Heron frame").replace(
        'outer_width = "40 cm"', 'outer_width = "16 in"'
    )
    (kits / "heron.toml").write_text(other, "utf-8")
    yield kits
    _empty(kits)


def _empty(folder: Path) -> None:
    for each in folder.iterdir():
        shutil.rmtree(each) if each.is_dir() else each.unlink()


def opened(person: Person, name: str) -> Person:
    """Opens a kit of the table by its name."""
    person.open("kits")
    button = next(each for each in person.all("button.link") if each.text == name)
    button.click()
    person.until(lambda: "/?k=" in person.driver.current_url and name in person.text(".head h1"))
    return person.ready()


def test_a_kept_kit_has_its_remarks_and_the_new_value(person: Person, folder: Path) -> None:
    """Only what was changed changes in the file, and opened again it is on the slip."""
    opened(person, "Willow frame, small")
    before = (folder / "willow.toml").read_text("utf-8")
    person.type("frame.outer_width", "42 cm")
    person.click(".lnk-keep")
    person.until(lambda: "42 cm" in (folder / "willow.toml").read_text("utf-8"))
    after = (folder / "willow.toml").read_text("utf-8")
    assert after == before.replace('outer_width = "40 cm"', 'outer_width = "42 cm"')
    assert REMARK in after
    person.ready()
    assert "willow.toml" in person.text(".file")
    assert opened(person, "Willow frame, small").value("frame.outer_width") == "42 cm"
    assert person.complaints() == []


@pytest.mark.parametrize(("how", "kept"), [("mine", "43 cm"), ("theirs", "38 cm"), ("new", "38 cm")])
def test_a_file_that_changed_elsewhere_is_asked_about(person: Person, folder: Path, how: str, kept: str) -> None:
    """Nothing is written over in silence: mine, theirs, or both."""
    opened(person, "Willow frame, small")
    person.type("frame.outer_width", "43 cm")
    file = folder / "willow.toml"
    file.write_text(file.read_text("utf-8").replace('"40 cm"', '"38 cm"'), "utf-8")
    person.click(".lnk-keep")
    person.until(lambda: person.all('button[name="how"]'))
    person.click(f'button[value="{how}"]')
    person.until(lambda: person.all("#slip"))
    person.ready()
    assert f'outer_width = "{kept}"' in file.read_text("utf-8")
    assert person.value("frame.outer_width") == ("38 cm" if how == "theirs" else "43 cm")
    assert len(list(folder.glob("*.toml"))) == (3 if how == "new" else 2)


def test_a_copy_opens_with_a_name_of_its_own(person: Person, folder: Path) -> None:
    """The copy leaves the kit that it is of alone, and is kept as a file of its own."""
    person.open("kits")
    person.click('[aria-label="Copy Heron frame"]')
    person.until(lambda: person.all("#slip"))
    person.ready()
    name = person.value("name")
    assert "Heron frame" in name
    assert name != "Heron frame"
    person.type("name", "Heron frame, tall")
    person.type("frame.outer_height", "60 cm")
    person.click(".lnk-keep")
    person.until(lambda: len(list(folder.glob("*.toml"))) == 3)
    assert "60 cm" not in (folder / "heron.toml").read_text("utf-8")


def test_two_kits_side_by_side(person: Person, folder: Path) -> None:
    """What differs stands first; what is alike is folded."""
    person.open("kits")
    compare = person.find("#compare")
    person.until(lambda: not compare.is_enabled())
    for name in ("Heron frame", "Willow frame, small"):
        person.click(f'[aria-label="Compare {name}"]')
    person.until(compare.is_enabled)
    compare.click()
    person.until(lambda: person.all("#compared"))
    rows = [each.text for each in person.all("#compared > .tw tbody tr")]
    assert any("16 in" in row and "40 cm" in row for row in rows)
    assert len(rows) < 8
    assert person.complaints() == []


def test_everything_is_made_saved_and_found_right(person: Person, folder: Path, downloads: Path) -> None:
    """Progress, the line of proof, a zip that `check` finds right; a change afterwards is said."""
    opened(person, "Willow frame, small")
    person.click('button[value="strips"]')
    person.until(lambda: person.all(".proof"), "nothing was proven")
    assert "read back" in person.text(".proof")
    for old in downloads.glob("*.zip"):
        old.unlink()
    person.click(".made .go")
    person.until(lambda: list(downloads.glob("*.zip")))
    (saved,) = downloads.glob("*.zip")
    with zipfile.ZipFile(saved) as archive:
        assert archive.testzip() is None
        assert any(name.endswith("strip-near.pdf") for name in archive.namelist())
    said = run("check", saved)
    assert said.exit_code == 0, said.output
    person.type("weaving.height", "30 cm")
    person.sees("#away", "changed after")
    assert person.all(".made .go"), "the zip is kept"
    assert person.complaints() == []


@pytest.mark.slow
def test_all_kits_are_made_into_one_zip(person: Person, folder: Path) -> None:
    """The page says how far it is by itself, until the zip is there."""
    (folder / "heron.toml").unlink()
    person.open("kits").ready()
    person.click('form[action="/make-all"] button')
    person.until(lambda: person.all("main .proof") or person.all("main [data-job]"), "making never began")
    person.until(lambda: person.all("main .proof"), "nothing was proven")
    assert str(person.find("main .made .go").get_attribute("href")).startswith(person.home)


def test_the_example_is_never_made_unawares(person: Person) -> None:
    """The first time it stops and lists the lines; they are links; then it is right as it is."""
    person.type("frame.outer_width", "41 cm")
    person.click('button[value="strips"]')
    person.until(lambda: person.all(".asked"))
    names = [each.text for each in person.all(".asked li")]
    assert "Kit name" in names
    assert "Whole frame, side to side" not in names
    person.click(".asked li a")
    assert person.script("return document.activeElement.name") == "name"
    person.click(".asked .btn")
    person.until(lambda: person.all(".proof"), "nothing was proven")


def test_a_line_that_cannot_be_read_comes_first(person: Person) -> None:
    """Files cannot be made; the button says which line, and goes there."""
    person.type("frame.outer_width", "40 c")
    person.sees("#away .go", "Whole frame, side to side")
    person.click("#away .go")
    assert person.script("return document.activeElement.name") == "frame.outer_width"
