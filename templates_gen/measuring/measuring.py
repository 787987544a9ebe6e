"""What is asked for, measured: the way in for the command and for Python."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain
from pathlib import Path

from layout.kit.kit import Kit
from layout.values.errors import shown_path
from layout.values.units import say_number
from templates_gen.files.kept import planned
from templates_gen.inputs import stock_file
from templates_gen.lettering.fonts import metrics
from templates_gen.measuring.check_sheet import check_sources
from templates_gen.measuring.kits import sources_at
from templates_gen.measuring.known_sheets import Finder, Source, sources_of
from templates_gen.measuring.measured import MeasuredSheet
from templates_gen.measuring.outcome import Outcome, outcome_of
from templates_gen.measuring.scales import PAIR_NAMES, Distance, Reference, nominal_distance, seen_distance
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import Refused
from templates_gen.messages.roles.screen import Measure

_ASTRAY = 0.02
"""A scanner is never so far off, as a share: a distance that says so was measured elsewhere."""

_FAR = 0.15  # no print is so far off what was drawn


def measured_on(
    scans: Sequence[Path], kit: Path | Kit | None, reference: Reference, dpi: float | None = None
) -> Outcome:
    """Everything on these scans; of sheets of `kit`, or of anything that `sources_at` takes, their marks too.

    Raises what reading the kit raises, and OptionError on --known for a distance that cannot be that of its targets.
    """
    sources: Iterator[Source] = iter(())
    named = ""
    if isinstance(kit, Kit):
        sources, named = sources_of(planned(kit), metrics(), stock_file.built_in()), kit.name
    elif kit is not None:
        sources, named = sources_at(kit, metrics()), shown_path(kit)
    find = Finder(chain(check_sources(metrics()), sources))
    outcome = outcome_of(scans, find, reference, dpi, named)
    for sheet in outcome.sheets:
        for distance in reference.distances:
            _check(sheet, distance)
    return outcome


def _check(sheet: MeasuredSheet, distance: Distance) -> None:
    drawn = nominal_distance(sheet.seen.label.rectangle, distance.pair)
    there = seen_distance(sheet.seen, distance.pair)
    of_scan = sheet.seen.dpi is not None and abs(distance.mm / there - 1) > _ASTRAY
    if not of_scan and abs(distance.mm / drawn - 1) <= _FAR:
        return
    seen = say_number(there if sheet.seen.dpi is not None else drawn, 1)
    pair = "" if distance.pair == "top" else f"{distance.pair} "
    got = message(Measure.MM, number=say_number(distance.mm))
    values = {"pair": PAIR_NAMES[distance.pair], "distance": say_number(drawn, 1), "seen": seen}
    raise OptionError("--known", Refused.FAR_DISTANCE, got, f'--known "{pair}{seen} mm"', **values)
