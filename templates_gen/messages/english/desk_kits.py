"""English: what the desk says: kits opened, kept, compared and made."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_kits import DeskKits

MESSAGES: dict[Role, str | Plural] = {
    DeskKits.CHANGED: "{file} was changed elsewhere after you opened it here. Keep yours, take theirs, or keep yours "
    "as a new file.",
    DeskKits.GONE: "{file} is no longer in the folder. Keep yours there again, or as a new file.",
    DeskKits.NO_SUCH: "This kit is no longer in the list. Open My kits again.",
    DeskKits.NO_PLACE: "{file} is written in a way that these changes cannot be put into. Nothing was written; keep "
    "yours as a new file.",
    DeskKits.NO_FREE_NAME: "The folder has too many files called {file}. Give the kit another name.",
    DeskKits.NO_FOLDER: "The folder of kits cannot be read: {why}.",
    DeskKits.OTHER_FILE: "{file} is a TOML file, but neither a kit, a range nor a stock file.",
    DeskKits.COPY_OF: "{name}, copy",
    DeskKits.COPY_NUMBER: "{name}, copy {number}",
}
