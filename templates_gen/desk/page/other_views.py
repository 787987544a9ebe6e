"""The pages beside the slip: the table of kits, and what is asked where a file was changed elsewhere."""

from __future__ import annotations

from dataclasses import dataclass

from layout.messages.catalogue import Catalogue
from templates_gen.desk.page.away_views import said_of
from templates_gen.desk.page.kits_views import KitRow, KitsAsked, beside, rows_of
from templates_gen.desk.page.view import LanguageView, languages_of
from templates_gen.messages.roles.desk_page import DeskPage


@dataclass(frozen=True, slots=True)
class KitsPage:
    """What the page of kits shows."""

    asked: KitsAsked
    language: str
    languages: tuple[LanguageView, ...]
    title: str
    token: str
    slip: str
    in_folder: int
    rows: tuple[KitRow, ...]
    compared: str
    made_said: str
    file_said: str = ""
    on_slip: bool = False


def kits_page(asked: KitsAsked) -> KitsPage:
    """The page of kits as it was asked for."""
    words = asked.words
    return KitsPage(
        asked,
        words.language,
        languages_of(words, asked.slip),
        words.say(DeskPage.KITS_TITLE),
        asked.token,
        asked.slip,
        sum(bool(each.file) for each in asked.kits),
        rows_of(asked),
        beside(asked.compared, words) if asked.compared else "",
        said_of(words, asked.made),
    )


@dataclass(frozen=True, slots=True)
class KeepPage:
    """What is asked where a file was changed elsewhere: `said` says so."""

    words: Catalogue
    language: str
    title: str
    token: str
    slip: str
    said: str
    file_said: str = ""
    on_slip: bool = False


def keep_page(slip: str, token: str, words: Catalogue, said: str) -> KeepPage:
    """The question which one shall stay."""
    return KeepPage(words, words.language, words.say(DeskPage.KEEP_TITLE), token, slip, said)
