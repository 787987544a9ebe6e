"""How sheets leave the house: written to files, read back, and kept only if they agree."""
