"""The catalogue at the desk: all of it as tables, a new one with its faults by line, what differs and who carries it."""

from __future__ import annotations

import tomllib

import pytest

from service.files.read.toml_lines import line_of
from tests.support.offices import Office, send
from tests.support.seeding import FIXTURES

HERE = "/desk/catalogue"
TEXT = (FIXTURES / "catalogue.toml").read_text()


def loaded(here: Office, text: str, name: str = "new.toml") -> tuple[int, str]:
    answer = send(here.client("admin"), HERE, HERE, files={"file": (name, text.encode())})
    return answer.status_code, answer.text


def test_every_code_stands_in_a_table(here: Office) -> None:
    text = here.client().get(f"{HERE}/demo-1").text
    document = tomllib.loads(TEXT)
    codes = [one["code"] for table in document.values() if isinstance(table, list) for one in table if "code" in one]
    assert len(codes) > 30
    assert [code for code in codes if f'<th scope="row">{code}</th>' not in text] == []
    assert here.client().get(f"{HERE}/demo-7").status_code == 404


def test_a_fault_is_told_with_its_line_and_nothing_is_loaded(here: Office) -> None:
    wrong = TEXT.replace('version = "demo-1"', 'version = "demo-9"').replace("length_mm = 1350", "length_mm = -1350", 1)
    line = next(at for at, said in enumerate(wrong.splitlines(), 1) if said == "length_mm = -1350")
    status, text = loaded(here, wrong)
    assert status == 422
    assert f"line {line}: " in text
    status, text = loaded(here, TEXT + "\n[[shaft\n", "<b>.toml")
    assert status == 422
    assert f"line {TEXT.count(chr(10)) + 2}" in text
    assert "<b>.toml" not in text
    assert (
        loaded(here, TEXT.replace("length_mm = 1350", "length_mm = 1360", 1))[0] == 422
    )  # the same version, other content
    with here.store.reading() as uow:
        assert uow.catalogues.versions() == ("demo-1",)


def test_a_new_one_is_in_force_and_who_carries_what_changed_is_named(here: Office) -> None:
    new = TEXT.replace('version = "demo-1"', 'version = "demo <2>"').replace("length_mm = 1350", "length_mm = 1355", 1)
    assert loaded(here, new)[0] == 303
    listed = here.client().get(HERE).text
    assert listed.index("demo &lt;2&gt;") < listed.index("demo-1")
    text = here.client().get(f"{HERE}/compare?before=demo-1&after=demo+%3C2%3E").text
    with here.store.reading() as uow:
        carry = [
            one for one in uow.records.all() if one.configuration.shaft == "shaft-1350" and one.status != "withdrawn"
        ]
    assert f"<strong>{len(carry)}</strong>" in text
    assert carry[0].reference in text
    assert "1350\u202fmm" in text
    assert "1355\u202fmm" in text
    assert here.client().get(f"{HERE}/compare?before=demo-1&after=none").status_code == 422


@pytest.mark.parametrize(
    ("field", "said"),
    [("shaft[2].length_mm", "length_mm"), ("gear[1].tube.wall_mm", "wall"), ("rules.pad_max.value", "pad_max")],
)
def test_lines_are_those_of_the_real_file(field: str, said: str) -> None:
    line = line_of(TEXT, field)
    assert line is not None
    assert said in TEXT.splitlines()[line - 1]
