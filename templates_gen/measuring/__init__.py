"""What a scan of a printed sheet says of it: which sheet it is, its scale, and how far each mark is off its place."""
