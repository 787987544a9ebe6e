"""What the desk refuses: a status, and a sentence in the language of the page. Nobody sees a path or a traceback."""

from __future__ import annotations

import sys
import traceback
from typing import TYPE_CHECKING

from flask import Flask, Response, jsonify, render_template, request
from werkzeug.exceptions import HTTPException

from layout.messages.catalogue import Message, Role
from layout.values.errors import ascii_safe
from templates_gen.desk.server.person import words
from templates_gen.messages.language import message
from templates_gen.messages.roles.desk_server import DeskCommand, DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk

_BY_STATUS = {
    404: DeskRefusal.NOT_FOUND,
    405: DeskRefusal.METHOD,
    415: DeskRefusal.KIND,
    429: DeskRefusal.TOO_OFTEN,
}
FORM_BYTES = 256 * 1024
"""A slip with every list as long as it may be needs less."""
UPLOAD_BYTES = 256 * 1024
BODY_BYTES = UPLOAD_BYTES + 16 * 1024
"""What is sent with an upload beside the file is small."""
_STATUS_OF_FAULT = 400  # a browser shows the sentence alike, and a 5xx would say that the desk itself is gone


class RefusedError(Exception):
    """A request that is not done; `said` is the sentence for the person."""

    def __init__(self, status: int, role: Role, **values: object) -> None:
        self.status, self.said = status, Message(role, values)
        super().__init__(role)


def refusals(app: Flask, desk: Desk) -> None:
    """Every way in which a request can end other than well."""

    @app.errorhandler(RefusedError)
    def refused(error: RefusedError) -> Response:
        if desk.network and error.said.role in (DeskRefusal.KEY, DeskRefusal.WRONG_CODE):
            return _entry(desk, error)
        return sentence(desk, error.status, words(desk).words_of(error.said))

    @app.errorhandler(HTTPException)
    def known(error: HTTPException) -> Response:
        status = error.code or 400
        if status == 413:
            return sentence(desk, 413, words(desk).say(DeskRefusal.TOO_LARGE, most=FORM_BYTES // 1024))
        role = _BY_STATUS.get(status, DeskRefusal.BAD)
        return sentence(desk, status if status in _BY_STATUS else 400, words(desk).say(role))

    @app.errorhandler(Exception)
    def fault(error: Exception) -> Response:
        if app.testing:
            raise error
        report(error)
        return sentence(desk, _STATUS_OF_FAULT, words(desk).say(DeskRefusal.FAULT))


def report(error: Exception) -> None:
    """The traceback of a fault of our own, for whoever can read it: on the error stream alone."""
    said = message(DeskCommand.FAULT, method=request.method[:10], path=request.path[:80])
    lines = "".join(traceback.format_exception(error))
    print("\n".join(map(ascii_safe, f"{said}\n{lines}".split("\n"))), file=sys.stderr, flush=True)  # noqa: T201


def sentence(desk: Desk, status: int, said: str) -> Response:
    """A page, or values for a script, that says one sentence."""
    if wants_values():
        answer = jsonify({"say": said})
    else:
        answer = Response(render_template("refused.html", words=words(desk), said=said, status=status))
    answer.status_code = status
    return answer


def _entry(desk: Desk, error: RefusedError) -> Response:
    """The page that asks for the code, for other devices of a network."""
    said = words(desk)
    wrong = said.words_of(error.said) if error.said.role == DeskRefusal.WRONG_CODE else ""
    answer = Response(render_template("enter.html", words=said, wrong=wrong))
    answer.status_code = error.status
    return answer


def wants_values() -> bool:
    """Whether a script asks, which reads values, and not a person."""
    return request.accept_mimetypes.best_match(["text/html", "application/json"]) == "application/json"
