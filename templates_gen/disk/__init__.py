"""Files and folders: reading them without surprises, and changing them as a whole or not at all."""
