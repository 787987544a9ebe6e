"""The kits of the start folder: opened by a number in the list, kept without a word of anybody else being lost."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from threading import RLock

from layout.messages.catalogue import Catalogue
from layout.values.errors import LayoutError, shown_path
from templates_gen.desk.kits.files import Folder
from templates_gen.desk.kits.keeping import new_text, range_name, said, text_with, unchanged
from templates_gen.desk.kits.kinds import Parsed, opened_all, parsed
from templates_gen.desk.kits.listed import Listed, Numbers
from templates_gen.desk.kits.opened import Changed, DeskError, Opened, Typed, stamp_of
from templates_gen.messages.roles.desk_kits import DeskKits


class Kits:
    """The kits, ranges and stock files in one folder. Safe to be used by several threads at once.

    What a file or a kit cannot do is a LayoutError with a sentence; its `said` has it in any language.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = Folder(folder)
        self._lock = RLock()
        self._numbers = Numbers()
        self._written: dict[str, dict[str, tuple[str, int | None]]] = {}
        self._of_sent: dict[str, str] = {}
        self._known: dict[str, tuple[str, tuple[Opened, ...] | LayoutError]] = {}

    def listed(self) -> Listed:
        """Every file with all that it holds, in the order of names; what cannot be read has its sentence."""
        with self._lock:
            names, more = self._folder.names()
            return self._numbers.listed(((name, self._read(name)) for name in names), more)

    def open(self, number: int) -> Opened:
        """The kit, or the stock, of that number in the list, read anew."""
        file, place = self._numbers.of(number)
        found = self._read(file)
        if isinstance(found, LayoutError):
            raise found
        if place > len(found):
            raise DeskError(DeskKits.NO_SUCH)
        return found[place - 1]

    def open_all(self, number: int) -> tuple[Opened, ...]:
        """Every kit of the file that the kit of that number is in."""
        found = self._read(self._numbers.of(number)[0])
        if isinstance(found, LayoutError):
            raise found
        return found

    def upload(self, name: str, data: bytes) -> tuple[Opened, ...]:
        """What a file holds that somebody sends: one kit or stock, or several kits. Its `name` is shown and no more."""
        shown = shown_path(name.replace("\\", "/").rpartition("/")[2])
        return opened_all(_ours(parsed(data, shown), shown), data, "", shown)

    def again(self, opened: Opened) -> Opened:
        """The same as it is in the folder now: theirs, where it was changed elsewhere."""
        found = self._read(opened.file)
        if isinstance(found, LayoutError):
            raise found if self._folder.there(opened.file) else Changed(opened.file, gone=True)
        place = opened.number or 1
        if place > len(found):
            raise Changed(opened.file, gone=True)
        return found[place - 1]

    def keep(self, opened: Opened, typed: Typed, *, how: str = "asked", shared: bool = False) -> Opened:
        """Writes what the slip says into its file, or into a new one where it has none or `how` is "new".

        Raises Changed where the file is not as it was opened; "mine" keeps these values over theirs all the same. Of a
        range, a change goes into the kit's own table, or, where it is to be `shared`, above all kits. FieldError at
        "name" where a new file cannot be called after its kit, FaultError where the disk refuses: nothing is written
        then.
        """
        with self._lock:
            if how != "new" and not opened.file and opened.kind == "range":
                opened = self._sent(opened)
            if how == "new" or not opened.file:
                return self._new(opened, typed)
            if how == "mine" and not self._folder.there(opened.file):
                return self._back(opened, typed)
            with self._folder.held(opened.file):
                return self._kept(opened, typed, mine=how == "mine", shared=shared)

    def _kept(self, opened: Opened, typed: Typed, *, mine: bool, shared: bool) -> Opened:
        if not self._folder.there(opened.file):
            raise Changed(opened.file, gone=True)
        data = self._folder.read(opened.file)
        now = stamp_of(data)
        if now != opened.stamp and not mine and not self._ours(opened, now):
            raise Changed(opened.file, gone=False)
        if now == opened.stamp and unchanged(opened, typed):
            return opened
        theirs = self.again(opened)
        base = theirs if mine else opened
        new = text_with(base, typed, theirs.text, shared=shared).encode()
        if new != data:
            self._folder.replace(opened.file, new)
            touched = None if shared or opened.number is None else opened.number
            self._written.setdefault(opened.file, {})[now] = (stamp_of(new), touched)
        return self.again(opened)

    def _ours(self, opened: Opened, now: str) -> bool:
        """Whether all that changed in a range since it was opened is other kits of it that were kept here."""
        steps, stamp = self._written.get(opened.file, {}), opened.stamp
        for _ in range(len(steps)):
            if stamp == now or stamp not in steps:
                break
            stamp, touched = steps[stamp]
            if touched is None or touched == opened.number:
                return False
        return stamp == now

    def _new(self, opened: Opened, typed: Typed) -> Opened:
        data = new_text(opened, typed).encode()
        file = self._folder.write_new(str(said(opened, typed).get("name", "")), data)
        return self._only(file)

    def _sent(self, opened: Opened) -> Opened:
        """A kit of a range that somebody sent, as one of the file that the whole range is in from now on."""
        file = self._of_sent.get(opened.stamp, "")
        if not self._folder.there(file):
            name, data = range_name(opened.text), opened.text.encode()
            file = self._of_sent[opened.stamp] = self._folder.write_new(name, data)
        return replace(opened, file=file)

    def _back(self, opened: Opened, typed: Typed) -> Opened:
        """A file that somebody took away, written again."""
        self._folder.write(opened.file, text_with(opened, typed, opened.text).encode())
        return self.again(opened)

    def _only(self, file: str) -> Opened:
        found = self._read(file)
        if isinstance(found, LayoutError):
            raise found
        return found[0]

    def _read(self, file: str) -> tuple[Opened, ...] | LayoutError:
        """What a file holds now; the same bytes are not taken apart twice."""
        try:
            data = self._folder.read(file)
        except LayoutError as error:
            return error
        stamp, known = stamp_of(data), self._known.get(file)
        if known is None or known[0] != stamp:
            known = self._known[file] = stamp, _held(data, file)
        return known[1]


def _held(data: bytes, file: str) -> tuple[Opened, ...] | LayoutError:
    try:
        return opened_all(_ours(parsed(data, file), file), data, file, file)
    except LayoutError as error:
        return error


def _ours(found: Parsed, named: str) -> Parsed:
    if found.kind is None:
        raise DeskError(DeskKits.OTHER_FILE, file=named)
    return found


def copied(opened: Opened, typed: Typed, words: Catalogue, taken: frozenset[str] = frozenset()) -> tuple[Opened, Typed]:
    """A copy of a kit that no file holds yet, called as its copy by another name than those that are `taken`.

    The copy of a file of one kit has its remarks.
    """
    name = _free(typed.get("name", ""), words, taken)
    copy = {**typed, "name": name}
    alone = opened.kind == "kit"
    return Opened("kit", opened.typed if alone else {}, "", name, opened.text if alone else ""), copy


def _free(name: str, words: Catalogue, taken: frozenset[str]) -> str:
    from itertools import count

    from layout.kit.names import LONGEST_NAME

    known = {each.casefold() for each in taken} | {name.casefold()}
    for number in count(1):
        role, values = (DeskKits.COPY_OF, {}) if number == 1 else (DeskKits.COPY_NUMBER, {"number": number})
        room = LONGEST_NAME - len(words.say(role, name="", **values))
        copy = str(words.say(role, name=name[:room].rstrip(" ,"), **values))
        if copy.casefold() not in known:
            return copy
    return copy
