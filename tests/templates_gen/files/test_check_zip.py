"""A zip of a made folder is read back as that folder; a zip that could hurt is refused with one sentence."""

from __future__ import annotations

import io
import os
import shutil
import stat
import tempfile
import zipfile
from contextlib import suppress
from pathlib import Path

import pytest
from click.testing import CliRunner
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from kits import font_metrics, plan_of

import templates_gen
from templates_gen.desk.making.zipped import write_zip
from templates_gen.disk import zip_limits
from templates_gen.disk.faults import FaultError
from templates_gen.disk.unzipped import unzipped
from templates_gen.files.generate import make
from templates_gen.inputs.range_file import load_range, write_range
from templates_gen.screen.cli import main


@pytest.fixture(scope="module")
def strips(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The strips of a kit, made once."""
    folder = tmp_path_factory.mktemp("made") / "strips"
    make(plan_of(), folder, font_metrics(), ("strip-near", "strip-far"))
    return folder


@pytest.fixture
def private(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Where private folders are made during the test; it must be empty afterwards."""
    place = tmp_path / "private"
    place.mkdir()
    monkeypatch.setattr(tempfile, "tempdir", str(place))
    return place


def said(*words: str) -> tuple[int, str, str]:
    """The exit code of a command, its output and its refusals."""
    result = CliRunner().invoke(main, list(words))
    assert result.exception is None or isinstance(result.exception, SystemExit)
    return result.exit_code, result.stdout, result.stderr


def test_a_zip_is_checked_as_its_folder(strips: Path, tmp_path: Path, private: Path) -> None:
    """The same lines as of the folder, each file called as in the zip; for programs too; nothing is left."""
    place = tmp_path / "made.zip"
    write_zip(strips, place)
    code, text, _ = said("check", str(place))
    assert (code, text.replace(str(place), str(strips))) == said("check", str(strips))[:2]
    assert templates_gen.check(place)[0].file == f"{place}/{templates_gen.check(strips)[0].file.rpartition('/')[2]}"
    assert list(private.iterdir()) == []


def test_a_zip_with_the_folder_in_it(strips: Path, tmp_path: Path) -> None:
    """Other programs pack the folder itself, and put files of their own beside it."""
    with zipfile.ZipFile(tmp_path / "made.ZIP", "w") as archive:
        archive.writestr("__MACOSX/._strips", b"x")
        archive.mkdir("strips")
        for path in strips.iterdir():
            archive.write(path, f"strips/{path.name}")
    assert said("check", str(tmp_path / "made.ZIP"))[0] == 0


def test_a_run_in_a_zip(tmp_path: Path) -> None:
    """The folders of the kits of a range are found in it."""
    write_range(tmp_path / "weir.toml")
    assert len(load_range(tmp_path / "weir.toml").kits) == 3
    out = tmp_path / "out"
    assert said("make", str(tmp_path / "weir.toml"), "-o", str(out), "--only", "strip-near.svg")[0] == 0
    write_zip(out, tmp_path / "weir.zip")
    code, text, _ = said("check", str(tmp_path / "weir.zip"))
    assert (code, text.count("right ")) == (0, 3)
    shutil.rmtree(out / "weir-frame-large")
    write_zip(out, tmp_path / "less.zip")
    code, text, _ = said("check", str(tmp_path / "less.zip"))
    assert (code, "weir-frame-large" in text) == (1, True)


def test_what_is_wrong_in_a_zip_is_said_with_code_1(strips: Path, tmp_path: Path) -> None:
    """A file that was changed, one that is missing, and one that the manifest lacks are found as in a folder."""
    folder = tmp_path / "strips"
    shutil.copytree(strips, folder)
    (folder / "strip-far.svg").unlink()
    text = (folder / "strip-near.svg").read_text()
    (folder / "strip-near.svg").write_text(text.replace("<path", "<path ", 1))
    write_zip(folder, tmp_path / "made.zip")
    code, output, _ = said("check", str(tmp_path / "made.zip"))
    assert code == 1
    assert output.count("WRONG") == 2
    assert "/templates-gen-" not in output


def archive_of(*entries: tuple[str, bytes], **changed: int) -> bytes:
    """A zip of these entries, each with other fields where `changed` says."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in entries:
            entry = zipfile.ZipInfo(name)
            entry.compress_type = zipfile.ZIP_DEFLATED
            for field, value in changed.items():
                setattr(entry, field, value)
            archive.writestr(entry, data)
    return out.getvalue()


def patched(data: bytes, central: int, local: int, value: bytes) -> bytes:
    """The same with a field of the first entry changed, in the list and before its data."""
    at = data.index(b"PK\x01\x02") + central
    data = data[:at] + value + data[at + len(value) :]
    return data[:local] + value + data[local + len(value) :]


_DEVICE, _LINK = (stat.S_IFCHR | 0o644) << 16, (stat.S_IFLNK | 0o777) << 16
GOOD = archive_of(("strip-near.svg", b"<svg/>" * 50))
BOMB = archive_of(("a.svg", bytes(2**24)))
ATTACKS: dict[str, tuple[bytes, str]] = {
    "not a zip": (b"x" * 5000, "is not a zip"),
    "empty": (b"", "is not a zip"),
    "an end alone": (b"PK\x05\x06", "is not a zip"),
    "cut off": (GOOD[:-10], "is not a zip"),
    "its middle is gone": (GOOD[:20] + GOOD[60:], "damaged"),
    "other bytes": (GOOD.replace(GOOD[50:60], b"\xff" * 10), "damaged"),
    "an upper folder": (archive_of(("../evil.svg", b"x")), "no name of a file inside a folder"),
    "an upper folder within": (archive_of(("a/../../evil.svg", b"x")), "no name of a file"),
    "an absolute path": (archive_of(("/evil.svg", b"x")), "no name of a file"),
    "a drive": (archive_of(("C:/evil.svg", b"x")), "no name of a file"),
    "backslashes": (archive_of(("..\\evil.svg", b"x")), "no name of a file"),
    "a device of Windows": (archive_of(("nul.svg", b"x")), "no name of a file"),
    "control characters": (archive_of(("a\x1b[31m.svg", b"x")), "no name of a file"),
    "an empty part": (archive_of(("a//b.svg", b"x")), "no name of a file"),
    "a point at the end": (archive_of(("a./b.svg", b"x")), "no name of a file"),
    "many folders": (archive_of(("/".join("abcdefgh"), b"x")), "no name of a file"),
    "a long name": (archive_of(("a" * 300 + ".svg", b"x")), "no name of a file"),
    "a link": (archive_of(("a.svg", b"/etc/passwd"), external_attr=_LINK, create_system=3), "a link or a device"),
    "a link of a folder": (archive_of(("a/", b""), external_attr=_LINK, create_system=3), "a link or a device"),
    "a device": (archive_of(("a.svg", b""), external_attr=_DEVICE, create_system=3), "a link or a device"),
    "encrypted": (patched(GOOD, 8, 6, b"\x01\x00"), "encrypted"),
    "unknown packing": (patched(GOOD, 10, 8, b"\x0c\x00"), "packed in a way"),
    "other capitals": (archive_of(("a.svg", b"x"), ("A.SVG", b"y")), "twice"),
    "a file as a folder": (archive_of(("a", b"x"), ("a/b.svg", b"y")), "twice"),
    "a bomb": (BOMB, "packed to less than 1/200"),
    "a larger bomb": (archive_of(("a.svg", bytes(2**24 + 1))), "larger than 16 MB"),
    "many bombs": (archive_of(*((f"{k}.svg", bytes(2**20)) for k in range(257))), "holds more than 256 MB"),
    "a bomb that lies": (patched(BOMB, 24, 22, (1000).to_bytes(4, "little")), "damaged"),
    "the large form": (GOOD[:-22] + b"PK\x06\x07" + bytes(16) + GOOD[-22:], "very large"),
    "a list that lies": (GOOD[:-10] + (2**31).to_bytes(4, "little") + GOOD[-6:], "more than 5000 files"),
    "other names": (GOOD.replace(b"strip-near", b"strip-nean", 1), "damaged"),
}  # fmt: skip


@pytest.mark.parametrize("name", ATTACKS)
def test_a_zip_that_could_hurt_is_refused_in_one_sentence(name: str, tmp_path: Path, private: Path) -> None:
    """Code 2, one line, no path of ours in it; nothing is written anywhere, and nothing is left."""
    data, sentence = ATTACKS[name]
    home = tmp_path / "home"
    home.mkdir()
    (home / "made.zip").write_bytes(data)
    code, text, refused = said("check", str(home / "made.zip"))
    assert (code, text) == (2, "")
    assert refused.count("\n") == 1
    assert sentence in refused
    assert "\x1b" not in refused
    assert str(private) not in refused
    assert sorted(path.name for path in tmp_path.rglob("*")) == ["home", "made.zip", "private"]


def test_two_entries_of_one_name(tmp_path: Path) -> None:
    """Which of them counts depends on who unpacks it; so neither does."""
    with pytest.warns(UserWarning, match="Duplicate name"):
        data = archive_of(("a.svg", b"x"), ("a.svg", b"y"))
    (tmp_path / "made.zip").write_bytes(data)
    assert "twice" in said("check", str(tmp_path / "made.zip"))[2]


def test_more_entries_than_any_run_has(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The number of files is bounded by the list itself, whatever its end says."""
    monkeypatch.setattr(zip_limits, "MOST_ENTRIES", 3)
    data = archive_of(*((f"{k}.svg", b"x") for k in range(4)))
    end = data.index(b"PK\x05\x06")
    for each in (data, data[: end + 8] + b"\x01\x00\x01\x00" + data[end + 12 :]):
        (tmp_path / "made.zip").write_bytes(each)
        assert "more than 3 files" in said("check", str(tmp_path / "made.zip"))[2]


def test_a_pipe_is_not_waited_for(tmp_path: Path) -> None:
    """What only looks like a zip by its name is refused at once."""
    os.mkfifo(tmp_path / "made.zip")
    (tmp_path / "folder.zip").mkdir()
    assert said("check", str(tmp_path / "made.zip"))[0] == 2
    assert said("check", str(tmp_path / "none.zip"))[0] == 2
    assert said("check", str(tmp_path / "folder.zip"))[0] == 1


def test_others_are_checked_all_the_same(strips: Path, tmp_path: Path) -> None:
    """One zip that cannot be read keeps nothing else from being checked."""
    (tmp_path / "bad.zip").write_bytes(ATTACKS["a bomb"][0])
    write_zip(strips, tmp_path / "good.zip")
    code, text, refused = said("check", str(tmp_path / "bad.zip"), str(tmp_path / "good.zip"))
    assert (code, text.count("right "), refused.count("\n")) == (2, 4, 1)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.lists(st.tuples(st.sampled_from("xdi"), st.integers(0, 299), st.integers(1, 255)), min_size=1, max_size=4))
def test_damage_anywhere_is_a_sentence_or_harmless(tmp_path: Path, changes: list[tuple[str, int, int]]) -> None:
    """Bytes changed, cut out or put in: it is unpacked inside its folder or refused, and never another error."""
    spoilt = bytearray(archive_of(("strip-near.svg", b"<svg/>" * 9), ("kit/strip-far.svg", b"<svg>x</svg>")))
    for kind, place, byte in changes:
        at = place % len(spoilt)
        if kind == "x":
            spoilt[at] ^= byte
        elif kind == "d":
            del spoilt[at]
        else:
            spoilt.insert(at, byte)
    (tmp_path / "made.zip").write_bytes(spoilt)
    before = sorted(tmp_path.rglob("*"))
    with suppress(FaultError), unzipped(tmp_path / "made.zip") as folder:
        assert all(path.resolve().is_relative_to(folder.resolve()) for path in folder.rglob("*"))
    assert sorted(tmp_path.rglob("*")) == before
