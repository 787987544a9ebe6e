"""What the proof says of a file whose builder may be wrong."""

from __future__ import annotations

from kits import font_metrics

from layout.plan import Plan
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.verify.compare import compare


def alarm_of(planned: Plan, file: str) -> str:
    """What the proof says against `file` as it is drawn now; nothing if it passes. Written and read it is sound."""
    return alarm_on(planned, Outputs(planned, font_metrics()).output(file))


def alarm_on(planned: Plan, wanted: Output) -> str:
    """The same of a file that is drawn."""
    found = read(wanted, write(wanted))
    assert compare(wanted.sheets, found.sheets).sound
    result = findings(planned, wanted, found)
    assert bool(result.problems) == (not result.sound), "a deviation must be said"
    return "; ".join(result.sentences)
