"""Kit files on disk: opened, parsed, refused in one sentence, and started from the built-in demo."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tomllib
from fractions import Fraction
from importlib import resources
from pathlib import Path

import pytest

from layout.kit.fields import read_field
from layout.kit.inputs import BY_KEY, INPUTS, Input
from layout.sett.sett import take_sett
from layout.values.errors import FieldErrors, LayoutError
from templates_gen.inputs.kit_file import KitFileError, demo, load, write_starter
from templates_gen.inputs.toml_file import LARGEST
from templates_gen.lettering.fonts import metrics

NOBODY = 65534


def starter_text() -> str:
    """The demo kit as it stands in the package."""
    return resources.files("templates_gen").joinpath("data/demo.toml").read_text(encoding="utf-8")


def refusal(path: Path | str) -> str:
    """The one sentence with which `path` is refused as a kit file."""
    with pytest.raises(KitFileError) as caught:
        load(path)
    sentence = str(caught.value)
    assert all(line.isprintable() for line in sentence.split("\n"))
    assert isinstance(caught.value, LayoutError)
    return sentence


def as_somebody_else(folder: Path, call: str) -> str:
    """What `kitfile.<call>` refuses with, run in `folder` by a user who is not root."""
    code = f"""
import os
from templates_gen.inputs import kit_file as kitfile
kitfile.demo()  # all that has to be read of the package, which may lie where only root gets to
os.chdir({str(folder)!r})
if os.geteuid() == 0:
    os.setgroups([]); os.setgid({NOBODY}); os.setuid({NOBODY})
try:
    kitfile.{call}
except kitfile.KitFileError as error:
    print(error)
"""
    environment = os.environ | {"PYTHONPATH": os.pathsep.join(path for path in sys.path if path)}
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, env=environment)
    return done.stdout.strip()


def test_a_starter_is_the_demo_kit(tmp_path: Path) -> None:
    """What `write_starter` writes is a kit file that says the demo kit, byte for byte as packed."""
    path = tmp_path / "my-kit.toml"
    write_starter(path)
    assert path.read_bytes() == starter_text().encode()
    assert load(path) == load(str(path)) == demo()


def test_the_demo_kit_is_a_plain_one() -> None:
    """Worked by hand: 13 in 5 cm and 27 on 10 cm are 2.7 ends per cm, taken at 2.5, 5 winds to 4 cm."""
    kit = demo()
    sett = take_sett(kit.sett)
    assert (sett.low * 10, sett.per_mm * 10) == (Fraction(27, 10), Fraction(5, 2))
    assert (sett.unit.mm, sett.winds_per_unit) == (40, 5)
    assert (kit.name, kit.paper.name) == ("Willow frame, small", "common")


@pytest.mark.parametrize("spec", [spec for spec in INPUTS if "[]" not in spec.key], ids=lambda spec: spec.key)
def test_the_starter_shows_every_key(spec: Input) -> None:
    """Each key stands in its own table, live or behind a #, and what stands there would be taken."""
    table, *leaves = spec.key.split(".") if "." in spec.key else ("", spec.key)
    text = starter_text()
    part = text.split(f"\n[{table}]")[1].split("\n[")[0] if table else text.split("\n[")[0]
    line = re.search(rf"^(?:# )?{leaves[0]} = (?:\[\n(?:.*\n)*?\]|.*)", part, re.MULTILINE)
    assert line is not None
    value = tomllib.loads(line[0].removeprefix("# "))
    for leaf in leaves:
        value = value[leaf]
    if spec.kind != "tables":
        read_field(BY_KEY[spec.key], value, spec.key, metrics())


def test_the_starter_suits_narrow_editors() -> None:
    """No line is wider than 108 characters, none has a tab or a blank at its end."""
    lines = starter_text().split("\n")
    assert max(map(len, lines)) <= 108
    assert not any("\t" in line or line != line.rstrip() for line in lines)


def test_a_starter_never_replaces_what_is_there(tmp_path: Path) -> None:
    """A file, a folder or a dangling link in the way stays as it is."""
    taken = tmp_path / "taken.toml"
    taken.write_text("mine")
    link = tmp_path / "link.toml"
    link.symlink_to(tmp_path / "nowhere.toml")
    for path in (taken, tmp_path, link):
        with pytest.raises(KitFileError, match="already exists and stays as it is"):
            write_starter(path)
    assert taken.read_text() == "mine"
    assert not (tmp_path / "nowhere.toml").exists()


def test_a_starter_needs_its_folder(tmp_path: Path) -> None:
    """No folder is made on the way."""
    with pytest.raises(KitFileError, match="there is no such file or folder"):
        write_starter(tmp_path / "no" / "kit.toml")
    (tmp_path / "file").touch()
    with pytest.raises(KitFileError, match="a part of that path is a file"):
        write_starter(tmp_path / "file" / "kit.toml")


