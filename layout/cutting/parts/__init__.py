"""Parts that are cut, one small file each, and the lines and teeth they share."""
