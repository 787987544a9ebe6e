"""Making files: begun, asked how far it is, stopped, and fetched."""

from __future__ import annotations

from typing import TYPE_CHECKING

from flask import Flask, Response, abort, jsonify, request

from layout.values.errors import LayoutError
from templates_gen.desk.kits.opened import DeskError
from templates_gen.desk.page.rendering import part
from templates_gen.desk.server.doing import MAKES, make, stop
from templates_gen.desk.server.drawing import Drawing
from templates_gen.desk.server.forms import take
from templates_gen.desk.server.made import start_all, zip_name
from templates_gen.desk.server.pages import redirect_to
from templates_gen.desk.server.person import words
from templates_gen.desk.server.refusals import RefusedError, sentence, wants_values
from templates_gen.desk.server.slips import asked_of, slip_of, unit_in
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.making.job import Job
    from templates_gen.desk.server.state import Desk, Slip

_TYPES = {"pdf": "application/pdf", "svg": "image/svg+xml"}


def make_routes(app: Flask, desk: Desk, drawing: Drawing) -> None:  # noqa: ARG001
    """Adds these routes."""

    @app.post("/make")
    def begin() -> Response:
        form = request.form
        slip, what = slip_of(desk, form), form.get("do", "make")
        if what not in MAKES:
            raise RefusedError(400, DeskRefusal.BAD)
        with slip.lock:
            take(slip, form, unit_in(desk, form))
        done = make(desk, slip, what, as_is=form.get("as_is") == "yes")
        return _how_far(slip, wrong=done.wrong) if wants_values() else redirect_to(f"/?k={slip.id}#away")

    @app.get("/make/<name>")
    def ask(name: str) -> Response:
        _job(name)
        return _how_far(slip_of(desk, request.args), wrong=False)

    @app.post("/make/<name>/stop")
    def end(name: str) -> Response:
        slip = slip_of(desk, request.form)
        _job(name)
        stop(desk, name)
        if wants_values():
            return _how_far(slip, wrong=False)
        return redirect_to(f"/kits?k={slip.id}" if name == desk.job else f"/?k={slip.id}#away")

    @app.post("/make-all")
    def begin_all() -> Response:
        slip = slip_of(desk, request.form)
        try:
            start_all(desk)
        except LayoutError as error:
            return sentence(desk, 429, error.said(words(desk)))
        return redirect_to(f"/kits?k={slip.id}")

    @app.get("/zip/<name>")
    def whole(name: str) -> Response:
        job = _made(name)
        try:
            data = job.zip.read_bytes()
        except OSError:  # others took its place just now
            abort(404)
        answer = Response(data, content_type="application/zip")
        answer.headers.set("Content-Disposition", "attachment", filename=zip_name(job))
        return answer

    @app.get("/zip/<name>/<file>")
    def one(name: str, file: str) -> Response:
        _made(name)
        kind = _TYPES.get(file.rpartition(".")[2])
        if kind is None:
            abort(404)
        try:
            data = desk.making.file(name, file)
        except DeskError as error:
            return sentence(desk, 404, error.said(words(desk)))
        answer = Response(data, content_type=kind)
        answer.headers.set("Content-Disposition", "inline", filename=file)
        return answer

    def _how_far(slip: Slip, *, wrong: bool) -> Response:
        with slip.lock:
            asked = asked_of(desk, slip)
            refused, slip.refused = slip.refused, ""
        made = asked.made
        said = {
            "away": part("away", asked),
            "running": made.running,
            "said": made.trouble or made.proof,
            "wrong": wrong,
        }
        return jsonify(said | ({"refused": refused} if refused else {}))

    def _job(name: str) -> Job:
        try:
            return desk.making.job(name)
        except DeskError:
            return abort(404)

    def _made(name: str) -> Job:
        job = _job(name)
        return job if job.state.status == "made" else abort(404)
