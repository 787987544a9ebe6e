"""What parts are cut from: the stock's values, colours, kerf, and how much a tooth of it holds."""
