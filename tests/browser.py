"""A real browser without a window, by the protocol of WebDriver (W3C): files are opened, measured and printed."""

from __future__ import annotations

import base64
import json
import re
import subprocess
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from print_programs import program

_FLAGS = (
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--force-device-scale-factor=1",
)
_SECONDS = 60


class Browser:
    """A running session; `address` is that of its driver."""

    def __init__(self, address: str) -> None:
        self._address = address

    def opened(self, file: Path, script: str) -> Any:
        """What a script returns once the file is shown."""
        _asked(f"{self._address}/url", {"url": file.resolve().as_uri()})
        return _asked(f"{self._address}/execute/sync", {"script": script, "args": []})

    def printed(self, width: float, height: float) -> bytes:
        """The file that is shown, as PDF on paper of that size in mm, without margins."""
        page = {"width": width / 10, "height": height / 10}
        margins = dict.fromkeys(("top", "bottom", "left", "right"), 0)
        return base64.b64decode(
            _asked(f"{self._address}/print", {"page": page, "margin": margins, "shrinkToFit": False})
        )


@contextmanager
def browser() -> Iterator[Browser]:
    """Chromium and its driver, for as long as they are needed."""
    chromium, driver = program("chromium"), program("chromedriver")
    with (
        TemporaryDirectory() as profile,
        subprocess.Popen([driver, "--port=0"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True) as running,
    ):
        try:
            assert running.stdout
            port = next(
                found[1] for line in running.stdout if (found := re.search(r"successfully on port (\d+)", line))
            )
            options = {"binary": chromium, "args": [*_FLAGS, f"--user-data-dir={profile}"]}
            wanted = {"capabilities": {"alwaysMatch": {"goog:chromeOptions": options}}}
            began = _asked(f"http://127.0.0.1:{port}/session", wanted)
            address = f"http://127.0.0.1:{port}/session/{began['sessionId']}"
            yield Browser(address)
            _sent(urllib.request.Request(address, method="DELETE"))
        finally:
            running.terminate()


def _asked(address: str, body: object) -> Any:
    asked = urllib.request.Request(address, json.dumps(body).encode(), {"Content-Type": "application/json"})  # noqa: S310
    return _sent(asked)


def _sent(request: urllib.request.Request) -> Any:
    with urllib.request.urlopen(request, timeout=_SECONDS) as answer:  # noqa: S310 (our own driver)
        return json.load(answer)["value"]
