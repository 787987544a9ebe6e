"""What is drawn in the winding picture for one kind of frame end alone."""
