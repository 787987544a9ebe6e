"""What the table of kits is drawn from: the files of the folder, and the slips that no file holds yet."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING

from layout.messages.catalogue import Catalogue
from templates_gen.desk.kits.compare import FEWEST, compare
from templates_gen.desk.making.asked import digest_of
from templates_gen.desk.page.kits_views import Compared, KitAsked, KitsAsked
from templates_gen.desk.server.kept import is_of
from templates_gen.desk.server.made import made_of_all
from templates_gen.desk.server.person import Unit
from templates_gen.messages.roles.desk_server import DeskNote

if TYPE_CHECKING:
    from templates_gen.desk.kits.listed import Entry
    from templates_gen.desk.server.state import Desk, Slip


def kits_asked(
    desk: Desk,
    slip: Slip,
    said: Catalogue,
    shown: Unit,
    beside: Sequence[tuple[str, Mapping[str, str]]],
    refused: str,
) -> Callable[[], KitsAsked]:
    """What gives the table; the folder is read at once, kits are compared when it is drawn."""
    listed, slips = desk.kits.listed(), desk.slips.all()
    rows = [_row(desk, entry, slips, said) for entry in listed.kits]
    rows += [
        KitAsked(each.id, "", each.typed.get("name", ""), dict(each.typed))
        for each in slips
        if each.opened is None or not each.opened.file
    ]
    rows += [
        KitAsked(str(each.number), each.file, each.opened.name, None, said.say(DeskNote.STOCK_FILE))
        for each in listed.stocks
        if each.opened
    ]
    made = made_of_all(desk, said)

    def asked() -> KitsAsked:
        enough = len(beside) >= FEWEST
        found = compare([typed for _, typed in beside], said, shown) if enough else None
        return KitsAsked(
            slip=slip.id,
            token=desk.token,
            words=said,
            unit=shown,
            kits=tuple(rows),
            more=listed.more,
            ticked=frozenset(name for name, _ in beside),
            compared=found.names if found else (),
            differing=tuple(Compared(*each) for each in found.differing) if found else (),
            alike=tuple(Compared(*each) for each in found.alike) if found else (),
            made=made,
            refused=refused,
        )

    return asked


def _row(desk: Desk, entry: Entry, slips: Sequence[Slip], said: Catalogue) -> KitAsked:
    opened = entry.opened
    if opened is None:
        return KitAsked("", entry.file, entry.file, None, entry.error.said(said) if entry.error else "")
    typed = next((each.typed for each in slips if is_of(each, opened)), opened.typed)
    return KitAsked(
        str(entry.number),
        entry.file,
        typed.get("name", opened.name),
        typed,
        note=desk.making.note(digest_of(typed), said),
    )
