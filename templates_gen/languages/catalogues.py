"""From a language to its catalogue, and from a kit to the words of its sheets.

A catalogue of another language than English is read from compiled gettext files (`LC_MESSAGES/*.mo`), in which the role
of a message is its context. What they lack, or say with other values than English has, is said in English.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from layout.kit.kit import Kit
from layout.messages.catalogue import Between, Catalogue, CatalogueError, Plural, Role, fields_of
from templates_gen.messages.late import Late

if TYPE_CHECKING:
    from gettext import GNUTranslations

FOLDER = Path(__file__).parent
DOMAINS = ("layout", "desk", "program")
"""What stands on sheets or is said of kits; what the page in the browser says; and what the program says besides."""
_DESK = "templates_gen.messages.roles.desk"

_FORMS = re.compile(r"nplurals\s*=\s*([1-6])\s*;\s*plural\s*=\s*([^;]+);?\s*")
_COUNTED = range(1001)  # each form of a plural is that of one of these


@cache
def catalogue_of(language: str) -> Catalogue:
    """The catalogue of a language by its code (ISO 639-1); CatalogueError where there is none."""
    from templates_gen.messages.english import ENGLISH  # not needed before something is said

    return ENGLISH if language == "en" else _translated(language, ENGLISH)


def words_of(kit: Kit) -> Catalogue:
    """What the sheets of a kit are said with."""
    return catalogue_of(kit.paper.language)


def _translated(language: str, english: Catalogue) -> Catalogue:
    from layout.messages.plural_rule import rule

    whole = english.messages
    first = whole.first if isinstance(whole, Late) else dict(whole)
    messages, header = _read(language, first, "")
    if not header:
        raise CatalogueError(f"there is no catalogue of the language {language!r}")
    signs = (str(messages[role]) for role in (Between.DECIMAL, Between.THOUSANDS))
    return Catalogue(Late(messages, _of_desk, language), language, rule(_forms(header)[1]), *signs)


def _of_desk(language: str) -> dict[Role, str | Plural]:
    """What only the page in the browser says, in that language."""
    from templates_gen.messages.english import ENGLISH

    header = _read(language, {}, "")[1]
    return _read(language, ENGLISH.messages.rest("en") if isinstance(ENGLISH.messages, Late) else {}, header)[0]


def _read(language: str, english: Mapping[Role, str | Plural], header: str) -> tuple[dict[Role, str | Plural], str]:
    """These messages in a language, and the header of its first catalogue; English where it lacks them."""
    from gettext import GNUTranslations

    messages = dict(english)
    for domain in DOMAINS:
        path = FOLDER / language / "LC_MESSAGES" / f"{domain}.mo"
        own = {role: text for role, text in english.items() if domain_of(role) == domain}
        if not path.is_file() or not (own or not header):
            continue
        with path.open("rb") as file:
            known = GNUTranslations(file)
        header = header or known.info().get("plural-forms", "")
        counts = _counts(header)
        messages |= {role: _said(known, role, text, counts) for role, text in own.items()}
    return messages, header


def domain_of(role: Role) -> str:
    """The domain that a role is in, by the package that has it."""
    module = type(role).__module__
    return DOMAINS[0] if module.startswith("layout.") else DOMAINS[1] if module.startswith(_DESK) else DOMAINS[2]


def _forms(header: str) -> tuple[int, str]:
    found = _FORMS.fullmatch(header)
    if found is None:
        raise CatalogueError(f"a catalogue says {header!r} of its plural forms")
    return int(found[1]), found[2]


def _counts(header: str) -> tuple[int, ...]:
    """A whole number for each form of a plural, in their order."""
    from gettext import c2py

    number, expression = _forms(header)
    form = c2py(expression)
    first = {form(count): count for count in reversed(_COUNTED)} | {form(1): 1}  # so that 1 stays one where it can
    if set(first) != set(range(number)):
        raise CatalogueError(f"a catalogue says {header!r} of its plural forms")
    return tuple(first[place] for place in range(number))


def _said(known: GNUTranslations, role: Role, english: str | Plural, counts: tuple[int, ...]) -> str | Plural:
    """A message in that language, with plain spaces; the English one where it is lacking or has other values."""
    said: str | Plural
    if isinstance(english, Plural):
        one, many = english.forms
        forms = (known.npgettext(role, one, many, count) for count in counts)
        said = Plural(english.by, *(form.replace("\u00a0", " ") for form in forms))
    else:
        said = known.pgettext(role, english).replace("\u00a0", " ")
    return said if _fits(said, english) else _english(english, counts)


def _fits(said: str | Plural, english: str | Plural) -> bool:
    """Whether a message says something, with the values of the English one."""
    try:
        return all(said.forms if isinstance(said, Plural) else (said,)) and fields_of(said) == fields_of(english)
    except ValueError:  # a brace too many
        return False


def _english(english: str | Plural, counts: tuple[int, ...]) -> str | Plural:
    if isinstance(english, str):
        return english
    return Plural(english.by, *(english.forms[count != 1] for count in counts))
