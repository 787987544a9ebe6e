"""Everything that is made at the desk: one run at a time, its zip kept until others take its place, single files."""

from __future__ import annotations

import secrets
import shutil
import threading
import zipfile
from collections import OrderedDict
from pathlib import Path
from tempfile import TemporaryDirectory

from layout.cutting.stock.stock import Stock
from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from templates_gen.desk.kits.opened import DeskError
from templates_gen.desk.making.asked import Asked
from templates_gen.desk.making.job import Job
from templates_gen.disk.faults import reason
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.desk_kits import DeskKits, DeskMaking

SECONDS = 60.0
"""As long as one kit may take."""
_KEPT = 10
"""So many zips are kept; an older one goes."""


class Making:
    """The runs of one desk, in a private folder that goes with `close`. Safe to be used by several threads at once."""

    def __init__(self, seconds: float = SECONDS) -> None:
        self._seconds = seconds
        self._lock = threading.Lock()
        self._jobs: OrderedDict[str, Job] = OrderedDict()
        self._folder: TemporaryDirectory[str] | None = None
        self._drawing = threading.Lock()

    def start(self, asked: Asked) -> Job:
        """Begins a run; DeskError while another one is under way, or where there is no place for its files."""
        with self._lock:
            if any(not job.ended for job in self._jobs.values()):
                raise DeskError(DeskMaking.BUSY)
            name = secrets.token_hex(8)
            try:
                folder = self._private() / name
                folder.mkdir(mode=0o700)
                job = Job(name, asked, folder, self._seconds * asked.kits)
            except OSError as error:
                raise DeskError(DeskMaking.NO_FOLDER, why=reason(error)) from error
            self._jobs[name] = job
            self._forget()
            return job

    def job(self, name: str) -> Job:
        """The run of that id; DeskError for one that is not known, or not kept any more."""
        with self._lock:
            if name not in self._jobs:
                raise DeskError(DeskMaking.NO_JOB)
            return self._jobs[name]

    def made(self, digest: str) -> Job | None:
        """The last run that made what has this digest."""
        with self._lock:
            jobs = [job for job in self._jobs.values() if job.asked.digest == digest and job.state.status == "made"]
            return jobs[-1] if jobs else None

    def note(self, digest: str, words: Catalogue) -> str:
        """What is known of the files of what has this digest: proven, and how many, or not made yet."""
        job = self.made(digest)
        proof = job.state.proof if job else None
        return words.say(DeskKits.FILES_PROVEN, files=proof.files) if proof else words.say(DeskKits.FILES_NOT_MADE)

    def file(self, name: str, file: str) -> bytes:
        """One file out of the zip of a run, by its name there; DeskError where there is none."""
        job = self.job(name)
        try:
            with zipfile.ZipFile(job.zip) as archive:
                return archive.read(file)
        except (OSError, KeyError) as error:
            raise DeskError(DeskMaking.NO_FILE) from error

    def single(self, plan: Plan, file: str, stock: Stock | None = None) -> bytes:
        """One file of a kit, such as "strip-near.pdf" or "kit.pdf", drawn, read back and proven without a whole run.

        Raises what `templates_gen.sheet` raises. One after the other, so that the page stays quick.
        """
        from templates_gen.files.one_file import proven_bytes
        from templates_gen.inputs.stock_file import built_in

        with self._drawing:
            return proven_bytes(plan, file, lambda: stock or built_in(), metrics())

    def close(self) -> None:
        """Ends what is under way, and takes away all that was made here."""
        with self._lock:
            for job in self._jobs.values():
                job.stop()
            for job in self._jobs.values():
                job.wait(5)
            self._jobs.clear()
            if self._folder:
                self._folder.cleanup()
            self._folder = None

    def _private(self) -> Path:
        if self._folder is None:
            self._folder = TemporaryDirectory(prefix="templates-gen-desk-", ignore_cleanup_errors=True)
        return Path(self._folder.name)

    def _forget(self) -> None:
        """Takes away the oldest zips, and what runs left that made none."""
        made = [name for name, job in self._jobs.items() if job.state.status == "made"]
        others = [name for name, job in self._jobs.items() if job.ended and job.state.status != "made"]
        for name in (*made[: max(0, len(made) - _KEPT)], *others[: max(0, len(others) - _KEPT)]):
            shutil.rmtree(self._jobs.pop(name).folder, ignore_errors=True)
