"""The codes of printed sheets: what they say, and the modules of which they are drawn."""
