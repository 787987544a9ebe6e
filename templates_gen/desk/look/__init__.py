"""What the desk answers to a slip: numbers with their reasons, the frame, both strips, and every sheet."""
