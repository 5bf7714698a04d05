"""Hull models at the desk: what a name is taken for, names, merging with a preview, splitting, taking back."""

from __future__ import annotations

import pytest

from service.core.record import HullModel
from service.flow.show_hull import show_hull
from tests.support.notices import undo_in
from tests.support.offices import Office, send

TWIN = HullModel(
    id="salmarow-31",
    builder="Selmarrow",
    model="Selmarow 31",
    loa_mm=9420,
    beam_mm=2850,
    first_year=1971,
    last_year=1979,
)
ODD = HullModel(id="odd/22", builder="Odd & Co", model="Od<b>d</b> 22", aliases=('"><script>alert(1)</script>',))


@pytest.fixture(scope="module", autouse=True)
def _twins(here: Office) -> None:
    """Let two more hull models be known: one is another's twin, one has markup in its name."""
    with here.store.writing() as uow:
        uow.hulls.put([TWIN, ODD], who="test", why="to look at <i>")
        uow.commit()


def test_a_name_is_looked_up_as_a_mails_would_be_with_its_reasons(here: Office) -> None:
    text = here.client().get("/desk/hulls?q=S31+II").text
    taken = text.split('id="taken-for"')[1].split("</section>")[0]
    assert "Selmarrow 31 Mk II" in taken
    assert "for</span>" in taken
    part = here.client().get("/desk/hulls?q=tressick", headers={"HX-Request": "true"}).text
    assert "Tressick 36" in part
    assert "<html" not in part


@pytest.mark.parametrize(("field", "written"), [("year", "soon"), ("loa", "9 pints")])
def test_what_cannot_be_read_comes_back_beside_its_field(here: Office, field: str, written: str) -> None:
    response = here.client().get(f"/desk/hulls?q=selmarrow&{field}={written}")
    assert response.status_code == 422
    assert f'value="{written}"' in response.text
    assert f'aria-describedby="{field}-said" aria-invalid="true"' in response.text


def test_a_name_is_taken_forgotten_and_taken_again_by_undo(here: Office) -> None:
    client, at = here.client(), "/desk/hulls/selmarrow-34"
    assert send(client, at, f"{at}/aliases", alias="Selmi <34>", why="a letter").status_code == 303
    text = client.get(at).text
    assert "Selmi &lt;34&gt;" in text
    assert "Ada Holm" in text
    assert send(client, at, f"{at}/aliases/remove", alias="Selmi <34>").status_code == 303
    text = client.get(at).text
    assert "Forget Selmi" not in text
    assert send(client, at, undo_in(text)).headers["location"] == at
    assert "Forget Selmi" in client.get(at).text
    empty = send(client, at, f"{at}/aliases", alias="??", why="kept")
    assert empty.status_code == 422
    assert 'value="??"' in empty.text
    assert 'value="kept"' in empty.text


def test_a_pair_is_proposed_and_said_to_be_two(here: Office) -> None:
    client = here.client()
    page = client.get("/desk/hulls/duplicates").text
    assert 'hx-trigger="load"' in page
    assert "Tressick" not in page  # the page comes at once, without them
    whole = client.get("/desk/hulls/duplicates?made=1").text
    assert "Selmarow 31" in whole
    assert "Tressick 36 Cutter" in whole
    said = send(
        client, "/desk/hulls/duplicates?made=1", "/desk/hulls/distinct", one="tressick-36", other="tressick-36-cutter"
    )
    assert said.status_code == 303
    back = undo_in(client.get(said.headers["location"]).text)
    assert "Tressick 36 Cutter" not in client.get("/desk/hulls/duplicates?made=1").text
    send(client, "/desk/hulls", back)
    assert "Tressick 36 Cutter" in client.get("/desk/hulls/duplicates?made=1").text


