"""The way of the warp thread on each kind of frame: there and back once, and the whole of it, along its middle line."""

from __future__ import annotations

from typing import NamedTuple

from layout.frames.frame import Frame
from layout.messages.catalogue import Figure
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason
from layout.values.quantity import Quantity
from layout.warps.warp import Warp
from layout.warps.ways import way_of


class ThreadPath(NamedTuple):
    """Two ends of it in mm (a wind, or there and back with both turns), and the whole way in mm of every thread."""

    two_ends: Quantity
    whole: Quantity


def thread_path(frame: Frame, warp: Warp, thread: Quantity) -> ThreadPath:
    """The way of a warp whose thread is `thread` mm thick. FieldError where it does not fit between its pegs."""
    two, all_ends = way_of(frame.ends, warp.winding).thread(frame.ends, frame, warp, thread)
    threads = sum(warp.threads)
    return ThreadPath(two, all_ends.scaled(threads / warp.ends).explained(_said(warp, two), thread))


def _said(warp: Warp, two: Quantity) -> str:
    threads = sum(warp.threads)
    values = {"ends": warp.ends, "two": Figure(f"{two.value:.1f}")}
    if threads != warp.ends:
        return ENGLISH.say(Reason.PATH_THREADS, **values, threads=threads)
    return ENGLISH.say(Reason.PATH, **values)
