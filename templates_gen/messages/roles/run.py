"""What is said of runs of several kits and copies."""
