"""What sheets of a print run say."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles.run import RunList, RunSheet

MESSAGES: dict[Role, str | Plural] = {
    RunSheet.PLACED: "{range}: placed sheet {number} of {total}",
    RunSheet.CUT: Plural(
        "times",
        "Print once. Cut in the order of the numbers, both sides of each gap.",
        "Print {times} times. Cut in the order of the numbers, both sides of each gap.",
    ),
    RunSheet.HOLDS: "For {kits}",
    RunSheet.HOLDS_MANY: Plural("kits", "For {kits} kit of the run", "For {kits} kits of the run"),
    RunSheet.NO_CUT: "no straight cut goes between these parts",
    RunList.NAME: "Run list",
    RunList.PURPOSE: "What to print, how often, and how to cut it.",
    RunList.FILE: "File",
    RunList.PAGES: "Pages",
    RunList.TIMES: "Print",
    RunList.HOLDS: "What it holds",
    RunList.KITS: "For",
    RunList.FROM_TO: "{first} to {last}",
    RunList.TIMES_PRINTED: Plural("times", "once", "{times} times"),
    RunList.TOGETHER: Plural(
        "sheets",
        "Together {sheets} sheet of paper; box by box it would take {singly}.",
        "Together {sheets} sheets of paper; box by box it would take {singly}.",
    ),
    RunList.AREA: Plural(
        "sheets",
        "By area at least {least}; parts leave {waste} % of the room on {sheets} placed sheet free.",
        "By area at least {least}; parts leave {waste} % of the room on {sheets} placed sheets free.",
    ),
    RunList.STEP_SCALES: "Print this page first, at 100 %. Lay a ruler along both scales.",
    RunList.STEP_PRINT: "Print every other page as often as its file's name says, at 100 %.",
    RunList.STEP_CUT: "Cut a stack of one page at a time, in the order of the numbers, at both sides of each gap.",
    RunList.STEP_LAY: "Lay each box by its packing list.",
    RunList.CARE: "Knives and guillotines cut fingers: keep these behind ruler or guard. Local rules come first.",
}
