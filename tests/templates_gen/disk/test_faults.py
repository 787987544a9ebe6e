"""What systems say, as one sentence; and what stands in the way where a folder is not ours to write in."""

from __future__ import annotations

import errno
import json
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest

from layout.values.errors import LayoutError
from templates_gen.disk.faults import FaultError, fault
from templates_gen.messages.roles.disk import Fault

ROOT = Path(__file__).parents[3]
NUMBERS = sorted(errno.errorcode)


@pytest.mark.parametrize("number", NUMBERS)
def test_every_number_gives_one_sentence(number: int) -> None:
    """Whatever number a system gives, the sentence names what was done, the place and a reason."""
    sentence = str(fault(Fault.WRITE, Path("strips", "kit.pdf"), OSError(number, os.strerror(number))))
    start = f"could not write {Path('strips', 'kit.pdf')}: "
    assert sentence.startswith(start)
    assert sentence.endswith("; nothing was changed there")
    assert len(sentence) > len(start) + len("; nothing was changed there") + 5
    assert "\n" not in sentence
    assert "Errno" not in sentence


@pytest.mark.parametrize(
    ("error", "reason"),
    [
        (OSError(errno.ENOSPC, "x"), "the disk is full"),
        (PermissionError(errno.EACCES, "x"), "no permission"),
        (OSError(errno.EROFS, "x"), "can only be read"),
        (NotADirectoryError(errno.ENOTDIR, "x"), "is a file, not a folder"),
        (OSError("without a number"), "the system gave no reason"),
        (OSError(9999, "something new"), "something new"),
        (ValueError("embedded null byte"), "no file name can hold"),
    ],
)
def test_the_reason_is_told(error: OSError | ValueError, reason: str) -> None:
    """The usual faults are said in words of the bench, others in the system's own."""
    assert reason in str(fault(Fault.WRITE, Path("kit.pdf"), error))


def test_a_file_open_elsewhere_is_thought_of() -> None:
    """Some systems refuse to replace a file that another program holds open, and call it a lack of permission."""
    refused = PermissionError(errno.EACCES, "x")
    assert "open in another program" in str(fault(Fault.REPLACE, Path("kit.pdf"), refused))
    assert "open in another program" not in str(fault(Fault.READ, Path("kit.pdf"), refused))


@pytest.mark.parametrize(("number", "held"), [(5, False), (32, True), (33, True)])
def test_windows_says_that_a_file_is_open(number: int, held: bool) -> None:
    """Its own numbers tell a file that is open from a lack of permission; the sentence says what to do."""
    refused = PermissionError(errno.EACCES, "x")
    refused.winerror = number  # type: ignore[attr-defined]  # as it is on Windows alone
    said = str(fault(Fault.REPLACE, Path("kit.pdf"), refused))
    assert ("no permission" not in said) == held
    assert said.startswith("could not replace kit.pdf: ")
    assert "open in another program, which must close it first; nothing was changed there" in said


def test_control_characters_are_shown() -> None:
    """A place with a line break or a terminal's command in its name stays one harmless line."""
    sentence = str(fault(Fault.WRITE, Path("a\nb\x1b[2J\udcff"), OSError(errno.ENOSPC, "x")))
    assert "a\\x0ab\\x1b[2J" in sentence
    sentence.encode()


def test_it_is_a_refusal() -> None:
    """A fault is said like any other refusal."""
    assert issubclass(FaultError, LayoutError)


# Permissions, tested as somebody who has none.

CHILD = """
import json, os, sys
from click.testing import CliRunner
from templates_gen.screen.cli import main

def run(*arguments):
    result = CliRunner().invoke(main, arguments)
    left = result.exception is not None and not isinstance(result.exception, SystemExit)
    return {"code": result.exit_code, "out": result.stdout, "err": result.stderr, "left": left}

warm = sys.argv[1]
# This loads all that is needed before it is out of reach.
assert run("make", "-o", warm, "--only", "strip-far", "--only", "comb")["code"] == 0
run("check", warm, warm + "/nowhere")
if os.getuid() == 0:
    os.setgroups([])
    os.setgid(65534)
    os.setuid(65534)
print(json.dumps([run(*arguments) for arguments in json.loads(sys.argv[2])]))
"""

CASES = {
    "make into a folder": ("make", "-o", "open"),
    "make a folder": ("make", "-o", "new"),
    "make folders": ("make", "-o", "new/and/deeper"),
    "make into a closed folder": ("make", "-o", "closed"),
    "make below a closed folder": ("make", "-o", "closed/a/b"),
    "check a file": ("check", "kit.pdf"),
    "check a closed folder": ("check", "closed"),
    "check below a closed folder": ("check", "closed/kit.pdf"),
    "plan a kit": ("plan", "kit.pdf"),
    "start a kit": ("new", "my.toml"),
    "check against a kit": ("check", "open/kit.pdf", "--kit", "kit.pdf"),
}


def _place() -> Path:
    """A folder that everybody may look into and only we may change; pytest's own are closed to others."""
    place = Path(tempfile.mkdtemp())
    for name in ("open", "closed"):
        (place / name).mkdir()
        (place / name / "kit.pdf").write_bytes(b"as it was")
    (place / "kit.pdf").write_bytes(b"not for others")
    (place / "kit.pdf").chmod(0o000)
    (place / "closed").chmod(0o000)
    (place / "open").chmod(0o555)
    place.chmod(0o555)
    return place


@pytest.fixture(scope="module")
def refused() -> dict[str, dict[str, object]]:
    """What every case said, run one after the other by somebody without any rights there."""
    place = _place()
    with tempfile.TemporaryDirectory() as warm:
        command = [sys.executable, "-c", CHILD, warm, json.dumps(_named(place))]
        ran = subprocess.run(command, capture_output=True, text=True, cwd=ROOT, check=False)
    place.chmod(0o700)
    for folder in (place / "open", place / "closed"):
        folder.chmod(0o700)
    left = {str(path.relative_to(place)) for path in place.rglob("*")}
    kept = [(place / name / "kit.pdf").read_bytes() for name in ("open", "closed")]
    shutil.rmtree(place)
    assert ran.returncode == 0, ran.stderr
    return {**dict(zip(CASES, json.loads(ran.stdout), strict=True)), "left": {"names": left, "kept": kept}}


def _named(place: Path) -> list[list[str]]:
    """Every case with its names as full paths: a command's own words and options stay."""
    return [
        [command, *(word if word.startswith("-") else str(place / word) for word in words)]
        for command, *words in CASES.values()
    ]


needs_users = pytest.mark.skipif(not hasattr(os, "getuid"), reason="this system knows no user numbers")


@needs_users
@pytest.mark.parametrize("case", CASES)
def test_without_permission(case: str, refused: dict[str, dict[str, object]]) -> None:
    """Where we may not write or read: one sentence, code 2, nothing printed, no traceback."""
    said = refused[case]
    assert (said["code"], said["out"], said["left"]) == (2, "", False)
    (sentence,) = str(said["err"]).splitlines()
    assert "there is no permission" in sentence


@needs_users
def test_without_permission_nothing_is_changed(refused: dict[str, dict[str, object]]) -> None:
    """After all of it every file is where it was, as it was, and nothing was added."""
    names = {"open", "closed", "kit.pdf", "open/kit.pdf", "closed/kit.pdf"}
    assert refused["left"] == {"names": names, "kept": [b"as it was", b"as it was"]}
