"""Placing parts and copies of them on a sheet of board or paper."""
