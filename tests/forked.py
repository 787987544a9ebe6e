"""Processes of their own without their start: forked from one that has loaded what they need, and waits for code."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).parents[1]
SERVER = """
import json, os, signal, sys, traceback

def ended(code, arguments):
    sys.argv = ["-c", *arguments]
    try:
        exec(code, {"__name__": "__main__"})
    except SystemExit as stop:
        return stop.code if isinstance(stop.code, int) else int(stop.code is not None)
    except BaseException:
        traceback.print_exc()
        return 1
    return 0

signal.signal(signal.SIGINT, signal.default_int_handler)  # in the background it is ignored
exec(sys.argv[1])
print(json.dumps("ready"), flush=True)
for line in sys.stdin:
    code, arguments, *streams = json.loads(line)
    if (child := os.fork()) == 0:
        for number, stream in enumerate(streams, 1):
            os.dup2(os.open(stream, os.O_WRONLY | os.O_CREAT | os.O_TRUNC), number)
        number = ended(code, arguments)
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(number)
    print(json.dumps(os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])), flush=True)
"""


class Ended(NamedTuple):
    """How a process ended, as `subprocess` says it."""

    returncode: int
    stdout: str
    stderr: str


class Forks:
    """Runs code in processes forked from one that has run `load`; what one of them does, no other one sees."""

    def __init__(self, process: subprocess.Popen[str], streams: tuple[Path, Path]) -> None:
        self._process, self._streams = process, streams

    def run(self, code: str, *arguments: object) -> Ended:
        """The code as a program with these arguments; its output goes into files, so it may be of any length."""
        words = [code, list(map(str, arguments)), *map(str, self._streams)]
        assert self._process.stdin is not None
        self._process.stdin.write(json.dumps(words) + "\n")
        self._process.stdin.flush()
        return Ended(self.heard(), *(stream.read_text(encoding="utf-8") for stream in self._streams))

    def heard(self) -> int:
        """The next answer, a number once the process is loaded."""
        assert self._process.stdout is not None
        line = self._process.stdout.readline()
        assert line, "the process that forks has ended"
        return json.loads(line)  # type: ignore[no-any-return]


@contextmanager
def forks(load: str, place: Path) -> Iterator[Forks]:
    """What runs code after `load`, from the project's root; `place` is a folder for what it says."""
    path = os.pathsep.join(map(str, (ROOT, ROOT / "tests")))
    with subprocess.Popen(
        [sys.executable, "-c", SERVER, load],
        env={**os.environ, "PYTHONPATH": path},
        cwd=ROOT,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    ) as process:
        started = Forks(process, (place / "stdout", place / "stderr"))
        assert str(started.heard()) == "ready"
        yield started
        assert process.stdin is not None
        process.stdin.close()
