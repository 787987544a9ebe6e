"""The program's messages in English, and with them those that stand on the parts."""

from layout.messages.catalogue import Catalogue
from layout.messages.english import ENGLISH as ON_PARTS
from templates_gen.messages.english import (
    buying,
    disk,
    engine,
    files,
    inputs,
    measure,
    orders_report,
    orders_table,
    print_runs,
    printer_check,
    printers,
    proof,
    proof_cards,
    proof_cut,
    proof_leaflet,
    proof_printed,
    proof_printer_check,
    proof_run,
    ranges,
    reading,
    run,
    scan,
    screen,
    square,
    writing,
)
from templates_gen.messages.late import Late, Messages

_AREAS = (
    buying,
    disk,
    engine,
    files,
    inputs,
    measure,
    orders_report,
    orders_table,
    print_runs,
    printer_check,
    printers,
    proof,
    proof_cards,
    proof_cut,
    proof_leaflet,
    proof_printed,
    proof_printer_check,
    proof_run,
    ranges,
    reading,
    run,
    scan,
    screen,
    square,
    writing,
)


def _of_desk(_language: str) -> Messages:
    """What the page in the browser says: no other command loads it."""
    from templates_gen.messages.english import (
        desk_choices,
        desk_helps,
        desk_kits,
        desk_labels,
        desk_numbers,
        desk_page,
        desk_server,
        desk_slip,
    )

    areas = (desk_choices, desk_helps, desk_kits, desk_labels, desk_numbers, desk_page, desk_server, desk_slip)
    return {role: said for area in areas for role, said in area.MESSAGES.items()}


_FIRST: Messages = {**ON_PARTS.messages, **{role: said for area in _AREAS for role, said in area.MESSAGES.items()}}
ENGLISH = Catalogue(Late(_FIRST, _of_desk))
"""The one catalogue that there is so far."""
