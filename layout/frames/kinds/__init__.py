"""The kinds of frame ends: what each is and measures, and the tables that hold a piece for each of them."""
