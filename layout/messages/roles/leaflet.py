"""Roles of what the leaflet says."""
