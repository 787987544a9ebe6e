"""Proofs of parts that are cut, from kit and stock alone."""
