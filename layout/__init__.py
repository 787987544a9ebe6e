"""What is drawn: a kit's numbers turned into plans, parts and sheets.

Pure: no files, no clock, no randomness, nothing printed to the screen. Every number is a millimetre unless its
name says otherwise; setts and counts stay exact fractions until a drawing needs a float.
"""
