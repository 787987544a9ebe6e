"""English: what the desk says: titles of the steps of the slip, what opens the rest, what adds a row."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_slip import DeskSlip

MESSAGES: dict[Role, str | Plural] = {
    DeskSlip.TITLE_MEASURED: "What I measured",
    DeskSlip.TITLE_FRAME: "My frame",
    DeskSlip.TITLE_WEAVING: "My weaving",
    DeskSlip.TITLE_YARNS: "My yarns",
    DeskSlip.TITLE_BOX: "The box",
    DeskSlip.INTRO_MEASURED: "Wrap warp and weft side by side round a card, touching, not squeezed. Count whole pairs.",
    DeskSlip.INTRO_FRAME: "As it stands before you; outer sizes.",
    DeskSlip.INTRO_WEAVING: "How wide and how high you want to weave.",
    DeskSlip.INTRO_YARNS: "Names are enough for strips. Labels give metres and balls.",
    DeskSlip.INTRO_BOX: "Paper, what lies in the box, what it is cut from, and how many boxes you make.",
    DeskSlip.MORE_SETT: Plural(
        "lines",
        "I know the sett already, and how it is taken: {lines} line",
        "I know the sett already, and how it is taken: {lines} lines",
    ),
    DeskSlip.MORE_FRAME: Plural("lines", "More about the frame: {lines} line", "More about the frame: {lines} lines"),
    DeskSlip.MORE_STRENGTH: Plural(
        "lines",
        "How hard the warp pulls, and what bears it: {lines} line",
        "How hard the warp pulls, and what bears it: {lines} lines",
    ),
    DeskSlip.MORE_WINDING: Plural("lines", "How I wind: {lines} line", "How I wind: {lines} lines"),
    DeskSlip.MORE_ROOM: Plural(
        "lines",
        "What draws in, hems, room for the hand: {lines} line",
        "What draws in, hems, room for the hand: {lines} lines",
    ),
    DeskSlip.MORE_WARP: Plural(
        "lines",
        "The warp's label, for metres and grams: {lines} line",
        "The warp's label, for metres and grams: {lines} lines",
    ),
    DeskSlip.MORE_STRANDS: Plural(
        "lines",
        "The weft's labels, strand by strand: {lines} line",
        "The weft's labels, strand by strand: {lines} lines",
    ),
    DeskSlip.MORE_WEFT: Plural(
        "lines",
        "How close the weft lies, and its colours: {lines} line",
        "How close the weft lies, and its colours: {lines} lines",
    ),
    DeskSlip.MORE_PAPER: Plural(
        "lines",
        "Paper, and the language of the sheets: {lines} line",
        "Paper, and the language of the sheets: {lines} lines",
    ),
    DeskSlip.MORE_BOX: Plural(
        "lines",
        "What lies in the box, and its cards: {lines} line",
        "What lies in the box, and its cards: {lines} lines",
    ),
    DeskSlip.MORE_LEGAL: Plural(
        "lines",
        "Words that the law asks for where you sell: {lines} line",
        "Words that the law asks for where you sell: {lines} lines",
    ),
    DeskSlip.MORE_ORDER: Plural(
        "lines", "An order that it is made for: {lines} line", "An order that it is made for: {lines} lines"
    ),
    DeskSlip.MORE_STOCK: Plural("lines", "What it is cut from: {lines} line", "What it is cut from: {lines} lines"),
    DeskSlip.MORE_CUTTER: Plural(
        "lines", "The cutter's settings: {lines} line", "The cutter's settings: {lines} lines"
    ),
    DeskSlip.MORE_RUN: Plural(
        "lines", "How many boxes, and a class: {lines} line", "How many boxes, and a class: {lines} lines"
    ),
    DeskSlip.MORE_BUY: Plural("lines", "What you buy and sell: {lines} line", "What you buy and sell: {lines} lines"),
    DeskSlip.ADD_READINGS: "Another reading",
    DeskSlip.ADD_THREADS: "Another thread",
    DeskSlip.ADD_STRANDS: "Another strand",
    DeskSlip.ADD_COLOURS: "Another colour",
    DeskSlip.ADD_ALSO: "Another thing",
    DeskSlip.ADD_SOLD: "Another colour or yarn",
    DeskSlip.ADD_QUANTITIES: "Another step",
    DeskSlip.ROW: "{label} {number}",
    DeskSlip.WIDTH_HERE: "Left empty: as wide as fits, {width} here.",
    DeskSlip.HEIGHT_HERE: "The frame leaves {height}.",
    DeskSlip.LEFT_OUT: "Not said",
}
