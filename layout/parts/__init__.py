"""The parts that can be made from a plan, one small file each. Parts know nothing of paper."""
