"""The picture of how to warp the frame."""
