"""Several browser tabs ask at once: answers are the same as one by one, from the first moment of a process."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[4]

TOGETHER = """
import sys
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

import templates_gen
from templates_gen.desk.look.frames import frame
from templates_gen.desk.look.numbers import numbers
from templates_gen.desk.look.sheets import screen_sheet
from templates_gen.desk.look.strips import strip
from templates_gen.inputs import stock_file
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.lettering.fonts import metrics

sys.setswitchinterval(1e-5)
start = Barrier(8)

def first(_):
    start.wait()
    return metrics()

def answer(k):
    plan, words = templates_gen.plan(templates_gen.load()), catalogue_of(("en", "de")[k % 2])
    files = ("strip-near.pdf", "board.svg", "winding.pdf", "wrap-gauge.pdf")
    sheet = screen_sheet(plan, stock_file.built_in(), files[k // 2 % 4], 1, words)
    return numbers(plan, words, "cm"), frame(plan, words, "cm"), strip(plan, "near", words), sheet

with ThreadPoolExecutor(8) as pool:
    assert len({id(found) for found in pool.map(first, range(8))}) == 1
    together = list(pool.map(answer, range(16)))
assert together == [answer(k) for k in range(16)]
print("the same")
"""


def test_answers_are_the_same_from_many_threads() -> None:
    """Eight threads in a new process, which all need the font, catalogues and drawings first."""
    run = subprocess.run(
        [sys.executable, "-c", TOGETHER],
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
    )
    assert (run.stdout.strip(), run.returncode) == ("the same", 0), run.stderr
