"""The kit: everything a maker says about one frame and its weaving, read from plain values and written back as them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Literal

from layout.drawing.metrics import FontMetrics
from layout.frames.frame import Frame
from layout.frames.strength import Strength
from layout.kit.box import Box, Legal
from layout.kit.cross_checks import cross_checks, sett_errors
from layout.kit.ends import frame_entries, frame_of
from layout.kit.inputs import VERSION
from layout.kit.order import OrderGiven
from layout.kit.paper_size import PaperSize
from layout.kit.tables import entries, filled, nested
from layout.kit.to_plain import to_plain
from layout.kit.walk import Walk
from layout.sett.sett import SettInput
from layout.values.errors import FieldErrors
from layout.values.units import Length
from layout.yardage.given import AmountsGiven

Winding = Literal["round", "figure eight", "loose rod"]
"""How the thread goes round the frame: round both ends, across between them, or there and back from a loose rod."""


@dataclass(frozen=True, slots=True)
class Weaving:
    """What is woven and how it is wound. A `width` of None is as wide as fits, a `height` of None as high as fits.

    `near_end` is the end of the standing frame where the warp is tied on; `start` the side where winding begins, seen
    from the face as the frame stands; `first_pass` runs over the face or behind the back. `tie_off` says at which end
    the warp may be tied off (None: a wound one at the near end, any other at either). So many outer ends at each side
    as `doubled_selvedges` says have twice as many threads as the others, which have two in a `doubled_warp`. The
    `winding` goes round both frame ends, or crosses between them; a `near_hold` of "loose rod" lets it go there and
    back from a rod behind the frame, `rod_diameter` thick. The side that it is `woven_from` faces the weaver; the
    `cartoon` for a back may be mirrored.
    """

    width: Length | None
    height: Length | None
    near_end: Literal["bottom", "top"] = "bottom"
    slant: Literal["shared", "face straight"] = "shared"
    start: Literal["left", "right"] = "left"
    first_pass: Literal["face", "back"] = "face"
    tie_off: Literal["near end", "far end", "either end"] | None = None
    doubled_selvedges: int = 0
    doubled_warp: bool = False
    winding: Literal["round", "figure eight"] = "round"
    woven_from: Literal["face", "back"] = "face"
    cartoon: Literal["as woven", "mirrored"] = "as woven"
    near_hold: Literal["bar", "loose rod"] = "bar"
    rod_diameter: Length | None = None

    @property
    def how_wound(self) -> Winding:
        """How the thread goes round the frame."""
        return "loose rod" if self.near_hold == "loose rod" else self.winding


@dataclass(frozen=True, slots=True)
class Paper:
    """The sheet to draw for, and how a part lies on it.

    Who buys a `download` prints the sheets; in a `box` they lie printed, and no sheet says how to print.
    All that is printed or cut is said in the `language`, by its code (ISO 639-1).
    """

    size: PaperSize
    lay: Literal["auto", "straight", "diagonal", "tiles"] = "auto"
    use: Literal["download", "box"] = "download"
    language: Literal["en", "es", "de", "fr"] = "en"

    @property
    def name(self) -> str:
        """What the sheet is called; "own" if it has no name."""
        return self.size.name

    @property
    def width(self) -> float:
        """In mm, of whole PDF units."""
        return self.size.sides_mm[0]

    @property
    def height(self) -> float:
        """In mm, of whole PDF units."""
        return self.size.sides_mm[1]

    @property
    def buyer_prints(self) -> bool:
        """Whether the sheets say how they are printed."""
        return self.use == "download"


_NO_BOX, _NO_WORDS, _NO_ORDER = Box(), Legal(), OrderGiven()


@dataclass(frozen=True, slots=True)
class Kit:
    """One kit: what it is called, its yarns by name, its sett, frame, weaving, paper, and what it says of amounts.

    `comb` says for which ends a comb that is cut has a slot, `box` what lies in its box, `legal` what its label says,
    `order` for which order it is made.
    """

    name: str
    warp: str
    weft: str
    sett: SettInput
    frame: Frame
    weaving: Weaving
    paper: Paper
    strength: Strength
    amounts: AmountsGiven
    comb: Literal["as the stock says", "every end", "every second end"] = "as the stock says"
    box: Box = _NO_BOX
    legal: Legal = _NO_WORDS
    order: OrderGiven = _NO_ORDER


_TABLES: Mapping[str, tuple[type, str, Mapping[str, str]]] = {
    "sett": (SettInput, "sett", {}),
    "weaving": (Weaving, "weaving", {}),
    "paper": (Paper, "paper", {"use": "paper.for"}),
    "strength": (Strength, "frame", {}),
    "amounts": (AmountsGiven, "weaving", {key: key for key in ("warp", "weft", "room")}),
}
"""By field of a kit: what it is, the table with its keys, and which fields stand elsewhere."""
_KEYS = {"name": "name", "warp": "yarns.warp", "weft": "yarns.weft", "comb": "cut.comb"}
"""By field of a kit: its one key."""
_WHOLE = {"box": _NO_BOX, "legal": _NO_WORDS, "order": _NO_ORDER}
"""By field of a kit that is one table of the file: what it is where that is left out."""


def read_kit(values: Mapping[str, object], metrics: FontMetrics) -> Kit:
    """The kit that nested plain values (as a TOML file gives them) say.

    `metrics` are those of the print font: names must be made of its characters. Raises FieldErrors with every refusal
    at once, each naming its dotted key.
    """
    walk = Walk(metrics)
    walk.over(values)
    got, errors = walk.got, [*walk.errors, *cross_checks(walk.got)]
    frame = frame_of(got)
    if errors or frame is None:  # a frame that is none is among the errors
        raise FieldErrors(errors)
    parts: dict[str, Any] = {
        field: filled(make, table, got, places) for field, (make, table, places) in _TABLES.items()
    }
    return Kit(
        frame=frame,
        **parts,
        **{field: got[key] for field, key in _KEYS.items()},
        **{field: got[field] for field in _WHOLE},
    )


def read_sett_input(values: Mapping[str, object], metrics: FontMetrics) -> SettInput:
    """The entries of the table [sett] alone, read and checked as in a kit. Raises FieldErrors with every refusal."""
    walk = Walk(metrics)
    walk.only("sett", values)
    errors = [*walk.errors, *sett_errors(walk.got)]
    if errors:
        raise FieldErrors(errors)
    return filled(SettInput, "sett", walk.got)


def kit_values(kit: Kit) -> dict[str, object]:
    """Plain nested values that JSON and TOML can hold and that `read_kit` reads as the very same kit."""
    values = [("version", VERSION), *((key, getattr(kit, field)) for field, key in _KEYS.items())]
    values += frame_entries(kit.frame)
    for field, (_, table, places) in _TABLES.items():
        values += entries(getattr(kit, field), table, places)
    values += [(key, to_plain(own)) for key, usual in _WHOLE.items() if (own := getattr(kit, key)) != usual]
    return nested(values)


def without_legal(kit: Kit) -> Kit:
    """The same kit without the maker's legal words, an address among them: what files carry that do not show these."""
    return replace(kit, legal=_NO_WORDS)


def without_buyer(kit: Kit) -> Kit:
    """The same kit without the name of its buyer: what files carry that do not show it."""
    return replace(kit, order=replace(kit.order, buyer=""))


def without_persons(kit: Kit) -> Kit:
    """The same kit without legal words and buyer."""
    return without_buyer(without_legal(kit))
