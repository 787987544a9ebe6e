"""The roles of what is said of a run of orders: what became of one, and how things stand after a stop."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Stopped(Role):
    """Why a run does not go on, and what stays of it."""

    MADE_STAYS = "engine.stopped.made_stays"
    EXECUTOR = "engine.stopped.executor"
    NO_WORKERS = "engine.stopped.no_workers"
    LINK = "engine.stopped.link"


class Failed(Role):
    """Why an order was not made that nothing is wrong with."""

    ACCIDENT = "engine.failed.accident"
    WORKER = "engine.failed.worker"
    WHY = "engine.failed.why"
    IN_THE_WAY = "engine.failed.in_the_way"
    TWICE = "engine.failed.twice"
    NAME = "engine.failed.name"


class Kept(Role):
    """What was kept of what was there."""

    BY_HAND = "engine.kept.by_hand"
    JOURNAL = "engine.kept.journal"
    OTHERS = "engine.kept.others"
    EARLIER = "engine.kept.earlier"
    BEFORE = "engine.kept.before"


class InTheWay(Role):
    """What stands where the folder of an order would."""

    FILE = "engine.in_the_way.file"
    LINK = "engine.in_the_way.link"
    OTHER = "engine.in_the_way.other"
