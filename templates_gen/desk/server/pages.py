"""The page itself, its language and unit, and whether the desk is still there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from flask import Flask, Response, render_template

from templates_gen.desk.server.person import words

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk


def pages(app: Flask, desk: Desk) -> None:
    """Adds these routes."""

    @app.get("/")
    def page() -> str:
        return render_template("page.html", words=words(desk), token=desk.token)

    @app.get("/alive")
    def alive() -> Response:
        return Response(status=204)
