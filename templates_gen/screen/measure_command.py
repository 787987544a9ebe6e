"""The command that measures scans of printed sheets."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from layout.values.errors import shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import After
from templates_gen.screen.asked import sentences
from templates_gen.screen.commands import JSON, NAME
from templates_gen.screen.terminal import refuse, say, say_json


@click.command(short_help="Measure scans of printed sheets: scale, skew, every mark.")
@click.argument("scans", nargs=-1, required=True, type=NAME, metavar="SCAN...")
@click.option("--kit", type=NAME, help="A kit, range, made folder or PDF file: its sheets' marks are measured too.")
@click.option("--dpi", metavar="N", help="Dots per inch of the scan, where it does not say them rightly.")
@click.option(
    "--known",
    multiple=True,
    metavar="LENGTH",
    help='Between the targets at the top by a steel rule; "left 249.3 mm" for those at the left.',
)
@click.option("--known-within", metavar="SIZE", help="How far off the rule may be read; else 0.2 mm.")
@click.option(
    "--scanner-scale", nargs=2, metavar="X Y", help="What the scanner makes of 1 mm across and along its bed."
)
@click.option("--scanner-within", metavar="PERCENT", help="How far off these may be, in %; else 0.1.")
@click.option("--picture", type=NAME, metavar="FILE", help="Draw the deviations, magnified, as PDF or PNG.")
@click.option("--store", metavar="NAME", help="Store the printer under this name, to make sheets with.")
@JSON
@sentences
def measure(
    scans: tuple[Path, ...],
    kit: Path | None,
    dpi: str | None,
    known: tuple[str, ...],
    known_within: str | None,
    scanner_scale: tuple[str, str] | None,
    scanner_within: str | None,
    picture: Path | None,
    store: str | None,
    as_json: bool,
) -> None:
    """Measure flatbed scans of printed sheets: which they are, their scale and skew, how far each mark is off.

    Scans are PNG, JPEG, TIFF or PDF files, of one sheet or several. Code 2 where one gives no number to be trusted.
    """
    from templates_gen.inputs.measure_options import MeasureOptions, measure_asked
    from templates_gen.measuring.measuring import measured_on
    from templates_gen.measuring.picture_file import draw
    from templates_gen.measuring.storing import stored
    from templates_gen.screen.measure_report import measured_text, stored_text
    from templates_gen.screen.measure_values import measured_values

    asked = measure_asked(MeasureOptions(dpi, known, known_within, scanner_scale, scanner_within, picture, store))
    outcome = measured_on(scans, kit, asked.reference, asked.dpi)
    if as_json:
        say_json(measured_values(outcome))
    elif outcome.sheets:
        say(measured_text(outcome))
    for refusal in outcome.refused:
        refuse(refusal)
    if outcome.refused:
        sys.exit(2)
    if asked.store is not None:
        said = stored_text(*stored(outcome, asked.store))
        if not as_json:
            say(said)
    if asked.picture is not None:
        draw(outcome, asked.picture)
        if not as_json:
            say(message(After.PICTURE, file=shown_path(asked.picture)))
