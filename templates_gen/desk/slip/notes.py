"""What asks for care in a plan, by the line of the slip that it concerns."""

from __future__ import annotations

from typing import NamedTuple

from layout.kit.kit import Kit
from layout.messages.catalogue import Between, Catalogue, Role, Said
from layout.messages.roles import Beam, Conflict, Question, WarpNote
from layout.plan import Plan


class Note(NamedTuple):
    """A warning or a question: `about` is the name of the line that it concerns, "" where it is of none."""

    about: str
    say: str


_BY_ROLE: dict[Role, str] = {
    WarpNote.PEG_WIDE: "frame.peg_diameter",
    WarpNote.PEG_AND_THREAD_WIDE: "frame.peg_diameter",
    WarpNote.NAIL_AND_THREAD_WIDE: "frame.nail_diameter",
    Beam.NAIL_BENDS: "frame.nail_length",
    Beam.PULLS_DIFFER: "frame.tension",
    Beam.SLACK: "frame.dip.depth",
    Conflict.BEADS_THICKNESS: "weft.beads.number",
    Conflict.PICK_TAKE_UP: "weft.pick.straight",
    Conflict.SAMPLE_COMPUTED: "weft.sample.grams",
}
_BY_CLASS = {
    "SettNote": "sett.marking_unit",
    "NotchNote": "frame.notch_density",
    "WrapWords": "sett.loosest",
    "WarpNote": "weaving.width",
    "Travel": "frame.travel",
}
_OF_THE_SETT = ("Pair", "Pairing")
_OF_THE_BAR = (Beam.BENDS_TOO_FAR, Beam.MAY_BEND_TOO_FAR, Beam.STRESSED)
_LENGTHS = (".window", ".measure")


def notes_of(plan: Plan | None, words: Catalogue) -> tuple[Note, ...]:
    """The warnings of a plan, in its order."""
    return tuple(Note(about(each, plan.kit), words.again(each)) for each in plan.warnings) if plan else ()


def about(warning: object, kit: Kit) -> str:
    """The line that a warning of the plan of `kit` concerns."""
    if not isinstance(warning, Said):
        return ""
    role, values = warning.role, warning.values
    if isinstance(role, Between):  # several sentences, of which the first says what all are about
        return about(values.get("before"), kit)
    if isinstance(role, Question):
        return _asked(role, str(values.get("key", "")), kit)
    if role in _OF_THE_BAR:
        return "frame.bar_diameter" if kit.frame.ends.name == "round bars" else "frame.thickness"
    if role == Conflict.WRAP_LABEL:
        return f"{values['wrap']}.turns"
    kind = type(role).__name__
    return _sett(kit) if kind in _OF_THE_SETT else _BY_ROLE.get(role) or _BY_CLASS.get(kind, "")


def _asked(role: Question, key: str, kit: Kit) -> str:
    if role in (Question.GIVEN, Question.READINGS):
        return _sett(kit)
    if role == Question.TWICE:
        return f"{key}.pairs"
    length = next((each for each in _LENGTHS if key.endswith(each)), "")
    return f"{key.removesuffix(length)}.over" if length else key


def _sett(kit: Kit) -> str:
    return "sett.given" if kit.sett.given else "sett.readings[1].pairs"
