"""The language of the sheets, as a kit file names it."""

from __future__ import annotations

import pytest
from kits import kit_of

from layout.kit.inputs import BY_KEY
from layout.kit.kit import kit_values, read_kit
from layout.kit.languages import LANGUAGES
from layout.values.errors import FieldErrors
from templates_gen.languages.catalogues import FOLDER, words_of
from tests.plain_kits import METRICS

WRITTEN = {
    "en": ("en", "EN", "English", "en-GB", "en_US"),
    "es": ("es", "Spanish", "español", "Espan\u0303ol", "espanol", "es-MX"),
    "de": ("de", " de ", "german", "Deutsch", "de-AT"),
    "fr": ("fr", "French", "français", "FRANCAIS", "fr-CA"),
}


@pytest.mark.parametrize(("code", "word"), [(code, word) for code, words in WRITTEN.items() for word in words])
def test_a_language_is_read_by_code_and_by_name(code: str, word: str) -> None:
    """It is kept and written as its code, and the sheets are said in it."""
    kit = kit_of({"paper.language": word})
    assert kit.paper.language == code == words_of(kit).language
    values = kit_values(kit)
    assert values["paper"] == {"size": "common", "lay": "auto", "for": "download", "language": code}
    assert read_kit(values, METRICS) == kit


@pytest.mark.parametrize("word", ["it", "italian", "", "e", "-de", "x" * 10**5, 5, None, ["de"], True])
def test_another_language_is_refused_with_the_four(word: object) -> None:
    """One sentence with all four, and with the one that was meant where that can be seen."""
    with pytest.raises(FieldErrors) as caught:
        kit_of({"paper": {"language": word}})
    (error,) = caught.value.errors
    assert error.field == "paper.language"
    assert '"en" (English), "es" (Spanish), "de" (German) or "fr" (French)' in str(error)
    assert 'language = "de"' in str(error)


def test_a_slip_is_seen_through() -> None:
    """What was probably meant is named by its code."""
    with pytest.raises(FieldErrors, match='did you mean "fr"'):
        kit_of({"paper.language": "frensh"})


def test_what_may_be_asked_for_is_there() -> None:
    """English in the program itself, each other language as a compiled catalogue."""
    found = {path.parent.parent.name for path in FOLDER.glob("*/LC_MESSAGES/layout.mo")}
    assert found | {"en"} == set(LANGUAGES) == set(BY_KEY["paper.language"].choices)
