"""The roles of what is said of print runs over many orders."""

from __future__ import annotations

from layout.messages.catalogue import Role


class PrintRunNeed(Role):
    """What is refused of them."""

    SHEETS = "print_run_need.sheets"
    MORE = "print_run_need.more"
    NO_PAPER = "print_run_need.no_paper"
    NO_FILE = "print_run_need.no_file"
