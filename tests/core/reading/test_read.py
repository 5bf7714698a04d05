"""Letters -> forms. The letters and what they say stand in letters.toml."""

from __future__ import annotations

import pathlib
import time
import tomllib
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.reading import Letter, Reading
from service.core.reading.gaps import KEY_FIELDS
from service.core.reading.letter import Attachment
from service.core.reading.reader import read
from service.core.reading.settles import SETTLES

DATA: dict[str, Any] = tomllib.loads(pathlib.Path(__file__).with_name("letters.toml").read_text(encoding="utf-8"))
KNOWN: list[str] = DATA["known"]
CASES: list[dict[str, Any]] = DATA["letter"]
ASIDE = ("schema", "enquiry.language", "enquiry.received", "enquiry.channel", "methods.")


def flat(node: dict[str, Any], stem: str = "") -> dict[str, Any]:
    out: dict[str, Any] = {}
    for key, value in node.items():
        out.update(flat(value, f"{stem}{key}.") if isinstance(value, dict) else {stem + key: value})
    return {k: v for k, v in out.items() if not k.startswith(ASIDE)} if not stem else out


def letter(body: str, subject: str = "enquiry", **more: Any) -> Letter:  # noqa: ANN401 - a letter's own fields
    return Letter(body=body, subject=subject, sender_name="Ann Ask", sender_address="ann@example.org", **more)


def reading(body: str, subject: str = "enquiry", **more: Any) -> Reading:  # noqa: ANN401 - a letter's own fields
    return read(letter(body, subject, **more), known_models=KNOWN)


def form(body: str, subject: str = "enquiry", **more: Any) -> dict[str, Any]:  # noqa: ANN401 - a letter's own fields
    got = flat(reading(body, subject, **more).document()["form"] or {})
    return {k: v for k, v in got.items() if not k.startswith("contact.")}


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["name"])
def test_everything_said_comes_out_and_nothing_else(case: dict[str, Any]) -> None:
    got = reading(case["body"], case["subject"])
    assert (got.is_enquiry, got.kind, got.language, got.boats) == (True, "enquiry", case["language"], 1)
    said = flat(got.document()["form"])
    assert said.keys() == case["says"].keys()
    for name, value in case["says"].items():
        assert said[name] == (pytest.approx(value, abs=0.1) if isinstance(value, (int, float)) else value), name
    assert {d.field: d.why for d in got.doubts} == case.get("doubts", {})


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["name"])
def test_every_value_shows_its_words(case: dict[str, Any]) -> None:
    got = reading(case["body"], case["subject"])
    shown = {e.field for e in got.evidence}
    for name in flat(got.document()["form"]):
        assert name in shown or (name == "obstacles" and "obstacles[0]" in shown)
    for piece in got.evidence:
        assert got.text[piece.start : piece.end] == piece.text
        assert piece.text or piece.field.startswith(("contact.", "enquiry."))


def test_a_generation_and_a_number_are_never_dropped() -> None:
    for name in KNOWN:
        assert form(f"What do I need for a {name}?")["boat.model"] == name
    assert form("What do I need for a corvane 33 MK II?")["boat.model"] == "corvane 33 MK II"
    assert form("What do I need for a Corvane 33 Mk III?")["boat.model"] == "Corvane 33 Mk III"
    assert "boat.model" not in form("What gear for a boat of 33 ft?")


def test_other_boats_are_not_this_boat() -> None:
    got = form(
        "Our last boat, a Selkie 28, had her transom 90 cm above the water. We now have a Corvane 33. What fits?"
    )
    assert got == {"boat.model": "Corvane 33"}


TWO = """Hi,
two enquiries, please quote for each.

1. Corvane 33, 1984
- top of transom above water 1.05 m
- spade rudder

2. Selkie 28 S
- top of transom above water 92 cm
- rudder transom hung

Thanks
Ann
"""


def test_two_boats_give_two_forms() -> None:
    got = reading(TWO)
    assert got.boats == 2
    one, two = (flat(f.document()) for f in got.forms)
    assert (one["boat.model"], one["transom.top_height_mm"], one["main_rudder.hung"]) == ("Corvane 33", 1050, "inboard")
    assert (two["boat.model"], two["transom.top_height_mm"], two["main_rudder.hung"]) == ("Selkie 28 S", 920, "transom")
    assert "boat.year" not in two
    assert {e.boat for e in got.evidence} == {0, 1}


