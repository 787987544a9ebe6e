"""What a trial cut comes to: sentences for people, plain values for programs."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

from layout.cutting.stock.measured_kerf import MeasuredKerf
from layout.values.errors import shown_path
from layout.values.units import say_number
from templates_gen.inputs.trial import Trial
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import TrialLine
from templates_gen.messages.roles.screen import Measure

_NAME = 13  # letters of the column of names


def trial_text(trial: Trial, path: Path | None) -> str:
    """The trial for people, and what was stored where."""
    lines = []
    apart = trial.kerf_x is not trial.kerf_y
    for kerf, name in (
        (trial.kerf_x, TrialLine.KERF_X if apart else TrialLine.KERF),
        (trial.kerf_y if apart else None, TrialLine.KERF_Y),
    ):
        if kerf:
            lines.append(
                message(
                    TrialLine.KERF_IS,
                    name=message(name).ljust(_NAME),
                    kerf=_in_mm(kerf.mm),
                    uncertainty=_in_mm(kerf.uncertainty),
                    measurements=_measurements(kerf),
                )
            )
    if trial.ease is not None:
        lines.append(message(TrialLine.EASE_IS, name=message(TrialLine.EASE).ljust(_NAME), ease=_in_mm(trial.ease)))
    if path is None:
        return "\n".join([*lines, message(TrialLine.NOT_STORED)])
    stored = (f'{key} = "{value}"' for key, value in trial.entries.items() if value is not None)
    lines.append(message(TrialLine.STORED, file=shown_path(path), entries=", ".join(stored)))
    kept = ", ".join(f'{key} = "{value}"' for key, value in trial.kept.items())
    return "\n".join([*lines, message(TrialLine.KEPT, entries=kept)])


def _measurements(kerf: MeasuredKerf) -> str:
    if kerf.count == 1:
        return message(TrialLine.ONE)
    return message(TrialLine.SEVERAL, count=kerf.count, low=_in_mm(kerf.low), high=_in_mm(kerf.high))


def trial_values(trial: Trial) -> dict[str, object]:
    """The trial for programs, in mm; null for what was not measured."""
    ease, drawn_for = (None if each is None else float(each) for each in (trial.ease, trial.drawn_for))
    return {
        "kerf_x": _values(trial.kerf_x),
        "kerf_y": _values(trial.kerf_y),
        "ease_mm": ease,
        "drawn_for_mm": drawn_for,
    }


def _values(kerf: MeasuredKerf | None) -> dict[str, object] | None:
    if kerf is None:
        return None
    return {
        "mm": float(kerf.mm),
        "uncertainty_mm": float(kerf.uncertainty),
        "low_mm": float(kerf.low),
        "high_mm": float(kerf.high),
        "measurements": kerf.count,
    }


def _in_mm(value: Fraction) -> str:
    return message(Measure.MM, number=say_number(value))
