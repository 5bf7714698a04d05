"""Fleet record database and configuration lookup for transom-hung wind-vane self-steering gear."""

__version__ = "0.1.0"