QUOTED = """Sorry, I meant 1080 not 1180 for the height.

Ann

On Mon, 2 Mar 2026 at 10:00, Sales <sales@example.com> wrote:
> Thank you. Is the transom 1500 mm wide at the top?
>
> On Sun, 1 Mar 2026 at 09:00, Ann Ask <ann@example.org> wrote:
>> Our Corvane 33 from 1986: top of transom to water 1180 mm.
>> Spade rudder.
"""


def test_what_a_newer_mail_says_is_gone_or_otherwise_is_not_taken_from_the_older() -> None:
    newer = "The trailing edge should have been 450, not 540. And scrub the ladder, we sold it on Saturday."
    older = "> Our Corvane 33: the trailing edge is 540 mm forward of the transom's top. A folding ladder and a pushpit. What fits?"
    form = read(Letter(f"{newer}\n\n{older}\n")).form
    assert form is not None
    assert form.main_rudder.trailing_edge_aft_mm == -450
    assert [thing.kind for thing in form.obstacles] == ["rail"]


def test_newest_words_win_and_our_own_words_are_no_statement() -> None:
    got = reading(QUOTED, "Re: measures", in_reply_to="<x@example.com>", references=("<y@example.org>",))
    assert (got.kind, got.is_enquiry) == ("reply", True)
    assert form(QUOTED, "Re: measures", in_reply_to="<x@example.com>") == {
        "boat.model": "Corvane 33", "boat.year": 1986, "transom.top_height_mm": 1080, "main_rudder.hung": "inboard",
    }  # fmt: skip
    assert {e.field: e.quoted for e in got.evidence if e.field.startswith("main")} == {"main_rudder.hung": True}
    assert got.thread == ("<y@example.org>", "<x@example.com>")


ANSWERS = """Answers below.

On 1 Mar 2026, Nina at Sales <sales@example.com> wrote:
> You said the top of the transom is "3 ft 4" up.
> 1. How high is the top of the transom above the water?

1m12, so forget the 3 ft 4.

> 2. Is the rudder hung on the transom? How far does it stick out?

Yes, its back edge is 50 cm from the transom.

Ann
"""


def test_an_answer_means_what_the_question_asked() -> None:
    got = form(ANSWERS, "Re: Corvane 33", in_reply_to="<x@example.com>")
    assert got == {
        "boat.model": "Corvane 33", "transom.top_height_mm": 1120, "main_rudder.hung": "transom",
        "main_rudder.trailing_edge_aft_mm": 500,
    }  # fmt: skip


@pytest.mark.parametrize(
    ("body", "kind"),
    [
        ("Dear all, the parcel arrived safely and the gear works a treat on our Corvane 33. Thank you!", "thanks"),
        (
            "Please send me two spare bushings and a bolt M10 for my gear, serial number 2033. Boat is a Corvane 33.",
            "spares",
        ),
        ("Meeting moved to Tuesday.", "other"),
    ],
)
def test_what_is_no_enquiry_has_no_form(body: str, kind: str) -> None:
    got = reading(body, "hello")
    assert (got.kind, got.is_enquiry, got.form, got.forms, got.evidence, got.missing) == (kind, False, None, (), (), ())


def test_bulk_mail_is_no_enquiry() -> None:
    got = reading("Corvane 33 (1984), LOA 10.1 m, 5 t. Thinking of a windvane?", "Boats of the week", bulk=True)
    assert (got.kind, got.boats) == ("other", 0)


@pytest.mark.parametrize(
    ("told", "box"),
    [
        ("a ladder on the port side, 10 to 25 cm from the centre", [-250, -100]),
        ("a fixed ladder in the middle, 40 cm wide", [-200, 200]),
        ("davits, 50 cm each side of the centre", [-500, 500]),
        ('an outboard bracket to starboard, 12" to 20" off centre', [304.8, 508]),
    ],
)
def test_boxes_have_port_negative(told: str, box: list[float]) -> None:
    (obstacle,) = form(f"What do I need for a Corvane 33? There is {told}.")["obstacles"]
    assert obstacle["starboard_mm"] == pytest.approx(box)


