"""Coming in from another device of the network: by the code that the command printed, which a person types."""

from __future__ import annotations

import threading
import time
from collections import deque
from typing import TYPE_CHECKING

from flask import Flask, abort, request

from templates_gen.desk.server.drawing import Drawing
from templates_gen.desk.server.guard import same, welcome
from templates_gen.desk.server.refusals import RefusedError
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from werkzeug.wrappers import Response

    from templates_gen.desk.server.state import Desk

_TRIES, _SECONDS = 10, 60.0


class _Wrong:
    """How often a wrong code was typed lately, by anybody; at this pace 59 bits are not guessed."""

    def __init__(self) -> None:
        self._times: deque[float] = deque(maxlen=_TRIES)
        self._lock = threading.Lock()

    def too_many(self) -> bool:
        with self._lock:
            return len(self._times) == _TRIES and time.monotonic() - self._times[0] < _SECONDS

    def one_more(self) -> None:
        with self._lock:
            self._times.append(time.monotonic())


def entering(app: Flask, desk: Desk, drawing: Drawing) -> None:  # noqa: ARG001
    """Adds this route."""
    wrong = _Wrong()

    @app.post("/enter")
    def enter() -> Response:
        if desk.network is None:
            abort(404)
        if wrong.too_many():
            raise RefusedError(429, DeskRefusal.TOO_MANY_CODES)
        if not same(_typed(request.form.get("code", "")), _typed(desk.code)):
            wrong.one_more()
            raise RefusedError(403, DeskRefusal.WRONG_CODE)
        return welcome(desk)


def _typed(code: str) -> str:
    """A code without what people type differently: capitals, hyphens and spaces."""
    return "".join(sign for sign in code.lower() if sign.isalnum())
