"""The command line: reads what it is given, calls one use case, prints what came back."""