@pytest.mark.parametrize(
    "told",
    ["no ladder", "The ladder: none", "there are no davits and no platform", "the pushpit of my friend's boat is bent"],
)
def test_what_is_denied_is_not_listed(told: str) -> None:
    assert "obstacles" not in form(f"What do I need for a Corvane 33? {told}.")


@pytest.mark.parametrize(
    ("told", "rake"),
    [
        ("The transom rakes 12°, top further aft than the bottom", 12), ("Reverse transom, 20 deg", -20),
        ("The transom leans aft 8 degrees", 8),
        ("rake of the transom 15 deg, top edge forward of the bottom edge", -15),
        ("The transom is plumb, 0 degrees", 0), ("The transom is raked 12 degrees", None),
    ],
)  # fmt: skip
def test_rake_has_a_sign_or_is_a_doubt(told: str, rake: float | None) -> None:
    got = reading(f"What do I need for a Corvane 33? {told}.")
    assert flat(got.document()["form"]).get("transom.rake_deg") == rake
    assert [d.why for d in got.doubts] == (["sign_unknown"] if rake is None else [])


def test_a_height_from_the_boot_stripe_is_added_up_or_left() -> None:
    stripe = "What do I need for a Corvane 33? From the bootstripe to the top of the transom it is 40 inches"
    both = form(stripe + ", and the bootstripe is 2 inches clear of the water.")
    assert both["transom.top_height_mm"] == pytest.approx(42 * 25.4)
    alone = reading(stripe + ".")
    assert "transom.top_height_mm" not in flat(alone.document()["form"])
    assert [d.why for d in alone.doubts] == ["other_datum"]


PROFILE = """What do I need for a Corvane 33? We measured height above the water,
then distance aft of the top edge, in cm:

 110    0
  80    9
  50   19
  12   30

The 12 is the bottom edge.
"""


def test_a_profile_in_rows() -> None:
    got = form(PROFILE)
    assert [(p["height_mm"], p["aft_mm"]) for p in got["transom.profile"]] == [
        (1100, 0),
        (800, 90),
        (500, 190),
        (120, 300),
    ]
    assert (got["transom.top_height_mm"], got["transom.bottom_height_mm"]) == (1100, 120)
    folded = form(PROFILE.replace("  50   19", "  90   19"))
    assert "transom.profile" not in folded


def test_a_file_name_states_nothing() -> None:
    photo = Attachment("rake_18deg.jpg", "image/jpeg", 4, "0" * 64)
    got = reading("Photos of my Corvane 33 attached. What do I need?", attachments=(photo,))
    assert "transom.rake_deg" not in flat(got.document()["form"])
    assert [(a.name, a.read) for a in got.attachments] == [("rake_18deg.jpg", False)]


def test_a_dealer_writes_for_a_customer() -> None:
    body = "A customer has a Corvane 33. What does he need?\n\nRegards\nBen Dealt\nHarbour Marine Supply\n"
    body += "T 01632 960 555 | F 01632 960 556\n"
    sent = Letter(body=body, subject="quote", sender_name="Ben Dealt", sender_address="ben@example.com", mailed=True,
                  date=datetime(2026, 3, 1, tzinfo=UTC))  # fmt: skip
    got = read(sent, known_models=KNOWN).forms[0]
    assert (got.enquiry.dealer, got.contact.name, got.contact.phone) == (
        "Harbour Marine Supply",
        "Ben Dealt",
        "01632 960 555",
    )
    assert (got.enquiry.channel, got.enquiry.received) == ("email", datetime(2026, 3, 1, tzinfo=UTC))


def test_what_is_missing_stands_with_what_settles_most_first() -> None:
    got = reading("What do I need for a Corvane 33?")
    asked = [m.field for m in got.missing]
    assert set(asked) == KEY_FIELDS.keys() - {"boat.model", "transom.step_height_mm", "transom.step_depth_mm"}
    shares = [SETTLES[field] for field in asked]
    assert shares == sorted(shares, reverse=True)
    scoop = reading("What do I need for a Corvane 33? She has a sugar scoop.")
    assert {"transom.step_height_mm", "transom.step_depth_mm"} <= {m.field for m in scoop.missing}
    assert all(m.settles is None and m.why for m in got.missing)
    full = reading(CASES[0]["body"], CASES[0]["subject"])
    assert full.missing == ()


