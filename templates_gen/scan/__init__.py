"""Printed sheets read back from a scan: where their targets and marks are, and how sure that is."""
