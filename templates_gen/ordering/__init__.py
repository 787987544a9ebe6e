"""Orders: a table of rows, each a kit made to measure, made and proven in a folder of its own.

What its modules do, in the order of the work:

- `table/` and `order_table` read the file; each row becomes an `order.Order`, or an `Unreadable` that says why not.
- `order_run` is the way in: from a range and options to a `job.Job`, then results as they come, then the tables.
- `running` makes one run of it. `fingerprint` says whether an order is what was made; `keeping` asks the `journal`.
- `engine` gives out a few orders at a time to the `workers`, which are processes here or somebody's executor.
- `work` is what a worker does with them: `plans` an order, draws and proves it, in a folder of its own (`stage`).
- `keeping` takes what came back, has `placing` move it into its place, and writes an `entry` into the `journal`, in
  the folder that `hidden` locks. `outcomes` and `problems` make a `result.Result` of it; `result_lines` keeps results.
- `report`, `totals`, `sums`, `costs` and `amounts` make rows of the results; `reports` writes and proves the tables.
- `print_runs` lays the parts of many orders on sheets together.
"""
