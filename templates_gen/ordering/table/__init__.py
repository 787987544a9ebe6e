"""The table of orders as it is written: bytes to text, text to cells, cells to the plain values of a kit."""
