"""The warp on the frame: its ends, and where they cross both frame ends."""
