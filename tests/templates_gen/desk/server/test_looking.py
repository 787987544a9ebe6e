"""What is typed is answered, kept, and drawn anew; without scripts too."""

from __future__ import annotations

from pathlib import Path

import pytest
from desk_client import Visitor


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory) -> Visitor:
    """A browser at a desk."""
    return Visitor(tmp_path_factory.mktemp("desk"))


def test_a_line_becomes_yours(here: Visitor) -> None:
    """The source of a line changes when it is typed, and its number when it is read."""
    assert here.look()["lines"]["frame.outer_width"]["source"] == "example"
    said = here.look({"frame.outer_width": "42 cm"})
    assert said["ok"]
    assert said["lines"]["frame.outer_width"]["source"] == "yours"
    assert "42 cm" in said["parts"]["frame"]


def test_a_line_that_is_typed_over_by_its_like_becomes_yours(here: Visitor) -> None:
    """The same value, typed by the person, waits no more."""
    typed = here.desk.slips.all()[0].typed["frame.side_width"]
    said = here.look({"frame.side_width": typed, "yours": "frame.side_width"})
    assert said["lines"]["frame.side_width"]["source"] == "yours"


def test_what_cannot_be_read_keeps_the_last_drawing(here: Visitor) -> None:
    """The refusal stands at its line, and frame and strips are those of before."""
    before = here.look({"frame.outer_width": "43 cm"})["parts"]
    said = here.look({"frame.outer_width": "43 c"})
    assert not said["ok"]
    assert "43 c" in said["lines"]["frame.outer_width"]["say"]
    assert said["parts"]["frame"] == before["frame"]
    assert said["parts"]["strips"] == before["strips"]


def test_a_reload_keeps_what_was_typed(tmp_path: Path) -> None:
    """The page that is loaded again shows every line as it was, unfinished ones too."""
    here = Visitor(tmp_path)
    here.look({"frame.outer_width": "41.5 c", "name": "Heron <b>& co</b>"})
    page = here.get("/").text
    assert 'value="41.5 c"' in page
    assert "Heron &lt;b&gt;&amp; co&lt;/b&gt;" in page


def test_a_late_question_changes_nothing(tmp_path: Path) -> None:
    """Where a page has asked again meanwhile, the older question is neither kept nor drawn."""
    here = Visitor(tmp_path)
    slip = here.desk.slips.all()[0]
    slip.arrived("one", 7)
    assert here.look({"page": "one", "nr": "6", "name": "Older"}) == {"nr": 6, "ok": True, "late": True}
    assert slip.typed["name"] != "Older"
    here.look({"page": "one", "nr": "7", "name": "Newer"})
    assert slip.typed["name"] == "Newer"
    here.look({"page": "another", "nr": "1", "name": "Of another tab"})
    assert slip.typed["name"] == "Of another tab"


def test_a_form_without_scripts_draws_the_page_anew(tmp_path: Path) -> None:
    """It leads back to the page by GET, plain numbers have their unit, and the switch is kept."""
    here = Visitor(tmp_path)
    answer = here.post("/slip", {"frame.outer_width": "16", "unit": "in"})
    assert answer.status_code == 303
    page = here.get(answer.headers["Location"]).text
    assert 'value="16 in"' in page
    assert here.post("/slip", {"frame.outer_height": "21 1/2"}).status_code == 303
    assert 'value="21 1/2 in"' in here.get("/").text


def test_a_click_on_a_value_puts_it_into_its_line(tmp_path: Path) -> None:
    """The button sends the field and the text; the page goes on at that line."""
    here = Visitor(tmp_path)
    answer = here.post("/slip", {"frame.outer_width": "40 c", "use": "frame.outer_width=40 cm"})
    assert answer.headers["Location"].endswith("#frame-outer_width")
    assert here.desk.slips.all()[0].typed["frame.outer_width"] == "40 cm"
    assert here.post("/slip", {"use": "no.such=1"}).status_code == 400
    assert here.post("/slip", {"use": "=1"}).status_code == 400


def test_a_click_empties_all_lines_of_a_row(tmp_path: Path) -> None:
    """Of two readings that contradict each other one can be left out; without scripts too."""
    here = Visitor(tmp_path)
    page = here.get(here.post("/slip", {"sett.readings[2].pairs": "37"}).headers["Location"]).text
    use = "sett.readings[2].pairs sett.readings[2].over="
    assert f'value="{use}"' in page
    assert here.post("/slip", {"use": use}).status_code == 303
    assert not {"sett.readings[2].pairs", "sett.readings[2].over"} & set(here.desk.slips.all()[0].typed)


def test_lines_of_another_kind_come_back(tmp_path: Path) -> None:
    """What was typed for round bars is there again when they are chosen again."""
    here = Visitor(tmp_path)
    here.look({"frame.bar_diameter": "17 mm"})
    here.look({"frame.ends": "notched board"})
    here.look({"frame.ends": "round bars"})
    assert here.desk.slips.all()[0].typed["frame.bar_diameter"] == "17 mm"


def test_a_pdf_of_the_example_stops_once(tmp_path: Path) -> None:
    """The first time the page asks; then the file comes, by a name of the kit's own list."""
    here = Visitor(tmp_path)
    address = f"/pdf/strip-near.pdf?k={here.slip}"
    asked = here.get(address)
    assert (asked.status_code, asked.headers["Location"]) == (303, f"/?k={here.slip}#away")
    assert 'value="pdf:strip-near.pdf"' in here.get("/").text
    answer = here.get(address)
    assert answer.data.startswith(b"%PDF-")
    assert answer.headers["Content-Disposition"] == 'inline; filename="strip-near.pdf"'


def test_no_pdf_of_what_cannot_be_read(tmp_path: Path) -> None:
    """A file of the lines before would be somebody else's strip; and what is no PDF is not given as one."""
    here = Visitor(tmp_path)
    assert here.get(f"/pdf/strip-near.svg?k={here.slip}").status_code == 404
    here.look({"frame.outer_width": "40 c"})
    assert here.get(f"/pdf/strip-near.pdf?k={here.slip}").status_code == 400


@pytest.mark.parametrize("language", ["en", "es", "de", "fr"])
def test_the_page_speaks_the_language_of_the_browser(tmp_path: Path, language: str) -> None:
    """As the browser asks for, until another one is chosen; each desk keeps its own choice."""
    here = Visitor(tmp_path)
    assert f'<html lang="{language}">' in here.get("/none", accept_language=f"{language}-XX,{language};q=0.9").text
    chosen = here.get("/language?to=fr")
    assert chosen.status_code == 303
    assert "desk-language-8080=fr" in chosen.headers["Set-Cookie"]
    assert '<html lang="fr">' in here.get("/none", accept_language=language).text
    assert here.get("/language?to=xx").status_code == 404


def test_sheets_are_found_by_name_and_number(here: Visitor) -> None:
    """A sheet of the kit's own list, from 1; nothing else."""
    here.look({"frame.outer_width": "40 cm"})
    assert here.get(f"/sheet/strip-near.pdf/1.svg?k={here.slip}").data.startswith(b"<svg")
    for name in ("strip-near.pdf/0", "strip-near.pdf/01", "strip-near.pdf/99", "no-such.pdf/1", "..%2Fdemo.pdf/1"):
        assert here.get(f"/sheet/{name}.svg?k={here.slip}").status_code == 404
