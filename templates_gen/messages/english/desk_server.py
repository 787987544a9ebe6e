"""English: what the desk says: the command that opens it, and what its server refuses."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_server import DeskCommand, DeskEntry, DeskNote, DeskRefusal

MESSAGES: dict[Role, str | Plural] = {
    DeskCommand.OPEN: (
        "The desk is open until you press Ctrl-C here. This address lets one browser in, once: {address}"
    ),
    DeskCommand.NETWORK: (
        "Careful: everybody on this network who knows the code can see and change what lies on this desk and write kit "
        "files into its folder, and what you type is sent unencrypted. Do this only on a network that you trust. "
        "The code to type on the other device is {code}, and the address to open there is {address}"
    ),
    DeskCommand.NO_NETWORK: (
        "--network needs this computer to be on a network; it has no address there. Without --network the desk opens "
        "on this computer alone: templates-gen desk"
    ),
    DeskCommand.CLOSED: "The desk is closed.",
    DeskCommand.PORT_IN_USE: (
        "--port needs a port that is free; {port} is in use. Leave --port out and a free one is taken: "
        "templates-gen desk"
    ),
    DeskCommand.NO_PORT: (
        "--port needs a number from 1 to 65535 that this system lets you use, such as --port 8080; {port} is none."
    ),
    DeskCommand.NO_FOLDER: '--folder needs a folder that is there, such as --folder "my kits"; {folder} is none.',
    DeskCommand.FAULT: "The desk met a fault of its own at {method} {path}. Please report the lines that follow.",
    DeskCommand.STARTERS: "Wrote {files} into {folder}. Double-click the one for your system; docs/desk.md says more.",
    DeskCommand.STARTER_THERE: (
        "--starters writes over nothing, and {file} is there. Take it away first, or name another folder: "
        "templates-gen desk --starters here"
    ),
    DeskRefusal.TITLE: "Desk",
    DeskRefusal.BACK: "Back to the desk",
    DeskRefusal.BAD: "The desk cannot read this request. Go back to the desk and try again.",
    DeskRefusal.HOST: "The desk answers under its own address alone: the one shown where it was started.",
    DeskRefusal.ORIGIN: (
        "This request did not come from the desk's own page, so nothing was done. Open the desk and try again there."
    ),
    DeskRefusal.TOKEN: "This page is from an earlier desk, so nothing was done. Load the desk again and repeat it.",
    DeskRefusal.KEY: (
        "This browser was not let in. The desk is open in the browser that it was started with; to use this one, close "
        "the desk with Ctrl-C in its window, start it again, and open the address that it shows there."
    ),
    DeskRefusal.USED: (
        "This address lets one browser in, once, and that has happened. To use this browser, close the desk with "
        "Ctrl-C in its window, start it again, and open the new address that it shows there."
    ),
    DeskRefusal.NOT_FOUND: "There is no such page on the desk.",
    DeskRefusal.METHOD: "This address of the desk cannot be asked in that way.",
    DeskRefusal.TOO_LARGE: "That is too large for the desk: {most} KB is the most that it takes at once here.",
    DeskRefusal.TOO_MANY_LINES: "That has too many lines for the desk: {most} is the most.",
    DeskRefusal.TOO_LONG: "“{line}” needs {most} letters at most; {number} came. Shorten that line.",
    DeskRefusal.KIND: "The desk takes forms from its own page alone, and this is none.",
    DeskRefusal.TOO_OFTEN: "The desk is busy with that already. Wait a moment and try again.",
    DeskRefusal.FAULT: (
        "The desk met a fault of its own; what you typed before is kept. The window that it was started in says more: "
        "please report what stands there."
    ),
    DeskRefusal.TOO_MANY_KITS: (
        "{most} kits lie on this desk, each with lines that were not kept, and there is no room for more. "
        "Keep one of them first."
    ),
    DeskRefusal.TOO_LARGE_TO_DRAW: "This is too large to draw while you type. What you typed is kept.",
    DeskRefusal.NO_SLIP: "That kit lies no longer on the desk. Open it again, or start from the example.",
    DeskRefusal.NOT_READ: "A line of the slip cannot be read, so nothing is made of it. Mend it on the desk first.",
    DeskRefusal.WRONG_CODE: "That is not the code of this desk. Type it as it stands where the desk was started.",
    DeskRefusal.TOO_MANY_CODES: "Too many wrong codes were typed. Wait a minute and try again.",
    DeskEntry.ASK: "This desk is open on another computer. Type the code that stands where it was started.",
    DeskEntry.LABEL: "Code",
    DeskEntry.ENTER: "Come in",
    DeskNote.STOCK_FILE: "A stock file: open it, and the parts of the kit that lies on the desk are cut from it.",
}
