"""Use cases, one file each: they ask the store before, call the core in order, and tell the store after."""
