"""Which parts a whole kit must have for the cutter, and in which files: worked out once more, from the kit alone.

Nothing here asks the list of what can be cut, so that a product lost there is missed here. A new one needs a line in
`CUT`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from typing import NamedTuple

from layout.kit.kit import Kit
from templates_gen.messages.language import listed
from templates_gen.messages.roles.proof import Whole
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.kinds.truths import truth_of

FOR_CUTTERS = ("svg", "dxf")

_CUT = re.compile(r"(?P<name>[a-z-]+)-\d+x\d+mm-(?:no-kerf|kerf-[\d.x]+)(?:-corrected)?\.(?P<form>\w+)")
"""What is cut is named by its size and kerf."""

_SQUARE = "reference-square"


def _every(_: Kit) -> bool:
    return True


def _asked(name: str) -> Callable[[Kit], bool]:
    """Whether the frame ends of a kit ask for the product."""
    return lambda kit: name in truth_of(kit).asks_for(kit.frame.ends)


class Cut(NamedTuple):
    """What one name stands for: the `parts` that each of its files shows, `when` a kit asks for it.

    What is not `always` made is in a folder only where somebody asked for it.
    """

    parts: tuple[str, ...]
    when: Callable[[Kit], bool] = _every
    always: bool = True


CUT: Mapping[str, Cut] = {
    "comb": Cut(("comb",)),
    "winding-comb": Cut(("winding-comb-near", "winding-comb-far"), _asked("winding-comb")),
    "wrap-gauge-cut": Cut(("wrap-gauge-cut",)),
    "spacing-guide-cut": Cut(("spacing-guide-cut",)),
    "shed-stick": Cut(("shed-stick",)),
    "end-bars": Cut(("end-bar-near", "end-bar-far"), _asked("end-bars")),
    "peg-jig": Cut(("peg-jig-near", "peg-jig-far"), _asked("peg-jig")),
    "trial-cut": Cut(("trial-cut",)),
    "square-check": Cut(("square-check",), always=False),
}
"""By the name of each file before its size."""


def cut_files(kit: Kit, made: Collection[str]) -> Mapping[str, tuple[str, str]]:
    """Name and form of those files among `made` that are cut, or drawn as they are cut, and that the kit asks for."""
    found = {file: match for file in made if (match := _CUT.fullmatch(file))}
    named = {file: (match["name"], match["form"]) for file, match in found.items()}
    return {file: (name, form) for file, (name, form) in named.items() if name in CUT and CUT[name].when(kit)}


def cut_lacking(kit: Kit, made: Mapping[str, Sequence[str]], without: Collection[str]) -> Iterator[Finding]:
    """What `made` (the parts in every file) lacks for the cutter, as sentences; not what it has to do `without`.

    What comes for the cutter comes in both forms, with the reference square; the paper may not allow the drawing. What
    a kit has to do without, and its box with it, has no file.
    """
    there = cut_files(kit, made)
    forms = set(there.values())
    for name in (name for name, cut in CUT.items() if cut.when(kit)):
        if not any((name, form) in forms for form in FOR_CUTTERS):
            if CUT[name].always and name not in without:
                yield finding(Whole.MISSING_CUT, name=name)
            continue
        yield from (
            finding(Whole.MISSING_AS, name=name, form=form) for form in FOR_CUTTERS if (name, form) not in forms
        )
    yield from (finding(Whole.STRAY, file=file) for file, (name, _) in there.items() if name in without)
    for file, (name, form) in there.items():
        wanted = [*CUT[name].parts, *([_SQUARE] if form in FOR_CUTTERS else [])]
        if sorted(made[file]) != sorted(wanted):
            yield _shows(file, made[file], wanted)


def _shows(file: str, found: Sequence[str], wanted: Sequence[str]) -> Finding:
    if not found:
        return finding(Whole.SHOWS_NOTHING, file=file, wanted=listed(wanted))
    return finding(Whole.SHOWS, file=file, found=listed(found), wanted=listed(wanted))
