"""What lies beside the slip, as templates read it: head, numbers, frame, strips, the pile, and one printed sheet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from hashlib import blake2s

from markupsafe import Markup

from layout.cutting.stock.stock import Stock
from layout.plan import Plan
from templates_gen.desk.look.answers import Number, SheetName, StripView
from templates_gen.desk.look.frames import frame
from templates_gen.desk.look.numbers import numbers
from templates_gen.desk.look.sheets import screen_sheet, sheet_name, sheet_names
from templates_gen.desk.look.strips import strip
from templates_gen.desk.page.asked import WORKING, Asked
from templates_gen.desk.page.ends import ends_of
from templates_gen.messages.roles.desk_page import DeskPage


@dataclass(frozen=True, slots=True)
class HeadView:
    """The name of the kit and what is said under it."""

    name: str = ""
    lines: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class StripShown:
    """The strip of one end of the frame, its size in mm; `why` says why there is no picture."""

    end: str
    svg: Markup
    mm: tuple[float, float]
    why: str


@dataclass(frozen=True, slots=True)
class PileView:
    """One file of the pile; `many` says of how many sheets it is, if of more than one."""

    view: str
    file: str
    title: str
    many: str
    picture: str
    here: bool


@dataclass(frozen=True, slots=True)
class PageLink:
    """One of the sheets of a file."""

    view: str
    said: str
    here: bool


@dataclass(frozen=True, slots=True)
class OneView:
    """One printed sheet; everything is empty where the working sheet is shown."""

    svg: str = ""
    pdf: str = ""
    pages: tuple[PageLink, ...] = ()
    title: str = ""


@dataclass(frozen=True, slots=True)
class Drawn:
    """All of it; of a slip that was never read, nothing."""

    head: HeadView = HeadView()
    numbers: tuple[Number, ...] = ()
    frame: str = ""
    ends: dict[str, object] | None = None
    strips: tuple[StripShown, ...] = ()
    live: str = ""
    names: tuple[SheetName, ...] = ()
    pile: tuple[PileView, ...] = ()
    one: OneView = OneView()


def drawn(asked: Asked, plan: Plan, stock: Stock | None, *, pile: bool) -> Drawn:
    """What a plan looks like to who asks; the pile takes longer than all the rest, and may be left out."""
    shown = frame(plan, asked.words, asked.unit)
    strips = strip(plan, "near", asked.words), strip(plan, "far", asked.words)
    names = sheet_names(plan, stock, asked.words) if pile else ()
    said = replace(plan, words=asked.words)
    return Drawn(
        _head(asked, said),
        numbers(plan, asked.words, asked.unit),
        Markup(shown.svg),  # noqa: S704 (of our own writer, which escapes every name)
        ends_of(shown, strips),
        tuple(_strip(end, each) for end, each in zip(("near", "far"), strips, strict=True)),
        said.count_words,
        names,
        _pile(asked, names),
        _one(asked, plan, stock),
    )


def _head(asked: Asked, plan: Plan) -> HeadView:
    say, kit = asked.words.say, plan.kit
    line = say(DeskPage.HEAD_YARNS, warp=kit.warp, weft=kit.weft, counted=plan.count_words)
    return HeadView(kit.name, (say(DeskPage.HEAD_WORKING, sett=plan.sett_words), line))


def _strip(end: str, view: StripView) -> StripShown:
    return StripShown(end, Markup(view.svg), view.mm, view.why)  # noqa: S704 (of our own writer)


def _pile(asked: Asked, names: Sequence[SheetName]) -> tuple[PileView, ...]:
    """Every file that would be made; the address of a picture says what was typed, so that an old one is not shown."""
    typed = "\n".join(f"{name}={text}" for name, text in sorted((asked.good_typed or asked.typed).items()))
    at = blake2s(typed.encode(), digest_size=6).hexdigest()
    return tuple(
        PileView(
            f"{each.file}:1",
            each.file,
            each.title,
            asked.words.say(DeskPage.SHEETS, count=each.sheets) if each.sheets > 1 else "",
            f"{address('sheet', f'{each.file}/1.svg', asked)}&at={at}",
            here=asked.view.startswith(f"{each.file}:"),
        )
        for each in names
        if each.sheets
    )


def _one(asked: Asked, plan: Plan, stock: Stock | None) -> OneView:
    """The printed sheet that is looked at."""
    file, _, number = asked.view.partition(":")
    name = None if asked.view == WORKING else sheet_name(plan, stock, file, asked.words)
    if name is None or not name.sheets:
        return OneView()
    at = min(max(int(number) if number.isdecimal() else 1, 1), name.sheets)
    pages = tuple(
        PageLink(f"{file}:{each}", asked.words.say(DeskPage.SHEET_NUMBER, number=each), here=each == at)
        for each in range(1, name.sheets + 1)
        if name.sheets > 1
    )
    svg = Markup(screen_sheet(plan, stock, file, at))  # noqa: S704 (of our own writer)
    return OneView(svg, address("pdf", file, asked), pages, name.title)


def address(what: str, rest: str, asked: Asked) -> str:
    """Where something of the slip is fetched."""
    return f"/{what}/{rest}?k={asked.slip}"
