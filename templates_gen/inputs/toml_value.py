"""Values that people write where TOML wants quotes, a point or a small letter: what was meant."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

_NUMBER = r"[+-]?[0-9]*[.,]?[0-9]+"
_FLAGS = {"yes": "true", "on": "true", "true": "true", "no": "false", "off": "false", "false": "false"}


class Mended(NamedTuple):
    """What is wrong with the value, and what to put in the place from `start` to `end`."""

    what: str
    value: str
    start: int
    end: int


def mended_value(body: str, at: int) -> Iterator[Mended]:
    """How the value near the place `at` of a line may be written, the likeliest first."""
    equals = body.rfind("=", 0, at + 1)
    if equals < 0:
        return
    whole = len(body.rstrip())
    inside = re.match(r"[^,}\]]*", body[equals + 1 :])
    ends = [equals + 1 + inside.end()] if inside and re.search(r"[{\[]", body[:equals]) else [whole]
    for end in ends:
        raw = body[equals + 1 : end]
        start = equals + 1 + len(raw) - len(raw.lstrip())
        for what, value in _meant(raw.strip()):
            yield Mended(what, value, start, start + len(raw.strip()))


def _meant(raw: str) -> Iterator[tuple[str, str]]:
    if flag := _FLAGS.get(raw.lower()):
        yield "yes or no is written true or false, in small letters", flag
    if re.fullmatch(r"[+-]?[0-9]+,[0-9]+", raw):
        yield "a number has a decimal point, or stands in quotes with its unit", raw.replace(",", ".")
    if re.fullmatch(r"[+-]?(\.[0-9]+|0+[0-9]+(\.[0-9]*)?|[0-9]+\.)", raw):
        yield "a number has no zeros before it, and a figure on both sides of its point", _plain(raw)
    if inches := re.fullmatch(r'"([^"]+)""', raw):
        yield "an inch sign ends the quotes too early", f'"{inches[1]} in"'
    if outside := re.fullmatch(r'(["\'])([^"\']*)\1\s*([A-Za-z%][\w% /]*)', raw):
        yield "the unit must stand inside the quotes", f'"{outside[2]} {outside[3]}"'
    if re.fullmatch(rf"{_NUMBER}(?:[ -]?[0-9]+/[0-9]+)?\s*[A-Za-z%\"'][\w% /]*", raw):
        yield (
            "a number with its unit must stand in quotes",
            _quoted(raw.removesuffix('"') + (" in" if raw[-1] == '"' else "")),
        )
    if raw[-1:] == "}" and "=" in raw and raw[0] != "{":
        yield "this bracket is not opened", f"{{{raw}"
    if raw[:1] in ("'", '"') and raw[-1] == raw[0] and raw.count(raw[0]) > 2:
        yield "a quote inside the quotes ends them too early", _quoted(raw[1:-1])
    if raw[:1] in ("'", '"') and raw.count(raw[:1]) == 1:
        yield "the quotes are not closed", _quoted(raw[1:])
    if raw[-1:] in ("'", '"') and raw.count(raw[-1:]) == 1:
        yield "the quotes are not opened", _quoted(raw[:-1])
    if re.fullmatch(r'".*\\.*"', raw):
        yield "in quotes a backslash must be written twice", _quoted(raw[1:-1])
    if raw and raw[0] not in "\"'[{" and "=" not in raw:
        yield "text must stand in straight quotes", _quoted(raw)


def _plain(raw: str) -> str:
    sign, number = (raw[0], raw[1:]) if raw[0] in "+-" else ("", raw)
    units, _, decimals = number.partition(".")
    return f"{sign}{units.lstrip('0') or '0'}" + (f".{decimals}" if decimals else "")


def _quoted(text: str) -> str:
    return '"' + text.strip().replace("\\", "\\\\").replace('"', '\\"') + '"'
