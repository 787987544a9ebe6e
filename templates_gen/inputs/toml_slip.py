"""What went wrong in the writing of a TOML file: the line with a caret under the place, and what to write instead."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from typing import NamedTuple

from layout.values.errors import ascii_safe
from templates_gen.inputs.toml_lines import apart, open_brackets
from templates_gen.inputs.toml_value import mended_value
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import Toml

_WIDEST = 76  # of a line that is shown, so that the caret stays below it on a narrow screen
_LONGEST = 1000  # of a line that is looked into
_CURLY = str.maketrans(
    {**dict.fromkeys("\u201c\u201d\u201e\u201f\u00ab\u00bb", '"'), **dict.fromkeys("\u2018\u2019\u201a", "'")}
)
_KEY = re.compile(r"\s*([A-Za-z0-9_\-]+)\s*=")
_HEADING = re.compile(r"\s*(\[{1,2})\s*([\w.\- ]+?)\s*(\]{0,2})\s*(#.*)?")


class Slip(NamedTuple):
    """Where it went wrong, counted from 1, what is wrong there, and the line to write (empty: unknown; None: none)."""

    line: int
    column: int
    what: str
    write: str | None = ""


def slip_in(text: str, error: tomllib.TOMLDecodeError) -> Slip:
    """The slip that made `text` unreadable. A line is only offered if the file can be read further with it."""
    found = _found(text, error)
    lines = text.split("\n")
    if any(len(line) > _LONGEST for line in lines[: found.line]):
        return found  # nobody typed that
    for slip in (*_twice(lines, found), *_in_line(lines, found), *_brackets(lines, found)):
        if not slip.write or _helps(lines, slip, found):
            return slip
    return found


def said(slip: Slip, text: str, like: str) -> str:
    """The slip in words, and below it the line with a caret; `like` is a line that is right."""
    line = text.split("\n")[slip.line - 1].rstrip("\r")
    part, before = _cut(line, slip.column - 1)
    shown, caret = _safe(part), " " * len(_safe(part[:before])) + "^"
    place = {"line": slip.line, "column": slip.column, "what": ascii_safe(slip.what), "shown": shown, "caret": caret}
    if slip.write is None:
        return message(Toml.AT, **place)
    if not slip.write:
        return message(Toml.AT_LIKE, like=like, **place)
    return message(Toml.AT_WRITE, instead=_safe(_cut(apart(slip.write)[0].strip(), 0)[0]), **place)


def _safe(part: str) -> str:
    return ascii_safe(part.replace("\t", " "))


def _cut(line: str, at: int) -> tuple[str, int]:
    """What of a long line is shown round the place `at`, and where that is in it."""
    if len(line) <= _WIDEST:
        return line, min(at, len(line))
    first = max(0, min(at - _WIDEST // 2, len(line) - _WIDEST))
    part = line[first : first + _WIDEST]
    return ("\u2026" if first else "") + part + ("\u2026" if first + _WIDEST < len(line) else ""), at - first + bool(
        first
    )


def _found(text: str, error: tomllib.TOMLDecodeError) -> Slip:
    """What the parser says itself."""
    what, _, place = str(error).rpartition(" (at ")
    found = re.fullmatch(r"line (\d+), column (\d+)\)", place)
    if found:
        line, column = int(found[1]), int(found[2])
    else:  # "(at end of document)"
        line, column = text.count("\n") + 1, len(text) - text.rfind("\n")
    return Slip(line, column, f"{what[:1].lower()}{what[1:]}")


def _helps(lines: list[str], slip: Slip, found: Slip) -> bool:
    """Whether the file with that line can be read further than it was."""
    text = "\n".join([*lines[: slip.line - 1], slip.write or "", *lines[slip.line :]])
    try:
        tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        return _found(text, error).line > max(slip.line, found.line)
    except (ValueError, RecursionError):
        return False
    return True


def _twice(lines: list[str], found: Slip) -> Iterator[Slip]:
    """The same key or table for a second time."""
    if not re.search("overwrite|twice|duplicate|redefine|mutate", found.what):
        return
    places, seen = _places(lines[: found.line]), lines[found.line - 1]
    first = places.index(places[-1]) + 1
    name = places[-1][1] or f"[{places[-1][0]}]"
    if first < found.line and places[-1] != ("", ""):
        what = message(Toml.TWICE_AT, name=name, line=first)
    else:
        what = message(Toml.TWICE)
    yield Slip(found.line, len(seen) - len(seen.lstrip()) + 1, what, None)


def _places(lines: list[str]) -> list[tuple[str, str]]:
    """The table and the key of every line; a heading has no key, a line of another kind neither of both."""
    table, places = "", []
    for line in lines:
        heading, key = _HEADING.fullmatch(line.rstrip("\r")), _KEY.match(line)
        table = heading[2] if heading else table
        places.append((table, key[1] if key else "") if heading or key else ("", ""))
    return places


def _brackets(lines: list[str], found: Slip) -> Iterator[Slip]:
    """Brackets and commas of lists and small tables."""
    body, remark = apart(lines[found.line - 1].rstrip("\r"))
    if re.search(r"\{[^}]*$", body):
        comma = "," if body.rstrip().endswith(",") else ""
        mended = f"{body.rstrip().removesuffix(',')}}}{comma}{remark}"
        yield Slip(found.line, body.rindex("{") + 1, message(Toml.BRACKET_OPEN), mended)
    mended = re.sub(r"(?<=[\w\"'\]}])[ \t]+(?=\w+[ \t]*=)", ", ", body[body.find("{") :])
    if "{" in body and mended not in body:
        yield found._replace(what=message(Toml.COMMA_BETWEEN), write=f"{body[: body.find('{')]}{mended}{remark}")
    before = next((number for number in range(found.line - 1, 0, -1) if apart(lines[number - 1])[0].strip()), 0)
    if before:
        entry, remark = apart(lines[before - 1].rstrip("\r"))
        if entry.rstrip()[-1] in "}]\"'":
            what = message(Toml.COMMA_BEHIND)
            yield Slip(before, len(entry.rstrip()), what, f"{entry.rstrip()},{remark}")
    yield from _unclosed(lines, found)


def _unclosed(lines: list[str], found: Slip) -> Iterator[Slip]:
    """A bracket that was opened in an earlier line, or in this one, and never closed."""
    open_at = open_brackets(lines[: found.line - 1])
    if not open_at:
        return
    number, column, sign = open_at[-1]
    closing = "]" if sign == "[" else "}"
    body, remark = apart(lines[number - 1].rstrip("\r"))
    what = message(Toml.BRACKET_BEFORE, line=found.line)
    yield Slip(number, column, what, f"{body.rstrip()}{closing}{remark}")
    yield Slip(number, column, message(Toml.BRACKET_THEN, line=found.line, closing=closing))


def _in_line(lines: list[str], found: Slip) -> Iterator[Slip]:
    """What is wrong within the line itself."""
    line = lines[found.line - 1].rstrip("\r")
    body, remark = apart(line)
    straight = body.translate(_CURLY)
    if straight != body:
        at = next(at for at, sign in enumerate(body) if sign != straight[at])
        yield Slip(found.line, at + 1, message(Toml.STRAIGHT_QUOTES), straight + remark)
    heading = _HEADING.fullmatch(line)
    if heading and len(heading[1]) != len(heading[3]):
        what = message(Toml.TABLE_BETWEEN, opening=heading[1], closing="]" * len(heading[1]))
        yield found._replace(what=what, write=f"{heading[1]}{heading[2]}{']' * len(heading[1])}")
    if name := re.fullmatch(r"\s*([\w.]+)\](\]?)\s*", body):
        write = f"[{'[' if name[2] else ''}{name[1]}]{name[2]}{remark}"
        yield found._replace(what=message(Toml.TABLE_BRACKETS), write=write)
    yield from _key_slips(body, remark, found)
    for what, value, start, end in mended_value(straight, found.column - 1):
        yield found._replace(what=what, write=f"{straight[:start]}{value}{straight[end:]}{remark}")


def _key_slips(body: str, remark: str, found: Slip) -> Iterator[Slip]:
    """No = or another sign for it, and a key that is no single word."""
    if words := re.fullmatch(r"(\s*)([A-Za-z]\w*(?:[ \t]+\w+)+)\s*(=.*)", body):
        what = message(Toml.ONE_WORD)
        yield found._replace(what=what, write=f"{words[1]}{'_'.join(words[2].split())} {words[3]}{remark}")
        return
    if pair := re.fullmatch(r"(\s*)([\w\-]+)\s*(?::=|:|\s)\s*(?!=)(\S.*)", body):
        what = message(Toml.EQUALS)
        yield found._replace(what=what, write=f"{pair[1]}{pair[2]} = {pair[3]}{remark}")
        for _, value, start, end in mended_value(f"{pair[2]} = {pair[3]}", len(pair[2]) + 3):
            mended = f"{pair[2]} = {pair[3]}"
            yield found._replace(what=what, write=f"{pair[1]}{mended[:start]}{value}{mended[end:]}{remark}")
    if re.match(r"\s*\w*[^\x00-\x7f]\w*\s*(=|$)", body):
        yield found._replace(what=message(Toml.KEY_LETTERS))
    if re.fullmatch(r"\s*[\w\-]+\s*=\s*", body):
        yield found._replace(what=message(Toml.VALUE))
