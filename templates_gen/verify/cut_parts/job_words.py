"""What stands on the job sheet: its rows, and the values in a sentence of a known role."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping

from layout.drawing.shapes import Point
from layout.messages.catalogue import Role, fields_of
from layout.messages.english import ENGLISH
from layout.messages.roles import JobSheet
from templates_gen.verify import LIMIT
from templates_gen.verify.found_parts import FoundPart

_NUMBER = re.compile(r"\d{1,12}(?:\.\d{1,12})?")


def rows_of(seen: FoundPart) -> Mapping[str, str]:
    """The words behind every label, their lines put together."""
    words = _in_rows(seen)
    label_x = min((at.x for at, _ in words), default=0.0)
    rows: dict[str, str] = {}
    label = ""
    for at, text in words:
        if abs(at.x - label_x) < 1e-3:
            label = text
            rows[label] = ""
        else:
            rows[label] = f"{rows[label]} {text}".strip()
    return rows


def _in_rows(seen: FoundPart) -> list[tuple[Point, str]]:
    """All words from top to bottom, and from left to right among those whose baselines lie within the limit."""
    rows: list[list[tuple[Point, str]]] = []
    for at, text in sorted(seen.words(), key=lambda each: -each[0].y):
        if not rows or rows[-1][-1][0].y - at.y > LIMIT:
            rows.append([])
        rows[-1].append((at, text))
    return [each for row in rows for each in sorted(row, key=lambda each: each[0].x)]


def said_of(rows: Mapping[str, str], label: Role) -> str:
    """The words behind the label of that role; empty where there is none."""
    return rows.get(ENGLISH.say(label), "")


def values_in(words: str, role: Role, **known: object) -> Mapping[str, str] | None:
    """The values in a sentence of that role, beside those known; None where the words are another sentence."""
    unknown = {name: f"\0{name}\0" for name in fields_of(ENGLISH.messages[role]) if name not in known}
    pattern = re.escape(ENGLISH.say(role, **unknown, **known))
    for name, mark in unknown.items():
        pattern = pattern.replace(re.escape(mark), f"(?P<{name}>.+?)", 1)
    found = re.fullmatch(pattern, words)
    return found.groupdict() if found else None


def several_in(words: str) -> Iterator[tuple[str, str]]:
    """How often, and what, for every title in a row of titles that come more than once."""
    rest: str | None = words
    while rest:
        pair = values_in(rest, JobSheet.THEN)
        one, rest = (pair["before"], pair["after"]) if pair else (rest, None)
        found = values_in(one, JobSheet.TIMES)
        yield (found["count"], found["title"]) if found else ("", one)


def number_in(words: str | None) -> float:
    """The number that the words are; not a number where they are anything else."""
    return float(words) if words and _NUMBER.fullmatch(words) else math.nan
