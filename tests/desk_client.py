"""A desk for tests, without a socket: a browser that was let in, and what it sends."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from templates_gen.desk.server.app import create_app
from templates_gen.desk.server.slips import example_slip
from templates_gen.desk.server.state import Desk

PORT = 8080
HOST = f"127.0.0.1:{PORT}"
ORIGIN = f"http://{HOST}"


class Visitor:
    """A browser at a desk. It is let in by the key unless `inside` is false."""

    def __init__(self, folder: Path, *, inside: bool = True, network: str | None = None) -> None:
        self.desk = Desk(folder, PORT, network)
        self.app = create_app(self.desk)
        self.app.testing = True
        self.client: FlaskClient = self.app.test_client()
        self.slip = ""
        if inside:
            assert self.get(f"/?key={self.desk.key}").status_code == 303
            self.slip = example_slip(self.desk).id

    def get(self, address: str, host: str = HOST, **headers: str) -> TestResponse:
        """What a page answers."""
        return self.client.get(address, headers={"Host": host, **_named(headers)})

    def post(self, address: str, data: dict[str, Any] | None = None, host: str = HOST, **headers: str) -> TestResponse:
        """What comes of a form of the slip; header fields of this name replace the usual ones, "" leaves one out."""
        sent = {"Host": host, "Origin": f"http://{host}", **_named(headers)}
        whole = {"token": self.desk.token, "k": self.slip, **(data or {})}
        return self.client.post(address, data=whole, headers={name: text for name, text in sent.items() if text})

    def look(self, data: dict[str, Any] | None = None) -> dict[str, Any]:
        """What is answered to a question of the page."""
        answer = self.post("/look", {"nr": "1", **(data or {})}, accept="application/json")
        assert answer.status_code == 200, answer.text
        found: dict[str, Any] = answer.json or {}
        return found


def _named(headers: dict[str, str]) -> dict[str, str]:
    return {name.replace("_", "-").title(): text for name, text in headers.items()}
