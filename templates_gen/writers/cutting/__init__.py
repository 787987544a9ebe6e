"""What must be true of a drawing before a cutter's file is written from it."""
