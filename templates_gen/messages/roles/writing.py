"""The roles of what a file may hold."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Carry(Role):
    """What a file carries beside its sheets."""

    TOO_LONG = "writing.carry.too_long"
    NO_INPUTS = "writing.carry.no_inputs"
    NO_TEXT = "writing.carry.no_text"
    NO_OPERATIONS = "writing.carry.no_operations"
    OPERATIONS = "writing.carry.operations"
    ORDER = "writing.carry.order"
    COLOUR = "writing.carry.colour"
    COLOURS = "writing.carry.colours"
    WIDTHS = "writing.carry.widths"


class Draw(Role):
    """What no writer draws."""

    NO_SHEET = "writing.draw.no_sheet"
    SIZE = "writing.draw.size"
    LETTERS = "writing.draw.letters"
    TITLE = "writing.draw.title"
    SURROGATE = "writing.draw.surrogate"
    LINE_PEN = "writing.draw.line_pen"
    SHAPE = "writing.draw.shape"
    REGION = "writing.draw.region"
    CONTOURS = "writing.draw.contours"
    WORDS_PEN = "writing.draw.words_pen"
    TEXT_PLACE = "writing.draw.text_place"
    TEXT_SIZE = "writing.draw.text_size"
    STEPS = "writing.draw.steps"
    POINTS = "writing.draw.points"
    STEP = "writing.draw.step"
    ARC = "writing.draw.arc"


class CutFile(Role):
    """What no file for a cutter holds."""

    OPERATIONS = "writing.cut_file.operations"
    SHEETS = "writing.cut_file.sheets"
    SHEET = "writing.cut_file.sheet"
    WORDS = "writing.cut_file.words"
    PEN = "writing.cut_file.pen"
    ORDER = "writing.cut_file.order"
    NO_CUT = "writing.cut_file.no_cut"
    OPEN = "writing.cut_file.open"
    CLOSING = "writing.cut_file.closing"
    INSIDE = "writing.cut_file.inside"
    OVERLAP = "writing.cut_file.overlap"
    TWICE = "writing.cut_file.twice"
    SQUARE = "writing.cut_file.square"


class Form(Role):
    """What one format cannot hold, and the font."""

    DXF_OPERATIONS = "writing.form.dxf_operations"
    PDF_OPERATIONS = "writing.form.pdf_operations"
    PDF_COLOURS = "writing.form.pdf_colours"
    PDF_OUTLINES = "writing.form.pdf_outlines"
    SVG_SHEETS = "writing.form.svg_sheets"
    SVG_WORDS = "writing.form.svg_words"
    NO_FONT = "writing.form.no_font"
    GLYPH = "writing.form.glyph"
