"""The files to double-click on Linux and macOS, run by /bin/sh: with stand-ins for Python, and once in earnest."""

from __future__ import annotations

import os
import re
import shutil
import signal
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

import pytest
from commands import refused, run
from print_programs import program
from wheels import needed_wheels, our_wheel

from templates_gen.starters import FOLDER, NAMES

SH = FOLDER / "desk-linux.sh"
TOOLS = ("sh", "uname", "dirname", "mkdir", "rm", "cat", "sleep", "env")
STAND_IN = """#!/bin/sh
# Python as far as the starter asks for it; the log says what it was asked.
printf '%s\\n' "$*" >>"$LOG"
case "$*" in
    *"version_info"*) exit ${USABLE:-0} ;;
    "-m venv"*)
        for last in "$@"; do :; done
        mkdir -p -- "$last/bin" && cp -- "$0" "$last/bin/python" ;;
    "-m pip"*) exit ${PIP:-0} ;;
    *"import templates_gen"*) exit ${BROKEN:-0} ;;
    *"-m templates_gen desk"*) exit ${DESK:-0} ;;
esac
"""


@pytest.fixture
def place(tmp_path: Path) -> Path:
    """A folder with a space and accents, with the starter in it and a home beside it."""
    folder = tmp_path / "Œuvre d'été & Wörk (1)"
    folder.mkdir()
    shutil.copy(SH, folder / "desk.sh")
    tools = tmp_path / "tools"
    tools.mkdir()
    for name in (*TOOLS, "cp"):
        (tools / name).symlink_to(shutil.which(name) or name)
    return folder


def python_at(folder: Path, name: str = "python3") -> None:
    """A stand-in of that name."""
    file = folder / name
    file.write_text(STAND_IN, encoding="utf-8")
    file.chmod(0o755)


def started(
    place: Path, *arguments: str, around: Path | None = None, **given: str
) -> tuple[subprocess.CompletedProcess[str], list[str]]:
    """The starter run with the tools and stand-ins alone, and what Python was asked."""
    outer = around or place.parent
    home, log = outer / "Zuhause Ü", outer / "log"
    home.mkdir(exist_ok=True)
    log.write_text("", encoding="utf-8")
    surroundings = {"PATH": str(outer / "tools"), "HOME": str(home), "LOG": str(log), **given}
    command = [shutil.which("sh") or "sh", str(place / "desk.sh"), *arguments]
    ended = subprocess.run(
        command, env=surroundings, capture_output=True, text=True, check=False, stdin=subprocess.DEVNULL, timeout=60
    )
    return ended, log.read_text("utf-8").splitlines()


def test_without_python_it_says_where_to_get_it(place: Path) -> None:
    """One that is too old is named too; nothing is made."""
    ended, _ = started(place)
    assert ended.returncode == 1
    assert "https://www.python.org/downloads/" in ended.stdout
    python_at(place.parent / "tools")
    ended, asked = started(place, USABLE="1")
    assert ended.returncode == 1
    assert "too old" in ended.stdout
    assert not [line for line in asked if line.startswith("-m venv")]


def test_the_second_start_is_quick(place: Path) -> None:
    """The environment is made once, in the person's own data; then the desk is opened at once."""
    python_at(place.parent / "tools")
    ended, asked = started(place)
    assert ended.returncode == 0, ended.stderr
    assert [line.split()[1] for line in asked if line.startswith("-m")] == ["venv", "pip", "templates_gen"]
    environment = place.parent / "Zuhause Ü" / ".local" / "share" / "templates-gen" / "desk"
    assert (environment / "made").read_text("utf-8") == "templates-gen"
    ended, asked = started(place, "--no-browser")
    assert ended.returncode == 0
    kits = place.parent / "Zuhause Ü" / "Loom kits"
    assert asked == ["-c import templates_gen", f"-m templates_gen desk --folder {kits} --no-browser"]
    assert kits.is_dir()


