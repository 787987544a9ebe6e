"""The languages of the sheets: one catalogue each."""