def test_a_starter_that_cannot_be_finished_is_not_left_half_written(tmp_path: Path) -> None:
    """Where writing fails (here at a limit on file sizes) nothing stays behind."""
    code = f"""
import resource
from templates_gen.inputs import kit_file as kitfile
resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100))
try:
    kitfile.write_starter({str(tmp_path / "kit.toml")!r})
except kitfile.KitFileError as error:
    print(error)
"""
    environment = os.environ | {"PYTHONPATH": os.pathsep.join(path for path in sys.path if path)}
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, env=environment)
    assert "cannot be written: the file would be larger than this system allows" in done.stdout
    assert list(tmp_path.iterdir()) == []


def test_a_starter_needs_permission(tmp_path: Path) -> None:
    """In a folder that may only be read the sentence says so."""
    tmp_path.chmod(0o555)
    said = as_somebody_else(tmp_path, "write_starter('kit.toml')")
    tmp_path.chmod(0o755)
    assert said == "kit.toml cannot be written: there is no permission to write it"


def test_a_file_that_may_not_be_read_is_refused(tmp_path: Path) -> None:
    """The sentence names the file and the want of permission."""
    (tmp_path / "kit.toml").write_text(starter_text())
    (tmp_path / "kit.toml").chmod(0)
    tmp_path.chmod(0o755)
    said = as_somebody_else(tmp_path, "load('kit.toml')")
    assert said == "kit.toml cannot be read: there is no permission to read it"


def test_what_is_no_readable_file_is_refused(tmp_path: Path) -> None:
    """Nothing there, a folder, a name that cannot be: one sentence that names it."""
    none = tmp_path / "none.toml"
    assert refusal(none) == f"{none} cannot be read: there is no such file or folder"
    assert refusal(tmp_path).endswith("it is a folder, not a file")
    assert refusal(tmp_path / ("x" * 300)).endswith("the name is too long")
    assert (
        refusal("a\x00b.toml") == r"a\x00b.toml cannot be read: the name holds a character that no file name can hold"
    )
    assert refusal("no\x1b[2J.toml").startswith(r"no\x1b[2J.toml cannot be read")


@pytest.mark.parametrize("data", [b'version = 1\nname = "Zo\xeb"', b"\n\xff\xfev\x00", b"#\n\xc3"])
def test_a_file_in_another_encoding_is_refused(tmp_path: Path, data: bytes) -> None:
    """Text that is not UTF-8 is never guessed at; the line is named."""
    path = tmp_path / "kit.toml"
    path.write_bytes(data)
    assert refusal(path) == f"{path} is not UTF-8 text (line 2); save it as UTF-8 in a plain text editor"


def test_a_byte_order_mark_does_not_matter(tmp_path: Path) -> None:
    """Some editors begin a UTF-8 file with one, and end lines in their own way."""
    path = tmp_path / "kit.toml"
    path.write_bytes(b"\xef\xbb\xbf" + starter_text().replace("\n", "\r\n").encode())
    assert load(path) == demo()


def test_a_file_beyond_all_measure_is_refused(tmp_path: Path) -> None:
    """Too large, too deep, or a number without end: one sentence, at once."""
    path = tmp_path / "kit.toml"
    path.write_bytes(b"#" * (LARGEST + 1))
    assert refusal(path).endswith("is larger than 200 kB, which no kit file is")
    path.write_text("x = " + "[\n" * 90_000)
    assert refusal(path).endswith("far too long, or too many nested brackets")
    for text in ("x = " + "1" * 100_000, "a." * 200 + "a = 1"):
        path.write_text("\n" + text)
        assert refusal(path).endswith(
            "line 2 has more than 2,000 characters or 100 points; write long lists on several lines"
        )
    path.write_text("version = 0x" + "f" * 1_900)
    with pytest.raises(FieldErrors, match="version: needs 1, the only version there is"):
        load(path)


def test_a_file_of_the_largest_size_is_still_read(tmp_path: Path) -> None:
    """The limit itself is no refusal."""
    path = tmp_path / "kit.toml"
    text = starter_text().encode()
    path.write_bytes(text + b"#" * (LARGEST - len(text)))
    assert load(path) == demo()


@pytest.mark.parametrize("name", ["Zoë", "Łukasz", "Ольга"])
def test_names_in_the_print_font_are_taken(tmp_path: Path, name: str) -> None:
    """The real print font carries them."""
    path = tmp_path / "kit.toml"
    path.write_text(starter_text().replace("Willow frame, small", name), encoding="utf-8")
    assert load(path).name == name


@pytest.mark.parametrize("name", ["漢字", "שרה", "سارة", "☃", "👋", "x\u0301"])
def test_names_outside_the_print_font_are_refused(tmp_path: Path, name: str) -> None:
    """They would come out as boxes; the character is named by its code point."""
    path = tmp_path / "kit.toml"
    path.write_text(starter_text().replace("Willow frame, small", name), encoding="utf-8")
    with pytest.raises(FieldErrors, match=r"^name: needs .*U\+[0-9A-F]{4}"):
        load(path)
