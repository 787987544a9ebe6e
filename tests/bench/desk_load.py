"""A desk under load on loopback: four browsers type without pause, each on a slip of its own.

    python tests/bench/desk_load.py [--quick | --full]

Shows how many answers come in a second, how long they take, and what the process holds in memory after it is warm and
at the end. Ends with code 1 where an answer is an error, or the process has grown by more than 20 MB. The time is 60 s
(10 s with --quick), of which the first quarter warms it up.
"""

from __future__ import annotations

import statistics
import sys
import tempfile
import threading
import time
from contextlib import closing
from itertools import count
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from desk_process import Client, Running, running

CLIENTS, SECONDS, QUICK = 4, 60.0, 10.0
WARM = 0.25
MOST_GROWTH = 20e6
_MS, _MB = 1000.0, 1e6
VIEWS = ("working", "strip-near.pdf:1", "winding.pdf:1", "grid.pdf:1")
KINDS = ("round bars", "flat ends", "round bars", "round bars")


def changes(number: int) -> dict[str, str]:
    """What is typed the next time: another size; now and then nonsense, another kind, another sheet."""
    found = {
        "frame.outer_width": f"{36 + number % 19} cm",
        "weaving.height": f"{250 + number % 83} mm",
        "name": f"Willow {number}",
        "view": VIEWS[number // 7 % len(VIEWS)],
        "frame.ends": KINDS[number // 23 % len(KINDS)],
    }
    if number % 11 == 0:
        found["frame.outer_width"] = "40 c"
    if number % 29 == 0:
        found["rest"] = "yes"
    return found


class Load:
    """What the clients found: how long each answer took, in ms, and what was wrong."""

    def __init__(self, desk: Running, until: float) -> None:
        self.times: list[float] = []
        self.wrong: list[str] = []
        self._desk, self._until, self._numbers = desk, until, count(1)
        with closing(Client(desk.port, desk.key)) as client:
            self._cookie = client.cookie

    def type(self) -> None:
        """One client, until the time is over."""
        with closing(Client(self._desk.port, cookie=self._cookie)) as client:
            client.another()
            self._type(client)

    def _type(self, client: Client) -> None:
        while time.monotonic() < self._until:
            number = next(self._numbers)
            begun = time.perf_counter()
            status, _, body = client.post("/look", {"nr": str(number), **changes(number)})
            self.times.append((time.perf_counter() - begun) * _MS)
            if status != 200:
                self.wrong.append(f"{status}: {body[:200]!r}")
            if number % 31 == 0 and (found := client.asked("GET", f"/?k={client.slip}")[0]) != 200:
                self.wrong.append(f"page: {found}")


def main() -> int:
    """Runs it, and says what was found."""
    seconds = QUICK if "--quick" in sys.argv else SECONDS
    with tempfile.TemporaryDirectory() as folder, running(Path(folder)) as desk:
        began = time.monotonic()
        load = Load(desk, began + seconds)
        threads = [threading.Thread(target=load.type) for _ in range(CLIENTS)]
        for thread in threads:
            thread.start()
        time.sleep(max(0, began + seconds * WARM - time.monotonic()))
        first, held = desk.memory(), []
        while time.monotonic() < began + seconds:
            time.sleep(seconds / 40)
            held.append(desk.memory())
        for thread in threads:
            thread.join()
    times = sorted(load.times)
    rate, middle, most = len(times) / seconds, statistics.median(times), times[int(len(times) * 0.95)]
    grown = max(held[-3:]) - first
    print(f"{CLIENTS} clients, {seconds:.0f} s: {len(times)} answers, {rate:.1f} a second, {len(load.wrong)} wrong")
    print(f"an answer: {middle:.0f} ms at the median, {most:.0f} ms for 95 of 100 (four at once)")
    print(f"memory: {first / _MB:.0f} MB warm, {held[-1] / _MB:.0f} MB at the end, {max(held) / _MB:.0f} MB at most")
    for each in load.wrong[:5]:
        print(each)
    return 1 if load.wrong or grown > MOST_GROWTH else 0


if __name__ == "__main__":
    sys.exit(main())
