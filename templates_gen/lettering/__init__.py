"""The print font: its measures, and words as outlines."""
