"""The routes of the house's part of the desk, for the walk through all of them."""

from __future__ import annotations

from tests.web.walk_shape import ADMIN, DESK, Walk

H = "{hull_id:path}"
HULL = "/desk/hulls/{hull}"
HOUSE: dict[tuple[str, str], Walk] = {
    ("GET", "/hulls"): Walk(DESK, "/desk/hulls?q=selmarrow"),
    ("GET", "/hulls/changes"): Walk(DESK, "/desk/hulls/changes"),
    ("POST", "/hulls/changes/{number}/undo"): Walk(DESK, "/desk/hulls/changes/1/undo"),
    ("GET", "/hulls/duplicates"): Walk(DESK, "/desk/hulls/duplicates?made=1"),
    ("POST", "/hulls/distinct"): Walk(DESK, "/desk/hulls/distinct"),
    ("GET", "/hulls/merge"): Walk(DESK, "/desk/hulls/merge?into=selmarrow-31&other=selmarrow-34"),
    ("POST", "/hulls/merge"): Walk(DESK, "/desk/hulls/merge"),
    ("GET", f"/hulls/{H}"): Walk(DESK, HULL),
    ("POST", f"/hulls/{H}/aliases"): Walk(DESK, HULL + "/aliases"),
    ("POST", f"/hulls/{H}/aliases/remove"): Walk(DESK, HULL + "/aliases/remove"),
    ("GET", f"/hulls/{H}/split"): Walk(DESK, HULL + "/split"),
    ("POST", f"/hulls/{H}/split"): Walk(DESK, HULL + "/split"),
    ("GET", "/house"): Walk(ADMIN, "/desk/house"),
    ("GET", "/house/audit"): Walk(ADMIN, "/desk/house/audit"),
    ("GET", "/house/jobs"): Walk(ADMIN, "/desk/house/jobs"),
    ("POST", "/house/jobs/{job_id}/cancel"): Walk(ADMIN, "/desk/house/jobs/job-1/cancel"),
    ("POST", "/house/jobs/{job_id}/resume"): Walk(ADMIN, "/desk/house/jobs/job-1/resume"),
    ("GET", "/house/users"): Walk(ADMIN, "/desk/house/users"),
    ("POST", "/house/users"): Walk(ADMIN, "/desk/house/users"),
    ("GET", "/house/users/{login:path}"): Walk(ADMIN, "/desk/house/users/{login}"),
    ("POST", "/house/users/{login:path}"): Walk(ADMIN, "/desk/house/users/{login}"),
    ("POST", "/house/users/{login:path}/reset"): Walk(ADMIN, "/desk/house/users/{login}/reset"),
    ("POST", "/house/users/{login:path}/close"): Walk(ADMIN, "/desk/house/users/{login}/close"),
    ("POST", "/house/users/{login:path}/open"): Walk(ADMIN, "/desk/house/users/{login}/open"),
    ("GET", "/house/keys"): Walk(ADMIN, "/desk/house/keys"),
    ("POST", "/house/keys"): Walk(ADMIN, "/desk/house/keys"),
    ("POST", "/house/keys/{key_id}/revoke"): Walk(ADMIN, "/desk/house/keys/{key}/revoke"),
    ("POST", "/house/keys/{key_id}/restore"): Walk(ADMIN, "/desk/house/keys/{key}/restore"),
}
