"""What is said of runs of several kits and copies."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Run(Role):
    """Making a run."""

    PARTLY = "run.partly"
    OTHER_FOLDERS = "run.other_folders"
    OF_KIT = "run.of_kit"


class RunLine(Role):
    """What a run prints."""

    PRINT = "run.line.print"
    ONCE = "run.line.once"
    TIMES = "run.line.times"
    TOGETHER = "run.line.together"
    AREA = "run.line.area"
    FOLDERS = "run.line.folders"
    BESIDE = "run.line.beside"
    OTHERS = "run.line.others"
    MAKERS = "run.line.makers"
    BUY_LIST = "run.line.buy_list"
    FILL_IN = "run.line.fill_in"
    FILL_IN_OF = "run.line.fill_in_of"
    KIT = "run.line.kit"
    BOXES = "run.line.boxes"
    TRIAL = "run.line.trial"


class RunCheck(Role):
    """What is wrong with the folder of a run."""

    RIGHT = "run.check.right"
    ROWS = "run.check.rows"
    ROWS_READ = "run.check.rows_read"
    NO_FOLDER = "run.check.no_folder"
    OTHER_MANIFEST = "run.check.other_manifest"
    NO_FILE = "run.check.no_file"
    FILE_MISSING = "run.check.file_missing"


class Overview(Role):
    """What is wrong with the overview of a run."""

    ROW = "run.overview.row"
    CELLS = "run.overview.cells"
    TABLE = "run.overview.table"


class Lessons(Role):
    """What is wrong with a class sheet."""

    TICKS = "run.lessons.ticks"
    ROW = "run.lessons.row"
