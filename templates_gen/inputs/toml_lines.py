"""Lines of a TOML file that cannot be read: what stands outside quotes, and which brackets are open."""

from __future__ import annotations

import re
from collections.abc import Iterator


def open_brackets(lines: list[str]) -> list[tuple[int, int, str]]:
    """Line, column and sign of every bracket that is still open at the end of these lines."""
    found: list[tuple[int, int, str]] = []
    for number, line in enumerate(lines, 1):
        for at, sign in signs(line):
            if sign in "[{":
                found.append((number, at + 1, sign))
            elif sign in "]}" and found:
                found.pop()
    return found


def signs(line: str) -> Iterator[tuple[int, str]]:
    """Every character outside quotes and remarks."""
    quote = ""
    for at, sign in enumerate(line):
        if quote:
            quote = "" if sign == quote and line[at - 1] != "\\" else quote
        elif sign in "\"'":
            quote = sign
        elif sign == "#":
            return
        else:
            yield at, sign


def apart(line: str) -> tuple[str, str]:
    """A line and the remark at its end."""
    open_quotes = line.count('"') % 2 or line.count("'") % 2
    found = re.search(r"\s+#", line) if open_quotes else None
    quoted = re.match(r"(?:[^\"'#]|\"(?:\\.|[^\"])*\"|'[^']*')*", line)
    at = found.start() if found else quoted.end() if quoted and line[quoted.end() : quoted.end() + 1] == "#" else None
    start = None if at is None else len(line[:at].rstrip())
    return (line, "") if start is None else (line[:start], line[start:])
