"""From wrap readings to the sett that is taken."""
