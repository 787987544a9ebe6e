"""The page of the desk as its templates read it."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple
from urllib.parse import urlencode

from layout.messages.catalogue import Catalogue
from templates_gen.desk.page.asked import Asked
from templates_gen.desk.page.away_views import AwayView, ContentView, away_of, contents_of
from templates_gen.desk.page.line_views import LineView
from templates_gen.desk.page.rule_views import NoteView, RuleView, notes_of, rule_of
from templates_gen.desk.page.sheet_views import Drawn, address, drawn
from templates_gen.desk.page.slip_views import SlipViews
from templates_gen.desk.page.step_views import StepView
from templates_gen.messages.roles.desk_page import DeskPage

LANGUAGES = {"en": "English", "es": "Español", "de": "Deutsch", "fr": "Français"}
_LEGEND = {"yours": DeskPage.YOURS, "example": DeskPage.EXAMPLE, "assumed": DeskPage.ASSUMED}
_FOR_SCRIPTS = {
    "source-yours": DeskPage.YOURS_LONG,
    "source-example": DeskPage.EXAMPLE_LONG,
    "source-assumed": DeskPage.ASSUMED_LONG,
    "real": DeskPage.REAL,
    "about-real": DeskPage.ABOUT_REAL,
    "unmeasured": DeskPage.UNMEASURED,
}


class LegendView(NamedTuple):
    """What a dot means."""

    source: str
    said: str


class LanguageView(NamedTuple):
    """A language that the page can be in."""

    code: str
    name: str
    href: str
    here: bool


class StripPdfs(NamedTuple):
    """Where the PDF of each strip is."""

    near: str
    far: str


@dataclass(frozen=True, slots=True)
class PageView:
    """Everything that the templates of the page read."""

    asked: Asked
    language: str
    languages: tuple[LanguageView, ...]
    title: str
    token: str
    slip: str
    unit: str
    view: str
    file_said: str
    save_as: str
    touched: bool
    all_example: bool
    refused: str
    happened: str
    legend: tuple[LegendView, ...]
    first_line: LineView
    states: dict[str, dict[str, object]]
    steps: tuple[StepView, ...]
    rule: tuple[RuleView, ...]
    notes: tuple[NoteView, ...]
    contents: tuple[ContentView, ...]
    away: AwayView
    drawn: Drawn
    ends: str
    strip_pdf: StripPdfs
    for_scripts: tuple[tuple[str, str], ...]
    first_numbers: int = 8
    on_slip: bool = True


def page_view(asked: Asked, *, pile: bool = True, shapes: Mapping[str, str] | None = None) -> PageView:
    """The whole page of a slip as it was asked for.

    Without the `pile` it is there much sooner; of a page with steps of these `shapes`, only other steps are drawn.
    """
    say, slip = asked.words.say, SlipViews(asked)
    shown = drawn_of(asked, pile=pile)
    name = asked.typed.get("name", "").strip()
    return PageView(
        asked=asked,
        language=asked.words.language,
        languages=languages_of(asked.words, asked.slip),
        title=say(DeskPage.PAGE_TITLE, name=name) if name else say(DeskPage.TITLE),
        token=asked.token,
        slip=asked.slip,
        unit=asked.unit,
        view=asked.view,
        file_said=file_said(asked),
        save_as=asked.file or "kit.toml",
        touched=asked.touched,
        all_example=bool(asked.examples) and not asked.touched and not asked.file,
        refused=asked.refused,
        happened=asked.happened,
        legend=tuple(LegendView(source, say(role)) for source, role in _LEGEND.items()),
        first_line=slip.first_line,
        states=slip.states(),
        steps=slip.steps(shapes),
        rule=rule_of(asked, slip),
        notes=notes_of(asked, slip, drawn=bool(shown.head.name)),
        contents=contents_of(asked, shown.names),
        away=away_of(asked, slip),
        drawn=shown,
        ends=as_json(shown.ends),
        strip_pdf=StripPdfs(*(address("pdf", f"strip-{end}.pdf", asked) for end in ("near", "far"))),
        for_scripts=for_scripts(asked),
    )


def drawn_of(asked: Asked, *, pile: bool) -> Drawn:
    """What is drawn: of what is typed, else of the last that could be read."""
    good = asked.read if asked.read.plan else asked.good
    return drawn(asked, good.plan, good.stock, pile=pile) if good and good.plan else Drawn()


def languages_of(words: Catalogue, slip: str) -> tuple[LanguageView, ...]:
    """The languages to choose from, each by its own name."""
    return tuple(
        LanguageView(code, name, f"/language?{urlencode({'to': code, 'k': slip})}", words.language == code)
        for code, name in LANGUAGES.items()
    )


def file_said(asked: Asked) -> str:
    """Which file the slip is of, and when it was kept."""
    say = asked.words.say
    if not asked.file:
        return say(DeskPage.FILE_EXAMPLE if asked.examples else DeskPage.FILE_NONE)
    if asked.touched:
        return say(DeskPage.FILE_CHANGED, file=asked.file)
    return say(DeskPage.FILE_KEPT, file=asked.file, time=asked.kept) if asked.kept else asked.file


def for_scripts(asked: Asked) -> tuple[tuple[str, str], ...]:
    """The words that scripts put into the page; a number that only they know keeps its name in braces."""
    say = asked.words.say
    said = {name: say(role) for name, role in _FOR_SCRIPTS.items()}
    said["percent"] = say(DeskPage.PERCENT, percent="{percent}")
    said["measured"] = say(DeskPage.MEASURED, dots="{dots}")
    said["decimal"] = asked.words.decimal
    return tuple(said.items())


def as_json(values: object) -> str:
    """Values for an attribute of the page."""
    return json.dumps(values, ensure_ascii=False, separators=(",", ":"))
