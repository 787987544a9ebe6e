"""The program's messages in English, and with them those that stand on the parts."""

from layout.messages.catalogue import Catalogue
from layout.messages.english import ENGLISH as ON_PARTS
from templates_gen.messages.english import (
    buying,
    desk_kits,
    desk_numbers,
    desk_page,
    desk_slip,
    disk,
    files,
    inputs,
    measure,
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

_AREAS = (
    buying,
    desk_kits,
    desk_numbers,
    desk_page,
    desk_slip,
    disk,
    files,
    inputs,
    measure,
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

ENGLISH = Catalogue({**ON_PARTS.messages, **{role: said for area in _AREAS for role, said in area.MESSAGES.items()}})
"""The one catalogue that there is so far."""
