"""From parts to sheets: where a part lies on paper, and what every sheet says around it."""
