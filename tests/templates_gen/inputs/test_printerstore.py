"""Printers that are kept: what is stored is loaded, names mean the same on every system, bad files are one sentence."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.correction import Scale
from layout.drawing.printer import Printer
from layout.values.errors import FieldError, LayoutError
from templates_gen.disk.faults import FaultError
from templates_gen.inputs import printer_store
from templates_gen.inputs.printer_store import PrinterFileError, forget, load, names, store
from templates_gen.inputs.printer_values import printer_values, read_printer
from templates_gen.lettering.fonts import metrics

PRINTER = Printer("Office printer", Scale(0.9981, 1.0012, -0.0002), Scale(0.0002, 0.0003, 0.0001), "a4", "2026-03-01")
FILE = """version = 1
name = "office printer"
x = 0.9981
y = 1.0012
skew = -0.0002
within = {x = 0.0002, y = 0.0003, skew = 0.0001}
paper = "A4"
day = 2026-03-01
"""


@pytest.fixture(autouse=True)
def kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder of this test's printers; it is not there yet."""
    folder = tmp_path / "deep" / "printers"
    monkeypatch.setenv(printer_store.FOLDER, str(folder))
    return folder


def written(kept: Path, text: str, name: str = "office-printer.toml") -> Path:
    """A file of a printer that a person wrote."""
    kept.mkdir(parents=True, exist_ok=True)
    path = kept / name
    path.write_text(text, encoding="utf-8")
    return path


def test_what_is_stored_is_loaded(kept: Path) -> None:
    """The very same values, in a file of its own, and nothing else is left in the folder."""
    assert names() == ()
    place = store(PRINTER)
    assert load("Office printer") == PRINTER
    assert [path.name for path in kept.iterdir()] == [place.name] == ["office-printer.toml"]
    assert names() == ("Office printer",)


shares = st.floats(0.97, 1.03)
leans = st.floats(-0.03, 0.03)
close = st.floats(0, 0.029)


@given(scale=st.builds(Scale, shares, shares, leans), within=st.builds(Scale, close, close, close))
def test_any_scale_within_limits_is_kept(scale: Scale, within: Scale) -> None:
    """To a millionth; it is never said to be surer than it is."""
    store(Printer("Any", scale, within, "letter", "2026-12-31"))
    found = load("any")
    assert all(abs(is_now - was) <= 0.51e-6 for is_now, was in zip(found.scale, scale, strict=True))
    assert all(0 <= is_now - was <= 1.5e-6 for is_now, was in zip(found.within, within, strict=True))
    assert read_printer(printer_values(found), metrics()) == found


def test_capitals_and_signs_do_not_make_another_printer(kept: Path) -> None:
    """A name that differs in these alone is the same file, so that a folder is the same on every system."""
    store(PRINTER)
    store(Printer("OFFICE  printer", Scale(1.001, 1.0, 0.0), PRINTER.within, "letter", "2026-04-01"))
    assert names() == ("OFFICE  printer",)
    assert load("office PRINTER").paper == "letter"
    assert len(list(kept.iterdir())) == 1


def test_a_forgotten_printer_is_gone(kept: Path) -> None:
    """Its file too, even one that cannot be used."""
    store(PRINTER)
    written(kept, "x = nonsense", "broken.toml")
    assert names() == ("broken", "Office printer")
    assert forget("OFFICE printer") == kept / "office-printer.toml"
    assert forget("broken") == kept / "broken.toml"
    assert list(kept.iterdir()) == []
    with pytest.raises(FieldError, match=r"^NAME: needs a printer that was stored; there is none yet, got 'broken'"):
        forget("broken")


def test_a_name_that_is_near_another(kept: Path) -> None:
    """The one that was probably meant is named, and the line to type."""
    store(PRINTER)
    store(Printer("Kitchen", *list(printer_values_of(PRINTER))))
    said = r'did you mean Office printer\?\), got \'Ofice printer\'; for example --printer "Office printer"$'
    with pytest.raises(FieldError, match=said):
        load("Ofice printer")
    with pytest.raises(FieldError, match=r'stored \("Kitchen", "Office printer"\), got \'zzz\''):
        load("zzz")


def printer_values_of(printer: Printer) -> tuple[Scale, Scale, str, str]:
    """All of a printer but its name."""
    return printer.scale, printer.within, printer.paper, printer.day


@pytest.mark.parametrize(
    ("name", "needed"),
    [
        ("../../etc/passwd", "without / and"),
        ("a\\b", "without / and"),
        ("..", "without / and"),
        ("/", "without / and"),
        ("C:\\x", "without / and"),
        ("nul", "Windows keeps"),
        ("COM1.toml", "Windows keeps"),
        ("", "1 to 24 characters"),
        ("   ", "1 to 24 characters"),
        ("!!!", "letters or figures"),
        ("x" * 25, "1 to 24 characters"),
        ("x" * 1_000_000, "1 to 24 characters"),
        ("a\nb", "that can be seen"),
        ("a\x00b", "that can be seen"),
        ("a\x1b[31m", "that can be seen"),
        ("\u202ea", "that can be seen"),
        ("עברית", "left to right"),
        ("織機", "print font has"),
    ],
)
def test_a_name_that_no_file_can_have_is_refused(kept: Path, name: str, needed: str) -> None:
    """In one sentence that names the option; nothing is written or read."""
    for ask in (lambda: load(name), lambda: store(Printer(name, *printer_values_of(PRINTER)))):
        with pytest.raises(FieldError) as refused:
            ask()
        assert needed in str(refused.value)
        assert str(refused.value).startswith("--")
        assert "\n" not in str(refused.value)
        assert len(str(refused.value)) < 400
    assert not kept.exists()


