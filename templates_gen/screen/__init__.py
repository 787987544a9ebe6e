"""The command line and what it prints."""
