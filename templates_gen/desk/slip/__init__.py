"""The slip as data: its lines, what is typed in them, what that reads as and what could be typed instead."""
