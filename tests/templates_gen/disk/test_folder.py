"""The exchange of old files for new ones: in order, all at once, or not at all."""

from __future__ import annotations

import errno
from collections.abc import Callable
from pathlib import Path

import pytest

from templates_gen.disk.exchange import Exchange
from templates_gen.disk.faults import FaultError
from templates_gen.disk.run_folder import RunFolder
from templates_gen.files.manifest import MANIFEST

FILES = ("one.pdf", "two.svg", MANIFEST)


def there(folder: Path) -> dict[str, bytes | None]:
    """Everything in a folder: each file's bytes, None for a folder."""
    return {path.name: path.read_bytes() if path.is_file() else None for path in folder.iterdir()}


def exchange(folder: Path) -> None:
    """Both files and the manifest, new."""
    with Exchange(folder, MANIFEST) as moving:
        for name in FILES:
            assert moving.write(name, f"new {name}".encode()) == f"new {name}".encode()
        moving.settle()


NEW = {name: f"new {name}".encode() for name in FILES}


@pytest.fixture
def old(tmp_path: Path) -> Path:
    """A folder with all files in it, and one of someone else."""
    for name in (*FILES, "other.txt"):
        (tmp_path / name).write_bytes(f"old {name}".encode())
    return tmp_path


def test_new_files_take_the_place_of_old_ones(old: Path) -> None:
    """Afterwards the new files stand there, others are untouched, nothing temporary is left."""
    exchange(old)
    assert there(old) == NEW | {"other.txt": b"old other.txt"}


def test_folders_are_made_as_deep_as_needed(tmp_path: Path) -> None:
    """A folder that is not there is made, with those above it."""
    exchange(tmp_path / "a" / "b" / ".." / "c")
    assert there(tmp_path / "a" / "c") == NEW


def test_nothing_stands_there_before_it_is_settled(old: Path) -> None:
    """Until the end the old files are in place; without an end they stay, and the new ones are gone."""
    before = there(old)
    with Exchange(old, MANIFEST) as moving:
        moving.write("one.pdf", b"new")
        assert {name: there(old)[name] for name in before} == before
    assert there(old) == before


def test_made_folders_are_taken_away_again(tmp_path: Path) -> None:
    """Folders made for files that never came are gone; one in which something else appeared stays."""
    with Exchange(tmp_path / "a" / "b" / "c", MANIFEST) as moving:
        moving.write("one.pdf", b"new")
        (tmp_path / "a" / "mine.txt").write_bytes(b"mine")
    assert there(tmp_path) == {"a": None}
    assert there(tmp_path / "a") == {"mine.txt": b"mine"}


@pytest.fixture
def moves(monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, str]]:
    """Every move that is made, as names."""
    seen = []
    right = Path.replace

    def replace(path: Path, target: Path) -> Path:
        seen.append((path.name, Path(target).name))
        return right(path, target)

    monkeypatch.setattr(Path, "replace", replace)
    return seen


def test_the_manifest_goes_first_and_comes_last(old: Path, moves: list[tuple[str, str]]) -> None:
    """Whoever looks in between finds a folder without a manifest, which says that it is incomplete."""
    exchange(old)
    assert moves.pop(0)[1] == "journal.json"  # it says what is going to be moved
    assert moves[0][0] == MANIFEST
    assert moves[-1][1] == MANIFEST
    assert [move for move in moves if MANIFEST in move] == [moves[0], moves[-1]]


def fails_at(patch: pytest.MonkeyPatch, when: Callable[[Path, Path], bool], error: BaseException) -> list[Path]:
    """From now on the first move for which `when` holds raises `error`."""
    right, failed = Path.replace, list[Path]()

    def replace(path: Path, target: Path) -> Path:
        if not failed and when(path, target):
            failed.append(path)
            raise error
        return right(path, target)

    patch.setattr(Path, "replace", replace)
    return failed


