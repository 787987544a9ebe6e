"""The proof: a file's sheets against the plan's, shape for shape, and its marks against the kit's numbers alone."""

LIMIT = 0.001
"""A file is right when nothing in it lies further off than this, in mm: one micrometre."""
