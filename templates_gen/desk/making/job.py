"""One run for the desk: a process that makes the files, what it said last, and its end."""

from __future__ import annotations

import os
import pickle
import shutil
import signal
import subprocess
import sys
import threading
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any, BinaryIO, Literal

from layout.messages.catalogue import Catalogue, Message
from templates_gen.desk.making.asked import Asked
from templates_gen.desk.making.outcome import Proof, Refusal, Step
from templates_gen.desk.making.zipped import write_zip
from templates_gen.messages.roles.desk_kits import DeskMaking

Status = Literal["making", "made", "stopped", "refused"]
_ROOT = Path(__file__).parents[3]
_WORKER = "templates_gen.desk.making.worker"
_LARGEST = 10_000_000


@dataclass(frozen=True, slots=True)
class State:
    """How far a run is: `done` of `total` files, and the one that is next; then its proof, or why there is none."""

    status: Status
    done: int = 0
    total: int = 0
    file: str = ""
    proof: Proof | None = None
    refusal: Refusal | None = None
    size: int = 0

    def said(self, words: Catalogue) -> str:
        """The line of proof, or the sentence of what went wrong; empty while files are made."""
        return self.proof.said(words) if self.proof else self.refusal.said(words) if self.refusal else ""


class Job:
    """A run that has begun. `zip` is there once it is made; the folder of the run goes in any case."""

    def __init__(self, name: str, asked: Asked, folder: Path, seconds: float) -> None:
        self.id, self.asked, self.folder = name, asked, folder
        self.zip = folder / "made.zip"
        self._seconds = seconds
        self._state = State("making")
        self._lock = threading.Lock()
        self._why: DeskMaking | None = None
        self._process = _started()
        self._thread = threading.Thread(target=self._run, name=f"making {name}", daemon=True)
        self._thread.start()

    @property
    def state(self) -> State:
        """How far it is now."""
        with self._lock:
            return self._state

    @property
    def ended(self) -> bool:
        """Whether it is over, whatever came of it."""
        return self.state.status != "making"

    def stop(self) -> None:
        """Ends the run; what was made before stays as it is. Nothing happens where it is over."""
        self._end(DeskMaking.STOPPED)

    def wait(self, seconds: float | None = None) -> State:
        """Waits until the run is over, or so long; how far it is then."""
        self._thread.join(seconds)
        return self.state

    def _end(self, why: DeskMaking) -> None:
        with self._lock:
            if self._state.status == "making":
                self._why = self._why or why
        _killed(self._process)

    def _run(self) -> None:
        timer = threading.Timer(self._seconds, self._end, [DeskMaking.TOO_LONG])
        timer.daemon = True
        timer.start()
        said: Any = None
        made = self.folder / "made"
        try:
            said = self._followed(made)
            if isinstance(said, Proof) and self._why is None:
                write_zip(made, self.zip)
        except (OSError, EOFError, pickle.UnpicklingError):
            said = None
        finally:
            timer.cancel()
            _killed(self._process)
            self._process.wait()
            shutil.rmtree(made, ignore_errors=True)
            self._finish(said)

    def _followed(self, made: Path) -> Proof | Refusal | None:
        """What the run says at its end; what it says before is kept as its state."""
        ins, outs = self._process.stdin, self._process.stdout
        if ins is None or outs is None:
            return None
        with ins, outs:
            pickle.dump((self.asked, str(made)), ins)
            ins.close()
            while (said := _next(outs)) is not None:
                if not isinstance(said, Step):
                    return said if isinstance(said, Proof | Refusal) else None
                with self._lock:
                    self._state = State("making", *said)
        return None

    def _finish(self, said: Proof | Refusal | None) -> None:
        with self._lock:
            done, total = self._state.done, self._state.total
            if isinstance(said, Proof) and self._why is None and self.zip.is_file():
                size = self.zip.stat().st_size
                self._state = State("made", total, total, "", said, None, size)
            elif isinstance(said, Refusal) and self._why is None:
                self._state = State("refused", done, total, "", None, said)
            else:
                why = self._why or DeskMaking.ENDED
                values = {"seconds": round(self._seconds)} if why is DeskMaking.TOO_LONG else {}
                status: Status = "stopped" if why is DeskMaking.STOPPED else "refused"
                self._state = State(status, done, total, "", None, Refusal((Message(why, values),)))


def _next(outs: BinaryIO | Any) -> Any:
    """The next thing that the run says; None at its end."""
    head = outs.read(4)
    length = int.from_bytes(head, "big")
    if len(head) < 4 or length > _LARGEST:
        return None
    return pickle.loads(outs.read(length))  # noqa: S301 (from the process that was started here)


def _started() -> subprocess.Popen[bytes]:
    """The process, in a group of its own, with the modules of this one and none of the folder that it is started in."""
    path = os.pathsep.join([str(_ROOT), *filter(None, [os.environ.get("PYTHONPATH")])])
    own: dict[str, Any] = {"start_new_session": True} if os.name == "posix" else {"creationflags": _NO_WINDOW}
    return subprocess.Popen(  # noqa: S603 (this very Python and a module of ours)
        [sys.executable, "-P", "-m", _WORKER],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        env={**os.environ, "PYTHONPATH": path},
        **own,
    )


_NO_WINDOW = getattr(subprocess, "CREATE_NO_WINDOW", 0) | getattr(subprocess, "BELOW_NORMAL_PRIORITY_CLASS", 0)


def _killed(process: subprocess.Popen[bytes]) -> None:
    """Ends a process and what it began; nothing where it is over."""
    if process.poll() is not None:
        return
    with suppress(ProcessLookupError, PermissionError):
        if os.name == "posix":
            os.killpg(process.pid, signal.SIGKILL)
        else:
            process.kill()
