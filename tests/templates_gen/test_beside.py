"""Work that is split over two processes: the same files, the same refusals, and nothing left over.

Each test runs a Python of its own, as a command is: pytest itself has threads, beside which no process is copied.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

CORES = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else 1
pytestmark = pytest.mark.skipif(not hasattr(os, "fork") or CORES < 2, reason="needs fork and two cores")

ALLOWED = "from templates_gen.beside import allow, beside, possible; allow(); import os, sys, threading\n"


def said_by(code: str, *, allowed: str = ALLOWED) -> str:
    """What a fresh Python prints."""
    ran = subprocess.run([sys.executable, "-c", allowed + code], capture_output=True, text=True, check=True, timeout=60)
    return ran.stdout.strip()


def test_the_value_comes_from_another_process() -> None:
    """Not from this one."""
    code = "with beside(os.getpid) as other:\n    print(other() not in (None, os.getpid()))"
    assert said_by(code) == "True"


@pytest.mark.parametrize(
    "work",
    [
        "lambda: 1 / 0",
        "lambda: threading.Lock()",  # which pickle refuses
        "lambda: os.kill(os.getpid(), 9)",
        "lambda: os._exit(3)",
        "lambda: sys.exit(2)",
    ],
)
def test_nothing_comes_of_work_that_failed(work: str) -> None:
    """So that whoever asked does it himself and meets the error."""
    assert said_by(f"with beside({work}) as other:\n    print(other())") == "None"


def test_a_large_value_comes_whole() -> None:
    """More than a pipe holds, asked for late."""
    code = "import time\nwith beside(lambda: bytes(5_000_000)) as other:\n    time.sleep(0.3)\n    print(len(other()))"
    assert said_by(code) == "5000000"


def test_work_is_split_only_where_it_may_be() -> None:
    """Not in another program's process, nor beside threads, nor where it is not worth it."""
    asked = "with beside(os.getpid) as other:\n    print(other())"
    assert said_by(asked, allowed=ALLOWED.replace("allow();", "")) == "None"
    assert said_by(asked.replace("getpid", "getpid, worth=False")) == "None"
    assert said_by(f"threading.Thread(target=threading.Event().wait, daemon=True).start()\n{asked}") == "None"


def test_no_process_is_left_when_the_block_ends_early() -> None:
    """An error in the first half ends the second."""
    code = (
        "import time\n"
        "try:\n    with beside(lambda: time.sleep(60)):\n        raise KeyError\n"
        "except KeyError:\n    pass\n"
        "try:\n    os.waitpid(-1, 0)\nexcept ChildProcessError:\n    print('none')"
    )
    assert said_by(code) == "none"


SPOILT = """
from dataclasses import replace
from templates_gen import __main__
from templates_gen.files import proof
form = proof.FORMATS["dxf"]
spoilt = replace(form, write=lambda sheets, about: form.write(sheets, about)[:-40])
proof.FORMATS = {**proof.FORMATS, "dxf": spoilt}
sys.argv = ["templates-gen", "make", "-o", OUT]
__main__.main()
"""


def test_a_file_that_fails_in_the_copy_is_refused_as_ever(tmp_path: Path) -> None:
    """Its own sentence, code 1, and no folder."""
    out = tmp_path / "strips"
    code = f"import sys\nOUT = {str(out)!r}\n" + SPOILT
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=120)
    assert ran.returncode == 1
    assert "Traceback" not in ran.stderr
    assert ".dxf" in ran.stderr
    assert not out.exists()


def test_a_run_that_is_stopped_leaves_no_copy_behind(tmp_path: Path) -> None:
    """TERM to the command alone, while both work: nothing of it runs on, and the folder is as it was."""
    started = subprocess.Popen(
        [sys.executable, "-m", "templates_gen", "make", "-o", str(tmp_path / "strips")], stderr=subprocess.DEVNULL
    )
    children = Path(f"/proc/{started.pid}/task/{started.pid}/children")
    if not children.exists():
        started.kill()
        started.wait()
        pytest.skip("this system does not list children")
    copies: list[str] = []
    while not copies and started.poll() is None:
        copies = children.read_text("ascii").split()
        time.sleep(0.005)
    assert copies
    started.send_signal(signal.SIGTERM)
    assert started.wait(60) == 128 + signal.SIGTERM
    assert not [pid for pid in copies if Path(f"/proc/{pid}").exists()]
    assert not list(tmp_path.glob("strips/*.*"))
