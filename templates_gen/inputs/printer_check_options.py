"""The options of the command `printer-check` that say what is drawn; refusals name the option."""

from __future__ import annotations

from layout.kit.kit import Paper
from layout.kit.paper_size import PaperSize
from templates_gen.inputs.key_options import as_key


def paper_size(text: str) -> PaperSize:
    """The paper that is called so, or has these sides; OptionError where none is."""
    size: PaperSize = as_key("paper.size", "--paper", text, '--paper "a4"')
    return size


def check_paper(size: str, language: str) -> Paper:
    """The paper that a check is drawn for, and its language; OptionError naming the option that does not work."""
    paper = paper_size(size)
    return Paper(paper, language=as_key("paper.language", "--language", language, '--language "de"'))
