"""The server of the desk: who is let in, what is refused, which page answers what."""
