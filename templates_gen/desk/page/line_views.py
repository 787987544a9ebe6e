"""One line of the slip as its template reads it, and what is wrong with it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from markupsafe import Markup

from layout.messages.catalogue import Catalogue
from templates_gen.desk.page.also import also
from templates_gen.desk.slip.forms import Line
from templates_gen.desk.slip.sources import Source
from templates_gen.messages.roles.desk_page import DeskPage

FIRST = "name"
"""The line that stands above all steps."""
HOW = "].how"
"""Ends the name of the way of a reading, of which one always holds."""
_KIND = "frame.ends"
"""A line that needs no label beside its drawings."""
_WIDE = (FIRST, "yarns.warp", "yarns.weft")
SOURCES: Mapping[Source, DeskPage] = {
    "yours": DeskPage.YOURS_LONG,
    "example": DeskPage.EXAMPLE_LONG,
    "assumed": DeskPage.ASSUMED_LONG,
}
_WRITTEN = {"names": "texts", "lines": "texts", "flag": "flag"}
_NUMBERS = ("version", "whole", "number", "amount", "share", "count", "mass")


@dataclass(frozen=True, slots=True)
class UseView:
    """What can be clicked: the `value` that is sent, its `label`; `field` and `text` for scripts."""

    field: str
    text: str
    label: str

    @property
    def value(self) -> str:
        """As a form sends it."""
        return f"{self.field}={self.text}"


@dataclass(frozen=True, slots=True)
class TroubleView:
    """Why a line cannot be read, and what can be clicked instead."""

    say: str
    use: tuple[UseView, ...]


@dataclass(frozen=True, slots=True)
class ChoiceView:
    """One thing to choose."""

    value: str
    label: str
    picture: Markup
    chosen: bool


@dataclass(frozen=True, slots=True)
class LineView:
    """One line of the slip; `write` is what its text becomes in a kit file, `units` what a plain number takes."""

    name: str
    id: str
    label: str
    help: str
    control: str
    width: str
    value: str
    placeholder: str
    choices: tuple[ChoiceView, ...]
    source: Source
    source_said: str
    also: str
    write: str
    units: str
    trouble: TroubleView | None = None
    first: bool = False

    @property
    def groups(self) -> bool:
        """Whether it has several things to press, which a label cannot be for."""
        return self.control in ("pictures", "ticks")


def id_of(name: str) -> str:
    """The id of a line's control on the page."""
    return re.sub(r"[^A-Za-z0-9_]+", "-", name).strip("-")


def line_view(
    line: Line, typed: str, source: Source, words: Catalogue, said: str, trouble: TroubleView | None
) -> LineView:
    """One line with what is typed in it; `said` is its help."""
    control = _control(line)
    return LineView(
        name=line.name,
        id=id_of(line.name),
        label=words.say(line.label),
        help=said,
        control=control,
        width=_width(line, control),
        value=typed,
        placeholder=line.placeholder,
        choices=_choices(line, control, typed, words),
        source=source,
        source_said=words.say(SOURCES[source]),
        also=also(line, typed, words),
        write=_WRITTEN.get(line.spec.kind, "number" if line.spec.kind in _NUMBERS else "text"),
        units=" ".join(line.units or ()),
        trouble=trouble,
        first=line.name == FIRST,
    )


def _control(line: Line) -> str:
    if line.control == "pictures":
        return "pictures"
    if line.control in ("flag", "choice"):
        return "choice"
    if line.control == "names" and line.choices:
        return "ticks"
    if line.control in ("names", "lines"):
        return "lines"
    return "offered" if line.choices else "text"


def _width(line: Line, control: str) -> str:
    if line.name == _KIND:
        return "kind"
    if control in ("pictures", "ticks", "lines"):
        return "tall"
    return "wide" if line.name in _WIDE or control == "offered" else ""


def _choices(line: Line, control: str, typed: str, words: Catalogue) -> tuple[ChoiceView, ...]:
    """What can be chosen; a text that is no choice stays, so that nothing typed is lost."""
    chosen = {each.strip() for each in typed.splitlines()} if control == "ticks" else {line.chosen(typed) or typed}
    always = control == "pictures" or line.name.endswith(HOW)
    if always and line.usual and not typed.strip():
        chosen = {line.usual.value}
    left_out = control == "pictures" and line.usual and not typed.strip()
    found = [
        ChoiceView(
            "" if left_out and each == line.usual else each.value,
            words.say(each.label),
            Markup(each.picture),  # noqa: S704 (of our own)
            each.value in chosen,
        )
        for each in line.choices
    ]
    if control == "choice":
        if not always and all(each.value for each in found):
            empty = words.say(DeskPage.USUAL, choice=line.empty(words)) if line.usual else line.empty(words)
            found.insert(0, ChoiceView("", empty, Markup(), not typed.strip()))
        if not any(each.chosen for each in found):
            found.append(ChoiceView(typed, typed, Markup(), chosen=True))
    return tuple(found)
