"""What the answer to a slip costs after a change of its text, in processor time, and how large it is.

    python tests/bench/look.py [--quick | --full]

Each counts by its quickest turn. Milliseconds depend on the machine; so each stands beside the time that is given to
all of them, 60 ms, and as a multiple of work of a fixed size (`tests/yardstick.py`). A sheet for the screen stands
beside the same sheet as an SVG with words in outlines. `--memory` answers four clients for a minute instead, and prints
by how much the process grew.
"""

from __future__ import annotations

import resource
import sys
import time
from collections.abc import Callable
from functools import partial
from itertools import count
from pathlib import Path
from threading import Thread

sys.path.insert(0, str(Path(__file__).parents[1]))
sys.path.insert(0, str(Path(__file__).parents[2]))

from warm import best, changed
from yardstick import work

import templates_gen
from layout.kit.kit import Kit
from layout.plan import Plan
from layout.plan import plan as planned
from templates_gen.desk.look.drawn import drawn
from templates_gen.desk.look.frames import frame
from templates_gen.desk.look.numbers import numbers
from templates_gen.desk.look.sheets import screen_sheet, sheet_names
from templates_gen.desk.look.strips import strip
from templates_gen.files.formats import FORMATS, About
from templates_gen.lettering.outlines import outlined
from templates_gen.messages.english import ENGLISH
from templates_gen.writers.screen import write

AIM, SHEET_AIM, LEAN_AIM = 60.0, 20.0, 30.0
"""All of the answer, and a sheet for the screen, in ms; a sheet in kB."""
CLIENTS, SECONDS, GROWTH_AIM = 4, 60.0, 20.0
"""So many clients for so long; at most so many MB more."""
SHEETS = ("frame-check.pdf", "wrap-gauge.pdf", "strips.pdf", "winding.pdf", "spacing-guide.pdf")
_TURNS = count()


def answer(plan: Plan) -> int:
    """Numbers, frame and both strips: what is shown while somebody types, in characters."""
    shown = numbers(plan, ENGLISH, "cm"), frame(plan, ENGLISH, "cm")
    strips = strip(plan, "near", ENGLISH), strip(plan, "far", ENGLISH)
    return sum(len(row.range) + sum(map(len, row.why)) for row in shown[0]) + sum(
        len(each.svg) for each in (shown[1], *strips)
    )


def typed() -> Plan:
    """The plan of the demo kit after a change of its text."""
    return planned(changed(), ENGLISH)


def parts() -> dict[str, Callable[[], object]]:
    """What an answer is made of; plans are made before."""
    plans = iter([typed() for _ in range(200)])
    return {
        "read and plan": typed,
        "numbers": lambda: numbers(next(plans), ENGLISH, "cm"),
        "frame": lambda: frame(next(plans), ENGLISH, "cm"),
        "near strip": lambda: strip(next(plans), "near", ENGLISH),
        "far strip": lambda: strip(next(plans), "far", ENGLISH),
        "names of the pile": lambda: sheet_names(next(plans), None, ENGLISH),
    }


def speed(turns: int) -> None:
    """A line for each part of an answer, then for sheets."""
    unit = min(work() for _ in range(5)) * 1000
    print("| answer to a change | ms | of fixed work | of the aim |\n|---|---|---|---|")
    whole = 0.0
    for name, run in parts().items():
        took = best(run, turns)
        whole += took
        print(f"| {name} | {took:.1f} | {took / unit:.2f} | {took / AIM:.2f} |")
    print(f"| all | {whole:.1f} | {whole / unit:.2f} | {whole / AIM:.2f} |")
    plan = typed()
    print("| sheet for the screen | ms | of the aim | of outlines | kB | of outlines |\n|---|---|---|---|---|---|")
    for file in SHEETS:
        sheet = drawn(plan, None, file).sheets[0]
        lean, heavy = partial(write, sheet), partial(outlines, sheet)
        took, other = best(lean, turns), best(heavy, turns)
        size, large = len(lean().encode()) / 1000, len(heavy()) / 1000
        shares = f"{took / SHEET_AIM:.2f} | {took / other:.2f} | {size:.1f} | {size / large:.2f}"
        print(f"| {file} | {took:.1f} | {shares} |")
    print(f"aims: {AIM:.0f} ms for all, {SHEET_AIM:.0f} ms and {LEAN_AIM:.0f} kB for a sheet")


def outlines(sheet: object) -> bytes:
    """The same sheet as the SVG file that editors get."""
    return FORMATS["svg"].write([outlined(sheet)], About("Benchmark", "{}"))  # type: ignore[arg-type]


def grown() -> float:
    """MB that the process holds now; on systems without such a file, the most that it ever held."""
    try:
        pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    except OSError:
        return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000
    return pages * resource.getpagesize() / 1e6


def asked(kit: Callable[[], Kit], until: float, made: list[int]) -> None:
    """One client: changes a kit, looks at the answer, now and then at a sheet."""
    while time.monotonic() < until:
        plan = planned(kit(), ENGLISH)
        answer(plan)
        if next(_TURNS) % 5 == 0:
            screen_sheet(plan, None, SHEETS[len(made) % len(SHEETS)], 1, ENGLISH)
        made.append(1)


def memory(seconds: float) -> None:
    """Warms up for a sixth of the time, then prints by how much the process grew."""
    for share in (1 / 6, 1.0):
        before, made, until = grown(), list[int](), time.monotonic() + seconds * share
        clients = [Thread(target=asked, args=(changed, until, made)) for _ in range(CLIENTS)]
        for client in clients:
            client.start()
        for client in clients:
            client.join()
    more = grown() - before
    print(f"{len(made)} answers to {CLIENTS} clients in {seconds:.0f} s, {more:+.1f} MB (aim {GROWTH_AIM:.0f})")


if __name__ == "__main__":
    templates_gen.plan(templates_gen.load())
    if "--memory" in sys.argv:
        memory(SECONDS)
    else:
        speed(2 if "--quick" in sys.argv else 15 if "--full" in sys.argv else 7)
