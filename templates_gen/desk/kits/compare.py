"""Two to four kits side by side: what differs first, in the words as typed, lengths also in mm; what is alike apart."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.messages.catalogue import Catalogue
from layout.values.errors import FieldError
from layout.values.numerals import say_number
from layout.values.units import read_length
from templates_gen.desk.look.numbers import numbers
from templates_gen.desk.slip.forms import Line, Row, Table
from templates_gen.desk.slip.lines import steps
from templates_gen.desk.slip.reading import read
from templates_gen.desk.slip.texts import value_of
from templates_gen.messages.roles.desk_kits import DeskKits

FEWEST, MOST = 2, 4
_PLACES = 2
Typed = Mapping[str, str]


class Compared(NamedTuple):
    """One line of the kits: its label, what each kit says, and below each what that is in other words, or ""."""

    label: str
    values: tuple[str, ...]
    notes: tuple[str, ...]


class Comparison(NamedTuple):
    """Kits side by side: the lines and numbers in which they differ, then those in which they are alike."""

    names: tuple[str, ...]
    differing: tuple[Compared, ...]
    alike: tuple[Compared, ...]


def compare(kits: Sequence[Typed], words: Catalogue, unit: str) -> Comparison:
    """The kits, of which the first `MOST` are taken, said with `words`; computed numbers in `unit` ("cm" or "in")."""
    taken = kits[:MOST]
    found = [*_lines(taken, words)]
    found += _numbers(taken, words, unit, frozenset(row.label for row, _ in found))
    differing = tuple(row for row, same in found if not same)
    alike = tuple(row for row, same in found if same)
    return Comparison(tuple(kit.get("name", "") for kit in taken), differing, alike)


def _lines(kits: Sequence[Typed], words: Catalogue) -> Iterator[tuple[Compared, bool]]:
    """Every line that a kit fills in, in the order of the slip, and whether it is the same in all."""
    known = [_labelled(kit, words) for kit in kits]
    for name in _in_order(known):
        label, line = next(lines[name] for lines in known if name in lines)
        texts = [kit.get(name, "").strip() if name in lines else "" for kit, lines in zip(kits, known, strict=True)]
        if name != "name" and any(texts):
            meant = [_meant(line, text) for text in texts]
            values = tuple(_said(line, text, words) for text in texts)
            yield Compared(label, values, _in_mm(line, texts, words)), all(each == meant[0] for each in meant)


def _in_order(known: Sequence[Mapping[str, object]]) -> list[str]:
    """The names of all lines: those of the first kit, and each other one behind the line that it stands behind."""
    first, *others = map(list, known)
    for names in others:
        at = 0
        for name in names:
            if name not in first:
                first.insert(at, name)
            at = first.index(name) + 1
    return first


def _labelled(typed: Typed, words: Catalogue) -> dict[str, tuple[str, Line]]:
    """Each line by its name, with its label; two lines of one label are told apart by their step."""
    found: list[tuple[Line, str, str]] = []
    for step in steps(typed):
        title = words.say(step.title)
        rows = [row for group in step.groups for row in group.rows]
        found += [(line, label, title) for line, label in _of_rows(rows, "", words)]
    times = Counter(label for _, label, _ in found)
    return {
        line.name: (_within(title, label, words) if times[label] > 1 else label, line) for line, label, title in found
    }


def _of_rows(rows: Sequence[Row], outer: str, words: Catalogue) -> Iterator[tuple[Line, str]]:
    for row in rows:
        if isinstance(row, Table):
            for number, inner in enumerate(row.rows, 1):
                yield from _of_rows(inner, row.named(number, words), words)
        else:
            label = words.say(row.label)
            yield row, _within(outer, label, words) if outer else label


def _within(outer: str, inner: str, words: Catalogue) -> str:
    return words.say(DeskKits.WITHIN, outer=outer, inner=inner)


def _meant(line: Line, text: str) -> object:
    """The same for texts that say the same, in whatever unit, capitals and spaces."""
    if not text and line.usual:
        return line.usual.value
    if line.choices and (chosen := line.chosen(text)):
        return chosen
    mm = _mm(line, text)
    return " ".join(str(value_of(line.spec, text)).split()) if mm is None else mm


def _said(line: Line, text: str, words: Catalogue) -> str:
    """What a kit says, in the words of its line."""
    if not text:
        return line.empty(words)
    chosen = line.chosen(text)
    return next((words.say(each.label) for each in line.choices if each.value == chosen), text)


def _mm(line: Line, text: str) -> Fraction | None:
    if line.units is None or line.units[0] not in ("mm", "cm", "m"):
        return None
    try:
        return read_length(text).mm
    except FieldError:
        return None


def _in_mm(line: Line, texts: Sequence[str], words: Catalogue) -> tuple[str, ...]:
    """Below a length that is not that of the first kit: how long it is, and by how much more or less."""
    first, *others = (_mm(line, text) for text in texts)
    return ("", *("" if None in (first, each) else _difference(first, each, words) for each in others))


def _difference(first: Fraction | None, mm: Fraction | None, words: Catalogue) -> str:
    if first is None or mm is None or first == mm:
        return ""
    role = DeskKits.MORE if mm > first else DeskKits.LESS
    return words.say(role, mm=say_number(mm, _PLACES), difference=say_number(abs(mm - first), _PLACES))


def _numbers(
    kits: Sequence[Typed], words: Catalogue, unit: str, labels: frozenset[str]
) -> Iterator[tuple[Compared, bool]]:
    """Every number that the kits come to; none where a kit cannot be read. A label of a line is told apart."""
    plans = [read(kit, words).plan for kit in kits]
    known = [{row.id: row for row in numbers(plan, words, unit)} if plan else {} for plan in plans]
    for name in dict.fromkeys(each for rows in known for each in rows):
        rows = [each.get(name) for each in known]
        label = next(row.name for row in rows if row)
        label = _within(words.say(DeskKits.NUMBERS), label, words) if label in labels else label
        values = tuple((row.value or row.needs_said) if row else words.say(DeskKits.NO_NUMBER) for row in rows)
        notes = tuple(row.second if row and row.value else "" for row in rows)
        yield Compared(label, values, notes), len(set(zip(values, notes, strict=True))) == 1
