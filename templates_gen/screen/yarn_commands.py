"""The commands that need no kit: the sett from wraps, a first guess of it, and a yarn by its label."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import click

from templates_gen.screen.asked import sentences
from templates_gen.screen.commands import JSON
from templates_gen.screen.terminal import say, say_json

YARNS = (
    click.option("--warp", metavar="YARN", help='The warp by its label, such as "12 Ne x 6".'),
    click.option("--weft", metavar="YARN", help='The weft, or one strand of it, such as "50 g in 160 m".'),
    click.option("--strands", metavar="NUMBER", help="How many such strands are woven as one."),
    click.option("--warp-wraps", metavar="TURNS", help="Turns of the warp alone that fill the window."),
    click.option("--weft-wraps", metavar="TURNS", help="Turns of the weft alone, all its strands together."),
    click.option("--wrapped", metavar="HOW", help='"pushed together" until it takes no more, or "side by side".'),
    click.option("--wraps-over", metavar="LENGTH", help="That window; 1 in if left out."),
)


def yarn_options(command: Callable[..., None]) -> Callable[..., None]:
    """The options that say two yarns apart."""
    for option in reversed(YARNS):
        command = option(command)
    return command


@click.command(short_help="The sett from wrap readings.")
@click.option("--count", "counts", multiple=True, help="Whole warp-and-weft pairs counted.")
@click.option("--over", "windows", multiple=True, help='The window they were counted in, such as "2 in".')
@click.option("--unit", default=None, help='Marking unit, such as "1 in"; without it the smallest that does.')
@yarn_options
@JSON
@sentences
def sett(
    counts: tuple[str, ...], windows: tuple[str, ...], unit: str | None, as_json: bool, **yarns: str | None
) -> None:
    """The sett from wrap readings: --count 11 --over "2 in", again for every reading.

    Without a reading, a first guess from the warp and the weft apart.
    """
    from templates_gen.inputs.guess_options import yarns_said
    from templates_gen.inputs.options import sett_of
    from templates_gen.screen import report
    from templates_gen.screen.guess_report import guess_table, guess_values

    said = yarns_said(yarns)
    taken = sett_of(counts, windows, unit) if counts or windows or said is None else None
    values = {**(report.sett_values(taken) if taken else {}), "first_guess": guess_values(said) if said else None}
    if as_json:
        say_json(values)
    else:
        say("\n\n".join([*([report.sett_table(taken)] if taken else []), *([guess_table(said)] if said else [])]))


@click.command(short_help="A first guess of the sett, from the two yarns apart.")
@yarn_options
@JSON
@sentences
def guess(as_json: bool, **yarns: str | None) -> None:
    """A first guess of the sett before both yarns were wrapped together, and what to wrap next.

    From labels or wraps: --warp "12 Ne x 6" --weft "50 g in 160 m" --strands 2, or --warp-wraps 22 --weft-wraps 12.
    """
    from templates_gen.inputs.guess_options import NOTHING_SAID, yarns_said
    from templates_gen.screen.guess_report import guess_table, guess_values

    said = yarns_said(yarns) or NOTHING_SAID
    say_json(guess_values(said)) if as_json else say(guess_table(said))


@click.command(short_help="Show a yarn in every system, by its label.")
@click.argument("threads", nargs=-1, metavar="YARN...")
@click.option("--plies", help="How many such threads are folded in the yarn; the count is of one of them.")
@click.option("--order", help='What is what in a count such as "8/2 Ne": count/plies or plies/count.')
@click.option("--weighed", is_flag=True, help='You weighed a measured length yourself: "4.5 g in 10 m".')
@click.option("--fibre", help="What it is made of, such as wool, for its compressed thickness.")
@click.option("--volume", help="Instead of the fibre, the cm3 that a gram of the yarn takes up.")
@click.option("--wraps", help="Turns of a hand wrap, side by side, counted.")
@click.option("--over", help='The window they were counted in, such as "1 in".')
@JSON
@sentences
def yarn(threads: tuple[str, ...], as_json: bool, **options: Any) -> None:
    """Show a yarn in every system, by its label: "8 Ne" --plies 2, "40 tex x 2", "50 g in 120 m", "3360 yd/lb".

    Several yarns are folded together: "60 Ne" "40 Ne x 2".
    """
    from templates_gen.inputs.yarn_options import read_yarn_options
    from templates_gen.screen.yarn_report import yarn_table, yarn_values

    asked = read_yarn_options(threads, **options)
    say_json(yarn_values(asked)) if as_json else say(yarn_table(asked))
