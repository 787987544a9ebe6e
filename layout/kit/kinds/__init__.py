"""The keys of a kit that belong to each kind of frame end, one module a kind."""
