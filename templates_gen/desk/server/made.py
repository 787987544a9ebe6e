"""Making the files of a slip, or of all kits: begun, followed, stopped, and what came of it."""

from __future__ import annotations

import zipfile
from functools import lru_cache
from typing import TYPE_CHECKING

from layout.messages.catalogue import Catalogue
from layout.values.errors import LayoutError
from templates_gen.desk.kits.opened import DeskError
from templates_gen.desk.look.sheets import sheet_name
from templates_gen.desk.making.asked import asked_all, asked_one
from templates_gen.desk.page.asked import NOTHING_MADE, Made

if TYPE_CHECKING:
    from templates_gen.desk.making.job import Job
    from templates_gen.desk.server.state import Desk, Slip

_OPENED = ("strips.pdf", "strip-near.pdf", "strip-far.pdf", "kit.pdf", "job.pdf")
"""What is opened most: offered beside the zip, where it was made."""
_STRIPS = ("strips",)
_BYTES_PER_MB = 1_000_000


def start(desk: Desk, slip: Slip, what: str) -> None:
    """Begins to make "strips", or what is ticked; the lines can be read. LayoutError where that cannot be."""
    with slip.lock:
        ticked = () if slip.only is None else tuple(sorted(file.rpartition(".")[0] for file in slip.only))
        slip.job = desk.making.start(asked_one(slip.typed, _STRIPS if what == "strips" else ticked)).id
        slip.made_of = dict(slip.typed)


def start_all(desk: Desk) -> None:
    """Begins to make every kit of the folder, as it lies on the desk or else as its file says."""
    slips = {(each.opened.file, each.opened.number): each for each in desk.slips.all() if each.opened}
    found = [entry.opened for entry in desk.kits.listed().kits if entry.opened]
    typed = [slips[key].typed if (key := (each.file, each.number)) in slips else each.typed for each in found]
    desk.job = desk.making.start(asked_all(typed, desk.folder.name or "kits")).id


def made_of(desk: Desk, slip: Slip, words: Catalogue) -> Made:
    """How far it is with a slip. A run that failed leaves the zip of the one before, and says why."""
    job = _job(desk, slip.job)
    if job is None:
        return NOTHING_MADE
    state = job.state
    if state.status == "making":
        return Made(job.id, running=True, done=state.done, total=state.total, file=state.file)
    if state.status == "made":
        slip.made_job, slip.made_typed = job.id, slip.made_of
    trouble = "" if state.status == "made" else state.said(words)
    last = _job(desk, slip.made_job)
    if last is None or last.state.status != "made":
        return Made(trouble=trouble)
    return _whole(slip, last, words, trouble)


def _whole(slip: Slip, job: Job, words: Catalogue, trouble: str) -> Made:
    return Made(
        job=job.id,
        proof=job.state.said(words),
        trouble=trouble,
        zip=f"/zip/{job.id}",
        zip_name=zip_name(job),
        megabytes=job.state.size / _BYTES_PER_MB,
        opens=tuple(_opened(slip, job, words)),
        stale=slip.typed != slip.made_typed,
    )


def _opened(slip: Slip, job: Job, words: Catalogue) -> list[tuple[str, str]]:
    plan = slip.good.plan if slip.good else None
    names = _names(str(job.zip)) if plan else frozenset()
    stock = slip.good.stock if slip.good else None
    found = [(file, sheet_name(plan, stock, file, words)) for file in _OPENED if plan and file in names]
    return [(f"/zip/{job.id}/{file}", each.title) for file, each in found if each]


@lru_cache(8)
def _names(path: str) -> frozenset[str]:
    """What is in a zip, which never changes once it is there."""
    try:
        with zipfile.ZipFile(path) as archive:
            return frozenset(archive.namelist())
    except OSError:
        return frozenset()


def made_of_all(desk: Desk, words: Catalogue) -> Made:
    """How far it is with all kits."""
    job = _job(desk, desk.job)
    if job is None:
        return NOTHING_MADE
    state = job.state
    if state.status == "making":
        return Made(job.id, running=True, done=state.done, total=state.total, file=state.file)
    if state.status != "made":
        return Made(trouble=state.said(words))
    size = state.size / _BYTES_PER_MB
    return Made(job.id, proof=state.said(words), zip=f"/zip/{job.id}", zip_name=zip_name(job), megabytes=size)


def zip_name(job: Job) -> str:
    """What the zip is called: letters, digits and hyphens of the kit's name."""
    try:
        return job.asked.zip_name
    except LayoutError:
        return "kit.zip"


def _job(desk: Desk, name: str) -> Job | None:
    try:
        return desk.making.job(name) if name else None
    except DeskError:
        return None
