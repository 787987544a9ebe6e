"""The roles of all messages, a module for each area."""

from layout.messages.roles.check import Check
from layout.messages.roles.cutting import CutNeed, CutNote, CutWord
from layout.messages.roles.estimate import Add, Narrow, Pairing, Reason, Room, Stated
from layout.messages.roles.frame import Beam, EndNeed, Travel
from layout.messages.roles.gauge import Gauge
from layout.messages.roles.grid import Grid
from layout.messages.roles.help import KitHelp, StockHelp
from layout.messages.roles.job import Colour, JobSheet
from layout.messages.roles.kit import Cross, Table, WindingNeed
from layout.messages.roles.leaflet import Leaflet
from layout.messages.roles.marking import Marking
from layout.messages.roles.printed import Count, Guide, KeyMap, Sheet
from layout.messages.roles.printing import PrinterCheck, PrintMistake
from layout.messages.roles.questions import Question
from layout.messages.roles.refusals import Refusal
from layout.messages.roles.sett import Counted, NotchNote, SettNeed, SettNote, WrapWords
from layout.messages.roles.sheets import Scale, SheetName, Titles
from layout.messages.roles.start import KitNumber, Start
from layout.messages.roles.stock import Caliper, SheetNeed, StockNeed
from layout.messages.roles.templates import Template
from layout.messages.roles.values import Entry, Known, SettUnit, Unit, Value
from layout.messages.roles.warps import Spacing, WarpNeed, WarpNote
from layout.messages.roles.winding import Shed, Winding, WindStep
from layout.messages.roles.yardage import Assumed, BallsNote, Computed, YardageNeed
from layout.messages.roles.yarns import (
    Conflict,
    Counts,
    Fibre,
    MakeWord,
    Pair,
    Thickness,
    ThicknessKind,
    YarnNeed,
    YarnNumber,
    YarnReason,
    YarnSystem,
)

__all__ = [
    "Add",
    "Assumed",
    "BallsNote",
    "Beam",
    "Caliper",
    "Check",
    "Colour",
    "Computed",
    "Conflict",
    "Count",
    "Counted",
    "Counts",
    "Cross",
    "CutNeed",
    "CutNote",
    "CutWord",
    "EndNeed",
    "Entry",
    "Fibre",
    "Gauge",
    "Grid",
    "Guide",
    "JobSheet",
    "KeyMap",
    "KitHelp",
    "KitNumber",
    "Known",
    "Leaflet",
    "MakeWord",
    "Marking",
    "Narrow",
    "NotchNote",
    "Pair",
    "Pairing",
    "PrintMistake",
    "PrinterCheck",
    "Question",
    "Reason",
    "Refusal",
    "Room",
    "Scale",
    "SettNeed",
    "SettNote",
    "SettUnit",
    "Shed",
    "Sheet",
    "SheetName",
    "SheetNeed",
    "Spacing",
    "Start",
    "Stated",
    "StockHelp",
    "StockNeed",
    "Table",
    "Template",
    "Thickness",
    "ThicknessKind",
    "Titles",
    "Travel",
    "Unit",
    "Value",
    "WarpNeed",
    "WarpNote",
    "WindStep",
    "Winding",
    "WindingNeed",
    "WrapWords",
    "YardageNeed",
    "YarnNeed",
    "YarnNumber",
    "YarnReason",
    "YarnSystem",
]
