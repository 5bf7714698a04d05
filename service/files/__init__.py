"""Outside formats: read and write."""
