"""From a kit and its warp to what it takes: lengths and weights of its yarns, and the room that is left to weave in."""
