"""How long whole commands take, as ratios to a process that only imports the libraries.

    python tests/bench/whole.py [--quick | --full]

All run by turns from compiled bytecode, and each counts by its quickest turn, since everything else is noise.
Elapsed time is what a person waits; processor time is what all cores together spend, and shows the work that a
second one takes over.
"""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).parents[2]
LIBRARIES = "import click, pint, reportlab, svgwrite, pypdf, ezdxf, fontTools"
COMMAND = "from templates_gen.__main__ import main; main()"
AIMS = {"make": 2.5, "check": 2.5, "plan": 0.6}
"""Of the demo kit and its folder: at most so many times the imports."""


def environment(cache: str) -> dict[str, str]:
    """Where the project is found, and where its bytecode is kept."""
    others = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**others, "PYTHONPATH": str(ROOT), "PYTHONPYCACHEPREFIX": cache}


class Cost(NamedTuple):
    """Seconds."""

    elapsed: float
    processor: float

    def least(self, other: Cost) -> Cost:
        """The quicker of both, each for itself."""
        return Cost(*map(min, self, other))


def cost(code: str, arguments: Sequence[str], variables: Mapping[str, str]) -> Cost:
    """What a fresh Python takes that runs `code`."""
    before, begun = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    subprocess.run([sys.executable, "-c", code, *arguments], check=True, capture_output=True, env=dict(variables))
    elapsed, after = time.perf_counter() - begun, resource.getrusage(resource.RUSAGE_CHILDREN)
    return Cost(elapsed, after.ru_utime - before.ru_utime + after.ru_stime - before.ru_stime)


def main(turns: int) -> None:
    """Runs all by turns and prints a line of a table for each."""
    with tempfile.TemporaryDirectory() as folder:
        variables, out = environment(str(Path(folder, "cache"))), str(Path(folder, "out"))
        runs = {"make": ["make", "-o", out], "check": ["check", out], "plan": ["plan"]}
        best = dict.fromkeys(("imports", *runs), Cost(float("inf"), float("inf")))
        for turn in range(turns + 1):  # the first one compiles
            found = {"imports": cost(LIBRARIES, (), variables)}
            found |= {name: cost(COMMAND, arguments, variables) for name, arguments in runs.items()}
            best = {name: best[name].least(found[name]) for name in best} if turn else best
    print("| whole process, demo kit | times the imports, elapsed | processor time | aim |\n|---|---|---|---|")
    imports = best["imports"]
    for name, aim in AIMS.items():
        elapsed, processor = (mine / theirs for mine, theirs in zip(best[name], imports, strict=True))
        print(f"| `{name}` | {elapsed:.2f} | {processor:.2f} | {aim:.2f} |")
    print(f"(the imports: {imports.elapsed:.2f} s)")


if __name__ == "__main__":
    main(1 if "--quick" in sys.argv else 9 if "--full" in sys.argv else 5)
