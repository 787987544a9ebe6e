"""The last two steps as templates read them: what goes into the box, and taking it away."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.messages.catalogue import Catalogue
from layout.values.numerals import say_number
from templates_gen.desk.look.answers import SheetName
from templates_gen.desk.page.asked import Asked, Made
from templates_gen.desk.page.slip_views import SlipViews
from templates_gen.desk.page.waiting import LineLink
from templates_gen.messages.roles.desk_page import DeskPage

_FEW = 4
"""So many names stand in a sentence."""


@dataclass(frozen=True, slots=True)
class ContentView:
    """A product to tick; where it cannot be made, `why` says it and `gives` is the line that would change it."""

    name: str
    title: str
    amount: str
    ticked: bool
    why: str = ""
    gives: str = ""


@dataclass(frozen=True, slots=True)
class OpenView:
    """A file that was made, to be opened."""

    href: str
    title: str


@dataclass(frozen=True, slots=True)
class AwayView:
    """Taking it away: what stops it, how far it is, and what was made."""

    asks: str
    asked_do: str
    examples: tuple[LineLink, ...]
    example_said: str
    first_example: str
    wrong_line: str
    wrong_label: str
    trouble: str
    making: bool
    job: str
    done: int
    total: int
    said: str
    proof: str
    stale: bool
    zip: str
    zip_name: str
    size: str
    opens: tuple[OpenView, ...]


def contents_of(asked: Asked, names: Sequence[SheetName]) -> tuple[ContentView, ...]:
    """Every product that could be made, in the order of the pile."""
    say = asked.words.say
    return tuple(
        ContentView(
            each.file,
            each.title,
            say(DeskPage.SHEETS, count=each.sheets) if each.sheets else "",
            bool(each.sheets) and (asked.only is None or each.file in asked.only),
            each.why,
            each.gives,
        )
        for each in names
    )


def away_of(asked: Asked, slip: SlipViews) -> AwayView:
    """What the last step shows."""
    say, made = asked.words.say, asked.made
    still = slip.examples
    wrong = next((name for name in slip.names if name in slip.troubles), "")
    named = [link.label for link in still]
    role = DeskPage.EXAMPLE_LEFT if len(named) <= _FEW else DeskPage.EXAMPLE_MORE
    left = say(role, count=len(still), names=asked.words.listed(named[:_FEW])) if still and not asked.asks else ""
    return AwayView(
        asks=say(DeskPage.ASK_EXAMPLE) if asked.asks and still else "",
        asked_do=asked.asks,
        examples=still,
        example_said=left,
        first_example=still[0].name if still else "",
        wrong_line=wrong,
        wrong_label=slip.label(wrong) if wrong else "",
        trouble=made.trouble,
        making=made.running,
        job=made.job,
        done=made.done,
        total=max(made.total, 1),
        said=said_of(asked.words, made),
        proof=made.proof,
        stale=made.stale,
        zip=made.zip,
        zip_name=made.zip_name,
        size=say(DeskPage.ZIP_SIZE, size=say_number(made.megabytes, 1)) if made.zip else "",
        opens=tuple(OpenView(href, title) for href, title in made.opens),
    )


def said_of(words: Catalogue, made: Made) -> str:
    """How far the making is, in words."""
    if not made.total or not made.file:
        return words.say(DeskPage.MAKING_START)
    return words.say(DeskPage.MAKING, done=made.done, total=made.total, file=made.file)
