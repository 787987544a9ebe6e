"""English: everything that the page in the browser says, area by area."""

from __future__ import annotations

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

AREAS = (
    desk_choices,
    desk_helps,
    desk_kits,
    desk_labels,
    desk_numbers,
    desk_page,
    desk_server,
    desk_slip,
)
