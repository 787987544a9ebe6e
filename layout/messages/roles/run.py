"""Roles of what sheets of a print run say."""
