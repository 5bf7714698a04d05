"""The sales desk in a browser: plain pages and forms, smoother where the browser runs scripts.

`app` puts it together · `guard` headers and where a request may come from · `who` who is signed in and what they may ·
`posted` forms as they were sent · `pages` templates into pages · `faults` errors into pages · then one file a part of the
desk: `sign_in`, `account`; `fits`, `bench` and `replies` about one answer, shown by `fit_panel` in
the words of `fit_view`. Templates and what pages load stand in `templates` and `static`; nothing is loaded from
anywhere else.
"""
