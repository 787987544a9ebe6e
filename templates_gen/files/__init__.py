"""The files of a kit: which there are, how each is made, proven, and checked again."""
