"""The pages of kits: the table, opening, a new one, a copy, keeping, kits side by side."""

from __future__ import annotations

from typing import TYPE_CHECKING

from flask import Flask, Response, request

from layout.values.errors import LayoutError
from templates_gen.desk.kits.opened import Changed
from templates_gen.desk.page.rendering import keep as keep_page
from templates_gen.desk.page.rendering import kits as kits_page
from templates_gen.desk.server.drawing import OF_A_PAGE, Drawing
from templates_gen.desk.server.kept import HOW, copy, keep, laid, named, opened_in
from templates_gen.desk.server.pages import redirect_to
from templates_gen.desk.server.person import unit, words
from templates_gen.desk.server.refusals import UPLOAD_BYTES, RefusedError, sentence
from templates_gen.desk.server.slips import example_slip, slip_of, slip_shown
from templates_gen.desk.server.state import Slip
from templates_gen.desk.server.table import kits_asked
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk


def kit_routes(app: Flask, desk: Desk, drawing: Drawing) -> None:
    """Adds these routes."""

    @app.get("/kits")
    def kits() -> Response | str:
        return _table(slip_shown(desk), request.args.getlist("compare"))

    @app.get("/compare")
    def compare() -> Response | str:
        return _table(slip_shown(desk), request.args.getlist("compare"))

    @app.post("/new")
    def new() -> Response:
        return redirect_to(f"/?k={example_slip(desk).id}")

    @app.post("/open")
    def open_one() -> Response | str:
        slip = slip_of(desk, request.form)
        try:
            if "open" in request.form:
                found = named(desk, request.form["open"])
                shown = found if isinstance(found, Slip) else laid(desk, slip, found)
            else:
                shown = _uploaded(slip)
        except LayoutError as error:
            return _refused(slip, error)
        return redirect_to(f"/?k={shown.id}")

    @app.post("/copy")
    def copy_one() -> Response | str:
        slip = slip_of(desk, request.form)
        try:
            return redirect_to(f"/?k={copy(desk, request.form.get('open', '')).id}#name")
        except LayoutError as error:
            return _refused(slip, error)

    @app.get("/keep")
    def which_stays() -> Response | str:
        slip = slip_of(desk, request.args)
        if not slip.changed or slip.opened is None:
            return redirect_to(f"/?k={slip.id}")
        return keep_page(slip.id, desk.token, words(desk), slip.refused)

    @app.post("/keep")
    def keep_one() -> Response:
        slip, how = slip_of(desk, request.form), request.form.get("how", "asked")
        if how not in HOW:
            raise RefusedError(400, DeskRefusal.BAD)
        return redirect_to(kept(desk, slip, how))

    def _uploaded(slip: Slip) -> Slip:
        file = request.files.get("file")
        if file is None:
            raise RefusedError(400, DeskRefusal.BAD)
        data = file.stream.read(UPLOAD_BYTES + 1)
        if len(data) > UPLOAD_BYTES:
            raise RefusedError(413, DeskRefusal.TOO_LARGE, most=UPLOAD_BYTES // 1024)
        first, *_ = [laid(desk, slip, each) for each in desk.kits.upload(file.filename or "", data)]
        return first

    def _refused(slip: Slip, error: LayoutError) -> Response | str:
        return _table(slip, (), error.said(words(desk)))

    def _table(slip: Slip, ticked: list[str] | tuple[()], refused: str = "") -> Response | str:
        try:
            beside = [(each, opened_in(desk, each)[1]) for each in list(ticked)[:MOST_BESIDE]]
            asked = kits_asked(desk, slip, words(desk), unit(desk), beside, refused)
        except LayoutError as error:
            return sentence(desk, 400, error.said(words(desk)))
        page = drawing.within(OF_A_PAGE, lambda: kits_page(asked()))
        if page is None:
            raise RefusedError(429, DeskRefusal.TOO_OFTEN)
        return page


MOST_BESIDE = 4


def kept(desk: Desk, slip: Slip, how: str) -> str:
    """Keeps a slip, and where the page goes on: where its file was changed elsewhere, to the question which stays."""
    try:
        keep(desk, slip, how)
    except Changed as error:
        slip.refused = error.said(words(desk))
        return f"/keep?k={slip.id}"
    except LayoutError as error:
        slip.changed, slip.refused = False, error.said(words(desk))
    return f"/?k={slip.id}"
