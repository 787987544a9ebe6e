"""What whole commands cost, in processor time, as ratios to a process that only imports the libraries.

    python tests/bench/whole.py [--quick | --full]

All run by turns from compiled bytecode, and each counts by its quickest turn, since everything else is noise.
"""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import tempfile
from collections.abc import Mapping, Sequence
from pathlib import Path

ROOT = Path(__file__).parents[2]
LIBRARIES = "import click, pint, reportlab, svgwrite, pypdf, ezdxf, fontTools"
COMMAND = "from templates_gen.__main__ import main; main()"
AIMS = {"make": 2.5, "check": 2.5, "plan": 0.6}
"""Of the demo kit and its folder: at most so many times the imports."""


def environment(cache: str) -> dict[str, str]:
    """Where the project is found, and where its bytecode is kept."""
    others = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**others, "PYTHONPATH": str(ROOT), "PYTHONPYCACHEPREFIX": cache}


def cost(code: str, arguments: Sequence[str], variables: Mapping[str, str]) -> float:
    """The processor seconds of a fresh Python that runs `code`."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([sys.executable, "-c", code, *arguments], check=True, capture_output=True, env=dict(variables))
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime - before.ru_utime + after.ru_stime - before.ru_stime


def main(turns: int) -> None:
    """Runs all by turns and prints a line of a table for each."""
    with tempfile.TemporaryDirectory() as folder:
        variables, out = environment(str(Path(folder, "cache"))), str(Path(folder, "out"))
        runs = {"make": ["make", "-o", out], "check": ["check", out], "plan": ["plan"]}
        best = dict.fromkeys(("imports", *runs), float("inf"))
        for turn in range(turns + 1):  # the first one compiles
            found = {"imports": cost(LIBRARIES, (), variables)}
            found |= {name: cost(COMMAND, arguments, variables) for name, arguments in runs.items()}
            best = {name: min(best[name], found[name]) for name in best} if turn else best
    print("| whole process, demo kit | times the imports | aim |\n|---|---|---|")
    for name, aim in AIMS.items():
        print(f"| `{name}` | {best[name] / best['imports']:.2f} | {aim:.2f} |")
    print(f"(the imports: {best['imports']:.2f} s)")


if __name__ == "__main__":
    main(1 if "--quick" in sys.argv else 9 if "--full" in sys.argv else 5)
