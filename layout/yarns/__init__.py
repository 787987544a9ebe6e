"""Yarns in every system of counts, how thick they are, and what suits what."""
