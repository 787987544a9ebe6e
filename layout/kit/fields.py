"""One plain value read against its line in the table of inputs. Refusals name the key and give its example."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from layout.drawing.metrics import FontMetrics
from layout.kit.box_fields import read_card, read_lines, read_link, read_mass, read_names, read_sides, read_text
from layout.kit.input import Input
from layout.kit.inputs import (
    LEAST_PAPER,
    LEAST_SETT,
    LEAST_TENSION,
    MOST_PAPER,
    MOST_SETT,
    MOST_TENSION,
    VERSION,
)
from layout.kit.languages import NAMES, code_of
from layout.kit.likeness import closest
from layout.kit.names import read_name
from layout.kit.number_fields import (
    read_amount,
    read_count_of,
    read_deviation,
    read_share,
    read_system,
    read_whole,
)
from layout.kit.paper_size import OWN, PAPERS, POINT, PaperSize, named_size
from layout.messages.catalogue import Figure, Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Entry, Value
from layout.values.errors import FieldError, shown
from layout.values.forces import Force, read_force
from layout.values.units import Length, Sett, exact_length, read_length, read_sett, read_size, say_length

MOST_NUMBER = 1_000_000
_LONGEST_WORD = 60
_COLOUR = re.compile("#[0-9a-fA-F]{6}")


def read_field(spec: Input, value: object, key: str, metrics: FontMetrics) -> Any:
    """The value that `value` says for `spec`; FieldError at `key` with the example from the table."""
    value = tame(value)
    try:
        if spec.kind in _OF_LETTERS:
            return _OF_LETTERS[spec.kind](spec, value, metrics)
        return _READERS[spec.kind](spec, value)
    except FieldError as error:
        own = error.example if error.example.startswith(f"{spec.leaf} = ") else ""
        raise error.at(key, own or example_of(spec)) from None


def example_of(spec: Input) -> str:
    """The example of `spec` as a line of the kit file."""
    return f"{spec.leaf} = {spec.example}"


def _version(_: Input, value: object) -> int:
    if isinstance(value, bool) or value != VERSION or not isinstance(value, int):
        raise FieldError("", Entry.VERSION, shown(value), "", version=VERSION)
    return VERSION


def _length(spec: Input, value: object) -> Length:
    length = read_length(value)
    if spec.low is not None and spec.high is not None and not spec.low.mm <= length.mm <= spec.high.mm:
        limits = {"low": say_length(spec.low), "high": say_length(spec.high)}
        if meant := _other_unit(spec, length):
            raise FieldError("", Entry.LENGTH_BETWEEN_MEANT, shown(value), "", **limits, meant=meant)
        raise FieldError("", Entry.LENGTH_BETWEEN, shown(value), "", **limits)
    return length


def _other_unit(spec: Input, length: Length) -> str:
    """The same number in the next unit where that fits, such as "30 cm" for "30 m"; else nothing."""
    nearest = {"m": ("cm", "mm"), "cm": ("mm", "m"), "mm": ("cm",), "ft": ("in",), "yd": ("in",)}.get(length.unit, ())
    for unit in nearest:
        meant = f"{exact_length(length).split()[0]} {unit}"
        if spec.low and spec.high and spec.low.mm <= read_length(meant).mm <= spec.high.mm:
            return say_length(read_length(meant))
    return ""


_OR_A_WORD: Mapping[Role, Role] = {
    Value.LENGTH: Entry.WIDTH,
    Entry.LENGTH_BETWEEN: Entry.WIDTH_BETWEEN,
    Entry.LENGTH_BETWEEN_MEANT: Entry.WIDTH_BETWEEN_MEANT,
}
"""What is refused of a length or a word where the length alone would be refused."""


def _fitting(spec: Input, value: object) -> Length | None:
    """A length, or the word that says that it is to be found: None."""
    return None if _is_word(spec, value) else _length_or_word(spec, value)


def _heading(spec: Input, value: object) -> Length | str:
    """A length, or the word itself."""
    return spec.word if _is_word(spec, value) else _length_or_word(spec, value)


def _is_word(spec: Input, value: object) -> bool:
    return isinstance(value, str) and " ".join(value.lower().split()) == spec.word


def _length_or_word(spec: Input, value: object) -> Length:
    try:
        return _length(spec, value)
    except FieldError as error:
        role = _OR_A_WORD.get(error.needed.role)
        if role is None:
            raise
        raise FieldError("", role, error.got, "", **error.needed.values, word=spec.word) from None


def _sett(_: Input, value: object) -> Sett:
    sett = read_sett(value)
    if not LEAST_SETT <= sett.per_mm <= MOST_SETT:
        raise FieldError("", Entry.SETT_BETWEEN, shown(value), "")
    return sett


def _force(_: Input, value: object) -> Force:
    force = read_force(value)
    if not LEAST_TENSION <= force.newtons <= MOST_TENSION:
        raise FieldError("", Entry.PULL_BETWEEN, shown(value), "")
    return force


def _density(_: Input, value: object) -> Sett:
    """Notches in a length, written as a sett is."""
    try:
        density = read_sett(value)
    except FieldError as error:
        if error.needed.role != Value.SETT:
            raise
        raise FieldError("", Entry.DENSITY, error.got, "") from None
    if not LEAST_SETT <= density.per_mm <= MOST_SETT:
        raise FieldError("", Entry.DENSITY_BETWEEN, shown(value), "")
    return density


def _flag(_: Input, value: object) -> bool:
    if not isinstance(value, bool):
        raise FieldError("", Entry.FLAG, shown(value), "")
    return value


def _choice(spec: Input, value: object) -> str:
    word = " ".join(value[:_LONGEST_WORD].lower().split()) if isinstance(value, str) else ""
    if word in spec.choices:
        return word
    *before, last = (f'"{choice}"' for choice in spec.choices)
    listed = {"before": ENGLISH.listed(before), "last": last}
    if meant := closest(word, spec.choices):
        raise FieldError("", Entry.CHOICE_MEANT, shown(value), "", **listed, meant=meant)
    raise FieldError("", Entry.CHOICE, shown(value), "", **listed)


def _language(spec: Input, value: object) -> str:
    """The code of a language, which may be written as one of its names too."""
    word = value[:_LONGEST_WORD] if isinstance(value, str) else ""
    if code := code_of(word):
        return code
    if meant := closest(word.strip().lower(), NAMES):
        raise FieldError("", Entry.LANGUAGE_MEANT, shown(value), example_of(spec), meant=NAMES[meant])
    raise FieldError("", Entry.LANGUAGE, shown(value), example_of(spec))


def _size(_: Input, value: object) -> PaperSize:
    """A sheet by its name, or one of your own by its sides, which are rounded to whole PDF units."""
    word = value.strip().lower() if isinstance(value, str) else ""
    if word in PAPERS:
        return named_size(word)
    try:
        width, height = (round(side.mm / POINT) for side in read_size(value))
    except FieldError:
        names = ENGLISH.listed([f'"{name}"' for name in PAPERS])
        if meant := closest(word, PAPERS):
            raise FieldError("", Entry.PAPER_MEANT, shown(value), "", names=names, meant=meant) from None
        raise FieldError("", Entry.PAPER, shown(value), "", names=names) from None
    least, most = sorted((width, height))
    if least < LEAST_PAPER[0] or most < LEAST_PAPER[1] or most > MOST_PAPER:
        raise FieldError("", Entry.PAPER_BETWEEN, shown(value), "")
    return PaperSize(OWN, width, height)


def _number(_: Input, value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not 0 < value <= MOST_NUMBER:
        raise FieldError("", Entry.NUMBER, shown(value), "", most=Figure(f"{MOST_NUMBER:,}"))
    return float(value)


def _colour(_: Input, value: object) -> str:
    if not isinstance(value, str) or not _COLOUR.fullmatch(value):
        raise FieldError("", Entry.COLOUR, shown(value), "")
    return value.lower()


class _FarTooLarge:
    def __repr__(self) -> str:
        return ENGLISH.say(Value.NOT_SHOWN)


def tame(value: object) -> object:
    """`value`, or a stand-in where even writing it out fails (numbers of thousands of digits, endless nesting)."""
    try:
        repr(value)
    except (ValueError, RecursionError):
        return _FarTooLarge()
    return value


_READERS: dict[str, Callable[[Input, object], Any]] = {
    "version": _version,
    "length": _length,
    "width": _fitting,
    "height": _fitting,
    "heading": _heading,
    "sett": _sett,
    "density": _density,
    "whole": read_whole,
    "flag": _flag,
    "choice": _choice,
    "size": _size,
    "number": _number,
    "colour": _colour,
    "force": _force,
    "amount": read_amount,
    "share": read_share,
    "deviation": read_deviation,
    "count": read_count_of,
    "system": read_system,
    "names": read_names,
    "card": read_card,
    "sides": read_sides,
    "mass": read_mass,
    "link": read_link,
    "language": _language,
}
_OF_LETTERS: dict[str, Callable[[Input, object, FontMetrics], Any]] = {
    "name": lambda _, value, metrics: read_name(value, metrics),
    "text": read_text,
    "lines": read_lines,
}
"""What is printed as it was written, so that the font must have its characters."""