def test_merging_shows_what_it_would_do_does_it_and_is_taken_back(everywhere: Office) -> None:
    with everywhere.store.writing() as uow:
        uow.hulls.put([TWIN], who="test", why="twin")
        uow.commit()
    client, at = everywhere.client(), "/desk/hulls/merge?into=salmarow-31&other=selmarrow-31"
    with everywhere.store.reading() as uow:
        count = show_hull(uow, "selmarrow-31").uses["records"]
        versions = uow.hulls.version()
    text = client.get(at).text
    assert f"{count} records" in text
    assert "7250\u202fmm" in text.split("Waterline")[1].split("</tr>")[0]  # taken over from the other
    assert "S31" in text.split("answers to besides")[1].split("</p>")[0]
    with everywhere.store.reading() as uow:
        assert uow.hulls.version() == versions  # looking at it wrote nothing
    done = send(client, at, "/desk/hulls/merge", into="salmarow-31", other="selmarrow-31", why="twins")
    assert done.status_code == 303
    shown = client.get(done.headers["location"]).text
    with everywhere.store.reading() as uow:
        assert show_hull(uow, "selmarrow-31").hull.id == "salmarow-31"
        assert show_hull(uow, "salmarow-31").uses["records"] == count
    assert "which selmarrow-31 was merged into" in client.get("/desk/hulls/selmarrow-31").text
    send(client, "/desk/hulls", undo_in(shown))
    with everywhere.store.reading() as uow:
        assert show_hull(uow, "selmarrow-31").hull.id == "selmarrow-31"


def test_merging_what_cannot_be_says_why_and_keeps_what_was_written(here: Office) -> None:
    client, at = here.client(), "/desk/hulls/merge?into=selmarrow-31&other=selmarrow-31"
    text = client.get(at)
    assert text.status_code == 422
    assert "one hull model already" in text.text
    refused = send(client, "/desk/hulls", "/desk/hulls/merge", into="selmarrow-31", other="selmarow-99", why="twins?")
    assert refused.status_code == 422
    assert 'value="selmarow-99"' in refused.text


def test_splitting_moves_what_was_ticked_after_a_preview(here: Office) -> None:
    client, at = here.client(), "/desk/hulls/selmarrow-340/split"
    with here.store.reading() as uow:
        reference = next(record.reference for record in uow.records.find(hull="selmarrow-340"))
    asked = f"{at}?record={reference}&new=Selmarrow+340+Wide"
    text = client.get(asked).text
    assert "Selmarrow 340 Wide (new)" in text
    assert 'name="csrf"' in text
    nothing = client.get(f"{at}?new=Selmarrow+340+Wide")
    assert nothing.status_code == 422
    done = send(client, asked, at, record=reference, new="Selmarrow 340 Wide")
    assert done.status_code == 303
    fresh = done.headers["location"]
    shown = client.get(fresh).text
    assert reference in shown
    send(client, "/desk/hulls", undo_in(shown))
    with here.store.reading() as uow:
        assert uow.records.get(reference).hull == "selmarrow-340"  # type: ignore[union-attr] # it is there
    assert client.get(fresh).status_code == 404


def test_markup_in_a_registry_stays_text(here: Office) -> None:
    client = here.client()
    for at in ("/desk/hulls?q=od", "/desk/hulls/odd%2F22", "/desk/hulls/odd%2F22/split", "/desk/hulls/changes",
               "/desk/hulls/merge?into=odd%2F22&other=selmarrow-38", "/desk/hulls/duplicates?made=1"):  # fmt: skip
        response = client.get(at)
        assert response.status_code == 200, at
        assert "<b>d</b>" not in response.text
        assert "<script>alert" not in response.text
        assert "<i>" not in response.text
    assert "Od&lt;b&gt;d&lt;/b&gt; 22" in client.get("/desk/hulls/odd%2F22").text


def test_no_such_hull_model_is_no_page(here: Office) -> None:
    response = here.client().get("/desk/hulls/selmarrow-3l")
    assert response.status_code == 404
    assert "did you mean" in response.text
