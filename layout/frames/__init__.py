"""The frame: its ends, its size, and how its bars bend."""
