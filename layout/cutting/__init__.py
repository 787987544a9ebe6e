"""What a laser cuts: the stock, the kerf, and the parts that are cut from it."""
