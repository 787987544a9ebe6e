"""What is answered while somebody types: a question of the page, and the same for a browser without scripts."""

from __future__ import annotations

from typing import TYPE_CHECKING
from urllib.parse import urlencode

from flask import Flask, Response, jsonify, request
from markupsafe import Markup

from templates_gen.desk.page.line_views import id_of
from templates_gen.desk.page.rendering import answer
from templates_gen.desk.server.doing import Done, do
from templates_gen.desk.server.drawing import OF_A_PAGE, WHILE_TYPING, Drawing
from templates_gen.desk.server.forms import put, take
from templates_gen.desk.server.pages import redirect_to
from templates_gen.desk.server.person import remember, unit, words
from templates_gen.desk.server.refusals import RefusedError
from templates_gen.desk.server.slips import asked_of, slip_of, undrawn, unit_in, view_in
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk

_HIGHEST = 10**12
_MOST_USED = 40
_NOTE = Markup('<p class="note">{}</p>')


def looking(app: Flask, desk: Desk, drawing: Drawing) -> None:
    """Adds these routes."""

    @app.post("/look")
    def look() -> Response:
        form = request.form
        slip, nr, page = slip_of(desk, form), number_in(form.get("nr", "")), form.get("page", "")[:40]
        slip.arrived(page, nr)
        with slip.lock:
            if slip.late(page, nr):
                return jsonify({"nr": nr, "ok": True, "late": True})
            take(slip, form, unit_in(desk, form))
            asked = asked_of(desk, slip, view=view_in(form), shown=unit_in(desk, form))
        shapes = dict(pair.partition("=")[::2] for pair in form.get("shapes", "").split(","))
        rest = form.get("rest") == "yes"
        drawn = drawing.within(OF_A_PAGE if rest else WHILE_TYPING, lambda: answer(asked, shapes, pile=rest))
        if drawn is None:
            why = words(desk).say(DeskRefusal.TOO_LARGE_TO_DRAW)
            drawn = answer(undrawn(asked, why), shapes, pile=False)
            parts = drawn["parts"]
            if isinstance(parts, dict):
                parts["notes"] += _NOTE.format(why)
        said = jsonify({"nr": nr, **drawn})
        return _with_unit(said)

    @app.post("/slip")
    def post_slip() -> Response:
        form = request.form
        slip, where = slip_of(desk, form), ""
        with slip.lock:
            take(slip, form, unit_in(desk, form))
            if "use" in form:
                named, _, text = form["use"].partition("=")  # a row of a list has several lines
                fields = named.split()[:_MOST_USED]
                if not fields or not all(put(slip, field, text) for field in fields):
                    raise RefusedError(400, DeskRefusal.BAD)
                where = id_of(fields[0])
        what = form.get("do", "draw")
        done = do(desk, slip, what, as_is=form.get("as_is") == "yes") if what != "draw" else Done(where=where)
        address = done.address or f"/?{urlencode({'k': slip.id, 'view': view_in(form)})}"
        where = done.where
        return _with_unit(redirect_to(f"{address}#{where}" if where else address))

    def _with_unit(said: Response) -> Response:
        chosen = unit_in(desk, request.form)
        if chosen != unit(desk):
            remember(said, desk, "unit", chosen)
        return said


def number_in(text: str) -> int:
    """A number from a form; 0 for anything else."""
    return int(text) if text.isascii() and text.isdecimal() and len(text) <= len(str(_HIGHEST)) else 0
