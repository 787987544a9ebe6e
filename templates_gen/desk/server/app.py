"""The desk as an application of Flask."""

from __future__ import annotations

from typing import TYPE_CHECKING

from flask import Flask, Response, abort

from templates_gen.desk.server.drawing import Drawing
from templates_gen.desk.server.entering import entering
from templates_gen.desk.server.files import PAGE, static_files
from templates_gen.desk.server.guard import guard
from templates_gen.desk.server.kit_routes import kit_routes
from templates_gen.desk.server.looking import looking
from templates_gen.desk.server.make_routes import make_routes
from templates_gen.desk.server.pages import pages
from templates_gen.desk.server.printed import printed
from templates_gen.desk.server.refusals import refusals
from templates_gen.messages.roles.desk_server import DeskEntry, DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk


def create_app(desk: Desk) -> Flask:
    """All routes of one desk, with their guard."""
    app = Flask("templates_gen.desk", static_folder=None, template_folder=str(PAGE / "templates"))
    app.config["PROVIDE_AUTOMATIC_OPTIONS"] = False
    app.url_map.strict_slashes = True
    app.url_map.redirect_defaults = app.url_map.merge_slashes = False  # no address leads to another by itself
    app.jinja_env.globals.update(DeskRefusal=DeskRefusal, DeskEntry=DeskEntry)
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    guard(app, desk)
    refusals(app, desk)
    drawing = Drawing()
    for routes in (pages, looking, printed, make_routes, kit_routes, entering):
        routes(app, desk, drawing)

    @app.get("/favicon.ico", endpoint="static", defaults={"name": "desk.svg"})
    @app.get("/static/<path:name>", endpoint="static")
    def static(name: str) -> Response:
        file = static_files().get(name)
        return Response(file.data, content_type=file.type) if file else abort(404)

    return app
