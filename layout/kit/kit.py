"""The kit: everything a maker says about one frame and its weaving, read from plain values and told back in them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import PT
from layout.frames.frame import Frame
from layout.frames.strength import Strength
from layout.kit.cross_checks import cross_checks, sett_errors, sett_of
from layout.kit.ends import frame_of
from layout.kit.inputs import AS_WIDE_AS_FITS, POINT, VERSION
from layout.kit.kinds.all_keys import END_KEYS
from layout.kit.strength_inputs import strength_of, strength_values
from layout.kit.to_plain import to_plain
from layout.kit.walk import Walk
from layout.sett.sett import SettInput, WrapReading
from layout.values.errors import FieldErrors
from layout.values.units import Length, Sett, exact_length, exact_sett, say_number
from layout.yardage.given import AmountsGiven


@dataclass(frozen=True, slots=True)
class Weaving:
    """What is woven and how it is wound. A `width` of None is as wide as fits.

    `near_end` is the end of the standing frame where the warp is tied on; `start` the side where winding begins, seen
    from the face as the frame stands; `first_pass` runs over the face or behind the back. `tie_off` says at which end
    the warp may be tied off (None: a wound one at the near end, any other at either). So many outer ends at each side
    as `doubled_selvedges` says have twice as many threads as the others, which have two in a `doubled_warp`.
    """

    width: Length | None
    height: Length
    near_end: Literal["bottom", "top"] = "bottom"
    slant: Literal["shared", "face straight"] = "shared"
    start: Literal["left", "right"] = "left"
    first_pass: Literal["face", "back"] = "face"
    tie_off: Literal["near end", "far end", "either end"] | None = None
    doubled_selvedges: int = 0
    doubled_warp: bool = False


@dataclass(frozen=True, slots=True)
class Paper:
    """The sheet to draw for, `width` x `height` mm (whole PDF units), and how a part lies on it."""

    name: str
    width: float
    height: float
    lay: Literal["auto", "straight", "diagonal", "tiles"] = "auto"


@dataclass(frozen=True, slots=True)
class Kit:
    """One kit: what it is called, its yarns by name, its sett, frame, weaving, paper, and what it says of amounts.

    `comb` says for which ends a comb that is cut has a slot.
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
    return Kit(
        name=got["name"],
        warp=got["yarns.warp"],
        weft=got["yarns.weft"],
        sett=sett_of(got),
        frame=frame,
        weaving=_weaving_of(got),
        paper=_paper_of(got),
        strength=strength_of(got),
        amounts=_amounts_of(got),
        comb=got["cut.comb"],
    )


def read_sett_input(values: Mapping[str, object], metrics: FontMetrics) -> SettInput:
    """The entries of the table [sett] alone, read and checked as in a kit. Raises FieldErrors with every refusal."""
    walk = Walk(metrics)
    walk.only("sett", values)
    errors = [*walk.errors, *sett_errors(walk.got)]
    if errors:
        raise FieldErrors(errors)
    return sett_of(walk.got)


_TURNS = ("near_end", "slant", "start", "first_pass")
_OPTIONAL = ("tie_off", "doubled_selvedges", "doubled_warp")
_WEAVING = ("width", "height", *_TURNS, *_OPTIONAL)


def _weaving_of(got: Mapping[str, Any]) -> Weaving:
    return Weaving(*(got[f"weaving.{key}"] for key in _WEAVING))


def _paper_of(got: Mapping[str, Any]) -> Paper:
    name, width, height = got["paper.size"]
    return Paper(name, width * PT, height * PT, got["paper.lay"])


def _amounts_of(got: Mapping[str, Any]) -> AmountsGiven:
    to_plain = {key: got.get(f"weaving.{key}") for key in ("draw_in", "shrinkage", "washed")}
    return AmountsGiven(got["warp"], got["weft"], got["room"], **to_plain)


def kit_values(kit: Kit) -> dict[str, object]:
    """Plain nested values that JSON and TOML can hold and that `read_kit` reads as the very same kit."""
    weaving = {key: getattr(kit.weaving, key) for key in _TURNS}
    weaving |= {key: value for key in _OPTIONAL if (value := getattr(kit.weaving, key))}
    width = AS_WIDE_AS_FITS if kit.weaving.width is None else exact_length(kit.weaving.width)
    amounts = to_plain(kit.amounts)
    weaving |= {key: amounts.pop(key) for key in ("draw_in", "shrinkage", "washed") if key in amounts}
    return {
        "version": VERSION,
        "name": kit.name,
        "yarns": {"warp": kit.warp, "weft": kit.weft},
        "sett": _sett_values(kit.sett),
        "frame": _frame_values(kit.frame) | strength_values(kit.strength),
        "weaving": {"width": width, "height": exact_length(kit.weaving.height), **weaving},
        "paper": {"size": _size_words(kit.paper), "lay": kit.paper.lay},
        "cut": {"comb": kit.comb},
        **amounts,
    }


def _sett_values(sett: SettInput) -> dict[str, object]:
    values: dict[str, object] = {}
    if sett.given is not None:
        values["given"] = exact_sett(sett.given)
    else:
        values["readings"] = [_reading_values(reading) for reading in sett.readings]
    if sett.marking_unit is not None:
        values["marking_unit"] = exact_length(sett.marking_unit)
    return values | {key: True for key in ("loosest", "as_measured") if getattr(sett, key)}


def _reading_values(reading: WrapReading) -> dict[str, object]:
    return {"pairs": reading.pairs, "measure" if reading.measured else "window": exact_length(reading.over)}


def _frame_values(frame: Frame) -> dict[str, object]:
    ends = frame.ends
    own = {key: getattr(ends, field) for key, field in END_KEYS.of(ends).fields.items()}
    lengths = {key: value for key, value in own.items() if value is not None}
    lengths |= {key: getattr(frame, key) for key in ("outer_width", "outer_height", "side_width", "margin")}
    return {"ends": ends.name, **{key: _exact(value) for key, value in lengths.items()}}


def _exact(value: Length | Sett) -> str:
    return exact_sett(value) if isinstance(value, Sett) else exact_length(value)


def _size_words(paper: Paper) -> str:
    if paper.name != "own":
        return paper.name
    width, height = (say_number(round(side / PT) * POINT) for side in (paper.width, paper.height))
    return f"{width} x {height} mm"
