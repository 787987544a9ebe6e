"""The name of the folder that a kit's files lie in, from the kit's own name: one that every system takes."""

from __future__ import annotations

import unicodedata

from layout.messages.roles.ranges import RangeNeed
from layout.values.errors import FieldError, shown

RESERVED = frozenset(
    {"con", "prn", "aux", "nul", "conin$", "conout$"}
    | {f"{port}{number}" for port in ("com", "lpt") for number in "0123456789\u00b9\u00b2\u00b3"}
)
"""What Windows keeps for itself, with any ending (Microsoft, "Naming Files, Paths, and Namespaces", from memory)."""

LONGEST_FOLDER = 60
_EXAMPLE = 'name = "Weir frame, small"'


def folder_name(name: str) -> str:
    """The folder of the kit called `name`: small letters and figures, and one "-" for each run of all other signs.

    FieldError (at "name") where the name is that of a path, one that Windows keeps for itself, or has no letter.
    """
    if "/" in name or "\\" in name or not name.strip(". "):
        raise FieldError("name", RangeNeed.NO_PATH, shown(name), _EXAMPLE)
    base = name.split(".")[0].strip().lower()
    if base in RESERVED:
        raise FieldError("name", RangeNeed.RESERVED, shown(name), f'name = "{base.capitalize()} frame"', reserved=base)
    letters = unicodedata.normalize("NFC", name.lower())
    words = "".join(sign if sign.isalnum() else " " for sign in letters).split()
    folder = "-".join(words)
    if not folder or len(folder) > LONGEST_FOLDER:
        raise FieldError("name", RangeNeed.NO_LETTER, shown(name), _EXAMPLE)
    return folder


def same_place(folder: str) -> str:
    """What two folders have in common that some system takes for one: capitals and forms of letters do not count."""
    return unicodedata.normalize("NFKC", folder).casefold()
