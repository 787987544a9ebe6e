"""What must be true on each kind of frame end, from the kit's numbers alone: one module a kind or way of warping."""
