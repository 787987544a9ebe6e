"""The page of a slip, its language, and whether the desk is still there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from flask import Flask, Response, redirect, request

from templates_gen.desk.page.rendering import page as rendered
from templates_gen.desk.server.drawing import OF_A_PAGE, Drawing
from templates_gen.desk.server.person import LANGUAGES, remember, words
from templates_gen.desk.server.refusals import RefusedError
from templates_gen.desk.server.slips import asked_of, slip_of, slip_shown, undrawn, view_in
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk


def pages(app: Flask, desk: Desk, drawing: Drawing) -> None:
    """Adds these routes."""

    @app.get("/")
    def page() -> str:
        slip = slip_shown(desk)
        with slip.lock:
            asked = asked_of(desk, slip, view=view_in(request.args))
            slip.happened = slip.refused = ""
        drawn = drawing.within(OF_A_PAGE, lambda: rendered(asked))
        return drawn or rendered(undrawn(asked, words(desk).say(DeskRefusal.TOO_LARGE_TO_DRAW)))

    @app.get("/language")
    def language() -> Response:
        chosen = request.args.get("to", "")
        if chosen not in LANGUAGES:
            raise RefusedError(404, DeskRefusal.NOT_FOUND)
        answer = redirect_to(f"/?k={slip_of(desk, request.args).id}" if "k" in request.args else "/")
        remember(answer, desk, "language", chosen)
        return answer

    @app.get("/alive")
    def alive() -> Response:
        return Response(status=204)


def redirect_to(address: str) -> Response:
    """An answer that leads to another page of the desk, which is asked for by GET."""
    answer = Response(status=303)
    answer.headers["Location"] = redirect(address).headers["Location"]
    return answer
