"""One example of each shape, as the demo maker's service really answers; `python -m tests.api.write_examples` writes them anew."""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

BY_SCHEMA: dict[str, Any] = json.loads(resources.files("service.api").joinpath("examples.json").read_text("utf-8"))
FORM: dict[str, Any] = BY_SCHEMA["BoatForm-Input"]
