"""Roles of what is said of a range of kits."""
