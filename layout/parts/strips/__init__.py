"""How a marking strip lies on each kind of frame end: its bands, what is sawn or drilled by it, and its own words."""
