"""Values of a PDF file as ISO 32000-1, 7.3 writes them: a list of numbers is read in one go, and means the same."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from templates_gen.document import ReadError
from templates_gen.readers.pdf_values import value_at

NUMBERS = st.from_regex(r"[+-]?[0-9]{1,6}(\.[0-9]{1,5})?", fullmatch=True)
SPACES = st.sampled_from([" ", "\n", " \r\n ", "\t", "\f"])


@given(st.lists(st.tuples(NUMBERS, SPACES)), st.sampled_from(["", " ", "\n"]))
def test_a_list_of_numbers_is_read_as_its_numbers_one_by_one(written: list[tuple[str, str]], after: str) -> None:
    """Whole ones stay whole; a list that stands in another, or holds a comment, is no other list."""
    text = ("[ " + "".join(number + space for number, space in written) + "]" + after).encode()
    alone = [value_at(number.encode(), 0)[0] for number, _ in written]
    found, end = value_at(text, 0)
    assert found == alone
    assert list(map(type, found)) == list(map(type, alone))
    assert end == len(text) - len(after)
    assert value_at(b"[" + text + b"]", 0)[0] == [alone]
    assert value_at(text.replace(b"[", b"[% said\n", 1), 0)[0] == alone


@pytest.mark.parametrize(
    "text", [b"[ 1 2", b"[ 1 2)", b"[ 1 2 .5]", b"[ 1 +]", b"[ 1 1234567890123]", b"[ 1 2]x", b"[ 1\0 2]"]
)
def test_what_is_no_list_of_numbers_is_refused(text: bytes) -> None:
    """Not ended, ended otherwise, no number, too long a one, no end, a NUL."""
    with pytest.raises(ReadError):
        value_at(text, 0)


def test_references_are_no_numbers() -> None:
    """Two numbers and an R mean an object."""
    found, _ = value_at(b"[ 12 0 R 3]", 0)
    assert [type(each).__name__ for each in found] == ["Reference", "int"]
