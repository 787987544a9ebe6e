"""The roles of what the desk says: kits opened, kept, compared and made."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskKits(Role):
    """Kits opened, kept, compared and made."""

    CHANGED = "desk_kits.changed"
    GONE = "desk_kits.gone"
    NO_SUCH = "desk_kits.no_such"
    NO_PLACE = "desk_kits.no_place"
    NO_FREE_NAME = "desk_kits.no_free_name"
    NO_FOLDER = "desk_kits.no_folder"
    OTHER_FILE = "desk_kits.other_file"
    COPY_OF = "desk_kits.copy_of"
    COPY_NUMBER = "desk_kits.copy_number"
