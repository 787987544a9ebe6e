"""A made file that a viewer holds open while it is made again, as Windows has it: one sentence, and nothing is lost."""

from __future__ import annotations

import errno
import hashlib
from pathlib import Path

import pytest
from click.testing import CliRunner

from templates_gen.inputs.range_file import write_range
from templates_gen.screen.cli import main


def made(*words: str) -> tuple[int, str]:
    """The exit code of `make`, and what it refused with."""
    result = CliRunner().invoke(main, ["make", *words])
    assert result.exception is None or isinstance(result.exception, SystemExit)
    return result.exit_code, result.stderr


def digests(folder: Path) -> dict[str, str]:
    """Every file in a folder and below, hidden ones too."""
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in folder.rglob("*")
        if path.is_file()
    }


def hold(patch: pytest.MonkeyPatch, held: Path) -> None:
    """From now on that file can be moved neither away nor over, and not be taken away."""
    replace, unlink = Path.replace, Path.unlink

    def refuse(*paths: Path) -> None:
        if held in map(Path, paths):
            error = PermissionError(errno.EACCES, "The process cannot access the file")
            error.winerror = 32  # type: ignore[attr-defined]  # as it is on Windows alone
            raise error

    def replacing(path: Path, target: Path) -> Path:
        refuse(path, target)
        return replace(path, target)

    def unlinking(path: Path, missing_ok: bool = False) -> None:
        refuse(path)
        unlink(path, missing_ok)

    patch.setattr(Path, "replace", replacing)
    patch.setattr(Path, "unlink", unlinking)


@pytest.mark.parametrize("name", ["strips.pdf", "manifest.json"])
def test_a_pdf_that_is_open_is_named(name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Every old file is as it was and still proven; once it is closed, making goes on as if nothing had been."""
    (tmp_path / "kit.toml").write_text((Path(__file__).parents[2] / "sample_kits" / "heron-frame.toml").read_text())
    out = tmp_path / "out"
    assert made("-o", str(out), "--only", "strips")[0] == 0
    before = digests(out)
    with monkeypatch.context() as patch:
        hold(patch, out / name)
        code, refused = made(str(tmp_path / "kit.toml"), "-o", str(out), "--only", "strips")
    place = out / name
    why = "it is open in another program, which must close it first"
    assert (code, refused) == (2, f"could not replace {place}: {why}; nothing was changed there\n")
    assert digests(out) == before
    assert CliRunner().invoke(main, ["check", str(out)]).exit_code == 0
    assert made(str(tmp_path / "kit.toml"), "-o", str(out), "--only", "strips")[0] == 0
    assert digests(out).keys() == before.keys()
    assert digests(out) != before


def test_one_of_a_run_that_is_open(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In a run the folder that it lies in stays whole, and so does the list of the run."""
    write_range(tmp_path / "weir.toml")
    out = tmp_path / "out"
    assert made(str(tmp_path / "weir.toml"), "-o", str(out), "--only", "strip-near.pdf")[0] == 0
    before = digests(out)
    text = (tmp_path / "weir.toml").read_text()
    (tmp_path / "weir.toml").write_text(text.replace('bar_diameter = "15 mm"', 'bar_diameter = "16 mm"'))
    held = out / "weir-frame-small" / "strip-near.pdf"
    with monkeypatch.context() as patch:
        hold(patch, held)
        code, refused = made(str(tmp_path / "weir.toml"), "-o", str(out), "--only", "strip-near.pdf")
    assert code == 2
    assert f"could not replace {held}: it is open in another program, which must close it first" in refused
    assert refused.count("\n") == 1
    after = digests(out)
    assert after.keys() == before.keys()
    for folder in ("weir-frame-small/", "manifest.json"):
        assert {name: each for name, each in after.items() if name.startswith(folder)} == {
            name: each for name, each in before.items() if name.startswith(folder)
        }
    assert made(str(tmp_path / "weir.toml"), "-o", str(out), "--only", "strip-near.pdf")[0] == 0