def test_the_environment_of_macos_is_where_macos_has_it(place: Path) -> None:
    """By what `uname` says; the Python of the system itself is passed over there."""
    tools = place.parent / "tools"
    (tools / "uname").unlink()
    (tools / "uname").write_text("#!/bin/sh\necho Darwin\n", encoding="utf-8")
    (tools / "uname").chmod(0o755)
    python_at(tools)
    ended, _ = started(place)
    assert ended.returncode == 0, ended.stderr
    home = place.parent / "Zuhause Ü"
    assert (home / "Library" / "Application Support" / "templates-gen" / "desk" / "made").is_file()


def test_a_package_beside_it_is_taken(place: Path) -> None:
    """Its own path, and what it needs from a folder beside it, not from the internet; a newer one is put in."""
    python_at(place.parent / "tools")
    (place / "templates_gen-1.0-py3-none-any.whl").touch()
    (place / "wheels").mkdir()
    _, asked = started(place)
    pip = next(line for line in asked if line.startswith("-m pip"))
    assert f"--no-index --find-links {place}/wheels -- {place}/templates_gen-1.0-py3-none-any.whl" in pip
    (place / "templates_gen-1.1-py3-none-any.whl").touch()
    _, asked = started(place)
    assert any("templates_gen-1.1" in line for line in asked if line.startswith("-m pip"))


def test_the_tree_that_it_is_in_is_taken(place: Path) -> None:
    """In a copy of the repository the desk of that copy is opened."""
    python_at(place.parent / "tools")
    inner = place / "templates_gen" / "starters"
    inner.mkdir(parents=True)
    shutil.move(place / "desk.sh", inner / "desk.sh")
    (place / "pyproject.toml").touch()
    _, asked = started(inner, around=place.parent)
    assert any(line.endswith(f"-- {place}") for line in asked if line.startswith("-m pip"))


@pytest.mark.parametrize("broken", [{"PIP": "1"}, {"DESK": "2"}])
def test_what_goes_wrong_is_said_and_made_again(place: Path, broken: dict[str, str]) -> None:
    """An environment that could not be filled goes; a desk that ends with a fault gives its code."""
    python_at(place.parent / "tools")
    ended, _ = started(place, **broken)
    assert ended.returncode == (1 if "PIP" in broken else 2)
    ended, asked = started(place)
    assert ended.returncode == 0
    assert any(line.startswith("-m venv") for line in asked) == ("PIP" in broken)


def test_a_half_made_environment_is_made_again(place: Path) -> None:
    """One without its mark, as a switched off computer leaves it; and one whose Python is gone."""
    python_at(place.parent / "tools")
    started(place)
    environment = place.parent / "Zuhause Ü" / ".local" / "share" / "templates-gen" / "desk"
    (environment / "made").unlink()
    (environment / "left").touch()
    _, asked = started(place)
    assert any(line.startswith("-m venv") for line in asked)
    assert not (environment / "left").exists()
    (environment / "bin" / "python").unlink()
    ended, asked = started(place)
    assert ended.returncode == 0
    assert any(line.startswith("-m venv") for line in asked)


def test_a_lock_of_a_window_that_is_gone_holds_nobody_up(place: Path) -> None:
    """The process that made it is not there any more."""
    python_at(place.parent / "tools")
    started(place)
    lock = place.parent / "Zuhause Ü" / ".local" / "share" / "templates-gen" / "desk-lock"
    lock.mkdir()
    (lock / "owner").write_text("999999999", encoding="utf-8")
    ended, _ = started(place)
    assert ended.returncode == 0
    assert not lock.exists()


def test_linux_and_macos_have_the_same_script() -> None:
    """What is tested of one holds for the other."""
    assert (FOLDER / "desk-macos.command").read_bytes() == SH.read_bytes()


@pytest.mark.parametrize("name", ["desk-linux.sh", "desk-macos.command"])
def test_the_shell_reads_it(name: str) -> None:
    """Every line of it, without running one."""
    subprocess.run(["/bin/sh", "-n", FOLDER / name], check=True, timeout=60)


@pytest.mark.parametrize("name", ["desk-linux.sh", "desk-macos.command"])
def test_shellcheck_finds_nothing(name: str) -> None:
    """The usual mistakes of shell scripts, found by a program for that."""
    command = [program("shellcheck"), "-s", "sh", FOLDER / name]
    said = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert said.stdout == ""


