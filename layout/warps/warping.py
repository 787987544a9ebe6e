"""From a sett, a frame and a weaving to the warp: how many ends there is room for, and how they are laid."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import ceil, floor

from layout.frames.frame import Frame
from layout.frames.kinds.frame_end import FrameEnd
from layout.kit.fields import example_of
from layout.kit.frame_inputs import LONGEST
from layout.kit.inputs import AS_WIDE_AS_FITS, BY_KEY
from layout.kit.kit import Weaving
from layout.messages.catalogue import Figure, Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Counted, WarpNeed, WarpNote
from layout.sett.sett import SettTaken
from layout.values.errors import FieldError
from layout.values.units import Length, down, mm_in, read_length, say_length, up
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Warp
from layout.warps.ways import way_of

MOST_MARKS = 5000
"""More marks than this on one strip are refused."""


def warp_on(sett: SettTaken, frame: Frame, weaving: Weaving, thread: Fraction | None = None) -> Warp:
    """The warp that fits the frame or the width asked for, of ends so thick in mm (None: not known).

    Raises FieldError where it holds too few ends, or more than `MOST_MARKS` marks would be needed.
    """
    room, pitch = weaving.width or frame.widest_weaving, 1 / sett.per_mm
    most = _ends(room, pitch, frame, weaving)
    ends, laid = _between_margins(most, sett, frame, weaving, thread)
    if weaving.start == "right":
        laid = laid.mirrored()
    return Warp(
        kind=_kind(frame.ends, weaving),
        sett=sett,
        ends=ends,
        near=laid.near,
        far=laid.far,
        passes=laid.passes,
        spacing=laid.spacing,
        toward=1 if weaving.start == "left" else -1,
        threads=_threads(ends, weaving),
        thickness=thread,
        winding=weaving.how_wound,
        rod=weaving.rod_diameter,
        notes=(*_room_notes(room, ends, pitch, frame.ends, weaving, tied=ends < most), *laid.notes),
        warnings=laid.warnings,
    )


def _between_margins(
    most: int, sett: SettTaken, frame: Frame, weaving: Weaving, thread: Fraction | None
) -> tuple[int, LayoutResult]:
    """How many ends are laid, and how: as many as leave what is tied outside the limits between the margins too."""
    between, either = frame.widest_weaving.mm, _tie_off(frame.ends, weaving) == "either end"
    for ends in range(most, 1, -1 if either else -2):
        laid = _laid(ends, sett, frame.ends, weaving, thread)
        if 2 * max(map(abs, (*laid.near, *laid.far))) <= between:
            if weaving.width and ends < most:
                raise _outside(sett, frame, weaving.width, f'width = "{AS_WIDE_AS_FITS}"')
            return ends, laid
    raise _outside(sett, frame, weaving.width or frame.widest_weaving, _more_room(sett, frame))


def _outside(sett: SettTaken, frame: Frame, width: Length, example: Message | str) -> FieldError:
    """Why a weaving so wide cannot be tied on or off half a pitch outside its limit."""
    half, between = (say_length(Length(mm, width.unit)) for mm in (1 / sett.per_mm / 2, frame.widest_weaving.mm))
    need = Message(WarpNeed.TIED_OUTSIDE, {"between": between, "half": half})
    return FieldError("weaving.width", need, say_length(width), example)


def _more_room(sett: SettTaken, frame: Frame) -> Message | str:
    """What lets the fewest ends be tied: a slant that keeps them inside, or on notches a wider frame."""
    if frame.ends.kind == "wound":
        return 'slant = "shared"'
    unit = "in" if frame.outer_width.imperial else "cm"
    wide = ceil((frame.outer_width.mm + 4 / sett.per_mm) / mm_in(unit)) * mm_in(unit)
    return Message(WarpNeed.WIDTH_LINE, {"width": say_length(Length(wide, unit))})


def _laid(ends: int, sett: SettTaken, frame_end: FrameEnd, weaving: Weaving, thread: Fraction | None) -> LayoutResult:
    return way_of(frame_end, weaving.how_wound).lay(ends, sett, frame_end, weaving, thread)


def _kind(frame_end: FrameEnd, weaving: Weaving) -> str:
    """How the frame ends carry the warp."""
    return way_of(frame_end, weaving.how_wound).kind(frame_end)


def _tie_off(frame_end: FrameEnd, weaving: Weaving) -> str:
    """Where the warp may be tied off; not said, a wound one in whole winds, any other where it comes to its end."""
    return weaving.tie_off or ("near end" if _kind(frame_end, weaving) == "wound" else "either end")


def _ends(room: Length, pitch: Fraction, frame: Frame, weaving: Weaving) -> int:
    """As many ends as the room holds: an even number tied off at the near end, an odd one at the far end."""
    frame_end = frame.ends
    tie_off = _tie_off(frame_end, weaving)
    ends, least = floor(room.mm / pitch), 3 if tie_off == "far end" else 2
    if tie_off != "either end":
        ends -= (ends - least) % 2
    if ends < least:
        wind = _kind(frame_end, weaving) == "wound" and least == 2
        what = Message(WarpNeed.ONE_WIND) if wind else Message(Counted.ENDS, {"count": least})
        needed = {"what": what, "room": say_length(Length(least * pitch, room.unit))}
        raise _too_narrow(frame, weaving, least * pitch, needed)
    to_a_mark = way_of(frame_end, weaving.how_wound).ends_to_a_mark
    marks = ends // to_a_mark + 1
    if marks > MOST_MARKS:
        widest = down(Length((MOST_MARKS - 1) * pitch * to_a_mark, room.unit))
        need = Message(WarpNeed.MARKS, {"most": Figure(f"{MOST_MARKS:,}")})
        raise FieldError("weaving.width", need, Figure(f"{marks:,}"), f'width = "{widest}"')
    return ends


def _too_narrow(frame: Frame, weaving: Weaving, least_mm: Fraction, needed: Mapping[str, object]) -> FieldError:
    """The refusal of a width that holds too few ends: a wider weaving if the frame has room, else a wider frame."""
    wide = min(10 * least_mm, frame.widest_weaving.mm)
    if weaving.width and wide >= least_mm:
        example = f'width = "{down(Length(wide, weaving.width.unit))}"'
        if read_length(example.split('"')[1]).mm < least_mm:
            example = f'width = "{AS_WIDE_AS_FITS}"'
        return FieldError("weaving.width", WarpNeed.ROOM, say_length(weaving.width), example, **needed)
    sides = frame.outer_width.mm - frame.widest_weaving.mm
    if sides + least_mm > LONGEST.mm:
        key = "side_width" if frame.side_width.mm >= frame.margin.mm else "margin"
        got, example = say_length(getattr(frame, key)), example_of(BY_KEY[f"frame.{key}"])
        need = Message(WarpNeed.ROOM_IN_FRAME, {**needed, "longest": say_length(LONGEST)})
        return FieldError(f"frame.{key}", need, got, example)
    wider = Length(min(sides + 10 * least_mm, LONGEST.mm), frame.outer_width.unit)
    got, example = say_length(frame.outer_width), f'outer_width = "{up(wider)}"'
    return FieldError("frame.outer_width", WarpNeed.ROOM_BESIDE, got, example, **needed)


def _threads(ends: int, weaving: Weaving) -> tuple[int, ...]:
    """One thread an end, or two; the outer ends that are doubled have twice as many."""
    doubled, each = weaving.doubled_selvedges, 2 if weaving.doubled_warp else 1
    if 2 * doubled > ends:
        key, example = "weaving.doubled_selvedges", "doubled_selvedges = 1"
        raise FieldError(key, WarpNeed.DOUBLED, str(doubled), example, ends=ends)
    return (2 * each,) * doubled + (each,) * (ends - 2 * doubled) + (2 * each,) * doubled


def _room_notes(
    room: Length, ends: int, pitch: Fraction, frame_end: FrameEnd, weaving: Weaving, *, tied: bool
) -> tuple[str, ...]:
    spare = room.mm - ends * pitch
    if not spare:
        return ()
    taken, whole, less = (say_length(Length(mm, room.unit)) for mm in (ends * pitch, room.mm, spare))
    winds = _kind(frame_end, weaving) == "wound" and ends % 2 == 0
    if weaving.width:
        role = WarpNote.WINDS_ASKED if winds else WarpNote.ENDS_ASKED
    elif tied:
        role = WarpNote.WINDS_FIT_TIED if winds else WarpNote.ENDS_FIT_TIED
    else:
        role = WarpNote.WINDS_FIT if winds else WarpNote.ENDS_FIT
    return (ENGLISH.say(role, taken=taken, whole=whole, less=less),)
