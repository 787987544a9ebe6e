"""The files of a run proven: what they hold of many kits and copies, computed again from the kits alone."""
