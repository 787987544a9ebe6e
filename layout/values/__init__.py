"""Numbers as people write them, their units and limits, and how well they are known."""
