"""Database migrations, run by `transom db upgrade`."""
