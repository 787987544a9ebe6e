"""Orders: rows of a table, each a personal kit, made and proven in a folder of its own."""
