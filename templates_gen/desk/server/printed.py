"""One sheet for the screen, and one file to print: names come from the kit's own list, never from a path."""

from __future__ import annotations

from typing import TYPE_CHECKING

from flask import Flask, Response, abort, request

from layout.cutting.stock.stock import Stock
from layout.plan import Plan
from layout.values.errors import LayoutError
from templates_gen.desk.look.drawn import known_files
from templates_gen.desk.look.sheets import sheet_view
from templates_gen.desk.server.drawing import OF_A_PAGE, Drawing
from templates_gen.desk.server.pages import redirect_to
from templates_gen.desk.server.person import words
from templates_gen.desk.server.refusals import RefusedError, sentence
from templates_gen.desk.server.slips import asked_of, slip_of
from templates_gen.files.proven import ProofError
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk, Slip


_DIGITS = 5  # of the number of a sheet


def printed(app: Flask, desk: Desk, drawing: Drawing) -> None:
    """Adds these routes."""

    @app.get("/sheet/<file>/<number>.svg")
    def sheet(file: str, number: str) -> Response:
        slip = slip_of(desk, request.args)
        plan, stock = _good(desk, slip)
        if file not in known_files(plan, stock) or not (number.isascii() and number.isdecimal()):
            return abort(404)
        wanted, said = int(number[:_DIGITS]), words(desk)
        view = drawing.within(OF_A_PAGE, lambda: sheet_view(plan, stock, file, wanted, said))
        if view is None:
            raise RefusedError(429, DeskRefusal.TOO_LARGE_TO_DRAW)
        if str(view.number) != number:
            return abort(404)
        return Response(view.svg, content_type="image/svg+xml")  # where there is no sheet, it says why

    @app.get("/pdf/<file>")
    def pdf(file: str) -> Response:
        slip = slip_of(desk, request.args)
        plan, stock = _now(desk, slip)
        if not file.endswith(".pdf") or file not in known_files(plan, stock):
            return abort(404)
        if stops(slip, f"pdf:{file}"):
            return redirect_to(f"/?k={slip.id}#away")
        try:
            data = desk.making.single(plan, file, stock)
        except ProofError as error:
            return sentence(desk, 400, words(desk).again(str(error)))
        except LayoutError as error:
            return sentence(desk, 400, error.said(words(desk)))
        answer = Response(data, content_type="application/pdf")
        answer.headers["Content-Disposition"] = f'inline; filename="{file}"'  # a name of the kit's own list
        return answer


def stops(slip: Slip, what: str, *, as_is: bool = False) -> bool:
    """Whether to stop once before something is made of lines that are still the example's; it is asked on the page."""
    with slip.lock:
        if as_is or slip.asks == what:
            slip.left_as_is, slip.asks = True, ""
        if not slip.examples or slip.left_as_is:
            slip.asks = ""
            return False
        slip.asks = what
        return True


def _good(desk: Desk, slip: Slip) -> tuple[Plan, Stock | None]:
    """The plan to look at: of what is typed, else the last that could be read."""
    with slip.lock:
        asked_of(desk, slip)
        if slip.good is None or slip.good.plan is None:
            return abort(404)
        return slip.good.plan, slip.good.stock


def _now(desk: Desk, slip: Slip) -> tuple[Plan, Stock | None]:
    """The plan of what is typed; RefusedError where a line cannot be read, since nobody should cut another strip."""
    with slip.lock:
        now = asked_of(desk, slip).read
        if now.plan is None or now.troubles:
            raise RefusedError(400, DeskRefusal.NOT_READ)
        return now.plan, now.stock
