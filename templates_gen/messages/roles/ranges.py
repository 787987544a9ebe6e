"""What is said of ranges of kits."""
