"""Yarns as their labels say them: a count with its system, or a ball of a weight and a length.

Read: `8 Ne`, `Nm 14`, `40 tex x 2` (the count of one thread, then how many are folded, as ISO 1139 writes it from
single to fold; from memory), `50 g in 120 m`, `240 m / 100 g`, `3360 yd/lb`. Never guessed: a count without a system,
`8/2` without its order, `cut`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Fibre, YarnNeed, YarnReason
from layout.values.errors import FieldError, shown
from layout.values.limits import Number
from layout.values.quantity import Quantity, assumed
from layout.values.units import WORDS, read_length
from layout.yarns.diameter import specific_volume
from layout.yarns.weights import WEIGHTS, read_weight
from layout.yarns.yarn import Yarn, yarn_from_ball, yarn_of, yarn_weighed
from layout.yarns.yarn_counts import read_folded, system, two_meanings

EXAMPLE = '"8 Ne x 2" or "50 g in 120 m"'
NO_PLIES = "leave out --plies"

_LONGEST = 60
_NAMES = {
    "tex": ("tex",),
    "dtex": ("dtex", "decitex"),
    "denier": ("denier", "den"),
    "nm": ("nm", "metric", "metric count"),
    "ne": ("ne", "nec", "cotton", "cotton count"),
    "worsted": ("worsted", "worsted count"),
    "run": ("run", "runs", "woollen run", "woolen run"),
    "lea": ("lea", "leas", "linen lea", "nel"),
    "cut": ("cut", "cuts"),
}
_KEYS = {name: key for key, names in _NAMES.items() for name in names}

_PLIES = re.compile(r"(?P<one>.*[a-z])(?:\s+x|\s*×)\s*(?P<plies>[0-9]{1,6})", re.IGNORECASE | re.DOTALL)
_COUNT = re.compile(r"(?P<before>[a-z ]*)(?P<count>.*?)(?P<after>[a-z ]*)", re.IGNORECASE | re.DOTALL)
_APART = re.compile(r"\s*[/=,;]\s*|\s+(?:in|per|to|is|for)\s+|\s+", re.IGNORECASE)
_LAST = re.compile(r"(?P<word>[a-z]+)\.?$", re.IGNORECASE)

FIBRES = {"ne": "cotton", "worsted": "wool", "run": "wool", "lea": "linen"}
"""The fibre that a system of counts is named after."""
_NAMED = {"cotton": Fibre.COTTON, "wool": Fibre.WOOL, "linen": Fibre.LINEN}


class Read(NamedTuple):
    """A yarn and the key of the `system` that its count was given in; empty for a ball."""

    yarn: Yarn
    system: str


def read_label(
    text: object, plies: Number | None = None, order: str | None = None, field: str = "yarn", *, weighed: bool = False
) -> Read:
    """The yarn that a label says; `weighed` takes a weight and a length for measured ones.

    `plies` says how many such threads are folded where the text does not, and `order` which number of "8/2" says so
    ("count/plies" or "plies/count"). FieldError at `field` for anything that is not sure.
    """
    if not isinstance(text, str) or len(text) > _LONGEST:
        raise FieldError(field, YarnNeed.LABEL, shown(text), EXAMPLE)
    said = text.strip()
    try:
        ball = _ball(said, plies, weighed)
        if weighed and not ball:
            raise FieldError("", YarnNeed.LABEL_WEIGHED, shown(text), '"4.5 g in 10 m"')
        return ball or _counted(said, plies, order)
    except FieldError as error:
        fits = error.example.startswith(('"', NO_PLIES))
        raise error.at(field, None if fits else EXAMPLE) from None


def _ball(text: str, plies: Number | None, weighed: bool) -> Read | None:
    """The yarn of a weight and a length, whichever comes first; a bare unit means one of it. None for other text."""
    for apart in _APART.finditer(text):
        weight, length = text[: apart.start()], text[apart.end() :]
        if _unit(length) in WEIGHTS:
            weight, length = length, weight
        if _unit(weight) in WEIGHTS and _unit(length) in WORDS:
            if plies is not None:
                raise FieldError("", YarnNeed.LABEL_NO_PLIES, shown(text), NO_PLIES)
            yarn = yarn_weighed if weighed else yarn_from_ball
            return Read(yarn(read_weight(_one(weight)), read_length(_one(length)).mm / 1000), "")
    return None


def _unit(side: str) -> str:
    """The word that `side` ends with, in small letters; empty if it ends otherwise."""
    found = _LAST.search(side)
    return found["word"].lower() if found else ""


def _one(side: str) -> str:
    return f"1 {side}" if side.rstrip(".").isalpha() else side


def _counted(text: str, plies: Number | None, order: str | None) -> Read:
    """The yarn of a count in a system, before or after its number."""
    folds = _PLIES.fullmatch(text)
    if folds and plies is not None:
        raise FieldError("", YarnNeed.PLIES_ONCE, shown(text), NO_PLIES)
    found = _COUNT.fullmatch(folds["one"] if folds else text)
    before, count, after = (part.strip() for part in found.groups()) if found else ("", "", "")
    if not count or (before and after):
        raise FieldError("", YarnNeed.COUNT_OR_BALL, shown(text), EXAMPLE)
    word = before or after
    number: Number = int(folds["plies"]) if folds else 1 if plies is None else plies
    if meanings := two_meanings(count):
        first, second, needed = meanings
        if order is None:
            known = word if word.lower() in _KEYS else "Ne"
            line = f'"{first} {known} x {second}"' if first.strip("0") and second.strip("0") else ""
            instead = Message(YarnNeed.FIRST_MEANING, {"line": line}) if line else EXAMPLE
            raise FieldError("", needed, shown(text), instead)
        if folds or plies is not None:
            raise FieldError("", YarnNeed.PLIES_ONCE, shown(text), NO_PLIES if plies else f'"{count} {word}"')
        count, number = read_folded(count, order)
    elif order is not None:
        raise FieldError("", YarnNeed.STROKE_FOR_ORDER, shown(text), '"8/2 Ne"')
    key = _system(word, text)
    return Read(yarn_of(count, key, number), key)


def _system(word: str, text: str) -> str:
    key = _KEYS.get(" ".join(word.lower().split()))
    if key is None:
        raise FieldError("", YarnNeed.COUNT_SYSTEM, shown(text), EXAMPLE)
    try:
        return system(key).key
    except FieldError as error:  # "cut", with its two meanings
        raise FieldError("", error.needed, shown(text), Message(YarnNeed.YARDS_IN_CUTS)) from None


def fibre_of(labels: Sequence[Read]) -> Quantity:
    """The specific volume of the fibre that the labels' count is named after, else of wool; always assumed."""
    named = {FIBRES.get(label.system, "") for label in labels}
    fibre = named.pop() if len(named) == 1 else ""
    why = ENGLISH.say(YarnReason.FIBRE_BY_COUNT, fibre=_NAMED[fibre]) if fibre else ENGLISH.say(YarnReason.FIBRE_WOOL)
    return assumed(specific_volume(fibre or "wool").value, why)
