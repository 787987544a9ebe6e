"""The leaflet of a kit: how this very frame is warped and woven, in steps with a picture each."""
