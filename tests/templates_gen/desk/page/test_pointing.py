"""Pointing at an end of the warp: by mouse and by keys, on frame and strips, said in a sentence."""

from __future__ import annotations

from time import sleep

from desk_browser import Person
from selenium.webdriver import ActionChains
from selenium.webdriver.common.keys import Keys

ENDS = 60


def lit(person: Person) -> list[str]:
    """The ends that are lit in the drawing."""
    return list(person.script("return [...document.querySelectorAll('.frame .lit')].map(e => e.dataset.end)"))


def test_keys_step_from_end_to_end(person: Person) -> None:
    """Arrows by one, Page keys by ten, Home and End; frame, strip and sentence go together."""
    person.script("document.querySelector('svg.frame').focus()")
    drawing = person.find("svg.frame")
    drawing.send_keys(Keys.HOME)
    assert lit(person) == ["1"]
    drawing.send_keys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT)
    assert lit(person) == ["3"]
    drawing.send_keys(Keys.PAGE_DOWN)
    assert lit(person) == ["13"]
    assert person.text("#said").startswith("End 13 of 60")
    assert len(person.all("#strip-box .is-near .hot")) == 1
    drawing.send_keys(Keys.END)
    assert lit(person) == [str(ENDS)]
    drawing.send_keys(Keys.ARROW_RIGHT)
    assert lit(person) == [str(ENDS)]
    person.sees("#status", "End 60 of 60")


def test_the_lit_mark_is_the_one_that_the_sentence_names(person: Person) -> None:
    """End 23: wind 12, near label 11, far label 12; marks lie 8 mm apart, the near one of label 11 at 2 + 11 x 8 mm."""
    person.script("document.querySelector('svg.frame').focus()")
    person.find("svg.frame").send_keys(Keys.HOME, Keys.PAGE_DOWN, Keys.PAGE_DOWN, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT)
    said = person.text("#said")
    assert said.startswith("End 23 of 60")
    assert "11" in said
    assert "12" in said
    near = str(person.find("#strip-box .is-near .hot").get_attribute("d"))
    assert float(near[1:].split()[0]) == 2 + 11 * 8


def test_a_pointer_lights_the_nearest_end_without_a_word_aloud(person: Person) -> None:
    """Anywhere on the warp, and on the strip; nothing is read out."""
    before = person.text("#status")
    drawing = person.find("svg.frame")
    person.script("arguments[0].scrollIntoView({block: 'center'})", drawing)
    ActionChains(person.driver).move_to_element(drawing).perform()
    person.until(lambda: len(lit(person)) == 1)
    middle = int(lit(person)[0])
    ActionChains(person.driver).move_to_element_with_offset(drawing, 40, 0).perform()
    person.until(lambda: int(lit(person)[0]) > middle)
    strip = person.find("#strip-box .is-near .print svg")
    person.script("arguments[0].scrollIntoView({block: 'center', inline: 'center'})", strip)
    ActionChains(person.driver).move_to_element(strip).perform()
    person.sees("#said", "End 3")
    sleep(1.1)
    assert person.text("#status") == before


def test_what_is_lit_stays_lit_when_the_drawing_changes(person: Person) -> None:
    """A new drawing has the same end lit."""
    person.script("document.querySelector('svg.frame').focus()")
    person.find("svg.frame").send_keys(Keys.HOME, Keys.PAGE_DOWN)
    person.type("frame.outer_width", "44 cm")
    person.until(lambda: "44 cm" in str(person.find("svg.frame").get_attribute("aria-label")))
    assert lit(person) == ["11"]
