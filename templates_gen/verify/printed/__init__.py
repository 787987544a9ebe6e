"""Proofs of printed parts, from the kit alone."""
