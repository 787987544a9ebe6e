"""The few things a drawing is made of: pens, shapes, words, parts and sheets."""
