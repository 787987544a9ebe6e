"""All parts on boards, and the sheet that goes with them to the cutter."""
