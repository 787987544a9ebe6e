"""Templates by which frame ends are notched, drilled or nailed, and strips that find the notches of a bar."""
