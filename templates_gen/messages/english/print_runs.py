"""English: what is said of print runs over many orders."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.print_runs import PrintRunNeed

MESSAGES: dict[Role, str | Plural] = {
    PrintRunNeed.SHEETS: needs("a whole number of sheets from {least} to {most}"),
    PrintRunNeed.MORE: needs("at least {least} sheets, since one box of order {order} takes so many"),
    PrintRunNeed.NO_PAPER: needs("something that is printed, with print runs"),
    PrintRunNeed.NO_FILE: "{path} is not a file; move it away, then run the same again",
}
