"""Sheets to bytes. A writer knows the sheets it is given and one file format, nothing else."""
