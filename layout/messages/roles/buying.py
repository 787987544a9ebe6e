"""Roles of what is said of what is bought, and what it costs."""
