"""The printer check: its spans as rows of two marks each. Which check a sheet is, is known without a kit."""

from __future__ import annotations

import json
from collections.abc import Iterator
from functools import partial
from math import dist
from typing import get_args, get_type_hints

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point
from layout.kit.kit import Paper
from layout.kit.paper_size import PAPERS, named_size
from layout.messages.catalogue import Message
from layout.paper.printer_check.marks import BOLD, FINE, LETTERS
from layout.paper.printer_check.pages import NAME
from layout.paper.printer_check.places import places_on
from templates_gen.codes.digest import digest_of
from templates_gen.files.printer_check import FILE, CheckAsked, about_check, check_output
from templates_gen.measuring.groups import Group, Mark
from templates_gen.measuring.known_sheets import Source
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import MarkName, RowName
from templates_gen.scan.seen import Line


def check_sources(metrics: FontMetrics) -> Iterator[Source]:
    """The checks on every paper that has a name, in every language."""
    for language in get_args(get_type_hints(Paper)["language"]):
        for name in PAPERS:
            yield check_source(Paper(named_size(name), language=language), metrics)


def check_source(paper: Paper, metrics: FontMetrics) -> Source:
    """The check on a paper, in its language."""
    asked = CheckAsked(paper)
    inputs = about_check(asked).inputs
    draw = partial(check_output, asked, metrics)
    return Source(digest_of(inputs), FILE, paper.size.words, draw, groups=partial(_on_sheet, paper))


def carried_check(inputs: str, metrics: FontMetrics) -> Source:
    """The check that a file carries; KeyError, TypeError or a LayoutError where it carries none."""
    from templates_gen.inputs.printer_check_options import check_paper

    said = json.loads(inputs)["check"]
    return check_source(check_paper(str(said["paper"]), str(said["language"])), metrics)


def _on_sheet(paper: Paper, number: int) -> tuple[Group, ...]:
    """The spans, all of which stand on the first sheet."""
    return tuple(_spans(paper)) if number == 1 else ()


def _spans(paper: Paper) -> Iterator[Group]:
    for (one, other), letters in zip(places_on(paper).ends, LETTERS, strict=True):
        long = dist(one, other)
        along = Point((other.x - one.x) / long, (other.y - one.y) / long)
        small = letters not in LETTERS[:2]
        marks = [
            Mark(Message(MarkName.LETTER, {"letter": letter}), at, tuple(_lines(place, along, small=small)))
            for place, letter, at in ((one, letters[0], 0.0), (other, letters[1], long))
        ]
        title = message(RowName.SPAN, first=letters[0], second=letters[1])
        yield Group(f"{NAME}-{''.join(letters)}", title, None, along, tuple(marks))


def _lines(place: Point, along: Point, *, small: bool) -> Iterator[Line]:
    """What shows an end: its bold parts, which a rule does not cross; of a small mark the fine part between them."""
    fine, bold = FINE[small], BOLD[small]
    reaches = ((fine, -fine),) if small else ((bold, fine), (-fine, -bold))
    for start, end in reaches:
        one, other = (Point(place.x - reach * along.y, place.y + reach * along.x) for reach in (start, end))
        yield Line(one, other, (Pen.HELP if small else Pen.EDGE).ink.width)
