"""Which number a sentence of the plan concerns, by the role that said it."""

from __future__ import annotations

from collections.abc import Iterable

from layout.messages.catalogue import Between, Catalogue, Said
from layout.messages.roles import Question, WarpNote

_BY_ROLE = {
    WarpNote.WINDS_ASKED: "weaving",
    WarpNote.WINDS_FIT: "weaving",
    WarpNote.WINDS_FIT_TIED: "weaving",
    WarpNote.ENDS_ASKED: "weaving",
    WarpNote.ENDS_FIT: "weaving",
    WarpNote.ENDS_FIT_TIED: "weaving",
    Question.FRAME: "weaving",
    Question.FRAME_UNIT: "weaving",
    Question.SIDE: "weaving",
    Question.SIDE_UNIT: "weaving",
}
_BY_CLASS = {
    "SettNote": "sett",
    "SettNeed": "sett",
    "NotchNote": "sett",
    "WrapWords": "sett",
    "Question": "sett",
    "Pairing": "sett",
    "Pair": "sett",
    "WarpNote": "winds",
    "Beam": "bending",
    "Travel": "bending",
    "Conflict": "picks",
    "BallsNote": "buy",
}
_ELSE = "winds"


def number_of(sentence: str) -> str:
    """The id of the number that a note or warning of a plan stands under."""
    if not isinstance(sentence, Said):
        return _ELSE
    if isinstance(sentence.role, Between):  # several sentences, of which the first says what all are about
        first = sentence.values.get("before")
        return number_of(first) if isinstance(first, Said) else _ELSE
    return _BY_ROLE.get(sentence.role) or _BY_CLASS.get(type(sentence.role).__name__, _ELSE)


def concerning(number: str, sentences: Iterable[str], words: Catalogue) -> tuple[str, ...]:
    """Those of the sentences that concern a number, said with `words`."""
    return tuple(words.again(each) for each in sentences if number_of(each) == number)
