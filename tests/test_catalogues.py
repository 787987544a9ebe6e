"""The catalogues of other languages: what is in them is whole, can be printed, and is what was compiled."""

from __future__ import annotations

from fractions import Fraction
from io import BytesIO
from pathlib import Path
from string import Formatter

import pytest
from babel.messages.catalog import Catalog, Message
from babel.messages.mofile import read_mo, write_mo
from catalogues import LANGUAGES, compiled, merged, missing, po_path, roles, template, written
from kits import font_metrics
from languages import made_up

import templates_gen
from layout.messages.catalogue import Between, CatalogueError, Plural, Role
from layout.messages.roles import KitHelp, Known, Refusal, Unit
from layout.values.errors import FieldError
from layout.values.numerals import say_number
from layout.values.units import read_length
from templates_gen.languages import catalogues
from templates_gen.languages.catalogues import DOMAINS, catalogue_of
from templates_gen.messages.english import ENGLISH

FILES = [(language, domain) for language in LANGUAGES for domain in DOMAINS]
FORBIDDEN = "\u202f\u1e9e\u2011\u00ad"
"""Narrow no-break space, capital sharp s, no-break hyphen, soft hyphen: the print font lacks them, or draws another."""


def translated(language: str, domain: str) -> list[Message]:
    """What is translated of today's English sentences."""
    catalog = merged(language, domain)
    lacking = {message.context for message in missing(catalog)}
    return [message for message in catalog if message.id and message.context not in lacking]


def forms(said: object) -> tuple[str, ...]:
    """All forms of a message."""
    return tuple(map(str, said)) if isinstance(said, tuple | list) else (str(said),)


def names(text: str) -> set[str]:
    """The values that a text asks for; ValueError where its braces are wrong."""
    return {name for _, name, _, _ in Formatter().parse(text) if name}


def fault(message: Message) -> str:
    """What is wrong with a translated message; empty where nothing is."""
    wanted = {name for form in forms(message.id) for name in names(form)}
    for form in forms(message.string):
        try:
            asked = names(form)
        except ValueError:
            return "a brace too many"
        if not asked <= wanted or (isinstance(message.string, str) and asked != wanted):
            return f"asks for {sorted(asked)}, not {sorted(wanted)}"
        if form != form.strip("\n\t ") or "  " in form:
            return "a space too many"
        if form.count("\n") != forms(message.id)[0].count("\n"):
            return "another number of lines"
        letters = form.replace("\u00a0", "").replace("\n", "")
        if lacking := font_metrics().missing(letters) or "".join(sign for sign in FORBIDDEN if sign in form):
            return f"signs that the print font lacks: {lacking!r}"
    return ""


def test_a_fault_is_found() -> None:
    """Other values, wrong braces, spaces, lines and letters; a form for one need not name the number."""
    assert fault(Message("{a} mm", "{a} mm")) == ""
    assert fault(Message(("{a} end", "{a} ends"), ("ein Faden", "{a} Fäden"))) == ""
    wrong = ("{b} mm", "mm", "{a mm", " {a} mm", "{a}  mm", "{a}\nmm", "{a} 織", "{a}\u202fmm")
    assert all(fault(Message("{a} mm", said)) for said in wrong)


@pytest.mark.parametrize(("language", "domain"), FILES)
def test_what_is_translated_can_be_printed(language: str, domain: str) -> None:
    """With the same values as the English sentence, in letters that the print font has."""
    found = {message.context: fault(message) for message in translated(language, domain)}
    assert {role: why for role, why in found.items() if why} == {}


@pytest.mark.parametrize(("language", "domain"), FILES)
def test_the_compiled_catalogue_is_the_written_one(language: str, domain: str) -> None:
    """Message for message, and with the plural rule of the language."""
    path = po_path(language, domain)
    fresh, kept = (read_mo(BytesIO(data)) for data in (compiled(path.read_bytes(), language), _mo(path).read_bytes()))
    entries = [
        {(each.context, forms(each.id)): forms(each.string) for each in catalog if each.id} for catalog in (fresh, kept)
    ]
    assert entries[0] == entries[1]
    assert fresh.plural_forms == kept.plural_forms == LANGUAGES[language][1]


def _mo(path: Path) -> Path:
    return path.with_suffix(".mo")


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_sentence_is_missing(language: str) -> None:
    """Of all that stands on sheets or is said of kits; nor is one translated of another English sentence than today's.

    What is missing is named by its role with the English sentence: fill it in and run `python tests/catalogues.py`.
    """
    lacking = {message.context: message.id for message in missing(merged(language, "layout"))}
    assert lacking == {}
    assert len(roles("layout")) > 1000


