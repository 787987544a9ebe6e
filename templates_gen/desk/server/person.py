"""What a browser says of the person before it: the language of the page, and the unit of plain numbers."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from flask import Response, request

from layout.messages.catalogue import Catalogue
from templates_gen.languages.catalogues import catalogue_of

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk

LANGUAGES = ("en", "es", "de", "fr")
Unit = Literal["cm", "in"]
UNITS: tuple[Unit, ...] = ("cm", "in")
_YEAR = 365 * 24 * 3600


def words(desk: Desk) -> Catalogue:
    """The catalogue of the page: as chosen, else as the browser prefers, else English."""
    chosen = request.cookies.get(desk.cookie("language"), "")
    if chosen not in LANGUAGES:
        chosen = request.accept_languages.best_match(LANGUAGES, "en") or "en"
    return catalogue_of(chosen)


def unit(desk: Desk) -> Unit:
    """The unit of plain numbers: as chosen, else centimetres."""
    return "in" if request.cookies.get(desk.cookie("unit")) == "in" else "cm"


def remember(answer: Response, desk: Desk, what: Literal["language", "unit"], value: str) -> None:
    """Keeps what was chosen, for this desk alone."""
    answer.set_cookie(desk.cookie(what), value, max_age=_YEAR, httponly=True, samesite="Strict")
