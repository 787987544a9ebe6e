"""What the page in the browser says is loaded with it, and is otherwise in the catalogues like all."""

from __future__ import annotations

import pickle
import subprocess
import sys
from pathlib import Path

import pytest

from layout.messages.catalogue import Catalogue
from templates_gen.languages.catalogues import catalogue_of
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.late import Late
from templates_gen.messages.roles.desk_server import DeskRefusal

ROOT = Path(__file__).parents[3]


@pytest.mark.parametrize("language", ["en", "es", "de", "fr"])
def test_a_command_loads_no_words_of_the_desk(language: str) -> None:
    """Not even in another language; one that asks for them gets them."""
    code = (
        "import sys; from templates_gen.languages.catalogues import catalogue_of; "
        "from templates_gen.messages.roles.screen import Command; "
        f"words = catalogue_of({language!r}); words.say(Command.INTO, folder='x'); "
        "print([name for name in sys.modules if 'english.desk' in name])"
    )
    ended = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)
    assert ended.stdout == "[]\n"
    assert catalogue_of(language).say(DeskRefusal.KIND)


def test_all_are_in_the_mapping() -> None:
    """A reader that goes through the messages meets those too, once each, and a copy of it is like it."""
    messages = ENGLISH.messages
    assert isinstance(messages, Late)
    assert DeskRefusal.KIND not in messages.first
    assert len(dict(messages)) == len(messages) == len(set(messages)) > len(messages.first)
    assert messages[DeskRefusal.KIND] == dict(messages)[DeskRefusal.KIND]
    assert pickle.loads(pickle.dumps(messages)) == messages  # noqa: S301 (made here)
    assert messages == dict(messages)
    assert catalogue_of("de") != catalogue_of("fr")
    assert Catalogue(messages) == ENGLISH