@pytest.mark.parametrize("name", FILES)
@pytest.mark.parametrize("stage", ["out of its place", "into its place"])
@pytest.mark.parametrize(
    "error", [PermissionError(errno.EACCES, "open"), OSError(errno.EBUSY, "busy"), KeyboardInterrupt()], ids=repr
)
def test_a_file_that_is_open_elsewhere(
    name: str, stage: str, error: BaseException, old: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whichever file cannot be moved, at whichever step: every old file is back, every new one gone."""
    before = there(old)

    def when(path: Path, target: Path) -> bool:
        return (path if stage.startswith("out") else Path(target)) == old / name

    failed = fails_at(monkeypatch, when, error)
    with pytest.raises(FaultError if isinstance(error, OSError) else KeyboardInterrupt) as caught:
        exchange(old)
    assert failed
    assert there(old) == before
    if isinstance(error, OSError):
        assert f"could not replace {old / name}: " in str(caught.value)
        assert str(caught.value).endswith("; nothing was changed there")


@pytest.mark.parametrize("name", FILES)
def test_where_nothing_was_nothing_stays(name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In an empty folder a move that fails leaves it empty; one that was made is gone."""
    folder = tmp_path / "new"
    fails_at(monkeypatch, lambda _, target: target.name == name, PermissionError(errno.EPERM, "no"))
    with pytest.raises(FaultError):
        exchange(folder)
    assert there(tmp_path) == {}


def test_what_cannot_be_put_back_is_told(old: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """If a file can be moved neither on nor back, the sentence says where it lies, and all others are back."""
    right = Path.replace

    def replace(path: Path, target: Path) -> Path:
        if Path(target) == old / "two.svg":
            raise PermissionError(errno.EACCES, "open")
        return right(path, target)

    monkeypatch.setattr(Path, "replace", replace)
    with pytest.raises(FaultError) as caught:
        exchange(old)
    (run,) = RunFolder.all_in(old)
    lies = run.before("two.svg")
    assert str(caught.value).endswith(f"; what was there is now in {lies}; the next run into this folder puts it back")
    assert there(old) == {
        "one.pdf": b"old one.pdf",
        run.path.name: None,
        MANIFEST: b"old manifest.json",
        "other.txt": b"old other.txt",
    }
    assert lies.read_bytes() == b"old two.svg"
    monkeypatch.undo()
    exchange(old)
    assert there(old) == NEW | {"other.txt": b"old other.txt"}


def test_an_old_file_that_cannot_be_deleted(old: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The new files are in place even if an old one, already out of the way, cannot be taken off the disk."""
    right = Path.unlink

    def unlink(path: Path, missing_ok: bool = False) -> None:
        if path.parent.name == "before" and path.name == "one.pdf":
            raise PermissionError(errno.EACCES, "open")
        right(path, missing_ok)

    monkeypatch.setattr(Path, "unlink", unlink)
    exchange(old)
    assert {name: there(old)[name] for name in FILES} == NEW


@pytest.mark.parametrize("name", FILES)
def test_a_folder_in_the_way_of_a_file(name: str, old: Path) -> None:
    """A folder where a file should go is left alone, with all that is in it and around it."""
    (old / name).unlink()
    (old / name).mkdir()
    (old / name / "mine.txt").write_bytes(b"mine")
    before = there(old)
    with pytest.raises(FaultError, match="a folder of that name is in the way"):
        exchange(old)
    assert there(old) == before
    assert (old / name / "mine.txt").read_bytes() == b"mine"


@pytest.mark.parametrize(
    ("where", "reason"),
    [("file", "a file of that name"), ("file/below", "file: a file of that name"), ("x" * 300, "the name is too long")],
)
def test_no_folder_can_be_made_there(where: str, reason: str, tmp_path: Path) -> None:
    """A file in the way of the folder, or of one above it, is said and left alone."""
    (tmp_path / "file").write_bytes(b"mine")
    with pytest.raises(FaultError, match=reason):
        exchange(tmp_path / where)
    assert there(tmp_path) == {"file": b"mine"}


@pytest.mark.parametrize("where", ["a\0b", "\ud800"])
def test_what_is_no_name_at_all(where: str, tmp_path: Path) -> None:
    """A name that no system takes is refused in a sentence."""
    with pytest.raises(FaultError, match="no file name can hold"):
        exchange(tmp_path / "new" / where)
    assert there(tmp_path) == {}


def test_a_link_is_replaced_not_followed(old: Path, tmp_path_factory: pytest.TempPathFactory) -> None:
    """Where a link of our name stands, the link gives way; what it leads to is not written into."""
    elsewhere = tmp_path_factory.mktemp("elsewhere") / "mine.pdf"
    elsewhere.write_bytes(b"mine")
    (old / "one.pdf").unlink()
    (old / "one.pdf").symlink_to(elsewhere)
    (old / "two.svg").unlink()
    (old / "two.svg").symlink_to(old / "nowhere")
    exchange(old)
    assert there(old) == NEW | {"other.txt": b"old other.txt"}
    assert elsewhere.read_bytes() == b"mine"


def test_a_link_to_nowhere_comes_back(old: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A link that leads nowhere is something that was there, too."""
    (old / "two.svg").unlink()
    (old / "two.svg").symlink_to(old / "nowhere")
    fails_at(monkeypatch, lambda _, target: target.name == MANIFEST, PermissionError(errno.EACCES, "open"))
    with pytest.raises(FaultError):
        exchange(old)
    assert (old / "two.svg").is_symlink()
    assert (old / "two.svg").readlink() == old / "nowhere"
