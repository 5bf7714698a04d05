"""How the database's tables came to be, one revision after another (alembic)."""
