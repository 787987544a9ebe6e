"""The options of the command `printer-check` that say what is drawn; refusals name the option."""

from __future__ import annotations

from typing import Any

from layout.kit.fields import read_field
from layout.kit.inputs import BY_KEY
from layout.kit.kit import Paper
from layout.kit.paper_size import PaperSize
from layout.values.errors import FieldError
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError

_OPTIONS = {
    "--paper": ("paper.size", '--paper "a4"'),
    "--language": ("paper.language", '--language "de"'),
}


def paper_size(text: str) -> PaperSize:
    """The paper that is called so, or has these sides; OptionError where none is."""
    size: PaperSize = _read("--paper", text)
    return size


def check_paper(size: str, language: str) -> Paper:
    """The paper that a check is drawn for, and its language; OptionError naming the option that does not work."""
    return Paper(paper_size(size), language=_read("--language", language))


def _read(option: str, text: str) -> Any:
    """What the key of the kit file that is meant would say."""
    key, example = _OPTIONS[option]
    try:
        return read_field(BY_KEY[key], text, option, metrics())
    except FieldError as error:
        raise OptionError(option, error.needed, error.got, example) from None
