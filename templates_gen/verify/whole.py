"""Which files a whole kit must have, and which parts each must show: told once more, from the kit alone.

Nothing here asks the list of products, so that one that is lost there, or wrongly left out, is missed here. A new
product needs a line in `WHOLE`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import NamedTuple

from layout.kit.kit import Kit
from templates_gen.verify.whole_boards import boards_lacking, is_of_boards

EVERY_SHEET = "kit.pdf"
_ON_PAPER = "pdf"


def _every(_: Kit) -> bool:
    return True


class Wanted(NamedTuple):
    """What one name stands for: the `parts` that each of its files shows, in which `forms`, `when` a kit asks for it.

    What comes on paper must be in the one file of every sheet too, if it is `in_kit`; what the kit `may` have is
    neither missed nor one too many.
    """

    parts: tuple[str, ...]
    forms: tuple[str, ...] = ("pdf", "svg")
    when: Callable[[Kit], bool] = _every
    in_kit: bool = True
    may: bool = False


WHOLE: Mapping[str, Wanted] = {
    "winding": Wanted(("winding",)),
    "strip-near": Wanted(("strip-near",)),
    "strip-far": Wanted(("strip-far",)),
    "spacing-guide": Wanted(("spacing-near", "spacing-far")),
    "wrap-gauge": Wanted(("wrap-gauge",)),
    "frame-check": Wanted(("frame-check",), ("pdf",)),
    "weaving-grid": Wanted(("weaving-grid",), in_kit=False, may=True),
}
"""By the name of each file without its ending."""

_MUST = Wanted(())


_FOR_CUTTERS = ("svg", "dxf")
_CUT = re.compile(r"(?P<name>[a-z-]+)-\d+x\d+mm-(?:no-kerf|kerf-[\d.x]+)\.(?P<form>\w+)")
"""What is cut is named by its size and kerf. A stock may not allow it; what it allows comes in both cutters' forms."""


def lacking(kit: Kit, made: Mapping[str, Sequence[str]]) -> tuple[str, ...]:
    """What a whole kit must have and `made` (the parts in every file, by the file's name) has not, as sentences."""
    return tuple(_lacking(kit, made))


def _lacking(kit: Kit, made: Mapping[str, Sequence[str]]) -> Iterator[str]:
    asked: dict[str, list[str]] = {}
    for name, wanted in WHOLE.items():
        if wanted.when(kit):
            asked |= {f"{name}.{form}": list(wanted.parts) for form in wanted.forms}
            if _ON_PAPER in wanted.forms and wanted.in_kit:
                asked.setdefault(EVERY_SHEET, []).extend(wanted.parts)
    for file, parts in asked.items():
        if file not in made and WHOLE.get(file.rpartition(".")[0], _MUST).may:
            continue
        if file not in made:
            yield f"{file} is missing, which this kit must have"
            continue
        for part in sorted(set(parts)):
            if list(made[file]).count(part) != parts.count(part):
                yield f"{file} shows {part} {list(made[file]).count(part)} times where {parts.count(part)} was wanted"
    cut = {file: found for file in made if (found := _CUT.fullmatch(file))}
    forms = {(found["name"], found["form"]) for found in cut.values()}
    for name in dict.fromkeys(name for name, _ in forms):
        yield from (f"{name} is missing as {form}" for form in _FOR_CUTTERS if (name, form) not in forms)
    yield from boards_lacking(made, cut, _FOR_CUTTERS)
    strays = (file for file in made if file not in asked and file not in cut and not is_of_boards(file))
    yield from (f"{file} is there, which this kit does not ask for" for file in strays)
