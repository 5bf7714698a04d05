from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.form import FormError, parse_shape
from service.core.mapping import Mapping
from service.core.mapping.dates import formats_of, is_format, read_date
from service.core.mapping.decimals import evidence, plain_number


@pytest.mark.parametrize(
    ("texts", "sign"),
    [
        (["98,5"], ","), (["98.5"], "."), (["1.270"], None), (["1,270"], None), (["1.270", "98,5"], ","),
        (["1.270,5"], ","), (["1,270.5"], "."), (["98,5", "98.5"], None), (["44 ft 2 in", "about 5"], None),
        (["-0,25", "12"], ","), (["1 270,25"], ","), (["12.05.2020"], None), ([], None),
    ],
)  # fmt: skip
def test_the_decimal_sign_is_found_from_all_numbers(texts: list[str], sign: str | None) -> None:
    assert evidence(texts).sign == sign


@settings(deadline=None, derandomize=True, max_examples=200)
@given(
    st.floats(-1e6, 1e6).map(lambda x: round(x, 2)), st.sampled_from([(",", "."), (".", ","), (",", " "), (".", "'")])
)
def test_a_number_written_either_way_is_the_number(value: float, signs: tuple[str, str]) -> None:
    decimal, between = signs
    written = f"{value:,.2f}".replace(",", "\0").replace(".", decimal).replace("\0", between)
    assert float(plain_number(written, "," if decimal == "," else ".")) == value


@pytest.mark.parametrize("text", ["4 ft 2 1/2 in", "1,2,3", "12,34.5", "abc", "1.27.5"])
def test_what_is_no_bare_number_stays(text: str) -> None:
    assert plain_number(text, ",") == text


def test_dates_by_their_format() -> None:
    assert str(read_date("4.3.2020", "DD.MM.YYYY")) == "2020-03-04"
    assert str(read_date("03/04/2020", "MM/DD/YYYY")) == "2020-03-04"
    assert str(read_date("1998", "YYYY")) == "1998-01-01"
    assert str(read_date("04/03/98", "DD/MM/YY")) == "1998-03-04"
    assert str(read_date("04/03/21", "DD/MM/YY")) == "2021-03-04"
    assert read_date("31.02.2020", "DD.MM.YYYY") is None
    assert formats_of(["13/05/2019"]) == ("DD/MM/YYYY",)
    assert formats_of(["soon"]) == ()
    assert [is_format(one) for one in ("DD.MM.YYYY", "YYYY", "DD.MM", "days", "DD.DD.YYYY")] == [
        True,
        True,
        False,
        False,
        False,
    ]


@pytest.mark.parametrize(
    ("said", "field", "says"),
    [
        ({"column": [{"heading": "A", "to": "notes", "unit": "furlong"}]}, "column[0].unit", "is no unit"),
        ({"column": [{"heading": "A", "to": "record.date", "format": "days"}]}, "column[0].format", "no way to write"),
        ({"column": [{"heading": "A", "to": "x"}, {"heading": "A", "to": "y"}]}, "form", "'A' stands twice"),
        ({"column": [{"heading": "A", "to": "x"}, {"heading": "B", "to": "x"}]}, "form", "'x' stands twice"),
        ({"column": [{"heading": "A", "to": "x"}], "always": {"x": "1"}}, "form", "in [always] and has a column"),
        ({"decimal": ";"}, "decimal", "should be"),
        ({"colum": []}, "colum", "did you mean 'column'"),
    ],
)
def test_a_faulty_mapping_is_named_at_its_place(said: dict[str, object], field: str, says: str) -> None:
    with pytest.raises(FormError) as caught:
        parse_shape(Mapping, said)
    (defect,) = caught.value.defects
    assert defect.field == field
    assert says in defect.problem