def test_a_sentence_that_is_missing_or_stale_is_found(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One that is empty, and one whose English changed since, each with its English sentence."""
    text = po_path("de", "layout").read_text("utf-8")
    monkeypatch.setattr("catalogues.FOLDER", tmp_path)
    path = po_path("de", "layout")
    path.parent.mkdir(parents=True)
    told = '"die Sprache der Blätter und der Wörter auf geschnittenen Teilen, mit Kürzel oder Namen"'
    changed = "how a part lies on the sheet; auto tries straight"
    assert text.count(told) == text.count(changed) == 1
    path.write_text(text.replace(told, '""').replace(changed, changed.replace("tries", "tried")), "utf-8")
    lacking = {message.context: message.id for message in missing(merged("de", "layout"))}
    wanted = (KitHelp.PAPER_LANGUAGE, KitHelp.PAPER_LAY)
    assert lacking == {str(role): ENGLISH.messages[role] for role in wanted}


def test_a_template_holds_every_message_once() -> None:
    """By its role, with the English sentence; and it is written the same a second time."""
    for domain in DOMAINS:
        catalog = template(domain)
        assert [message.context for message in catalog if message.id] == [str(role) for role in roles(domain)]
        assert written(catalog) == written(template(domain))
    assert sum(len(roles(domain)) for domain in DOMAINS) == len(ENGLISH.messages)


class Front:
    """A folder of catalogues of our own, in the place of those that are installed."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def holds(self, language: str, messages: dict[Role, object], plurals: str, domain: str = "layout") -> None:
        """Compiles these messages into it."""
        catalog = Catalog(locale=language)
        number, expression = plurals.removeprefix("nplurals=").rstrip(";").split("; plural=")
        catalog._num_plurals, catalog._plural_expr = int(number), expression
        for role, said in messages.items():
            english = ENGLISH.messages[role]
            catalog.add(english.forms if isinstance(english, Plural) else english, said, context=str(role))
        path = self.folder / language / "LC_MESSAGES" / f"{domain}.mo"
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("wb") as file:
            write_mo(file, catalog)
        catalogue_of.cache_clear()


@pytest.fixture
def front(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Front:
    """Nothing is left of it afterwards."""
    monkeypatch.setattr(catalogues, "FOLDER", tmp_path)
    catalogue_of.cache_clear()
    yield Front(tmp_path)
    catalogue_of.cache_clear()


TWO = "nplurals=2; plural=(n >= 2);"


def test_a_catalogue_is_read_as_it_was_compiled(front: Front) -> None:
    """Sentences, forms of a plural, the signs of figures, and plain spaces for those that do not break."""
    messages = {
        Known.MEASURED: "devant\u00a0!",
        Refusal.MORE_LINES: ("{more} ligne", "{more} lignes"),
        Between.DECIMAL: ",",
        Between.THOUSANDS: "\u00a0",
        Unit.INCH: "{number} po",
    }
    front.holds("fr", messages, TWO)
    french = catalogue_of("fr")
    assert french.say(Known.MEASURED) == "devant !"
    said = [french.say(Refusal.MORE_LINES, more=say_number(Fraction(n, 2))) for n in (1, 3, 4)]
    assert said == ["0,5 ligne", "1,5 ligne", "2 lignes"]
    assert french.say(Unit.INCH, number=say_number(Fraction(3, 2))) == "1,5 po"
    assert french.figure("12,345.6") == "12 345,6"
    assert (french.language, french.say(Known.ASSUMED)) == ("fr", ENGLISH.say(Known.ASSUMED))


def test_what_a_catalogue_lacks_or_has_wrong_is_said_in_english(front: Front) -> None:
    """A message with other values than the English one, or a brace too many, never stops a sheet."""
    wrong = {Refusal.AT: "{field}", Known.MEASURED: "devant {", Refusal.MORE_LINES: ("{fewer}", "{more}")}
    front.holds("fr", wrong, TWO)
    french = catalogue_of("fr")
    assert french.say(Known.MEASURED) == ENGLISH.say(Known.MEASURED)
    assert french.say(Refusal.AT, field="a", sentence="b") == ENGLISH.say(Refusal.AT, field="a", sentence="b")
    english = {1: "and 1 more line like these", 0: "and 0 more line like these", 2: "and 2 more lines like these"}
    assert {more: french.say(Refusal.MORE_LINES, more=more) for more in english} == english


def test_a_rule_of_three_forms_is_taken(front: Front) -> None:
    """The whole made-up language through the front door: the same as it is made without files."""
    other = made_up(ENGLISH)
    for domain in DOMAINS:
        said = {role: other.messages[role] for role in roles(domain)}
        texts = {role: text.forms if isinstance(text, Plural) else text for role, text in said.items()}
        signs = {Between.DECIMAL: ",", Between.THOUSANDS: "\u00a0"} if domain == "layout" else {}
        front.holds("de", {**texts, **signs}, "nplurals=3; plural=(n < 1 ? 0 : n == 1 ? 1 : 2);", domain)
    read = catalogue_of("de")
    for number in (Fraction(0), Fraction(1, 2), Fraction(1), Fraction(3, 2), Fraction(7)):
        assert read.rule(number) == other.rule(number)
    for role, text in other.messages.items():
        if role not in (Between.DECIMAL, Between.THOUSANDS):
            assert read.messages[role] == text
    assert (read.decimal, read.thousands) == (",", " ")


def test_a_language_that_nobody_wrote_is_a_fault(front: Front) -> None:
    """It cannot be asked for in a kit."""
    with pytest.raises(CatalogueError, match="no catalogue of the language 'xx'"):
        catalogue_of("xx")


def test_no_language_of_the_machine_is_taken(monkeypatch: pytest.MonkeyPatch) -> None:
    """The same kit is drawn the same everywhere."""
    monkeypatch.setenv("LANGUAGE", "de")
    monkeypatch.setenv("LC_ALL", "de_DE.UTF-8")
    catalogue_of.cache_clear()
    assert catalogue_of("en") is ENGLISH


@pytest.mark.parametrize(
    ("language", "note", "refusal"),
    [
        ("es", "La densidad tomada es 2,5 hilos por cm", "necesita una longitud"),
        ("de", "Die gewählte Fadendichte ist 2,5 Fäden pro cm", "braucht eine Länge"),
        ("fr", "La densité retenue est 2,5 fils au cm", "demande une longueur"),
    ],
)
def test_notes_and_refusals_are_said_in_each_language(language: str, note: str, refusal: str) -> None:
    """From Python, with the decimal comma of the language; the English text of both stays as it is."""
    words = templates_gen.words(language)
    plan = templates_gen.plan(templates_gen.load())
    assert words.again(plan.notes[0]).startswith(note)
    with pytest.raises(FieldError) as found:
        read_length("twelve")
    assert found.value.said(words).startswith(refusal)
    assert str(found.value).startswith("needs a length")
