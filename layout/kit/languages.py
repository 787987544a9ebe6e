"""The languages that sheets come in, by their code (ISO 639-1), and by which names a kit file may call them."""

from __future__ import annotations

from collections.abc import Mapping
from unicodedata import normalize

LANGUAGES: Mapping[str, tuple[str, ...]] = {
    "en": ("english",),
    "es": ("spanish", "español", "espanol", "castellano"),
    "de": ("german", "deutsch"),
    "fr": ("french", "français", "francais"),
}
"""English names, and the language's own, with its accents and without."""

NAMES = {name: code for code, names in LANGUAGES.items() for name in names}


def code_of(word: str) -> str:
    """The code of a language by its code, its name or a tag such as "de-AT"; empty where it is none of ours."""
    word = normalize("NFC", word).strip().lower()
    code = word.replace("_", "-").partition("-")[0]
    return code if code in LANGUAGES else NAMES.get(word, "")
