"""The catalogues of other languages: extracted from the English one, merged into what is translated, and compiled.

    python tests/catalogues.py            write the templates and the catalogues again, and say what is missing
    python tests/catalogues.py de 40      show the first 40 messages that German lacks

A message is found again by its role, which is its context. What was translated of another English sentence is kept as a
remark beside the new one ("fuzzy") and counts as missing.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from io import BytesIO
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from babel.messages.catalog import Catalog, Message
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po, write_po

from layout.messages.catalogue import Plural, Role
from templates_gen.languages.catalogues import DOMAINS, FOLDER, domain_of
from templates_gen.messages.english import ENGLISH

LANGUAGES: Mapping[str, tuple[str, str]] = {
    "es": ("Spanish", "nplurals=2; plural=(n != 1);"),
    "de": ("German", "nplurals=2; plural=(n != 1);"),
    "fr": ("French", "nplurals=2; plural=(n >= 2);"),
}
"""The name of each language and its plural rule; that of French takes 1.5 as one, as CLDR does."""

_HEADER = """\
# {what} of templates-gen.
# How to translate: docs/translate.md. The words of the trade: docs/terms.md.
#"""
_DATED = (
    "Project-Id",
    "POT-Creation",
    "PO-Revision",
    "Generated-By",
    "Last-Translator",
    "Language-Team",
    "Report-Msgid",
)
"""The lines of a header that would change with the day or with Babel."""
_EVER = datetime(2026, 1, 1, tzinfo=UTC)
_PLACES = ("layout.messages.roles.printed", "layout.messages.roles.sheets", "layout.messages.roles.cutting")


def roles(domain: str) -> list[Role]:
    """The roles of a domain: what is drawn first, help last, each area by the names of its roles."""
    own = [role for role in ENGLISH.messages if domain_of(role) == domain]
    return sorted(own, key=lambda role: (_weight(role), type(role).__module__, role))


def _weight(role: Role) -> int:
    module = type(role).__module__
    return 0 if module in _PLACES or module.endswith((".job", "catalogue")) else 2 if module.endswith(".help") else 1


def template(domain: str) -> Catalog:
    """Every message of a domain, with what it is for; nothing in it depends on the day."""
    catalog = _empty(f"Messages ({domain})")
    for role in roles(domain):
        message = ENGLISH.messages[role]
        text = message.forms if isinstance(message, Plural) else message
        notes = [" ".join((type(role).__doc__ or "").split())]
        if isinstance(message, Plural):
            notes.append(f"The form goes by {{{message.by}}}, which may be a fraction such as 1.5.")
        catalog.add(text, context=str(role), auto_comments=notes, flags=["python-brace-format"])
    return catalog


def _empty(what: str, language: str | None = None) -> Catalog:
    return Catalog(
        locale=language,
        project="templates-gen",
        header_comment=_HEADER.format(what=what),
        fuzzy=False,
    )


def po_path(language: str, domain: str) -> Path:
    """Where the sentences of a language stand."""
    return FOLDER / language / "LC_MESSAGES" / f"{domain}.po"


def merged(language: str, domain: str) -> Catalog:
    """The template with what is translated so far."""
    name, plurals = LANGUAGES[language]
    catalog = _empty(f"Messages ({domain}) in {name}", language)
    path = po_path(language, domain)
    old: dict[str, Message] = {}
    if path.is_file():
        with path.open("rb") as file:
            old = {str(message.context): message for message in read_po(file, locale=language) if message.id}
    catalog._num_plurals, catalog._plural_expr = 2, plurals.partition("plural=")[2].strip(" ;")
    for message in template(domain):
        if not message.id:
            continue
        known = old.get(str(message.context))
        said = known.string if known is not None and _any(known.string) else None
        fuzzy = said is not None and known is not None and (known.id != message.id or known.fuzzy)
        if said is not None and isinstance(message.id, str) is not isinstance(said, str):
            said = None
        flags = {"python-brace-format", *(["fuzzy"] if fuzzy and said is not None else [])}
        remarks = known.user_comments if known is not None else ()
        catalog.add(
            message.id, said, context=message.context, flags=flags, auto_comments=message.auto_comments,
            user_comments=remarks, previous_id=known.id if fuzzy and known is not None else (),
        )  # fmt: skip
    return catalog


def _any(said: object) -> bool:
    return any(said) if isinstance(said, tuple | list) else bool(said)


def missing(catalog: Catalog) -> list[Message]:
    """What is not translated, or of another English sentence."""
    return [message for message in catalog if message.id and (message.fuzzy or not _whole(message.string))]


def _whole(said: object) -> bool:
    return all(said) if isinstance(said, tuple | list) else bool(said)


def written(catalog: Catalog) -> bytes:
    """A catalogue as text, the same on any day and with any Babel."""
    file = BytesIO()
    write_po(file, catalog, width=120, include_previous=True)
    lines = file.getvalue().decode().split("\n")
    return "\n".join(line for line in lines if not line.startswith(tuple(f'"{name}' for name in _DATED))).encode()


def compiled(text: bytes, language: str) -> bytes:
    """What the standard library reads, of the text of a catalogue."""
    catalog = read_po(BytesIO(text), locale=language)
    catalog.creation_date = catalog.revision_date = _EVER
    for message in missing(catalog):
        catalog.delete(message.id, message.context)
    file = BytesIO()
    write_mo(file, catalog)
    return file.getvalue()


def files() -> Iterator[tuple[Path, bytes, Catalog]]:
    """Every file of the catalogues, what it should hold, and the catalogue that is in it."""
    for domain in DOMAINS:
        catalog = template(domain)
        yield FOLDER / f"{domain}.pot", written(catalog), catalog
        for language in LANGUAGES:
            catalog = merged(language, domain)
            text, path = written(catalog), po_path(language, domain)
            yield path, text, catalog
            yield path.with_suffix(".mo"), compiled(text, language), catalog


def main(arguments: list[str]) -> None:
    """Writes all, or shows what a language lacks."""
    if arguments:
        language, most = arguments[0], int(arguments[1]) if len(arguments) > 1 else 20
        lacking = [message for domain in DOMAINS for message in missing(merged(language, domain))]
        for message in lacking[:most]:
            print(message.context, message.id, sep="\n    ")
        return
    for path, data, catalog in files():
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
        if path.suffix == ".po":
            print(f"{path.relative_to(FOLDER)}: {len(missing(catalog))} of {len(catalog)} missing")


if __name__ == "__main__":
    main(sys.argv[1:])
