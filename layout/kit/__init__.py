"""Every input once, and the reading of plain values into a kit."""
