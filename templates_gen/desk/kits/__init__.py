"""Kit files of the desk: which lie in its folder, opening and keeping them, copies, and what differs between kits."""
