"""What a keeper is given by workers, without the drawing: staged folders of small files."""

from __future__ import annotations

import hashlib
import json
from pathlib import Path

from order_tables import order

from templates_gen.ordering.engine import Answer, Asked
from templates_gen.ordering.keeping import Keeper, Settled
from templates_gen.ordering.result import OrderFile
from templates_gen.ordering.work import Done

FILES = ("strips.pdf", "leaflet.pdf")
NUMBER = 3


def digest(data: bytes) -> str:
    """Its sha256."""
    return hashlib.sha256(data).hexdigest()


def contents(number: int, state: str) -> dict[str, bytes]:
    """The files of an order, as it was or as it is to be; of the last one there is one file less now."""
    names = FILES[:1] if (number, state) == (NUMBER - 1, "new") else FILES
    files = {name: f"{state} {name} of {number}".encode() for name in names}
    entries = [{"file": name, "sha256": digest(data), "parts": []} for name, data in files.items()]
    return {**files, "manifest.json": json.dumps({"files": entries}).encode()}


def answer(hidden: Path, number: int, state: str) -> Answer:
    """What a worker says of an order that it staged."""
    staged = hidden / "stage-0" / str(number) / f"w-{number}"
    staged.mkdir(parents=True)
    files = contents(number, state)
    for name, data in files.items():
        (staged / name).write_bytes(data)
    made = tuple(OrderFile(name, digest(data), 1, 0, 0.0) for name, data in files.items() if name in FILES)
    done = Done(str(staged), digest(files["manifest.json"]), made)
    return Answer(Asked(number, order(number), state), done)


def keep(folder: Path, state: str) -> Settled:
    """Puts some orders into place, all at once."""
    hidden = folder / ".orders"
    hidden.mkdir(parents=True, exist_ok=True)
    keeper = Keeper(hidden, [].append)
    settled = keeper.keep([answer(hidden, number, state) for number in range(NUMBER)])
    keeper.close()
    return settled
