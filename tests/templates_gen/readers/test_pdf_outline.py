"""The outline of kit.pdf: pypdf finds what we read, and any other list is refused in one sentence."""

from __future__ import annotations

import re
from functools import cache
from io import BytesIO

import pytest
from kits import font_metrics, kit_of
from pdf_bytes import put_right, unpacked
from pypdf import PdfReader

from layout.plan import plan
from templates_gen.document import ReadError
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, write
from templates_gen.readers.pdf import read

SMALL: dict[str, object] = {"weaving.width": "8 cm", "frame.outer_width": "20 cm", "name": "Ёлка"}
PLANNED = plan(kit_of(SMALL))
OUTPUT = Outputs(PLANNED, font_metrics()).output("kit.pdf")


@cache
def text() -> str:
    """The file, its streams unpacked, one character a byte."""
    return unpacked(write(OUTPUT)).decode("latin-1")


def entries() -> list[str]:
    """The objects of the outline's entries, in order."""
    return re.findall(r"<<\n/Dest \[.*?>>\nendobj", text(), re.DOTALL)


def test_another_library_finds_the_same() -> None:
    """Titles and pages as pypdf has them are those that we read, and every page is reached or follows one that is."""
    data = write(OUTPUT)
    reader = PdfReader(BytesIO(data))
    found = [(str(item.title), (reader.get_destination_page_number(item) or 0) + 1) for item in reader.outline]
    assert found == [(entry.title, entry.number) for entry in read(data).about.outline]
    assert found[0][1] == 1
    assert reader.page_mode == "/UseOutlines"


def spoilt(*changes: tuple[str, str]) -> str:
    """The file with other words in its outline."""
    changed = text()
    for old, new in changes:
        assert old in changed, old
        changed = changed.replace(old, new, 1)
    return changed


def reference(key: str, entry: int) -> str:
    """What an entry says of its neighbour."""
    found = re.search(rf"/{key} \d+ 0 R", entries()[entry])
    assert found
    return found[0]


def changed_entry(entry: int, old: str, new: str) -> tuple[str, str]:
    """One entry, changed."""
    whole = entries()[entry]
    assert old in whole
    return whole, whole.replace(old, new, 1)


def test_a_circle_is_refused() -> None:
    """An entry that leads back to an earlier one."""
    first = reference("Prev", 1).removeprefix("/Prev")
    with pytest.raises(ReadError, match="outline"):
        read(put_right(spoilt(changed_entry(2, reference("Next", 2), "/Next" + first))))


def test_an_entry_that_follows_itself_is_refused() -> None:
    """The shortest circle."""
    own = reference("Next", 0).removeprefix("/Next")
    with pytest.raises(ReadError, match="outline"):
        read(put_right(spoilt(changed_entry(1, reference("Next", 1), "/Next" + own))))


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("/Fit ]", "/FitB ]"),
        ("/Fit ]", "/XYZ 0 0 0 ]"),
        ("/Title", "/A << /S /URI >> /Title"),
        ("/Title", "/F 3 /Title"),
        ("/Title", "/First 1 0 R /Title"),
        ("/Title", "/Count 1 /Title"),
    ],
)
def test_another_kind_of_entry_is_refused(old: str, new: str) -> None:
    """Other ways to show a page, actions, looks, and entries in entries."""
    with pytest.raises(ReadError) as caught:
        read(put_right(spoilt(changed_entry(1, old, new))))
    assert "\n" not in str(caught.value)


def test_an_entry_to_no_page_is_refused() -> None:
    """A destination that is the page tree, or an object that is not there."""
    page = re.search(r"\[ (\d+ 0 R)", entries()[0])
    tree = re.search(r"/Pages (\d+ 0 R)", text())
    assert page
    assert tree
    for other in (tree[1], "9999 0 R"):
        with pytest.raises(ReadError, match="outline"):
            read(put_right(spoilt(changed_entry(0, page[1], other))))


@pytest.mark.parametrize(
    ("old", "new"),
    [
        (r"/PageMode /UseOutlines", ""),
        (r"/PageMode /UseOutlines", "/PageMode /FullScreen"),
        (r"/Type /Outlines", "/Type /Outline"),
        (r"/Outlines (\d+) 0 R", ""),
        (r"(?<=/Count )\d+(?= /First)", "99"),
        (r"(?<=/Last )\d+", "1"),
    ],
)
def test_another_head_is_refused(old: str, new: str) -> None:
    """Of the catalogue and of the outline's own first dictionary."""
    changed, count = re.subn(old, new, text(), count=1)
    assert count == 1
    with pytest.raises(ReadError) as caught:
        read(put_right(changed))
    assert "\n" not in str(caught.value)


def test_the_proof_compares_titles_and_pages() -> None:
    """An entry of another title, or one that leads to another page, is an alarm; the right file is none."""
    right = put_right(text())
    assert findings(PLANNED, OUTPUT, read(right)).sound
    one, other = (re.search(r"/Dest \[ (\d+ 0 R)", entry) for entry in entries()[:2])
    titles = [re.search(r"/Title (\(.*?(?<!\\)\)|<.*?>)(?= *\n? *>>)", entry, re.DOTALL) for entry in entries()[:2]]
    assert one
    assert other
    assert all(titles)
    first, second = (found[1] for found in titles if found)
    for change in (changed_entry(0, one[1], other[1]), changed_entry(0, first, second)):
        spoiled = findings(PLANNED, OUTPUT, read(put_right(spoilt(change))))
        assert any("outline" in sentence for sentence in spoiled.sentences)


def test_only_the_kits_file_has_an_outline() -> None:
    """A file of one product needs none."""
    single = Outputs(PLANNED, font_metrics()).output("wrap-gauge.pdf")
    assert read(write(single)).about.outline == ()
