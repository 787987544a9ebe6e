"""One file of a kit in memory: drawn alone, written, read back and proven, as one in a folder is."""

from __future__ import annotations

from collections.abc import Callable

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.kit.box import CUT
from layout.messages.catalogue import Message
from layout.plan import Plan
from layout.products import PRODUCTS
from layout.values.errors import shown
from templates_gen.files.kept import with_stock
from templates_gen.files.outputs import kept_outputs
from templates_gen.files.proof import write
from templates_gen.files.proven import proven
from templates_gen.inputs.families import KIT, products_of
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.files import Left


def proven_bytes(plan: Plan, file: str, stock: Callable[[], Stock], metrics: FontMetrics) -> bytes:
    """The bytes of one file, named by product and form; OptionError where no name or more than one file fits.

    `stock` is asked for what is cut alone, and for a kit whose box holds such things.
    """
    names = products_of(plan, (file,)) if file.strip() else None
    uncut = names is None or names[0].partition(".")[0] in (*PRODUCTS, KIT)
    if any(plan.kit.box.has(name) for name in CUT):
        plan = with_stock(plan, stock(), metrics)
    wanted = kept_outputs(plan, metrics, names, None if uncut else stock())
    records = wanted.records
    if file in records:  # the file of both strips has the name by which all files of strips are asked for
        records = {file: records[file]}
    if names is None or len(records) != 1:
        several = Message(Left.SEVERAL, {"name": shown(file), "count": len(records)})
        raise OptionError("file", Left.ONE_FILE, several if names else shown(None), "strip-near.svg")
    (record,) = records.values()
    output = record.draw()
    data = write(output)
    proven(plan, output, data)
    return data
