"""What lies in a box beside the printed sheets: amounts, what is bought, and what it costs. Nothing is drawn here."""
