"""What orders cost, each of three PDF files, written and proven, beside a plain reportlab script.

    python tests/bench/orders.py [--quick | --full | --largest]

`--full` makes 1,000 orders with two workers, and some with one; `--largest` makes 10,000 too, which takes long. The
plain script draws the same marks and words of the same orders, proves nothing and writes no file. It too runs twice at
once, and counts by the processor time of its orders; ours by that of all processes together.
"""

from __future__ import annotations

import csv
import json
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from itertools import islice
from pathlib import Path
from typing import NamedTuple

sys.path.insert(0, str(Path(__file__).parents[2]))

from warm import script, spent

from layout.drawing.sheet import Sheet
from templates_gen.files.outputs import kept_outputs
from templates_gen.inputs.range_file import load_range
from templates_gen.lettering.fonts import metrics
from templates_gen.ordering.job import USUAL, Job
from templates_gen.ordering.order import Order
from templates_gen.ordering.order_table import open_orders
from templates_gen.ordering.plans import plan_of

RANGE = Path(__file__).parents[1] / "sample_ranges/weir-frames.toml"
SCRIPT_AIM, TWO_AIM, MEMORY_AIM, MINUTES_AIM = 3.0, 1.8, 1.1, 5.0
"""Of a plain script; two workers, of one; the memory of the larger run, of the smaller; of 10,000 orders."""
COLUMNS = ("order", "kit", "buyer", "weaving.width")
KITS = ("Weir frame, small", "Weir frame, middle", "Weir frame, large")
MILLIMETRES = range(125, 210, 5)
ONE_TURN = 51
"""So many orders are all different in what is drawn, but for the number and the name on it."""


def rows() -> Iterator[Sequence[str]]:
    """Endless orders."""
    number = 1000
    while True:
        for width in MILLIMETRES:
            for kit in KITS:
                number += 1
                yield str(number), kit, f"Weir Studio {number}", f"{width} mm"


def write_table(path: Path, count: int) -> Path:
    """So many orders as a table."""
    with path.open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows([COLUMNS, *islice(rows(), count)])
    return path


class Spent(NamedTuple):
    """What a run took: seconds until it was done and of all processors, MB at most of parent and of any worker."""

    elapsed: float
    processor: float
    parent: float
    worker: float


def one_run(table: str, folder: str, workers: str) -> None:
    """Makes the orders of a table in this process, and prints what that took."""
    import templates_gen

    begun = time.perf_counter()
    states = [each.state for each in templates_gen.orders(table, RANGE, folder, workers=int(workers))]
    elapsed = time.perf_counter() - begun
    if set(states) != {"made"}:
        raise SystemExit(f"not all were made: {set(states)}")
    own, others = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    processor = sum(used.ru_utime + used.ru_stime for used in (own, others))
    print(json.dumps(Spent(elapsed, processor, own.ru_maxrss / 1024, others.ru_maxrss / 1024)))


def run(count: int, workers: int) -> Spent:
    """What so many orders take in a process of their own."""
    with tempfile.TemporaryDirectory() as place:
        table = write_table(Path(place, "orders.csv"), count)
        asked = [sys.executable, __file__, "--one", str(table), str(Path(place, "out")), str(workers)]
        return Spent(*json.loads(subprocess.run(asked, check=True, capture_output=True, text=True).stdout))


def sheets(count: int) -> Iterator[list[Sheet]]:
    """Those of one order after the other."""
    with tempfile.TemporaryDirectory() as place:
        table = open_orders(write_table(Path(place, "orders.csv"), count), load_range(RANGE))
        for order in table.rows():
            assert isinstance(order, Order), order
            plan = plan_of(Job(place), order)
            wanted = kept_outputs(plan, metrics(), [f"{name}.pdf" for name in USUAL], None)
            yield [sheet for record in wanted.records.values() for sheet in record.draw().sheets]


def plain_run() -> None:
    """Draws the orders of one turn by a plain script in this process, and prints the milliseconds of each."""
    each = list(sheets(ONE_TURN))
    script(each[0])  # loads the font
    print(min(spent(lambda: [script(order) for order in each]) for _ in range(3)) / ONE_TURN)


def plain() -> float:
    """Seconds of the processor that a plain script takes for an order, while another one runs beside it."""
    asked = [sys.executable, __file__, "--plain"]
    both = [subprocess.Popen(asked, stdout=subprocess.PIPE, text=True) for _ in range(2)]
    return sum(float(each.communicate()[0]) for each in both) / len(both) / 1000


def main(counts: Sequence[int], alone: int) -> None:
    """Prints a line of a table for each."""
    two = {count: run(count, 2) for count in counts}
    one, script_takes = run(alone, 1), plain()
    print("| orders of three PDF files, proven | reached | aim |\n|---|---|---|")
    for count, spent_on in two.items():
        rate = count / spent_on.elapsed
        print(f"| {count:,}, two workers: orders a second | {rate:.1f} | |")
        ratio = spent_on.processor / count / script_takes
        print(f"| processor time, of a plain script | {ratio:.2f} | {SCRIPT_AIM:.2f} |")
    few, many = two[counts[0]], two[counts[-1]]
    print(f"| two workers, of one | {one.elapsed / alone * counts[0] / few.elapsed:.2f} | {TWO_AIM:.2f} |")
    if len(counts) > 1:
        more = max(many.parent / few.parent, many.worker / few.worker)
        print(f"| memory at {counts[-1]:,} orders, of {counts[0]:,} | {more:.2f} | {MEMORY_AIM:.2f} |")
        print(f"| {counts[-1]:,} orders: minutes | {many.elapsed / 60:.1f} | {MINUTES_AIM:.0f} |")
    said = [f"{count:,} orders {each.parent:.0f} and {each.worker:.0f} MB" for count, each in two.items()]
    print(f"(a plain script: {script_takes * 1000:.0f} ms an order; at most, parent and worker: {', '.join(said)})")


if __name__ == "__main__":
    if "--plain" in sys.argv:
        plain_run()
    elif "--one" in sys.argv:
        one_run(*sys.argv[2:])
    elif "--quick" in sys.argv:
        main([ONE_TURN], ONE_TURN // 3)
    else:
        main([1000, 10_000] if "--largest" in sys.argv else [1000] if "--full" in sys.argv else [300], 2 * ONE_TURN)