def test_a_printer_that_is_further_off_is_not_kept(kept: Path) -> None:
    """Over 3 % it is no printer, but a print setting; NaN is no number."""
    for scale in (Scale(0.969, 1, 0), Scale(1, 1.031, 0), Scale(1, 1, 0.031), Scale(float("nan"), 1, 0)):
        with pytest.raises(FieldError, match="needs a number from"):
            store(Printer("Far off", scale, PRINTER.within, "a4", "2026-03-01"))
    assert not kept.exists()


def test_a_file_may_be_written_by_hand(kept: Path) -> None:
    """Its day without quotes, its paper in capitals, its name in small letters."""
    written(kept, FILE)
    assert load("Office Printer") == Printer("office printer", *printer_values_of(PRINTER))


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("version = 1", "version = 2", "version: needs to be 1"),
        ("version = 1\n", "", "version: needs to be 1"),
        ("x = 0.9981\n", "", "x: needs a number from 0.97 to 1.03, without quotes, got nothing"),
        ("x = 0.9981\n", 'x = "0.9981"\n', "x: needs a number from 0.97 to 1.03"),
        ("x = 0.9981\n", "x = true\n", "x: needs a number from 0.97 to 1.03"),
        ("x = 0.9981\n", "x = nan\n", "x: needs a number from 0.97 to 1.03"),
        ("x = 0.9981\n", f"x = 1{'0' * 400}\n", "x: needs a number from 0.97 to 1.03"),
        ("x = 0.9981\n", "X = 0.9981\nx = 0.9981\n", "X: needs to be a key of a printer file"),
        ("skew = -0.0002\n", "skew = 0.5\n", "skew: needs a number from -0.03 to 0.03"),
        ("y = 0.0003, ", "", "within.y: needs a number from 0 to 0.03"),
        ("y = 0.0003, ", "y = 0.0003, z = 1, ", "within.z: needs to be a key"),
        ("within = {x", "within = 1 # {x", "within: needs a table"),
        ('"A4"', '"a44"', "paper: needs "),
        ('paper = "A4"\n', "", "paper: needs the sheet that was measured"),
        ("2026-03-01", '"2026-02-30"', "day: needs the day of the measurement"),
        ("2026-03-01", "2026-03-01T10:00:00", "day: needs the day of the measurement"),
        ('"office printer"', '"other"', 'name: needs the name that its file "office-printer.toml"'),
        ('"office printer"', "7", "name: needs a name"),
        ('"office printer"', '"office printer', "is no printer file yet, line 2"),
        ("day =", "dya =", "dya: needs to be a key of a printer file (did you mean day?)"),
        ("version = 1", "#" * 200_000, "is larger than 200 kB"),
        ("version = 1", "a = " + "[" * 900 + "]" * 900, "is no printer file"),
    ],
)
def test_a_bad_file_is_one_sentence(kept: Path, old: str, new: str, said: str) -> None:
    """It names the file and the key; the name of the file still stands in the list."""
    assert old in FILE
    path = written(kept, FILE.replace(old, new))
    with pytest.raises(PrinterFileError) as refused:
        load("office printer")
    assert said in str(refused.value)
    assert str(refused.value).startswith(f"{path}")
    assert names() == ("office-printer",)


def test_what_is_no_file_is_one_sentence(kept: Path) -> None:
    """A folder, bytes that are no text, a link to nothing."""
    (kept / "office-printer.toml").mkdir(parents=True)
    written(kept, "", "empty.toml")
    (kept / "bytes.toml").write_bytes(b"\xff\xfe\x00")
    (kept / "link.toml").symlink_to(kept / "nothing")
    for name in ("office printer", "empty", "bytes", "link"):
        with pytest.raises(PrinterFileError, match=str(kept)):
            load(name)


def test_a_write_that_fails_leaves_what_was(kept: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The former profile stays, whole, and no half file beside it."""
    place = store(PRINTER)
    was = place.read_bytes()

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "")

    monkeypatch.setattr("templates_gen.disk.exchange.write_new", full)
    with pytest.raises(FaultError, match="full"):
        store(Printer("Office printer", Scale(1.01, 1, 0), *printer_values_of(PRINTER)[1:]))
    assert place.read_bytes() == was
    assert [path.name for path in kept.iterdir()] == [place.name]


def test_a_folder_that_cannot_be(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file where the folder should be is a sentence."""
    (tmp_path / "file").write_text("")
    monkeypatch.setenv(printer_store.FOLDER, str(tmp_path / "file" / "printers"))
    with pytest.raises(LayoutError, match="part of that path is a file"):
        store(PRINTER)
    with pytest.raises(LayoutError, match="could not read"):
        names()


@pytest.mark.skipif(os.name == "nt", reason="the XDG folders are those of free desktops")
def test_the_folder_is_the_one_of_the_system(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without the variable it lies where the XDG Base Directory Specification puts settings."""
    monkeypatch.delenv(printer_store.FOLDER)
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path))
    if (found := printer_store.folder()).is_relative_to(tmp_path):  # some systems have folders of their own
        assert found == tmp_path / "templates-gen" / "printers"
    assert found.parts[-2:] == ("templates-gen", "printers")
