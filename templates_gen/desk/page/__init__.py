"""The page of the desk: its templates, and the files that a browser loads with it."""
