"""The pictures of a leaflet, one for each step, each 34 mm wide and 26 mm high from (0, 0)."""