def test_the_menu_entry_starts_the_script_beside_it(place: Path) -> None:
    """Its line of command, taken apart as the Desktop Entry Specification says, with its own place for %k."""
    text = (FOLDER / "desk-linux.desktop").read_text("utf-8")
    (line,) = (each.removeprefix("Exec=") for each in text.splitlines() if each.startswith("Exec="))
    words = re.findall(r'"(?:[^"\\]|\\.)*"|\S+', line.replace("\\\\", "\\"))
    command = [re.sub(r'\\(["`$\\])', r"\1", word[1:-1]) if word.startswith('"') else word for word in words]
    shutil.copy(FOLDER / "desk-linux.desktop", place)
    (place / "desk-linux.sh").write_text('echo "started $0"', encoding="utf-8")
    command = [str(place / "desk-linux.desktop") if word == "%k" else word for word in command]
    said = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60).stdout
    assert said == f"started {place}/desk-linux.sh\n"
    assert "Terminal=true" in text.splitlines()


def test_they_are_written_by_the_command(tmp_path: Path) -> None:
    """All of them, ready to run, into a folder that is made for them, and over nothing."""
    folder = tmp_path / "my desk" / "start"
    assert run("desk", "--starters", folder).exit_code == 0
    assert sorted(path.name for path in folder.iterdir()) == sorted(NAMES)
    for name in NAMES:
        assert (folder / name).read_bytes() == (FOLDER / name).read_bytes()
        assert os.access(folder / name, os.X_OK)
    assert NAMES[0] in refused("desk", "--starters", folder)
    assert NAMES[0] in refused("desk", "--starters", folder / NAMES[0])


def test_none_is_written_where_one_is_there(tmp_path: Path) -> None:
    """A file of the last name, however old, holds all of them up."""
    (tmp_path / NAMES[-1]).write_text("mine", "utf-8")
    assert NAMES[-1] in refused("desk", "--starters", tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == [NAMES[-1]]


def test_windows_has_its_line_ends() -> None:
    """Every line of the batch file ends as Windows wants it, all letters are plain, and no label is missing.

    It was not run: there is no Windows here.
    """
    data = (FOLDER / "desk-windows.bat").read_bytes()
    assert data.count(b"\n") == data.count(b"\r\n") > 0
    text = data.decode("ascii")
    labels = set(re.findall(r"^:(\w+)", text, re.MULTILINE))
    assert set(re.findall(r"(?:goto|call) :(\w+)", text)) == labels


@pytest.mark.slow
def test_in_earnest(tmp_path: Path) -> None:
    """From a folder with a space and accents: made from wheels with no network, opened, closed by Ctrl-C."""
    folder = tmp_path / "Œuvre d'été & Wörk"
    folder.mkdir()
    our_wheel(folder)
    (folder / "wheels").mkdir()
    needed_wheels(folder / "wheels")
    shutil.copy(SH, folder)
    around = {"PATH": f"{Path(sys.base_prefix, 'bin')}:/usr/bin:/bin", "HOME": str(tmp_path), "PIP_NO_COMPILE": "1"}
    command = ["/bin/sh", str(folder / SH.name), "--no-browser"]
    for first in (True, False):
        began = time.monotonic()
        with subprocess.Popen(command, env=around, stdout=subprocess.PIPE, text=True, start_new_session=True) as desk:
            try:
                assert desk.stdout
                said = next(line for line in desk.stdout if "http://" in line)
                address = re.search(r"http://\S+", said)
                assert address
                page = urllib.request.build_opener(urllib.request.HTTPCookieProcessor()).open(address[0], timeout=60)
                assert b"Willow frame" in page.read()
                print(f"{'first' if first else 'second'} start: {time.monotonic() - began:.1f} s")
            finally:
                os.killpg(desk.pid, signal.SIGINT)
            assert "closed" in desk.stdout.read()
    assert (tmp_path / "Loom kits").is_dir()
