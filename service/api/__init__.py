"""The service over HTTP: thin edges over the use cases. Its map is in `app`."""
