"""From what a page shows to HTML: the whole page, and its parts for a page that is there."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from layout.messages.catalogue import Catalogue
from templates_gen.desk.page.asked import WORKING, Asked
from templates_gen.desk.page.kits_views import KitsAsked
from templates_gen.desk.page.line_views import id_of
from templates_gen.desk.page.other_views import keep_page, kits_page
from templates_gen.desk.page.view import PageView, file_said, page_view
from templates_gen.messages.roles.desk_page import DeskPage

if TYPE_CHECKING:
    from jinja2 import Environment

TEMPLATES = Path(__file__).parent / "templates"
_PARTS = ("rule", "notes", "away")
_OF_A_PLAN = ("head", "numbers", "strips", "live")
_OF_THE_PILE = ("pile", "contents")


@cache
def environment() -> Environment:
    """The templates, in which every value is escaped."""
    from jinja2 import Environment, FileSystemLoader, StrictUndefined

    made = Environment(
        loader=FileSystemLoader(TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    made.globals["DeskPage"] = DeskPage
    made.filters["idof"] = id_of
    return made


def page(asked: Asked) -> str:
    """The whole page."""
    return _rendered("desk.html", page_view(asked))


def kits(asked: KitsAsked) -> str:
    """The page of kits."""
    view = kits_page(asked)
    return environment().get_template("kits.html").render(page=view, say=asked.words.say)


def keep(slip: str, token: str, words: Catalogue, said: str) -> str:
    """The page that asks which one shall stay, where a file was changed elsewhere."""
    return environment().get_template("keep.html").render(page=keep_page(slip, token, words, said), say=words.say)


def part(name: Literal["away"], asked: Asked) -> str:
    """One part of the page: how far the making of files is."""
    return _rendered(f"{name}.html", page_view(asked, pile=False, shapes={}))


def answer(asked: Asked, shapes: Mapping[str, str], *, pile: bool) -> dict[str, object]:
    """What a page that is there needs to be as `page` would draw it; it has steps of these `shapes`.

    The `pile` of sheets takes longer than all the rest and is asked for when the slip rests.
    """
    view = page_view(asked, pile=pile, shapes=shapes)
    parts: dict[str, object] = {"file": _escaped(file_said(asked))}
    names = (*_PARTS, *(_OF_A_PLAN if view.drawn.head.name else ()), *(_OF_THE_PILE if view.drawn.names else ()))
    parts |= {name: _rendered(f"{name}.html", view) for name in names}
    if view.drawn.head.name:
        parts["frame"] = str(view.drawn.frame)
    if asked.view != WORKING:
        parts["sheet"] = _rendered("one.html", view)
    for step in view.steps:
        parts[f"step-{step.id}"] = {"shape": step.shape, "html": _rendered("step.html", view, step=step)}
    found: dict[str, object] = {"ok": not asked.read.troubles, "lines": view.states, "parts": parts}
    if view.drawn.ends is not None:
        found["ends"] = view.drawn.ends
    return found


def _rendered(name: str, view: PageView, **more: object) -> str:
    return environment().get_template(name).render(page=view, say=view.asked.words.say, **more)


def _escaped(text: str) -> str:
    from markupsafe import escape

    return str(escape(text))
