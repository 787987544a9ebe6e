"""The desk: a page in the browser for people who do not type commands."""
