"""Where one goes on from an answer, for programs that find their way by the OpenAPI document."""

from __future__ import annotations

from typing import Any

ANSWER, ENQUIRY, ID = "$response.body#/answers/0/id", "$response.body#/answers/0/enquiry", "$response.body#/id"
REFERENCE = "$response.body#/reference"
LINKS: dict[tuple[str, str, str], dict[str, tuple[str, str, str]]] = {
    ("/v1/enquiries", "post", "201"): {
        "answer": ("get_answer", "answer_id", ANSWER),
        "enquiry": ("get_enquiry", "enquiry_id", ENQUIRY),
        "reply": ("get_reply", "enquiry_id", ENQUIRY),
        "drawing": ("get_drawing", "enquiry_id", ENQUIRY),
    },
    ("/v1/enquiries", "get", "200"): {"first": ("get_enquiry", "enquiry_id", "$response.body#/enquiries/0/id")},
    ("/v1/enquiries/{enquiry_id}", "get", "200"): {"answer": ("get_answer", "answer_id", "$response.body#/answers/0")},
    ("/v1/records", "get", "200"): {
        "first": ("get_record", "reference", "$response.body#/records/0/reference"),
        "next": ("get_records", "after", "$response.body#/next"),
    },
    ("/v1/records", "post", "201"): {"record": ("get_record", "reference", REFERENCE)},
    ("/v1/catalogues", "get", "200"): {"newest": ("get_catalogue", "version", "$response.body#/catalogues/0/version")},
    ("/v1/imports", "post", "202"): {"job": ("get_job", "job_id", ID)},
    ("/v1/webhooks", "post", "201"): {"end": ("remove_webhook", "webhook_id", ID)},
    ("/v1/webhooks", "get", "200"): {"end": ("remove_webhook", "webhook_id", "$response.body#/webhooks/0/id")},
}
"""Where one goes on from an answer: to which operation, with which parameter, from where in the answer."""


def link(document: dict[str, Any]) -> None:
    """Add the links to the document. KeyError where one starts from an answer that is not there."""
    for (path, method, status), ways in LINKS.items():
        document["paths"][path][method]["responses"][status]["links"] = {
            name: {"operationId": to, "parameters": {parameter: place}} for name, (to, parameter, place) in ways.items()
        }
