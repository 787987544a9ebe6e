"""Order numbers as names of folders: never outside the folder of the run, never two of them one on any system."""

from __future__ import annotations

import unicodedata
from pathlib import Path, PurePosixPath, PureWindowsPath

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.values.errors import FieldError
from templates_gen.ordering.table.order_numbers import Taken, folder_of

GOOD = ("7", "007", "A-17", "a.b", "#1001", "2024-0012", "12+1", "Färö 12", "F\u0061\u0308ro\u0308", "N_1", "1" * 40)


@pytest.mark.parametrize("number", GOOD)
def test_a_folder_is_called_as_its_order(number: str) -> None:
    """Sign by sign, zeros and capitals too, in composed form."""
    assert folder_of(number) == unicodedata.normalize("NFC", number)


# Paths, streams and variables of two systems, from memory: OWASP "Path Traversal"; Microsoft "Naming Files, Paths, and
# Namespaces"; Unicode TR 36 for look-alikes and signs that turn the line.
ATTACKS = {
    "": "1 to 40 characters",
    "1" * 41: "41",
    "x" * 300: "300",
    **dict.fromkeys(
        (
            "../1",
            "..\\1",
            "a/b",
            "/etc/passwd",
            "\\\\server\\share",
            "C:",
            "C:\\1",
            "1:stream",
            "%2e%2e%2f1",
            "~",
            "$HOME",
            "a\0b",
            "a\tb",
            "a\nb",
            "a\x1bb",
            "a\x7fb",
            "a\u202eb",
            "a\u200bb",
            "a\ufeffb",
            "\ud800",
            "a\u2215b",
            "a\uff0fb",
            "a\u2024b",
            "a*",
            "a?",
            "a|b",
            "a<b",
            'a"b',
            "a'b",
            "a`b",
            "a;b",
            "a&b",
            "PROGRA~1",
            "\u0661\u0300\u0300",
            "a\u00a0b",
        ),
        "letters, figures",
    ),
    **dict.fromkeys(
        (".", "..", "...", ".orders", ".hidden", "-rf", "--help", "+1", " 1", "_", "."), "at its beginning"
    ),
    **dict.fromkeys(("1.", "1..", "a.b.", "1 "), "at its end"),
    **dict.fromkeys(
        ("con", "CON", "nul.a", "Aux", "com1", "COM1.b", "lpt9", "com\u00b9"), "Windows keeps|letters, figures"
    ),
    **dict.fromkeys(("PRN .a", "\uff23\uff2f\uff2e"), "Windows keeps"),
    **dict.fromkeys(("report.csv", "REPORT.CSV", "totals.csv", "print-run-1.pdf", "manifest.json", "a.lock"), "ending"),
}


@pytest.mark.parametrize("number", ATTACKS, ids=ascii)
def test_no_other_number_names_a_folder(number: str) -> None:
    """One that could be a path, an option, a hidden or reserved name, or a file of ours is refused in one sentence."""
    with pytest.raises(FieldError, match=ATTACKS[number]) as error:
        folder_of(number)
    assert error.value.field == "order.number"
    assert str(error.value).isprintable()
    folder_of(error.value.example)


@given(st.text(st.one_of(st.characters(), st.sampled_from("./\\:~ -0aA"))))
def test_no_folder_lies_elsewhere(number: str) -> None:
    """Whatever is taken is one name straight in the folder, on both kinds of system."""
    try:
        folder = folder_of(number)
    except FieldError:
        return
    top = Path("orders").resolve()
    assert (top / folder).resolve().parent == top
    for kind in (PurePosixPath, PureWindowsPath):
        inside = kind("orders", folder)
        assert (inside.parent, inside.name, len(inside.parts)) == (kind("orders"), folder, 2)
    assert not PureWindowsPath(folder).is_reserved()
    assert len(folder.encode()) <= 255


ALIKE = [
    ("A7", "a7"),
    ("F\u00e4r\u00f6", "Fa\u0308ro\u0308"),
    ("Stra\u00dfe", "STRASSE"),
    ("\uff21\uff17", "A7"),
    ("7", "7"),
]


@pytest.mark.parametrize(("first", "second"), ALIKE)
def test_numbers_of_one_folder_are_refused(first: str, second: str) -> None:
    """Where some system takes two names for one, the later row is refused, with the line of the first one."""
    taken = Taken()
    taken.take(first, folder_of(first), 2)
    with pytest.raises(FieldError, match="line 2 has it") as error:
        taken.take(second, folder_of(second), 9)
    taken.take(error.value.example, folder_of(error.value.example), 9)


def test_zeros_tell_orders_apart() -> None:
    """007, 07 and 7 are three orders."""
    taken = Taken()
    for line, number in enumerate(("007", "07", "7"), 2):
        taken.take(number, folder_of(number), line)
