"""The proof of the tables of a run of orders: each cell again, in decimals, from what became of each row."""
