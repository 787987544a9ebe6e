"""From a form of the page to what is typed on a slip."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import TYPE_CHECKING

from werkzeug.datastructures import MultiDict

from templates_gen.desk.server.person import Unit
from templates_gen.desk.server.refusals import FORM_BYTES, RefusedError
from templates_gen.desk.slip.fields import NOT_TYPED, SPECS, pattern_of
from templates_gen.desk.slip.labels import label_of
from templates_gen.desk.slip.lines import lines
from templates_gen.desk.slip.shape import MOST_ROWS
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Slip

_OF_THE_PAGE = frozenset(
    ("token", "k", "view", "unit", "only", "offered", "nr", "page", "yours", "shapes", "rest", "do", "use", "as_is")
)
_PLAIN = re.compile(r"\s*(\d+([.,]\d+)?(\s+\d+/\d+)?|\d+/\d+|[.,]\d+)\s*")
_ROW = re.compile(r"\[(\d+)\]")
_ROWS = frozenset(map(str, range(1, MOST_ROWS + 1)))
_LONGEST_NAME, _LONGEST_USE = 120, 1000
_OF_WORDS = ("name", "names", "text", "lines", "link")
LETTERS, LETTERS_OF_WORDS = 200, 2000
"""As long as a line may be: a number or a choice, and one of words. A kit allows less, and says so itself."""


def take(slip: Slip, form: MultiDict[str, str], unit: Unit) -> None:
    """Puts what a form says into the slip; whoever calls holds its lock.

    A line that the form lacks stays as it is: those of another kind of frame are kept until it is chosen again. What
    is typed is the person's own from then on. RefusedError where it is more than a slip may hold.
    """
    new = {name: _short(name, _text(form.getlist(name))) for name in form if _is_line(name, slip)}
    _settle(slip, new, unit)
    changed = {name for name, text in new.items() if text != slip.typed.get(name, "")}
    typed = {name: text for name, text in {**slip.typed, **new}.items() if text != ""}
    if sum(len(name) + len(text) for name, text in typed.items()) > FORM_BYTES:
        raise RefusedError(413, DeskRefusal.TOO_LARGE, most=FORM_BYTES // 1024)
    slip.typed = typed
    slip.touched = slip.touched or bool(changed)
    slip.examples -= changed
    slip.examples.difference_update(form.get("yours", "").split(","))
    offered = form.getlist("offered")
    if offered:
        ticked = frozenset(form.getlist("only")) & frozenset(offered)
        slip.only = None if ticked >= frozenset(offered) else ticked


def put(slip: Slip, field: str, text: str) -> bool:
    """Puts one value into one line, as a click on it does; False where there is no such line."""
    if not _is_line(field, slip) or len(text) > _LONGEST_USE:
        return False
    slip.typed = {**slip.typed, field: text} if text else {k: v for k, v in slip.typed.items() if k != field}
    slip.touched = True
    slip.examples.discard(field)
    return True


def _is_line(name: str, slip: Slip) -> bool:
    if name in _OF_THE_PAGE or name in NOT_TYPED or len(name) > _LONGEST_NAME:
        return False
    rows = _ROW.findall(name)
    rows_fit = all(row in _ROWS for row in rows) and "[]" not in name
    return name in slip.typed or (rows_fit and pattern_of(name) in SPECS)


def _text(values: Iterable[str]) -> str:
    """One value, or those that were ticked, one a line; a browser ends lines with two characters."""
    return "\n".join(text for value in values if (text := value.replace("\r\n", "\n").replace("\r", "\n")))


def _short(name: str, text: str) -> str:
    spec = SPECS.get(pattern_of(name))
    most = LETTERS_OF_WORDS if spec is None or spec.kind in _OF_WORDS else LETTERS
    if len(text) > most:
        label = label_of(pattern_of(name)) if spec else name
        raise RefusedError(413, DeskRefusal.TOO_LONG, line=label, most=most, number=len(text))
    return text


def _settle(slip: Slip, new: dict[str, str], unit: Unit) -> None:
    """Gives the unit of the switch to plain numbers in lines that were changed."""
    changed = {name for name, text in new.items() if text != slip.typed.get(name, "") and _PLAIN.fullmatch(text)}
    if not changed:
        return
    known = lines({**slip.typed, **new})
    for name in changed:
        if (line := known.get(name)) is not None and line.units:
            new[name] = f"{new[name].strip()} {line.units[unit == 'in']}"
