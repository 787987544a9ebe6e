"""A finished printer check read back: it carries its paper and its language, and is proven again from them."""

from __future__ import annotations

import json
from pathlib import Path

from layout.drawing.metrics import FontMetrics
from layout.values.errors import LayoutError, shown_path, shown_sentences
from templates_gen.document import ReadError
from templates_gen.files.checked import Checked, counted
from templates_gen.files.folder_contents import form_of
from templates_gen.files.printer_check import CheckAsked, check_output, findings
from templates_gen.inputs.printer_check_options import check_paper
from templates_gen.inputs.printer_values import read_printer
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Carried, Refused


def check_alone(path: Path, data: bytes, metrics: FontMetrics) -> Checked | None:
    """What is wrong with a printer check; None where the file is none."""
    try:
        form = form_of(path)
        found = form.read(data) if form else None
        asked = _carried(found.about.inputs, metrics) if found else None
        if found is None or asked is None:
            return None
    except ReadError:
        return None
    except LayoutError as error:
        return Checked(shown_path(path), None, counted(found), 0.0, tuple(shown_sentences(str(error)).split("\n")))
    output = check_output(asked, metrics)
    result = findings(asked, output, found)
    other = () if found.about == output.about else (message(Refused.OTHER_INPUTS),)
    return Checked(shown_path(path), counted(output), counted(found), result.deviation, (*result.sentences, *other))


def _carried(inputs: str, metrics: FontMetrics) -> CheckAsked | None:
    """What the JSON text in a file says of a check; None where it is of something else.

    LayoutError for values that cannot be used.
    """
    try:
        found = json.loads(inputs)
    except (ValueError, RecursionError):
        return None
    if not isinstance(found, dict) or "check" not in found:
        return None
    check = found["check"]
    if not isinstance(check, dict) or not all(isinstance(check.get(key), str) for key in ("paper", "language")):
        raise LayoutError(message(Carried.NO_INPUTS))
    printer = read_printer(found["printer"], metrics) if isinstance(found.get("printer"), dict) else None
    return CheckAsked(check_paper(check["paper"], check["language"]), printer)
