"""What is to be done when a frame is wound, as its sheet must say it: from the kit's numbers alone."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import WindStep
from layout.values.units import Length, say_length
from templates_gen.verify.kinds.notched import skips_notches
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected_passes import ExpectedPass, NumberedMarks

_CUT_LEAST = 30  # mm: of less it is not said where to cut
_KNOT_CM, _KNOT_IN = Length(Fraction(100), "cm"), Length(Fraction(1016, 10), "in")


class ExpectedStep(NamedTuple):
    """A thing to do: its sentence, and which it is of "on", "there", "far", "near", "onward", "clip", "pull", "off"."""

    said: str
    what: str


class Asked(NamedTuple):
    """What the steps follow from: the kit, its sett in ends per mm, every pass, and the marks of both ends."""

    kit: Kit
    sett: Fraction
    passes: Sequence[ExpectedPass]
    marks: NumberedMarks
    imperial: bool


_PINS: Mapping[str, tuple[WindStep, WindStep]] = {"nails": (WindStep.BACK_BY_NAIL, WindStep.ON_BY_NAIL)}
_TOOTH = (WindStep.BACK_BY_TOOTH, WindStep.ON_BY_TOOTH)
_TEETH = (WindStep.BACK_BY_TEETH, WindStep.ON_BY_TEETH)
_PEGS = (WindStep.BACK_BY_PEG, WindStep.ON_BY_PEG)


def expected_steps(asked: Asked, words: Catalogue) -> tuple[ExpectedStep, ...]:
    """Every thing to do, in order."""
    steps = _from_rod if truth_of(asked.kit).on_rod else _from_bar
    return tuple(steps(asked, words))


def _from_bar(asked: Asked, words: Catalogue) -> Iterator[ExpectedStep]:
    """Tied to a frame end."""
    say, marks, passes = words.say, asked.marks, asked.passes
    first, last = passes[0], passes[-1]
    yield ExpectedStep(say(WindStep.TIE_ON, mark=marks.at_near(first).number), "on")
    yield ExpectedStep(say(_there(first), mark=marks.at_far(first).number), "there")
    yield from _turns(asked, words)
    if len(passes) > 4:
        if last.up:
            yield ExpectedStep(say(WindStep.LAST_NEAR_MARK, mark=marks.at_near(last).number), "onward")
        else:
            yield ExpectedStep(say(WindStep.LAST_FAR_MARK, mark=marks.at_far(last).number), "onward")
    if last.up:
        yield ExpectedStep(say(WindStep.CLIP_FAR, mark=marks.at_far(last).number), "clip")
    else:
        yield ExpectedStep(say(WindStep.CLIP_NEAR, mark=marks.at_near(last).number), "clip")
    winds = truth_of(asked.kit).winds
    yield ExpectedStep(say(WindStep.PULL_WINDS if winds else WindStep.PULL_ENDS), "pull")
    yield _off(asked, WindStep.TIE_OFF_CUT, words)


def _there(first: ExpectedPass) -> WindStep:
    """How the first pass goes."""
    if first.face != first.far_face:
        return WindStep.TO_FAR_CROSSING_BACK if first.face else WindStep.TO_FAR_CROSSING_FACE
    return WindStep.TO_FAR_ON_FACE if first.face else WindStep.TO_FAR_BEHIND


def _turns(asked: Asked, words: Catalogue) -> Iterator[ExpectedStep]:
    """How the thread comes back from the far end, and goes on at the near one."""
    truth, say, marks, passes = truth_of(asked.kit), words.say, asked.marks, asked.passes
    second = passes[1]
    back: dict[str, object] = {}
    on: dict[str, object] = {"near": marks.at_near(second).number}
    if truth.winds:
        crosses = second.face != second.far_face
        there = second.far_face if crosses else second.face
        roles = _CROSSED[there] if crosses else _OPEN[there]
    elif isinstance(asked.kit.frame.ends, NotchedEnd):
        empty = skips_notches(asked.kit.frame.ends, asked.sett)
        roles = _TEETH if empty else _TOOTH
        back["mark"] = marks.at_far(second).number
    else:
        roles = _PINS.get(asked.kit.frame.ends.name, _PEGS)
    yield ExpectedStep(say(roles[0], **back), "far")
    if len(passes) > 2:
        third = passes[2]
        on |= {"next": marks.at_near(third).number} if back else {"far": marks.at_far(third).number}
        yield ExpectedStep(say(roles[1], **on), "near")


_OPEN = {
    True: (WindStep.BACK_ON_FACE, WindStep.ON_ROUND_BAR),
    False: (WindStep.BACK_BEHIND, WindStep.ON_ROUND_BAR),
}
_CROSSED = {
    True: (WindStep.BACK_CROSSING_BACK, WindStep.ON_ROUND_BAR),
    False: (WindStep.BACK_CROSSING_FACE, WindStep.ON_ROUND_BAR),
}
"""By whether the second pass leaves the far end on the face."""


def _from_rod(asked: Asked, words: Catalogue) -> Iterator[ExpectedStep]:
    """Tied to a loose rod."""
    say, count = words.say, len(asked.passes)
    yield ExpectedStep(say(WindStep.TIE_ON_ROD), "on")
    yield ExpectedStep(say(WindStep.FIRST_FROM_ROD, mark=1), "there")
    yield ExpectedStep(say(WindStep.BACK_TO_ROD), "far")
    yield ExpectedStep(say(WindStep.ON_FROM_ROD, mark=2), "near")
    if count > 2:
        yield ExpectedStep(say(WindStep.LAST_ROD_MARK, mark=count), "onward")
    yield ExpectedStep(say(WindStep.CLIP_ROD), "clip")
    yield ExpectedStep(say(WindStep.PULL_ENDS), "pull")
    yield _off(asked, WindStep.TIE_OFF_CUT_ROD, words)


def _off(asked: Asked, cut: WindStep, words: Catalogue) -> ExpectedStep:
    """With the thread that a knot takes, where that is not next to nothing."""
    tail = asked.kit.amounts.warp.knot or (_KNOT_IN if asked.imperial else _KNOT_CM)
    said = words.say(WindStep.TIE_OFF) if tail.mm < _CUT_LEAST else words.say(cut, tail=say_length(tail))
    return ExpectedStep(said, "off")
