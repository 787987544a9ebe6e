"""The label, the help and the choices of each field of the slip, as roles."""

from __future__ import annotations

import re
from functools import cache

from layout.kit.input import Input
from layout.messages.catalogue import Role
from templates_gen.desk.slip.fields import OVER, SPECS, STOCK_PREFIX
from templates_gen.desk.slip.forms import Choice, Control
from templates_gen.desk.slip.pictures import PICTURES
from templates_gen.desk.slip.texts import NO, YES
from templates_gen.desk.slip.typed import typed_of
from templates_gen.inputs.stock_file import built_in_values
from templates_gen.messages.roles.desk_choices import DeskChoice
from templates_gen.messages.roles.desk_helps import DeskHelp
from templates_gen.messages.roles.desk_labels import DeskLabel

_THREAD = re.compile(r"^(?:warp|weft\.strands\[\])(?:\.threads\[\])?\.")
_SOLD = re.compile(r"^run\.buy\.(?:colours|also)\[\]\.(?=pack|grams|length|price)")
_CARDS = ("box.label", "box.list", "box.help")
_LABELS, _HELPS, _CHOICES = ({str(role): role for role in roles} for roles in (DeskLabel, DeskHelp, DeskChoice))
_SHARED = {"fibre": "fibre", "material": "material", "holds": "holds", "once": "holds", "system": "system"}
_CONTROLS: dict[str, Control] = {
    "flag": "flag", "choice": "choice", "language": "choice", "size": "size", "card": "size", "names": "names",
    "lines": "lines", "system": "system", "tables": "choice",
}  # fmt: skip


def label_of(name: str) -> Role:
    """The label of a field, by its name with `[]`."""
    return _LABELS[f"desk_label.{_worded(name)}"]


def help_of(name: str) -> Role:
    """What is said of a field while it is filled in: our own sentence, else what is said of the key everywhere."""
    return _HELPS.get(f"desk_help.{_worded(name)}", SPECS[name].help)


def control_of(name: str, spec: Input) -> Control:
    """With what a field is filled in."""
    return "pictures" if name in PICTURES else _CONTROLS.get(spec.kind, "text")


@cache
def choices_of(name: str) -> tuple[Choice, ...]:
    """What can be chosen in a field; nothing where something is typed."""
    spec = SPECS[name]
    if name == "box.also":
        return tuple(Choice(value, _CHOICES[f"desk_choice.box.also.{value or 'usual'}"]) for value in ("", "none"))
    if spec.kind == "system":
        values: tuple[str, ...] = tuple(str(role)[len("desk_choice.system.") :] for role in _of("system"))
    elif spec.kind == "flag":
        return tuple(Choice(value, _CHOICES[f"desk_choice.{value}"]) for value in (YES, NO))
    else:
        values = spec.choices
    prefix = _chosen_by(name, spec)
    drawn = PICTURES.get(name, {})
    return tuple(Choice(value, _CHOICES[f"desk_choice.{prefix}.{value}"], drawn.get(value, "")) for value in values)


def _chosen_by(name: str, spec: Input) -> str:
    """Under which name the words of the choices of a field stand."""
    if name in _CARDS:
        return "box.card"
    if name.endswith(".wrap.how"):
        return "yarn.wrap.how"
    return _worded(name) if name.startswith(STOCK_PREFIX) else _SHARED.get(spec.leaf) or _worded(name)


def _of(prefix: str) -> list[Role]:
    return [role for key, role in _CHOICES.items() if key.startswith(f"desk_choice.{prefix}.")]


@cache
def _worded(name: str) -> str:
    """The name under which labels and helps of a field stand: yarns share theirs."""
    worded = name.replace("/", ".", 1)
    if f"desk_label.{worded}" in _LABELS:
        return worded
    return _SOLD.sub("run.pack.", _THREAD.sub("yarn.", worded))


def placeholder_of(name: str, spec: Input) -> str:
    """An example as it would be typed, or what stands there if it is left empty; of a stock what is built in."""
    if spec.kind in _CHOSEN_ALONE:
        return ""
    if name.startswith(STOCK_PREFIX) and (built_in := _stock().get(name)):
        return built_in
    if isinstance(spec.default, str):
        return spec.default
    if spec.kind == "lines":
        return "\n".join(re.findall(r'"([^"]*)"', spec.example))
    return spec.example.strip('"') if name != OVER else "5 cm"


_CHOSEN_ALONE = ("flag", "choice", "language", "tables", "names", "system")


@cache
def _stock() -> dict[str, str]:
    return typed_of(built_in_values(), STOCK_PREFIX)


_IN_YARDS = "m"


def units_of(spec: Input) -> tuple[str, str] | None:
    """The units that a plain number takes, metric and in inches; None where it stays plain."""
    if spec.kind not in ("length", "width", "height", "heading", "sides"):
        return None
    unit = spec.example.strip('"').rpartition(" ")[2]
    return (unit, "yd" if unit == _IN_YARDS else "in")
