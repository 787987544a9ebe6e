"""What a desk knows while it is open: who may come in, and the slips that lie on it. Nothing of it is on disk."""

from __future__ import annotations

import secrets
import threading
from collections import OrderedDict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

from templates_gen.desk.kits.folder import Kits
from templates_gen.desk.making.making import Making

if TYPE_CHECKING:
    from templates_gen.desk.kits.opened import Opened
    from templates_gen.desk.slip.reading import Read

SLIPS = 50
"""As many kits as may lie on one desk."""

_PAGES = 20
_LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"  # none that looks like another
_GROUPS, _EACH = 3, 4


def new_code() -> str:
    """A word to type on another device, of 59 random bits, such as "k7wd-x2mp-9qrt"."""
    groups = ("".join(secrets.choice(_LETTERS) for _ in range(_EACH)) for _ in range(_GROUPS))
    return "-".join(groups)


@dataclass(slots=True)
class Slip:
    """One kit as it is typed, and what the desk knows of it beside. Whoever changes it holds its `lock`.

    `examples` names the lines that are still the example's; where that is right, they are `left_as_is`. `good` is the
    last that could be read, with what was typed then. `job` is the run that was begun last, of what was typed then, and
    `made_job` the last one that made its files. What changed is kept for all kits of its range where it is `shared`.
    `happened`, `refused` and `asks` are for the next page alone.
    """

    id: str
    typed: dict[str, str] = field(default_factory=dict)
    examples: set[str] = field(default_factory=set)
    left_as_is: bool = False
    opened: Opened | None = None
    stock: Opened | None = None
    kept: str = ""
    touched: bool = False
    changed: bool = False
    shared: bool = False
    good: Read | None = None
    good_typed: Mapping[str, str] = field(default_factory=dict)
    only: frozenset[str] | None = None
    job: str = ""
    made_of: Mapping[str, str] = field(default_factory=dict)
    made_job: str = ""
    made_typed: Mapping[str, str] = field(default_factory=dict)
    asks: str = ""
    happened: str = ""
    refused: str = ""
    lock: threading.RLock = field(default_factory=threading.RLock)
    _newest: OrderedDict[str, int] = field(default_factory=OrderedDict)

    def arrived(self, page: str, nr: int) -> None:
        """A page asks its question of that number. Called before its turn comes."""
        if page:
            self._newest[page] = max(nr, self._newest.get(page, 0))
            while len(self._newest) > _PAGES:
                self._newest.popitem(last=False)

    def late(self, page: str, nr: int) -> bool:
        """Whether the same page asked a newer question meanwhile."""
        return nr < self._newest.get(page, 0)


class TooManySlipsError(Exception):
    """Every slip holds lines that were not kept, and there is room for no more."""


class Slips:
    """The slips by id, the one that was used last at the end; for several threads."""

    def __init__(self, most: int = SLIPS) -> None:
        self._most, self._lock = most, threading.Lock()
        self._slips: OrderedDict[str, Slip] = OrderedDict()

    def new(self, typed: Mapping[str, str], examples: Iterable[str] = ()) -> Slip:
        """A slip with an id of its own. Where the desk is full, the one goes that was kept and not used for longest."""
        slip = Slip(secrets.token_hex(4), dict(typed), set(examples))
        with self._lock:
            if len(self._slips) >= self._most:
                kept = next((each for each in self._slips.values() if not each.touched), None)
                if kept is None:
                    raise TooManySlipsError
                del self._slips[kept.id]
            self._slips[slip.id] = slip
        return slip

    def get(self, name: str) -> Slip | None:
        """The slip of that id, which counts as used; None where there is none."""
        with self._lock:
            slip = self._slips.get(name)
            if slip is not None:
                self._slips.move_to_end(name)
            return slip

    def last(self) -> Slip | None:
        """The slip that was used last."""
        with self._lock:
            return next(reversed(self._slips.values()), None)

    def all(self) -> list[Slip]:
        """Every slip, the one that was used last at the end."""
        with self._lock:
            return list(self._slips.values())


@dataclass(slots=True)
class Desk:
    """An open desk: its start folder, its port, the address on a network if it was opened to one, and its secrets.

    `key` lets one browser in, once, and is None afterwards; `session` is what the cookie holds then; `token` stands in
    every form; `code` is typed on another device of the network.
    """

    folder: Path
    port: int
    network: str | None = None
    key: str | None = field(default_factory=lambda: secrets.token_urlsafe(24))
    session: str = field(default_factory=lambda: secrets.token_urlsafe(24))
    token: str = field(default_factory=lambda: secrets.token_urlsafe(24))
    code: str = field(default_factory=new_code)
    slips: Slips = field(default_factory=Slips)
    lock: threading.Lock = field(default_factory=threading.Lock)
    making: Making = field(default_factory=Making)
    kits: Kits = field(init=False)
    job: str = ""

    def __post_init__(self) -> None:
        self.kits = Kits(self.folder)

    def close(self) -> None:
        """Ends what is under way, and takes away what was made here."""
        self.making.close()

    @property
    def hosts(self) -> tuple[str, ...]:
        """The values of the header Host that this desk answers to."""
        names = ("127.0.0.1", "localhost", *((self.network,) if self.network else ()))
        return tuple(name if self.port == 80 else f"{name}:{self.port}" for name in names)

    @property
    def address(self) -> str:
        """Where the desk is, without a key."""
        return f"http://{self.hosts[0]}/"

    @property
    def key_address(self) -> str:
        """The address that lets one browser in."""
        return f"{self.address}?key={self.key}" if self.key else self.address

    def cookie(self, what: str) -> str:
        """The name of a cookie: browsers keep cookies by host and not by port, so each desk has names of its own."""
        return f"desk-{what}-{self.port}"
