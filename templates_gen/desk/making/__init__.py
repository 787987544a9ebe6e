"""Files made of what is on the desk: one kit or all, in a process of its own, with progress, a stop and a zip."""
