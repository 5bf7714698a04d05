"""Bytes from outside -> letters, forms and tables; nothing here trusts what it reads."""
