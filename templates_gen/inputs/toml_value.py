"""Values that people write where TOML wants quotes, a point or a small letter: what was meant."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import Toml

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
        yield message(Toml.FLAG), flag
    if re.fullmatch(r"[+-]?[0-9]+,[0-9]+", raw):
        yield message(Toml.POINT), raw.replace(",", ".")
    if re.fullmatch(r"[+-]?(\.[0-9]+|0+[0-9]+(\.[0-9]*)?|[0-9]+\.)", raw):
        yield message(Toml.ZEROS), _plain(raw)
    if inches := re.fullmatch(r'"([^"]+)""', raw):
        yield message(Toml.INCH_SIGN), f'"{inches[1]} in"'
    if outside := re.fullmatch(r'(["\'])([^"\']*)\1\s*([A-Za-z%][\w% /]*)', raw):
        yield message(Toml.UNIT_INSIDE), f'"{outside[2]} {outside[3]}"'
    if re.fullmatch(rf"{_NUMBER}(?:[ -]?[0-9]+/[0-9]+)?\s*[A-Za-z%\"'][\w% /]*", raw):
        yield (
            message(Toml.UNIT_QUOTED),
            _quoted(raw.removesuffix('"') + (" in" if raw[-1] == '"' else "")),
        )
    if raw[-1:] == "}" and "=" in raw and raw[0] != "{":
        yield message(Toml.BRACKET_CLOSED), f"{{{raw}"
    if raw[:1] in ("'", '"') and raw[-1] == raw[0] and raw.count(raw[0]) > 2:
        yield message(Toml.QUOTE_INSIDE), _quoted(raw[1:-1])
    if raw[:1] in ("'", '"') and raw.count(raw[:1]) == 1:
        yield message(Toml.QUOTES_OPEN), _quoted(raw[1:])
    if raw[-1:] in ("'", '"') and raw.count(raw[-1:]) == 1:
        yield message(Toml.QUOTES_CLOSED), _quoted(raw[:-1])
    if re.fullmatch(r'".*\\.*"', raw):
        yield message(Toml.BACKSLASH), _quoted(raw[1:-1])
    if raw and raw[0] not in "\"'[{" and "=" not in raw:
        yield message(Toml.TEXT_QUOTED), _quoted(raw)


def _plain(raw: str) -> str:
    sign, number = (raw[0], raw[1:]) if raw[0] in "+-" else ("", raw)
    units, _, decimals = number.partition(".")
    return f"{sign}{units.lstrip('0') or '0'}" + (f".{decimals}" if decimals else "")


def _quoted(text: str) -> str:
    return '"' + text.strip().replace("\\", "\\\\").replace('"', '\\"') + '"'
