"""What each sentence is for, apart from the language that it is said in; one module for each area."""
