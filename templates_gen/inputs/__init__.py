"""What people write: kit files, stock files and the options of commands."""
