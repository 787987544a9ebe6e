"""English: what became of an order, and how things stand after a stop."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.engine import Failed, InTheWay, Kept, Stopped

MESSAGES: dict[Role, str | Plural] = {
    Stopped.MADE_STAYS: "orders that were made stay; run the same command again to make the others",
    Stopped.EXECUTOR: (
        "the executor of this run takes no more work ({why}); orders that were made stay: "
        "start it again, then run the same again to make the others"
    ),
    Stopped.NO_WORKERS: (
        "worker processes end as soon as they begin; where a script of yours starts the run, "
        'put that under if __name__ == "__main__":, or take one worker'
    ),
    Stopped.LINK: "{path} is a link, or not what belongs there; move it away, then run the same again",
    Failed.ACCIDENT: "it could not be made: {error}. {advice}",
    Failed.WORKER: (
        "each worker process that began it ended without an answer, {times} times{why}; if memory ran out, take fewer "
        "workers, else report it with its row and the version (templates-gen {version})"
    ),
    Failed.WHY: " ({error})",
    Failed.IN_THE_WAY: "{what} stands at {path}, where its folder would be; move it away, then run the same again",
    Failed.TWICE: "another order of this table has the folder {folder}; give this one another number",
    Failed.NAME: "{folder} cannot be the name of a folder; give the order another number",
    Kept.BY_HAND: "{name} had been changed since it was made; the changed file is now {other}",
    Kept.JOURNAL: "The journal in {folder} could not be read; it is now {other}, and every order is made again.",
    Kept.OTHERS: Plural(
        "number",
        "{number} order of an earlier run is not in the table any more; its folder stays.",
        "{number} orders of earlier runs are not in the table any more; their folders stay.",
    ),
    Kept.EARLIER: "the folder {folder} still holds the files of an earlier run: do not use them for this order",
    Kept.BEFORE: "{path} holds files that no run of orders made; they were left there.",
    InTheWay.FILE: "a file",
    InTheWay.LINK: "a link",
    InTheWay.OTHER: "a pipe or a device",
}
