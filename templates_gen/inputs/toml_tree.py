"""Where every header, key and value of a TOML document stands, entries of lists too, each by the path that leads to it.

Only places are found here, in a document that is known to be right; what it means is for tomllib to say.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Literal, NamedTuple

from templates_gen.inputs.toml_spans import (
    KEY,
    PLAIN,
    STRING,
    Span,
    keys_in,
    matched,
    past_comma,
    past_idle,
    past_space,
)

Path = tuple[str | int, ...]
"""The keys and the places in lists, from 0, that lead to a value from the root."""
ROOT: Path = ()
Reading = Callable[[int], int]


class Head(NamedTuple):
    """A line such as [frame], or [[kits]] where it is `listed`; `span` is from its bracket to the closing one."""

    path: Path
    span: Span
    listed: bool


class Place(NamedTuple):
    """A key and its value, or an entry of a list, whose key is its value.

    `leaf` is the last part of the key as it is written. A line below the header of `table`, braces or a list hold it.
    """

    path: Path
    key: Span
    leaf: Span
    value: Span
    holder: Literal["line", "braces", "list"]
    table: Path


class Tree:
    """The places of one text, in its order: a table before what it holds."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.heads: list[Head] = []
        self.places: list[Place] = []
        self._lists: dict[Path, int] = {}
        self._read()
        self._by_path = {place.path: place for place in self.places}

    def place(self, path: Path) -> Place | None:
        """What stands at that path, written as one value."""
        return self._by_path.get(path)

    def inside(self, path: Path) -> list[Place]:
        """What stands on lines of its own below that path."""
        return [each for each in self.places if each.holder == "line" and each.path[: len(path)] == path]

    def head(self, path: Path) -> Head | None:
        """The header of that table."""
        return next((head for head in self.heads if head.path == path), None)

    def end_of(self, head: Head | None) -> int:
        """Where the lines below a header end: at the next one; None is the top of the document."""
        start = head.span[1] if head else 0
        return next((each.span[0] for each in self.heads if each.span[0] >= start), len(self.text))

    def _read(self) -> None:
        table: Path = ROOT
        at = past_idle(self.text, 0)
        while at < len(self.text):
            if self.text[at] == "[":
                head = self._head(at)
                self.heads.append(head)
                table, at = head.path, head.span[1]
            else:
                at = self._entry(at, table, table, "line")
            at = past_idle(self.text, at)

    def _head(self, at: int) -> Head:
        listed = self.text.startswith("[[", at)
        brackets = 2 if listed else 1
        key = matched(KEY, self.text, past_space(self.text, at + brackets))
        *outer, leaf = keys_in(key[0])
        path: Path = ROOT
        for part in outer:
            path = (*path, part)
            path = (*path, self._lists[path]) if path in self._lists else path
        path = (*path, leaf)
        if listed:
            self._lists[path] = self._lists.get(path, -1) + 1
            path = (*path, self._lists[path])
        return Head(path, (at, past_space(self.text, key.end()) + brackets), listed)

    def _entry(self, at: int, outer: Path, table: Path, holder: Literal["line", "braces"]) -> int:
        """Reads the entry that begins at `at`, and says where it ends."""
        key = matched(KEY, self.text, at)
        path = (*outer, *keys_in(key[0]))
        start = past_idle(self.text, past_space(self.text, key.end()) + 1)
        return self._value(start, Place(path, key.span(), key.span(1), (start, start), holder, table))

    def _value(self, at: int, place: Place) -> int:
        here = len(self.places)
        self.places.append(place)
        end = self._end_of_value(at, place)
        self.places[here] = place._replace(value=(at, end))
        if place.holder == "list":
            self.places[here] = self.places[here]._replace(key=(at, end), leaf=(at, end))
        return end

    def _end_of_value(self, at: int, place: Place) -> int:
        if self.text[at] == "{":
            return self._all(at, "}", lambda start: self._entry(start, place.path, place.table, "braces"))
        if self.text[at] == "[":
            numbers = iter(range(len(self.text)))
            return self._all(at, "]", lambda start: self._item(start, place, next(numbers)))
        if string := STRING.match(self.text, at):
            return string.end()
        return at + len(matched(PLAIN, self.text, at)[0].rstrip())

    def _item(self, at: int, place: Place, number: int) -> int:
        return self._value(at, Place((*place.path, number), (at, at), (at, at), (at, at), "list", place.table))

    def _all(self, at: int, end: str, read: Reading) -> int:
        at = past_idle(self.text, at + 1)
        while self.text[at] != end:
            at = past_comma(self.text, read(at))
        return at + 1


def outlines(tree: Tree) -> Iterator[Span]:
    """The spans of values that a line holds: what looks like a remark in them may be none."""
    return (place.value for place in tree.places if place.holder == "line")
