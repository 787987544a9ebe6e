"""What is drawn: a kit's numbers turned into plans, parts and sheets. The pure core of templates-gen.

Pure: no files, no clock, no randomness, nothing printed to the screen. Every number is a millimetre unless its
name says otherwise; setts and counts stay exact fractions until a drawing needs a float. A kit comes in as plain values
(`layout.kit.kit.read_kit`), the print font as its measures (`layout.drawing.metrics`); what comes out is a `Plan`
(`layout.plan.plan`) and sheets of shapes (`layout.paper.sheets.printed`). What writes, reads back and proves files is
`templates_gen`, which is also the door for whoever only wants files.

Installing templates-gen installs two top-level packages: `templates_gen` and this one, `layout`. An environment can
hold only one package of a name: another distribution with a top-level `layout` would overwrite this one or be
overwritten, and a module `layout.py` beside your script would be imported instead of it. Use an environment of its own
(venv) where you have such a name.
"""
