"""The command that shows the numbers of a kit, or of a range as a table."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from templates_gen.messages.language import message
from templates_gen.messages.roles.ranges import From
from templates_gen.screen.asked import range_at, sentences, stock_of
from templates_gen.screen.commands import JSON, NAME
from templates_gen.screen.tables import Section, in_sections
from templates_gen.screen.terminal import say, say_json

if TYPE_CHECKING:
    from layout.plan import Plan
    from templates_gen.inputs.range_file import Range, RangeKit

KITS = click.option("--kit", "kits", multiple=True, metavar="NAME", help="Of a range, this kit alone; again for more.")


@click.command(short_help="Show the numbers of a kit or range, with reasons.")
@click.argument("kit", required=False, type=NAME)
@KITS
@click.option("--from", "origins", is_flag=True, help="Show where each value comes from, too.")
@JSON
@sentences
def plan(kit: Path | None, kits: tuple[str, ...], origins: bool, as_json: bool) -> None:
    """Show the numbers of KIT (without one: of the built-in demo kit), with reasons; of a range, a row for each kit."""
    from templates_gen.files.run_plans import plans_of

    every = range_at(kit)
    found = every.of(kits)
    planned = dict(zip([each.number for each in every.kits], plans_of(every), strict=True))
    plans = [planned[each.number] for each in found.kits]
    if found.alone or len(kits) == 1:
        _show_one(found, plans[0], origins=origins, as_json=as_json)
    else:
        _show_all(found, plans, origins=origins, as_json=as_json)


def _show_one(found: Range, planned: Plan, *, origins: bool, as_json: bool) -> None:
    from templates_gen.files.outputs import Outputs
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen import report
    from templates_gen.screen.origins import origin_values, origins_of

    notes = Outputs(planned, metrics()).notes
    if as_json:
        more = {"from": origin_values(origins_of(found, found.kits[0]))} if origins else {}
        say_json(report.plan_values(planned, notes) | more)
        return
    say(report.plan_table(planned, notes))
    if origins:
        say("\n".join(_origins(found, found.kits[0], message(From.TITLE))))


def _show_all(found: Range, plans: Sequence[Plan], *, origins: bool, as_json: bool) -> None:
    from templates_gen.files.outputs import Outputs
    from templates_gen.files.run_outputs import RunOutputs
    from templates_gen.lettering.fonts import metrics
    from templates_gen.screen.buying_report import buy_sentences
    from templates_gen.screen.range_table import range_table, range_values

    outputs = RunOutputs(found, plans, metrics(), stock_of(None))
    if as_json:
        say_json(range_values(outputs, [Outputs(planned, metrics()).notes for planned in plans]))
        return
    say(range_table(outputs))
    imperial = plans[0].warp.sett.unit.imperial
    say("\n".join(buy_sentences(outputs.scopes[-1].bought, found.shop.currency, imperial=imperial)))
    for each in found.kits if origins else ():
        say("\n".join(_origins(found, each, message(From.TITLE_OF, name=each.kit.name))))


def _origins(found: Range, each: RangeKit, title: str) -> list[str]:
    from templates_gen.screen.origins import origin_rows, origins_of

    return in_sections([Section(title, origin_rows(origins_of(found, each)))])
