"""Marking strips: round bars and flat ends, on which every wind has its mark."""
