"""The roles of files that cannot be read back."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Read(Role):
    """PDF files."""

    TOO_LARGE = "reading.read.too_large"
    LACKS = "reading.read.lacks"
    SCALING = "reading.read.scaling"
    VIEW = "reading.read.view"
    LANGUAGE = "reading.read.language"
    OTHER_LANGUAGE = "reading.read.other_language"
    OPERATIONS = "reading.read.operations"
    INFORMATION = "reading.read.information"
    NO_PAGES = "reading.read.no_pages"
    PAGES = "reading.read.pages"
    SAME_PAGE = "reading.read.same_page"
    NOT_PAGES = "reading.read.not_pages"
    OWN_FONT = "reading.read.own_font"
    FONTS = "reading.read.fonts"
    BOX = "reading.read.box"
    BEGINNING = "reading.read.beginning"
    HOLDS = "reading.read.holds"
    CHANGED_TABLE = "reading.read.changed_table"
    CHANGED = "reading.read.changed"
    TWICE = "reading.read.twice"
    TOO_MUCH = "reading.read.too_much"
    OBJECT_END = "reading.read.object_end"
    NO_OBJECT = "reading.read.no_object"
    NO_DICTIONARY = "reading.read.no_dictionary"
    KEYS = "reading.read.keys"
    NO_STREAM = "reading.read.no_stream"
    PACKED = "reading.read.packed"
    NOT_UNPACKED = "reading.read.not_unpacked"
    UNPACKED_PART = "reading.read.unpacked_part"
    TOO_LONG = "reading.read.too_long"
    NO_LENGTH = "reading.read.no_length"
    OTHER_LENGTH = "reading.read.other_length"
    FONT_KIND = "reading.read.font_kind"
    NOT_EMBEDDED = "reading.read.not_embedded"
    PROGRAM_LENGTH = "reading.read.program_length"
    MAP = "reading.read.map"
    MAP_CODES = "reading.read.map_codes"
    PROGRAM = "reading.read.program"
    DESCRIPTOR = "reading.read.descriptor"
    NO_WIDTHS = "reading.read.no_widths"
    WIDTHS_FEW = "reading.read.widths_few"
    DESCRIBED = "reading.read.described"
    WIDTHS = "reading.read.widths"
    UNBEGUN = "reading.read.unbegun"
    NESTED = "reading.read.nested"
    OTHER_END = "reading.read.other_end"
    UNNAMED = "reading.read.unnamed"
    NAMED_TWICE = "reading.read.named_twice"
    DRAWS = "reading.read.draws"
    OUTLINE = "reading.read.outline"
    OUTLINE_BROKEN = "reading.read.outline_broken"
    OUTLINE_PLACE = "reading.read.outline_place"
    VIEWER = "reading.read.viewer"
    TREE = "reading.read.tree"
    PAGE_CONTENT = "reading.read.page_content"
    FONT_DESCRIPTOR = "reading.read.font_descriptor"
    FONT_MAP = "reading.read.font_map"
    FONT_PROGRAM = "reading.read.font_program"
    TRAILER = "reading.read.trailer"
    CATALOGUE = "reading.read.catalogue"
    INFO = "reading.read.info"
    PAGE = "reading.read.page"
    RESOURCES = "reading.read.resources"
    FONTS_OF = "reading.read.fonts_of"
    FONT = "reading.read.font"


class Page(Role):
    """Pages of a PDF file."""

    BETWEEN = "reading.page.between"
    MOVED = "reading.page.moved"
    IN_PATH = "reading.page.in_path"
    CLOSED = "reading.page.closed"
    IN_WORDS = "reading.page.in_words"
    USES = "reading.page.uses"
    ENDS = "reading.page.ends"
    DASH = "reading.page.dash"
    NO_PEN = "reading.page.no_pen"
    NO_DASHED_PEN = "reading.page.no_dashed_pen"
    NO_COLOUR = "reading.page.no_colour"
    NO_FILL = "reading.page.no_fill"
    OPEN = "reading.page.open"
    GREY_WORDS = "reading.page.grey_words"
    SLANTED = "reading.page.slanted"
    NO_FONT = "reading.page.no_font"
    NO_PLACE = "reading.page.no_place"
    HANGING = "reading.page.hanging"
    HOLDS = "reading.page.holds"
    DASHES = "reading.page.dashes"
    NO_CODE = "reading.page.no_code"


class Svg(Role):
    """SVG files."""

    TOO_LARGE = "reading.svg.too_large"
    BEGINNING = "reading.svg.beginning"
    DRAWS = "reading.svg.draws"
    DAMAGED = "reading.svg.damaged"
    INPUTS = "reading.svg.inputs"
    SHEETS = "reading.svg.sheets"
    ROOT = "reading.svg.root"
    LANGUAGE = "reading.svg.language"
    PROFILE = "reading.svg.profile"
    SCALE = "reading.svg.scale"
    TEXT = "reading.svg.text"
    TEXT_AFTER = "reading.svg.text_after"
    RUN = "reading.svg.run"
    AMONG = "reading.svg.among"
    OPEN = "reading.svg.open"
    LINES = "reading.svg.lines"
    PATH = "reading.svg.path"
    ARC = "reading.svg.arc"


class Arc(Role):
    """Arcs and curves."""

    NO_ARC = "reading.arc.no_arc"
    NOWHERE = "reading.arc.nowhere"
    STEEP = "reading.arc.steep"
    SHORT = "reading.arc.short"


class Dxf(Role):
    """DXF files."""

    TOO_LARGE = "reading.dxf.too_large"
    NO_TEXT = "reading.dxf.no_text"
    BEGINNING = "reading.dxf.beginning"
    SHEET = "reading.dxf.sheet"
    SIZE = "reading.dxf.size"
    AREAS = "reading.dxf.areas"
    MORE_AREAS = "reading.dxf.more_areas"
    HANDLE = "reading.dxf.handle"
    LAYER = "reading.dxf.layer"
    VERTICES = "reading.dxf.vertices"
    FAR = "reading.dxf.far"
    NUMBER = "reading.dxf.number"
    BENDS = "reading.dxf.bends"
    FRAME = "reading.dxf.frame"


class Code(Role):
    """The code of a sheet."""

    SIZE = "reading.code.size"
    FINDER = "reading.code.finder"
    DAMAGED = "reading.code.damaged"
    TEXT = "reading.code.text"


class Other(Role):
    """Pages as pypdf reads them."""

    SHOWS_NOTHING = "reading.other.shows_nothing"
    SHOWS_ELSE = "reading.other.shows_else"
    SIZE = "reading.other.size"
    UNREADABLE = "reading.other.unreadable"
    PAGES = "reading.other.pages"


class Table(Role):
    """CSV files."""

    LARGE = "reading.table.large"
    UTF8 = "reading.table.utf8"
    EMPTY = "reading.table.empty"
    LENGTH = "reading.table.length"
    SIGN = "reading.table.sign"
    END = "reading.table.end"
    QUOTE = "reading.table.quote"
    FORMULA = "reading.table.formula"
