"""The command where its output has no place, where a name is empty, and where somebody stops it."""

from __future__ import annotations

import os
import shlex
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from commands import refused

ROOT = Path(__file__).parents[3]
COMMAND = f"{shlex.quote(sys.executable)} -c 'from templates_gen.screen.cli import main; main()'"
FULL = Path("/dev/full")

needs_full = pytest.mark.skipif(not FULL.exists(), reason="this system has no device that is always full")
needs_pipes = pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes among its files")


def shell(line: str) -> subprocess.CompletedProcess[str]:
    """One line for the shell, in which COMMAND is our command."""
    line = line.replace("COMMAND", COMMAND)
    return subprocess.run(["/bin/sh", "-c", line], capture_output=True, text=True, cwd=ROOT, check=False, timeout=120)


@needs_full
@pytest.mark.parametrize("words", ["--help", "plan", "plan --json", "check nowhere.pdf --json", "--version"])
def test_a_full_disk_for_the_output(words: str) -> None:
    """One sentence, code 2, no traceback."""
    ran = shell(f"COMMAND {words} > /dev/full")
    assert ran.returncode == 2
    assert ran.stderr == "could not write the output: the disk is full\n"


@needs_full
def test_a_full_disk_after_all_was_made(tmp_path: Path) -> None:
    """The sentence says too that the files are in place."""
    ran = shell(f"COMMAND make --only strip-far -o {tmp_path / 'strips'} > /dev/full")
    assert ran.returncode == 2
    assert ran.stderr.splitlines()[-1].endswith(f"the disk is full; all files are in place in {tmp_path / 'strips'}")
    assert "Traceback" not in ran.stderr
    assert (tmp_path / "strips" / "manifest.json").exists()


@needs_full
def test_both_streams_full() -> None:
    """Nothing can be said, but the code tells."""
    assert shell("COMMAND plan > /dev/full 2>&1").returncode == 2


@needs_pipes
def test_a_closed_pipe_is_quiet() -> None:
    """Whoever reads only the first line, or nothing, sees no complaint."""
    assert shell("COMMAND plan | head -n 1").stderr == ""
    assert shell("COMMAND plan | true").stderr == ""


@pytest.mark.parametrize(
    "words",
    [
        ("make", "-o", ""),
        ("make", ""),
        ("make", "--stock", ""),
        ("plan", ""),
        ("new", ""),
        ("new-stock", ""),
        ("check", ""),
        ("check", ".", "--kit", ""),
        ("trial-cut", "--stock", ""),
    ],
)
def test_an_empty_name(words: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """It is refused in one sentence, and nothing is written into the current folder."""
    monkeypatch.chdir(tmp_path)
    assert "needs a name, got nothing; for example " in refused(*words)
    assert list(tmp_path.iterdir()) == []


@needs_pipes
@pytest.mark.parametrize("words", [("plan",), ("make", "-o", "out"), ("make", "-o", "out", "--stock")])
def test_a_pipe_for_a_kit_or_stock(words: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """It is refused at once, as are devices and folders."""
    monkeypatch.chdir(tmp_path)
    os.mkfifo("pipe.toml")
    for name in ("pipe.toml", "/dev/zero"):
        assert "it is a pipe or a device, not a file" in refused(*words, name)
    assert "it is a folder, not a file" in refused(*words, ".")
    assert not Path("out").exists()


@pytest.mark.parametrize("name", ["SIGINT", "SIGTERM", "SIGHUP"])
def test_a_make_that_is_stopped(name: str, tmp_path: Path) -> None:
    """One sentence, the usual code of the signal, and the folder is as it was: it was not there."""
    if not hasattr(signal, name):
        pytest.skip("this system has no such signal")
    folder = tmp_path / "strips"
    heard = "import signal; signal.signal(signal.SIGINT, signal.default_int_handler)"  # in the background it is ignored
    code = f"{heard}; from templates_gen.screen.cli import main; main()"
    command = [sys.executable, "-c", code, "make", "-o", str(folder)]
    run = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, cwd=ROOT)
    until = time.monotonic() + 60
    while not folder.exists() and time.monotonic() < until:
        time.sleep(0.02)
    run.send_signal(getattr(signal, name))
    out, err = run.communicate(timeout=60)
    assert (run.returncode, out, err) == (
        128 + getattr(signal, name),
        "",
        f"Stopped; nothing was changed in {folder}.\n",
    )
    assert list(tmp_path.iterdir()) == []