BODIES = [case["body"] for case in CASES] + [TWO, QUOTED, ANSWERS, PROFILE]


@settings(deadline=None, derandomize=True, max_examples=250)
@given(
    st.sampled_from(BODIES),
    st.lists(st.tuples(st.integers(0, 2000), st.text(max_size=3)), max_size=15),
    st.integers(0, 1500),
    st.sampled_from(["", "Re: Corvane 33", "x" * 300]),
)
def test_mutilated_letters_are_read_without_error(
    body: str, edits: list[tuple[int, str]], cut: int, subject: str
) -> None:
    for at, what in edits:
        place = at % len(body)
        body = body[:place] + what + body[place + len(what) :]
    got = reading(body[cut % len(body) :], subject)
    assert got.boats == len(got.forms)
    for piece in got.evidence:
        assert got.text[piece.start : piece.end] == piece.text


@settings(deadline=None, derandomize=True, max_examples=200)
@given(st.text(max_size=300), st.text(max_size=40))
def test_any_text_is_read(body: str, subject: str) -> None:
    assert read(Letter(body=body, subject=subject or None)).boats >= 0


@pytest.mark.parametrize(
    "piece",
    ["1 m ", "top of the transom 1 m above the water. ", "(1 m) ", "> Corvane 33 ", "A. ", "((", "no ", "- a: 1 m\n",
     "1120 not 1210 ", "1180 0\n", "wrote:\n", "'79 "],
)  # fmt: skip
def test_long_letters_take_time_in_proportion(piece: str) -> None:
    start = time.process_time()  # others' work on the machine is not counted
    reading(piece * (100_000 // len(piece)))
    assert time.process_time() - start < 6.0


@pytest.mark.parametrize(
    ("told", "says"),
    [
        ("The top of the rudder blade is 30 cm above the water.", {"main_rudder.top_height_mm": 300}),
        ("The head of the sternpost is 1.1 m above the water. The sternpost is 80 mm wide.",
         {"transom.top_height_mm": 1100, "transom.post_width_mm": 80}),
        ("The stern is open. The edge of the cockpit sole is 45 cm above the water.",
         {"boat.stern": "open", "transom.top_height_mm": 450}),
        ("The transom falls away: on 80 cm of height it leans 20 cm aft.",
         {"boat.stern": "raked", "transom.rake_deg": 14.04}),
        ("The bottom of the transom just touches the water.", {"transom.bottom_height_mm": 0}),
        ("LOA 9.98, beam 3.20.", {"boat.beam_mm": 3200, "boat.loa_mm": 9980}),
    ],
)  # fmt: skip
def test_less_common_ways_to_say_it(told: str, says: dict[str, Any]) -> None:
    got = form(f"What do I need for a Corvane 33? {told}")
    assert got.pop("boat.model") == "Corvane 33"
    assert got.keys() == says.keys()
    for name, value in says.items():
        assert got[name] == (value if isinstance(value, str) else pytest.approx(value, abs=0.01))


def test_parts_for_a_gear_already_there_are_no_enquiry() -> None:
    body = "I have had one of your gears on my Corvane 33 for years. Please send me:\n\n2 x pins\n1 x vane\n\nPrice?"
    assert reading(body, "parts please").kind == "spares"


def test_an_elided_article_hides_no_word() -> None:
    body = (
        "Bonjour, quel support pour mon Selkie 28 ? L'échelle de bain est repliable, à bâbord. Je n'ai pas de portique."
    )
    assert form(body)["obstacles"] == [{"kind": "ladder", "moves": "folds", "side": "port"}]


def test_what_belongs_to_the_arch_is_not_given_to_the_panels_on_it() -> None:
    got = form("What do I need for a Corvane 33? There is an arch with two solar panels which has to stay.")
    assert got["obstacles"] == [{"kind": "arch", "keep": True}, {"kind": "panels"}]
