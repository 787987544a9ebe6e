"""The printer check: a sheet of long spans, rules, ladders and a card's outline, drawn for a paper and for no kit."""
