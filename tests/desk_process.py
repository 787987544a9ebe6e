"""A desk as a process of its own, and a browser-like client on a socket."""

from __future__ import annotations

import http.client
import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, NamedTuple
from urllib.parse import urlencode, urlsplit

ROOT = Path(__file__).parent.parent
_SECONDS = 60


class Running(NamedTuple):
    """A desk that is open: its process, its port, and the key that lets one browser in."""

    process: subprocess.Popen[str]
    port: int
    key: str

    def memory(self) -> int:
        """What the process holds in memory, in bytes (proc(5), VmRSS)."""
        text = Path(f"/proc/{self.process.pid}/status").read_text("ascii")
        match = re.search(r"VmRSS:\s+(\d+) kB", text)
        assert match
        return int(match[1]) * 1024


@contextmanager
def running(folder: Path, *options: str) -> Iterator[Running]:
    """The command, as a person types it; it is ended by an interrupt, and must end well without a word of trouble."""
    command = [sys.executable, "-m", "templates_gen", "desk", "--no-browser", "--folder", str(folder), *options]
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONUNBUFFERED": "1"}
    with subprocess.Popen(
        command, env=environment, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, start_new_session=True
    ) as process:
        try:
            assert process.stdout
            found = next(
                (match for line in process.stdout if (match := re.search(r"http://\S+:(\d+)/\?key=(\S+)", line))), None
            )
            assert found, process.stderr and process.stderr.read()
            yield Running(process, int(found[1]), found[2])
        finally:
            process.send_signal(signal.SIGINT)
            said, trouble = process.communicate(timeout=_SECONDS)
        assert (process.returncode, trouble) == (0, ""), trouble
        assert "closed" in said


class Client:
    """One browser with one connection that stays open; it is let in by `key`, or by the cookie of another one."""

    def __init__(self, port: int, key: str = "", cookie: str = "") -> None:
        self._to = http.client.HTTPConnection("127.0.0.1", port, timeout=_SECONDS)
        self.host, self.cookie = f"127.0.0.1:{port}", cookie
        if key:
            head = self.asked("GET", f"/?key={key}")[1]
            self.cookie = head["set-cookie"].partition(";")[0]
        page = self.asked("GET", "/")[2].decode()
        self.token, self.slip = (self._found(page, name) for name in ("token", "k"))

    def close(self) -> None:
        """Ends the connection."""
        self._to.close()

    @staticmethod
    def _found(page: str, name: str) -> str:
        match = re.search(f'name="{name}" value="([^"]*)"', page)
        assert match, page[:500]
        return match[1]

    def asked(self, method: str, address: str, body: Any = None, **headers: str) -> tuple[int, dict[str, str], bytes]:
        """Status, header fields and body of an answer."""
        sent = {"Cookie": self.cookie, "Accept": "application/json, text/html;q=0.5", **headers}
        self._to.request(method, address, body, {name: text for name, text in sent.items() if text})
        answer = self._to.getresponse()
        return answer.status, {name.lower(): text for name, text in answer.getheaders()}, answer.read()

    def post(self, address: str, fields: dict[str, str]) -> tuple[int, dict[str, str], bytes]:
        """The same for a form of the page."""
        form = urlencode({"token": self.token, "k": self.slip, **fields})
        kind = {"Content-Type": "application/x-www-form-urlencoded", "Origin": f"http://{self.host}"}
        return self.asked("POST", address, form, **kind)

    def another(self) -> None:
        """Goes to a new slip."""
        address = self.post("/new", {})[1]["location"]
        self.slip = urlsplit(address).query.removeprefix("k=")
