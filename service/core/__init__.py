"""Pure values and functions: no SQL, HTTP, files, clock, random state or logging."""
