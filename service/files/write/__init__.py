"""Values -> bytes for people and other programs."""
