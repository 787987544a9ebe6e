"""What `--only` may name: products, families of files, and either with the suffix of one kind of file."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.kit.likeness import closest
from layout.messages.catalogue import Message
from layout.plan import Plan
from layout.products import PRODUCTS, absent, suiting
from layout.values.errors import shown
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed
from templates_gen.messages.roles.inputs import Only

KIT, BOARD, JOB = "kit", "board", "job"
"""The families that are files of their own: the one file of all guides, the boards, the job sheet."""
OF_BOARDS = (BOARD, "boards", JOB)
"""The names by which boards are asked for."""
BOX = ("leaflet", "help", "label")
"""The sheets for the box."""

_FORMS: Mapping[str, tuple[str, ...]] = {KIT: ("pdf",), BOARD: ("svg", "dxf"), JOB: ("pdf",)}
_SEVERAL: Mapping[str, tuple[str, ...]] = {
    "strips": ("strip-near", "strip-far", "strips"),
    "boards": (BOARD,),
    "box": BOX,
}


def products_of(plan: Plan, names: Sequence[str]) -> tuple[str, ...] | None:
    """What --only names, each as "name" or "name.form"; None where it names nothing: then all that suits `plan`.

    Raises OptionError on --only for what is none of them.
    """
    known = known_names(plan)
    return tuple(each for name in names for each in _each(plan, name, known)) or None


def known_names(plan: Plan) -> tuple[str, ...]:
    """Every name that may be asked for; one may be printed and cut."""
    return tuple(dict.fromkeys((*suiting(plan), *cut_suiting(plan), "strips", *_FORMS)))


def _each(plan: Plan, said: str, known: Sequence[str]) -> Iterable[str]:
    name, dot, form = said.strip().lower().partition(".")
    if name not in known and name not in _SEVERAL:
        raise _no_part(plan, said, name, known)
    names = _SEVERAL.get(name, (name,))
    forms = forms_of(names[0])
    if dot and form not in forms:
        files = listed([f"{name}.{each}" for each in forms])
        raise OptionError("--only", Only.A_FILE, shown(said), f"--only {name}.{forms[0]}", files=files)
    return (f"{each}{dot}{form}" for each in names if not dot or form in forms_of(each))


def _no_part(plan: Plan, said: str, name: str, known: Sequence[str]) -> OptionError:
    """The refusal of a name that this kit has no part for, and why it has none where there is such a part."""
    why, meant = absent(plan).get(name), closest(name, known)
    got = Message(Only.GOT_SINCE, {"got": shown(said), "why": why}) if why else shown(said)
    if not meant:
        return OptionError("--only", Only.A_PART, got, f"--only {known[0]}", known=listed(known))
    return OptionError("--only", Only.A_PART_MEANT, got, f"--only {meant}", known=listed(known), meant=meant)


def forms_of(name: str) -> tuple[str, ...]:
    """The kinds of files in which there is a product or a family."""
    printed = PRODUCTS[name].forms if name in PRODUCTS else ()
    cut = CUT_PRODUCTS[name].forms if name in CUT_PRODUCTS else ()
    return tuple(dict.fromkeys((*printed, *cut, *_FORMS.get(name, ()))))


class Selection:
    """Which files are asked for: all, or those that `only` names."""

    def __init__(self, only: Sequence[str] | None) -> None:
        self.only = only

    @property
    def whole(self) -> bool:
        """Whether all is asked for."""
        return self.only is None

    @property
    def names(self) -> tuple[str, ...] | None:
        """The products and families asked for, without suffixes; None for all."""
        return None if self.only is None else tuple(each.partition(".")[0] for each in self.only)

    def has(self, name: str) -> bool:
        """Whether any file of that product or family is asked for."""
        return self.names is None or name in self.names

    def takes(self, name: str, form: str) -> bool:
        """Whether the file of that kind is asked for."""
        return self.only is None or name in self.only or f"{name}.{form}" in self.only
