"""English: what a proof finds wrong on the sheets of a print run."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.proof_run import RunProof

MESSAGES: dict[Role, str | Plural] = {
    RunProof.CLOSE: "{part} and {other} leave no room for a knife between them",
    RunProof.BED: "{part} reaches into the margins or the gutter",
    RunProof.KIT: '{part} of "{kit}": {what}',
    RunProof.COPIES: '{part} of "{kit}" is printed {found} times, where {wanted} were wanted',
    RunProof.NAMED: "{file} does not say that its pages are printed {times} times",
    RunProof.NUMBERS: "the cuts are numbered {found}, where 1 to {wanted} were wanted",
    RunProof.ASIDE: "the number {number} does not stand beside its cut, or a part is under it",
    RunProof.THROUGH: "cut {number} goes through {part}",
    RunProof.EDGE: "cut {number} does not go from edge to edge of what is left",
    RunProof.APART: "the cuts do not leave {part} alone and trimmed",
    RunProof.MARK: "cut {number} has a line without a crop mark",
    RunProof.STRAY: "a crop mark lies on no cut",
    RunProof.SHEETS: "a row of the run list is wrong: '{words}' was wanted",
    RunProof.OFF_BOARD: "{part} reaches over the edge of its board",
    RunProof.CLOSE_ON_BOARD: "{part} and {other} are too close to each other on a board",
    RunProof.CUT_COPIES: '{part} of "{kit}" is cut {found} times, where {wanted} were wanted',
}
