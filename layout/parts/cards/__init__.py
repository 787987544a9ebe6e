"""Cards for the box: its label, the packing list, the legal card, and the card of help and finish."""
