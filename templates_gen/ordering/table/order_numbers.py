"""From the number of an order to the name of its folder: one that every system takes, and takes for no other."""

from __future__ import annotations

import unicodedata
from itertools import count

from layout.kit.folder_names import RESERVED, same_place
from layout.messages.catalogue import Role
from layout.values.errors import FieldError, shown
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.orders_table import NumberNeed
from templates_gen.ordering.by_folder import ByFolder

NUMBER = "order.number"
MOST = 40
"""Our own limit, in characters; in UTF-8 no more than 160 bytes, and file systems take 255."""

_SIGNS = frozenset("-_.#+ ")
_ENDINGS = (".csv", ".json", ".pdf", ".lock", ".tmp")
"""How files end that lie, or may come to lie, beside the folders of the orders."""

EXAMPLE = "1042"


def folder_of(number: str) -> str:
    """The name of the folder of that order: its number, in composed form (NFC). Capitals and zeros stay.

    FieldError, at "order.number", where it could name another place, or none on some system.
    """
    folder = unicodedata.normalize("NFC", number)
    if not folder:
        raise _refused(NumberNeed.GIVEN, number, most=MOST)
    if len(folder) > MOST:
        raise _refused(NumberNeed.SHORTER, number, most=MOST, count=len(folder))
    if not all(_is_plain(sign) or sign in _SIGNS for sign in folder):
        raise _refused(NumberNeed.SIGNS, number)
    if not _is_plain(folder[0]) and folder[0] != "#":
        raise _refused(NumberNeed.FIRST, number)
    if folder[-1] in ". ":
        raise _refused(NumberNeed.LAST, number)
    _keep_off(folder)
    return folder


def _keep_off(folder: str) -> None:
    """FieldError for a name that Windows keeps, and for what is called as our own files are."""
    place = same_place(folder)
    base = place.split(".")[0].strip()
    if base in RESERVED:
        raise _refused(NumberNeed.RESERVED, folder, reserved=base)
    ending = next((each for each in _ENDINGS if place.endswith(each)), "")
    if ending:
        raise _refused(NumberNeed.OWN_FILE, folder, ending=ending)


class Taken:
    """The folders that earlier rows have taken, and in which line."""

    def __init__(self) -> None:
        self._lines = ByFolder()

    def take(self, number: str, folder: str, line: int) -> None:
        """Take the folder for the row of that line; FieldError where an earlier one has it."""
        first = self._lines.setdefault(same_place(folder), line)
        if first != line:
            raise OptionError(NUMBER, NumberNeed.TWICE, shown(number), self._free(folder), line=first)

    def _free(self, folder: str) -> str:
        names = (f"{folder[: MOST - 8]}-{number}" for number in count(2))
        return next(name for name in names if same_place(name) not in self._lines)


def _is_plain(sign: str) -> bool:
    return sign.isalpha() or sign.isdecimal()


def _refused(role: Role, number: str, **values: object) -> FieldError:
    return OptionError(NUMBER, role, shown(number), EXAMPLE, **values)
