"""How long `make` of the demo kit takes as a whole process, against one that only imports the same libraries.

Prints a ratio; aim: 2 or less. Both run by turns, and the quickest of each counts, since everything else is noise.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROUNDS = 9
LIBRARIES = "click, fontTools.ttLib, pint, reportlab.pdfbase.ttfonts, reportlab.pdfgen.canvas, svgwrite"
MAKE = "from templates_gen.screen.cli import main; main()"


def seconds(code: str, *arguments: str) -> float:
    """The wall time of a fresh Python that runs `code`."""
    begun = time.perf_counter()
    subprocess.run([sys.executable, "-c", code, *arguments], check=True, capture_output=True)
    return time.perf_counter() - begun


def main() -> None:
    """Runs both and prints the ratio."""
    root = Path(__file__).parents[2]
    with tempfile.TemporaryDirectory() as folder:
        path = f"import sys; sys.path.insert(0, {str(root)!r}); "
        runs = [
            (seconds(path + MAKE, "make", "-o", str(Path(folder, "out"))), seconds(f"import {LIBRARIES}"))
            for _ in range(ROUNDS)
        ]
    made, imported = (min(column) for column in zip(*runs, strict=True))
    print(f"make of the demo kit, whole process / importing the same libraries: {made / imported:.2f} (aim 2.00)")


if __name__ == "__main__":
    main()
