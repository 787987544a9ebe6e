"""No good kit's cut files are refused by their own proof: every part, board and job sheet over stocks, ends and setts.

In the suite the first two values of every key come together with those of every other; `SWEEP=all` takes all values
with all others.
"""

from __future__ import annotations

import os
from itertools import islice

import pytest
from cut_plans import stock_with
from kits import KINDS, font_metrics, kit_of
from sweep import Changes, all_rows, pairwise_rows

from layout.drawing.correction import TRUE, Scale
from layout.plan import plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write

AXES = {
    "ends": ("round bars, odd", "flat ends", "notched ends", "pegged ends"),
    "sett": ("8 epi", "27 per 10 cm", "1 per cm"),
    "kerf": ((0.2, 0.2), (0.31, 0.12)),
    "thickness": (3.0, 6.35),
    "sheet": ((600.0, 400.0), (457.2, 812.8)),
    "grain": ("y", "none"),
    "kerf_drawn": (True, False),
    "scale": (TRUE, Scale(0.97, 1.03, -0.03), Scale(1.0021, 0.9987, 0.0004)),
}
PAIRS = pairwise_rows({key: values if key == "ends" else values[:2] for key, values in AXES.items()})
SWEEP = os.environ.get("SWEEP", "")
WORKERS = 4


def problems(row: Changes) -> list[str]:
    """What the proofs say against the cut files of a row."""
    kit = kit_of(KINDS[str(row["ends"])] | {"sett.given": row["sett"], "weaving.height": "28 cm"})
    (kerf_x, kerf_y), (width, height) = row["kerf"], row["sheet"]  # type: ignore[misc]
    own = {key: row[key] for key in ("thickness", "grain", "kerf_drawn", "scale")}
    stock = stock_with(kerf_x=kerf_x, kerf_y=kerf_y, width=width, height=height, **own)
    planned, found = plan(kit), []
    outputs = Outputs(planned, font_metrics(), stock=stock)
    assert outputs.cut
    assert outputs.boards
    printed = Outputs(planned, font_metrics()).files
    files = [file for file in outputs.files if file not in printed]
    assert {file.partition("-")[0] for file in files} > {"board", "job.pdf", "spacing"}
    for output in map(outputs.output, files):
        found += [f"{output.file}: {said}" for said in findings(planned, output, read(output, write(output))).problems]
    return found


@pytest.mark.parametrize("worker", range(WORKERS))
def test_no_good_cut_file_is_refused(worker: int) -> None:
    """Every file for the cutter, its drawing, the boards and the job sheet."""
    rows = all_rows(AXES) if SWEEP == "all" else islice(all_rows(AXES), int(SWEEP)) if SWEEP else PAIRS
    wrong = [(row, found) for row in islice(rows, worker, None, WORKERS) if (found := problems(row))]
    assert wrong == []
