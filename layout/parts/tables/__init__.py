"""Ruled tables and lists, as sheets for the box and for the maker are put together from them."""
