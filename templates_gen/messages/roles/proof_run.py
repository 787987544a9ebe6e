"""Roles of what a proof finds wrong on the sheets of a print run."""

from __future__ import annotations

from layout.messages.catalogue import Role


class RunProof(Role):
    """Parts of several boxes beside each other, and how they are cut apart."""

    CLOSE = "run_proof.close"
    BED = "run_proof.bed"
    KIT = "run_proof.kit"
    COPIES = "run_proof.copies"
    NAMED = "run_proof.named"
    NUMBERS = "run_proof.numbers"
    ASIDE = "run_proof.aside"
    THROUGH = "run_proof.through"
    EDGE = "run_proof.edge"
    APART = "run_proof.apart"
    MARK = "run_proof.mark"
    STRAY = "run_proof.stray"
    SHEETS = "run_proof.sheets"
    OFF_BOARD = "run_proof.off_board"
    CLOSE_ON_BOARD = "run_proof.close_on_board"
    CUT_COPIES = "run_proof.cut_copies"
