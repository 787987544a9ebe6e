"""Roles of what the cards of a box say."""
