"""Everything that is said, by its role: what a sentence is for, apart from the language that it is said in."""
