"""Bytes back to sheets. A reader imports no writer and no library of a writer, and refuses whatever no writer makes."""
