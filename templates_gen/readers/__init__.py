"""Bytes back to sheets. A reader imports no writer and no library that a writer uses, and refuses what none writes."""
