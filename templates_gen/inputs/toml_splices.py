"""Pieces of a text put in and taken out, by characters and by lines; line ends stay what they are."""

from __future__ import annotations

from templates_gen.inputs.toml_spans import Span


def spliced(text: str, span: Span, new: str) -> str:
    """The text with `new` in that place."""
    return text[: span[0]] + new + text[span[1] :]


def with_line(text: str, at: int, line: str) -> str:
    """A line more behind the one that ends at `at`."""
    end = end_at(text, at) or usual_end(text)
    return spliced(text, (at, at), end + line)


def line_start(text: str, at: int) -> int:
    """The start of the line that `at` lies in."""
    return text.rfind("\n", 0, at) + 1


def line_end(text: str, at: int) -> int:
    """The end of the line that `at` lies in, before its line end."""
    end = text.find("\n", at)
    end = len(text) if end < 0 else end
    return end - 1 if end > at and text[end - 1 : end + 1] == "\r\n" else end


def end_at(text: str, at: int) -> str:
    """The line end at `at`; nothing at the end of the document."""
    return "\r\n" if text.startswith("\r\n", at) else text[at : at + 1]


def usual_end(text: str) -> str:
    """The line end of the last line that has one."""
    last = text.rfind("\n")
    return "\r\n" if last > 0 and text[last - 1] == "\r" else "\n"
