"""Free text and mail -> boat forms with evidence for every value."""
