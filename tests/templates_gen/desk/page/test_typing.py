"""Typing on the slip: the sheet follows, units are seen, an error stands at its line and is mended by a click."""

from __future__ import annotations

from time import sleep

from desk_browser import DESKTOP, PHONE, Person
from selenium.webdriver.common.keys import Keys

WIDTH = "frame.outer_width"
REST = 1.5  # s: longer than a refusal waits while somebody types


def frame(person: Person) -> str:
    """What is said of the drawing."""
    return str(person.find("svg.frame").get_attribute("aria-label"))


def strip(person: Person) -> str:
    """The drawing of the near strip."""
    return str(person.script("return document.querySelector('#strip-box .is-near .print').innerHTML"))


def test_what_is_typed_changes_drawing_numbers_and_strip(person: Person) -> None:
    """A wider weaving: more winds, another strip, and the line is the person's own."""
    before, was = strip(person), person.text('[data-keep="sum-winds"]')
    person.type("weaving.width", "28 cm")
    person.until(lambda: strip(person) != before)
    person.until(lambda: person.text('[data-keep="sum-winds"]') != was)
    assert "35" in person.text('[data-keep="sum-winds"]')
    row = person.find('[data-key="weaving.width"]')
    person.until(lambda: "yours" in str(row.get_attribute("class")))
    assert person.complaints() == []


def test_the_sheet_follows_before_the_line_is_left(person: Person) -> None:
    """120 ms after the last key, with the cursor where it was."""
    person.type(WIDTH, "45 cm", leave=False)
    person.until(lambda: "45 cm" in frame(person))
    line = person.line(WIDTH)
    line.send_keys(Keys.HOME, Keys.ARROW_RIGHT, Keys.DELETE, "4")
    person.until(lambda: "44 cm" in frame(person))
    assert person.value(WIDTH) == "44 cm"
    assert person.script("return [document.activeElement.name, document.activeElement.selectionStart]") == [WIDTH, 2]


def test_a_plain_number_takes_the_unit_when_its_line_is_left(person: Person) -> None:
    """In the unit of the switch at that time; what was typed before stays as it is."""
    person.type(WIDTH, "42")
    assert person.value(WIDTH) == "42 cm"
    person.click('[name="unit"][value="in"]')
    assert person.value(WIDTH) == "42 cm"
    person.type("frame.outer_height", "21 1/2")
    assert person.value("frame.outer_height") == "21 1/2 in"
    person.until(lambda: "21 1/2 in" in frame(person))
    person.click('[name="unit"][value="cm"]')
    assert person.value("frame.outer_height") == "21 1/2 in"
    person.type("sett.readings[1].pairs", "13")
    assert person.value("sett.readings[1].pairs") == "13"


def test_the_other_unit_stands_under_the_touched_line(person: Person) -> None:
    """40 cm are 15.75 in (25.4 mm to the inch)."""
    person.type(WIDTH, "40.005 cm", leave=False)
    person.sees(f'[data-key="{WIDTH}"] .also', "15.75 in")


def test_an_unfinished_word_is_no_error_until_it_rests(person: Person) -> None:
    """The refusal waits while somebody types, comes when she rests, and goes the moment it reads."""
    person.type(WIDTH, "40 c", leave=False)
    sleep(0.6)
    assert person.wrong() == []
    assert person.all(".rule .wrong") == []
    person.until(lambda: person.wrong() == [WIDTH])
    person.until(lambda: len(person.all(".rule .wrong")) == 1)
    person.sees(".notes", "One line")
    assert person.line(WIDTH).get_attribute("aria-invalid") == "true"
    assert "40 cm wide" in frame(person), "the last good drawing stays"
    person.line(WIDTH).send_keys("m")
    person.until(lambda: person.wrong() == [])
    person.until(lambda: person.all(".rule .wrong") == [])
    assert person.line(WIDTH).get_attribute("aria-invalid") is None


def test_an_error_is_mended_by_a_click(person: Person) -> None:
    """On leaving the line the sentence is there with values to click; one of them, and all is well."""
    person.type(WIDTH, "40 c")
    person.until(lambda: person.wrong() == [WIDTH])
    chips = [each.text for each in person.all(f'[data-key="{WIDTH}"] .chip')]
    assert len(chips) >= 2
    assert "40 c" in person.text(f'[data-key="{WIDTH}"] .say')
    person.click(f'[data-key="{WIDTH}"] .chip')
    person.until(lambda: person.wrong() == [])
    assert person.value(WIDTH) == "40 cm"
    assert person.script("return document.activeElement.name") == WIDTH
    assert person.complaints() == []


def test_another_kind_of_ends_brings_its_own_lines(person: Person) -> None:
    """What was typed for the other kind comes back with it; the focus stays on what was chosen."""
    person.type("frame.bar_diameter", "16 mm")
    person.click('[name="frame.ends"][value="notched ends"]')
    person.until(lambda: person.all('[name="frame.notch_width"]'))
    assert person.all('[name="frame.bar_diameter"]') == []
    assert person.script("return document.activeElement.value") == "notched ends"
    person.click('[name="frame.ends"][value="round bars"]')
    person.until(lambda: person.all('[name="frame.bar_diameter"]'))
    assert person.value("frame.bar_diameter") == "16 mm"


def test_another_reading_is_one_more_row(person: Person) -> None:
    """The row opens empty, is filled, and one more can follow."""
    rows = len(person.all('[name$="].pairs"]'))
    person.click('[data-keep="add-sett.readings"] summary')
    name = f"sett.readings[{rows}].pairs"
    person.type(name, "13")
    person.type(f"sett.readings[{rows}].over", "5")
    assert person.value(f"sett.readings[{rows}].over") == "5 cm"
    person.until(lambda: len(person.all('[name$="].pairs"]')) == rows + 1)
    person.until(lambda: not person.wrong())
    assert person.value(name) == "13"


def test_a_row_stays_one_row_while_it_is_filled_in(person: Person) -> None:
    """Its help opens under it, on a phone too."""
    names = [f"sett.readings[1].{part}" for part in ("pairs", "how", "over")]
    for size in (DESKTOP, PHONE):
        person.screen(size)
        for name in names:
            person.script("arguments[0].focus()", person.line(name))
            person.until(lambda name=name: person.find(f'[data-key="{name}"] .help').is_displayed())
            middles = [each.rect["y"] + each.rect["height"] / 2 for each in map(person.line, names)]
            assert max(middles) - min(middles) < 3, (size, name)


def test_a_touched_line_lights_its_measure_and_a_measure_leads_to_its_line(person: Person) -> None:
    """A line and its measure in the drawing are one thing."""
    person.line(WIDTH).click()
    person.until(lambda: person.all(f'[data-dim="{WIDTH}"].lit-g'))
    assert "Frame" in person.text(".rule .here")
    person.click('[data-dim="frame.outer_height"] text')
    assert person.script("return document.activeElement.name") == "frame.outer_height"


def test_an_answer_that_comes_late_changes_nothing(person: Person) -> None:
    """Whatever order answers come in, the page shows the last that was typed."""
    person.script("""
        const real = window.fetch; let first = true;
        window.fetch = async (address, given) => {
          if (!first) return real(address, given);
          first = false;
          const answer = await real(address, {...given, signal: undefined});
          await new Promise(done => setTimeout(done, 900));
          return answer;
        };""")
    person.type(WIDTH, "46 cm", leave=False)
    sleep(0.3)
    person.type(WIDTH, "43 cm", leave=False)
    person.until(lambda: "43 cm" in frame(person))
    sleep(1.2)
    assert "43 cm" in frame(person)
