"""What one file proved to be: its bytes read back, judged, and described; or the error that says what is wrong."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from layout.plan import Plan
from layout.values.errors import LayoutError
from templates_gen.document import Document, ReadError
from templates_gen.files.manifest import Entry
from templates_gen.files.output import Joined, Output
from templates_gen.files.proof import findings, read
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Refused
from templates_gen.verify.finding import Findings, said_once


class ProofError(LayoutError):
    """A file came back other than it was meant, and was not kept: every problem once, and what to do."""

    def __init__(self, what: str, problems: Sequence[str]) -> None:
        each = said_once(problems)
        said, *others = [*each[:_MOST_SAID], *_more(len(each) - _MOST_SAID)]
        for other in others:
            said = message(Refused.AND, before=said, after=other)
        super().__init__(message(Refused.PROBLEMS, what=what, problems=said, advice=report_advice()))


_MOST_SAID = 12


def _more(number: int) -> list[str]:
    return [message(Refused.MORE, number=number)] if number > 0 else []


def report_advice() -> str:
    """What to do where the program itself is at fault."""
    from importlib import metadata

    try:
        version = metadata.version("templates-gen")
    except metadata.PackageNotFoundError:
        version = message(Refused.NO_VERSION)
    return message(Refused.REPORT, version=version)


@dataclass(frozen=True, slots=True)
class Made:
    """One proven file: its name, digest, sheet size in mm, parts, number of marks and cuts, largest deviation in mm.

    `joined` are the parts that lie on its sheets in pieces.
    """

    file: str
    sha256: str
    sheets: int
    size: tuple[float, float]
    parts: tuple[str, ...]
    marks: int
    cuts: int
    deviation: float
    kit_sha256: str = ""
    joined: tuple[Joined, ...] = ()

    @property
    def values(self) -> Entry:
        """What the manifest says of it."""
        return {
            "file": self.file,
            "sha256": self.sha256,
            "sheets": self.sheets,
            "sheet_mm": list(self.size),
            "parts": list(self.parts),
            "marks": self.marks,
            "cuts": self.cuts,
            "deviation_um": round(self.deviation * 1000, 3),
            "kit_sha256": self.kit_sha256,
        }


def proven(plan: Plan, output: Output, data: bytes) -> Made:
    """What `data` proved to be; ProofError where it does not come back as `output` was drawn."""
    made = judged(output, data, partial(findings, plan, output))
    kit = _in_all(json.loads(output.about.inputs)["kit"])
    return replace(made, kit_sha256=hashlib.sha256(json.dumps(kit).encode()).hexdigest())


def _in_all(kit: Mapping[str, Any]) -> Mapping[str, Any]:
    """What all files of a kit carry: legal words and the buyer stand only in those that show them."""
    order = {key: value for key, value in kit.get("order", {}).items() if key != "buyer"}
    kept = {key: value for key, value in kit.items() if key not in ("legal", "order")}
    return kept | {"order": order} if order else kept


def judged(output: Output, data: bytes, judge: Callable[[Document], Findings]) -> Made:
    """What `data` proved to be by `judge`, who gets what was read back; ProofError where it is not `output`."""
    unlike = message(Refused.NOT_KEPT, file=output.file)
    try:
        found = read(output, data)
    except ReadError as error:
        raise ProofError(unlike, [str(error)]) from error
    result = judge(found)
    if not result.sound or found.about != output.about:
        raise ProofError(unlike, result.sentences or [message(Refused.OTHER_INPUTS)])
    first, counts = output.sheets[0], (output.marks, output.cuts)
    size, digest = (round(first.width, 4), round(first.height, 4)), hashlib.sha256(data).hexdigest()
    shown = output.file, digest, len(output.sheets), size, output.parts
    return Made(*shown, *counts, result.deviation, joined=output.joined)
