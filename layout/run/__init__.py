"""A run: the parts of several kits and copies placed together on sheets of paper."""
