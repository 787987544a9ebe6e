"""Which files a whole kit must have, and which parts each must show: worked out once more, from the kit alone.

Nothing here asks the list of products, so that one that is lost there is missed here. A new product needs a line in
`WHOLE`; what is cut, one in `whole_cut`.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.kit.kit import Kit
from templates_gen.messages.roles.proof import Whole
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.printed.gauge_words import gauge_is_two
from templates_gen.verify.printed.winding_words import is_small
from templates_gen.verify.whole_boards import boards_lacking, copies, is_of_boards
from templates_gen.verify.whole_cut import FOR_CUTTERS, cut_files, cut_lacking

EVERY_SHEET = "kit.pdf"
_ON_PAPER = "pdf"


def _every(_: Kit) -> bool:
    return True


class WantedFile(NamedTuple):
    """What one name stands for: the `parts` that each of its files shows, in which `forms`, `when` a kit asks for it.

    What comes on paper must be in the one file of every sheet too, if it is `in_kit`; what a kit `may` be
    unable to have is not missed where that is said.
    """

    parts: tuple[str, ...]
    forms: tuple[str, ...] = ("pdf", "svg")
    when: Callable[[Kit], bool] = _every
    in_kit: bool = True
    may: bool = False
    more: Callable[[Kit], tuple[str, ...]] = lambda _: ()  # parts that only some kits have
    always_in_kit: bool = False  # though it has no file of its own


def _heading_rows(kit: Kit) -> tuple[str, ...]:
    """On small paper shed stick and heading rows have a sheet of their own."""
    return ("heading-rows",) if is_small(kit) else ()


def _how_to_wind(kit: Kit) -> tuple[str, ...]:
    """On small paper the wrap gauge has a second part."""
    return ("gauge-how",) if gauge_is_two(kit) else ()


def _boxed(name: str) -> Callable[[Kit], bool]:
    """What a kit says of its box asks for it."""
    return lambda kit: kit.box.given and name in (*kit.box.each_holds, *kit.box.run_holds)


def _cards(kit: Kit) -> tuple[str, ...]:
    """Label and packing list, on one card where they are folded over."""
    return ("folded-label",) if kit.box.fold else ("label", "packing-list")


WHOLE: Mapping[str, WantedFile] = {
    "start-here": WantedFile(("start-here",), (), lambda kit: kit.paper.use == "download", always_in_kit=True),
    "winding": WantedFile(("winding",), more=_heading_rows),
    "strips": WantedFile(("strip-near", "strip-far"), ("pdf",)),
    "strip-near": WantedFile(("strip-near",), in_kit=False),
    "strip-far": WantedFile(("strip-far",), in_kit=False),
    "spacing-guide": WantedFile(("spacing-near", "spacing-far")),
    "wrap-gauge": WantedFile(("wrap-gauge",), more=_how_to_wind),
    "frame-check": WantedFile(("frame-check",), ("pdf",)),
    "weaving-grid": WantedFile(("weaving-grid",), in_kit=False, may=True),
    "leaflet": WantedFile(("leaflet",), ("pdf",), _boxed("leaflet"), in_kit=False),
    "help": WantedFile(("help",), ("pdf",), _boxed("help"), in_kit=False, may=True),
    "label": WantedFile(("legal-card",), ("pdf",), _boxed("label"), in_kit=False, more=_cards),
}
"""By the name of each file without its ending."""


IN_BOX = ("leaflet", "help", "label")
"""What lies in the box of a kit that is made in a run, whether the kit says what its box holds or not."""


def lacking(
    kit: Kit,
    made: Mapping[str, Sequence[str]],
    without: Collection[str] = (),
    stock: Stock | None = None,
    *,
    boxed: bool = False,
) -> tuple[Finding, ...]:
    """What a whole kit must have and `made` (the parts in every file, by the file's name) has not.

    `without` names what is said to be impossible for kit or stock; without a `stock` nothing cut is asked for.
    A kit is `boxed` in a run, whose boards hold its parts, so that it has none of its own; what lies in its box is
    also asked for where it shows anything of it.
    """
    in_run = boxed
    boxed = boxed or any(f"{name}.{_ON_PAPER}" in made for name in IN_BOX)
    printed = _printed(kit, made, without, boxed=boxed)
    strays = tuple(finding(Whole.STRAY, file=file) for file in made if in_run and is_of_boards(file))
    if stock is None:
        return (*printed, *strays)
    if in_run:
        return (*printed, *cut_lacking(kit, made, without), *strays)
    boards = boards_lacking(made, cut_files(kit, made), FOR_CUTTERS, copies(kit, stock))
    return (*printed, *cut_lacking(kit, made, without), *boards)


def _printed(
    kit: Kit, made: Mapping[str, Sequence[str]], without: Collection[str], *, boxed: bool
) -> Iterator[Finding]:
    asked: dict[str, list[str]] = {}
    for name, wanted in WHOLE.items():
        in_box = boxed and name in IN_BOX and kit.box.has(name)
        if (wanted.when(kit) or in_box) and not (wanted.may and name in without):
            parts = (*wanted.parts, *wanted.more(kit))
            asked |= {f"{name}.{form}": list(parts) for form in wanted.forms}
            if (_ON_PAPER in wanted.forms and wanted.in_kit) or wanted.always_in_kit:
                asked.setdefault(EVERY_SHEET, []).extend(parts)
    for file, all_parts in asked.items():
        if file not in made:
            yield finding(Whole.MISSING, file=file)
            continue
        for part in sorted(set(all_parts)):
            count, needed = list(made[file]).count(part), all_parts.count(part)
            if count != needed:
                yield finding(Whole.SHOWS_TIMES, file=file, part=part, found=count, wanted=needed)
    cut = cut_files(kit, made)
    strays = (file for file in made if file not in asked and file not in cut and not is_of_boards(file))
    yield from (finding(Whole.STRAY, file=file) for file in strays)
