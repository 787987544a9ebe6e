"""What is finished goes into its place, then into the journal; what lies there already is not made again."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import NamedTuple

from layout.kit.folder_names import same_place
from layout.values.errors import shown, shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.plain import kind_at
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.disk.run_folder import digest
from templates_gen.files.manifest import MANIFEST
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Failed, Kept, Stopped
from templates_gen.ordering.by_folder import ByFolder
from templates_gen.ordering.engine import Answer, Asked
from templates_gen.ordering.entry import Entry
from templates_gen.ordering.journal import Journal
from templates_gen.ordering.order import Order, Problem
from templates_gen.ordering.outcomes import answered, came, failed
from templates_gen.ordering.placing import Places, in_the_way
from templates_gen.ordering.result import Result
from templates_gen.ordering.work import stops


class Settled(NamedTuple):
    """Results by the number of their row, and why the run must stop, where it must."""

    results: Mapping[int, Result]
    fault: str = ""


class Keeper:
    """The folders of the orders beside `hidden`, which must be locked, and their journal."""

    def __init__(self, hidden: Path, tell: Callable[[str], None]) -> None:
        self._target = hidden.parent
        self._places = Places(self._target, hidden)
        self._places.recover(tell)
        self._journal = Journal(hidden, tell)
        self._seen = ByFolder()

    def close(self) -> None:
        """Ends the journal."""
        self._journal.close()

    def before(self, asked: Asked) -> Result | None:
        """What is known of an order beforehand: that it cannot be made, or that it was; None where it is to be made."""
        order = asked.order
        try:
            if why := self._refused(order):
                return failed(order, Problem("", why))
            return self._unchanged(asked)
        except OSError as error:
            said = fault(Fault.READ, self._target / order.folder, error, after=message(Stopped.MADE_STAYS))
            if stops(error):
                raise said from error
            return failed(order, Problem("", str(said)))

    def _unchanged(self, asked: Asked) -> Result | None:
        order = asked.order
        entry = self._journal.entry(order.folder)
        if entry is None or entry.fingerprint != asked.fingerprint or not self._lies_there(entry):
            return None
        found = replace(entry.result, line=order.line, number=order.number, kit=order.kit, copies=order.copies)
        return replace(found, state="unchanged")

    def _refused(self, order: Order) -> str:
        """Why nothing can be made in that folder. The table is asked first; this is the last door before the disk."""
        name = order.folder
        if Path(name).name != name or name.startswith(".") or set(name) & set("\\/:\0"):
            return message(Failed.NAME, folder=shown(name))
        place = same_place(name)
        if place in self._seen:
            return message(Failed.TWICE, folder=shown(name))
        self._seen[place] = 1
        return in_the_way(self._target / name)

    def _lies_there(self, entry: Entry) -> bool:
        folder = self._target / entry.result.folder
        digests = {**entry.digests, MANIFEST: entry.manifest}
        return kind_at(folder) == "folder" and all(
            digest(folder / name, LARGEST_FILE) == sha256 for name, sha256 in digests.items()
        )

    def unseen(self) -> Iterator[Result]:
        """What was made by earlier runs of orders that this one did not meet."""
        for folder in self._journal.folders:
            if same_place(folder) not in self._seen and (entry := self._journal.entry(folder)):
                yield entry.result

    def failed_anew(self, result: Result, folder: str) -> Result:
        """The result of a row that failed; where files of an earlier run lie in its `folder`, it says so."""
        entry = self._journal.entry(folder)
        if entry is None or kind_at(self._target / folder) != "folder":
            return result
        return replace(
            result, problems=(*result.problems, Problem("", message(Kept.EARLIER, folder=shown_path(folder))))
        )

    def unread(self, result: Result) -> Result:
        """The same of a row that cannot be read; an earlier row of its number has made what lies there."""
        met = same_place(result.number) in self._seen
        return result if met else self.failed_anew(result, result.number)

    def keep(self, answers: Sequence[Answer]) -> Settled:
        """Puts what was made into its place, then into the journal; each lies on the disk before the next begins."""
        results: dict[int, Result] = {}
        entries: dict[int, Entry] = {}
        faults: list[str] = []
        for answer in answers:
            try:
                self._put(answer, results, entries)
            except FaultError as error:
                faults.append(str(error))
        try:
            self._places.flush()
            self._journal.add(list(entries.values()))
            results |= {row: entry.result for row, entry in entries.items()}
        except FaultError as error:  # the disk takes no more: what is not written down is made again by the next run
            faults.append(str(error))
        _clear(answers)
        return Settled(results, faults[0] if faults else "")

    def _put(self, answer: Answer, results: dict[int, Result], entries: dict[int, Entry]) -> None:
        """One order into its place, or why it is not there. FaultError where no other can be put either."""
        (row, order, fingerprint), done = answer.asked, answer.done
        if done is None or done.problems:
            results[row] = self.failed_anew(answered(answer), order.folder)
            return
        if done.fault:
            raise FaultError(done.fault)
        try:
            notes = self._places.put(Path(done.staged), order.folder, done.digests, self._known(order))
        except FaultError as error:
            if stops(error.__cause__):
                raise
            results[row] = failed(order, Problem("", str(error)))
        else:
            entries[row] = Entry(fingerprint, done.manifest, came(order, done, "made", notes))

    def _known(self, order: Order) -> Mapping[str, str]:
        entry = self._journal.entry(order.folder)
        return entry.digests if entry else {}


def _clear(answers: Sequence[Answer]) -> None:
    """Takes away the stages of these attempts, with what was not moved."""
    for stage in {Path(done.staged).parent for _, done, _ in answers if done and done.staged}:
        shutil.rmtree(stage, ignore_errors=True)
