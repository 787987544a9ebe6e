"""Lengths and weights of warp and weft, and the height that can be woven."""
