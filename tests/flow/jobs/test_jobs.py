"""A job is worked once, in order, stops when told, and is gone on with at the first step that was not acknowledged."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest

from service.core.job import MOST_STALLS
from service.flow.cancel_job import cancel_job
from service.flow.job_task import Task
from service.flow.job_watch import Watch
from service.flow.refusal import Refused
from service.flow.resume_job import resume_job
from service.flow.work_jobs import Crew, Pace
from service.store.errors import Conflict, StoreAway
from service.store.jobs import Hold, Sign, Taken
from service.store.unit import Store
from tests.flow.jobs.conftest import BO, QUICK, Steps, is_, job_of, put
from tests.support.waiting import until

Hire = Callable[..., Crew]


def test_a_job_is_done_and_says_what_it_came_to(store: Store, hire: Hire) -> None:
    steps = Steps()
    steps.go.set()
    job_id = put(store, "steps", colour="blue")
    before = job_of(store, job_id)
    assert (before.state, before.done, before.total, before.worker) == ("waiting", 0, None, None)
    assert (before.who, before.key, before.request, before.arguments) == (
        "bo",
        "key-1",
        "request-1",
        {"colour": "blue"},
    )
    hire({"steps": steps})
    until(is_(store, job_id, "done"))
    after = job_of(store, job_id)
    assert (after.done, after.total, after.result, after.trouble, after.worker) == (5, 5, {"steps": 5}, None, None)
    assert after.started is not None
    assert after.ended is not None
    assert steps.taken == [f"{job_id} {number}" for number in range(5)]


def test_a_worker_does_what_was_left_before_it_began(store: Store, hire: Hire) -> None:
    steps = Steps(1)
    steps.go.set()
    first, second = put(store, "steps"), put(store, "steps")
    hire({"steps": steps})
    until(is_(store, second, "done"))
    assert {line.split()[0] for line in steps.taken} == {first, second}


def test_many_workers_never_share_a_job(store: Store, hire: Hire) -> None:
    steps = Steps(3)
    steps.go.set()
    jobs = [put(store, "steps") for _ in range(8)]
    for number in range(3):
        hire({"steps": steps}, f"here:{number}", hands=2)
    for job_id in jobs:
        until(is_(store, job_id, "done"))
    assert sorted(steps.taken) == sorted(f"{job_id} {number}" for job_id in jobs for number in range(3))


def test_a_job_that_waits_is_cancelled_at_once_and_never_worked(store: Store, hire: Hire) -> None:
    steps = Steps(1)
    steps.go.set()
    job_id = put(store, "steps")
    assert cancel_job(store.writing(), job_id).state == "cancelled"
    crew = hire({"steps": steps})
    until(crew.idle)
    assert steps.taken == []
    with pytest.raises(Refused, match="cancelled already"):
        cancel_job(store.writing(), job_id)


def test_a_running_job_stops_within_a_second_of_being_cancelled(store: Store, hire: Hire) -> None:
    """The best of a few: the machine may be busy with something else."""
    steps, took = Steps(), list[float]()
    hire({"steps": steps}, pace=Pace())  # as it is in earnest
    while len(took) < 5 and (not took or min(took) >= 1.0):
        steps.begun.clear()
        job_id = put(store, "steps")
        until(steps.begun.is_set)
        assert cancel_job(store.writing(), job_id).cancelling
        start = time.monotonic()
        until(is_(store, job_id, "cancelled"))
        took.append(time.monotonic() - start)
        assert not job_of(store, job_id).cancelling
    assert min(took) < 1.0, took


def test_a_cancelled_job_goes_on_behind_what_is_acknowledged(store: Store, hire: Hire) -> None:
    steps = Steps(4)
    job_id = put(store, "steps")
    with store.writing() as uow:
        job, held = uow.jobs.take(job_id, "gone:1") or pytest.fail("it was not there to take")
        uow.jobs.put_items(held, {"step 0": "done", "step 1": "done"})
        uow.jobs.end(held, "cancelled", done=2)
        uow.commit()
    with pytest.raises(Conflict, match="no such job"):
        resume_job(store.writing(), "job-none")
    steps.go.set()
    hire({"steps": steps})
    assert resume_job(store.writing(), job_id).done == 2
    until(is_(store, job_id, "done"))
    assert steps.taken == [f"{job.id} 2", f"{job.id} 3"]
    with pytest.raises(Refused, match="is done"):
        resume_job(store.writing(), job_id)


def test_a_worker_that_ends_gives_its_job_back_and_another_goes_on(store: Store, hire: Hire) -> None:
    steps = Steps(3)
    job_id = put(store, "steps")
    first = hire({"steps": steps}, "here:1")
    until(steps.begun.is_set)
    first.stop()
    assert job_of(store, job_id).state == "waiting"
    steps.go.set()
    hire({"steps": steps}, "here:2")
    until(is_(store, job_id, "done"))
    assert len(steps.taken) == 3


def left(store: Store, job_id: str, *, done: int = 0) -> Hold:
    """Take a job as a worker that dies without a word, after `done` steps."""
    with store.writing() as uow:
        _, held = uow.jobs.take(job_id, "dead:1") or pytest.fail("it was not there to take")
        uow.jobs.put_items(held, {f"step {number}": "done" for number in range(done)})
        uow.jobs.hold(held, done=done, total=5)
        uow.commit()
    return held


def test_what_a_dead_worker_left_is_taken_up_at_the_first_step_not_acknowledged(store: Store, hire: Hire) -> None:
    steps = Steps()
    steps.go.set()
    job_id = put(store, "steps")
    left(store, job_id, done=3)
    hire({"steps": steps})
    until(is_(store, job_id, "done"))
    assert steps.taken == [f"{job_id} 3", f"{job_id} 4"]
    assert job_of(store, job_id).turn == 2


def test_a_job_cancelled_while_its_worker_is_dead_is_cancelled(store: Store, hire: Hire) -> None:
    job_id = put(store, "steps")
    left(store, job_id, done=1)
    cancel_job(store.writing(), job_id)
    hire({"steps": Steps()})
    until(is_(store, job_id, "cancelled"))


def test_a_worker_taken_for_dead_cannot_write_any_more(store: Store, hire: Hire) -> None:
    job_id = put(store, "steps")
    held = left(store, job_id)
    hire({"steps": Steps()})
    until(lambda: job_of(store, job_id).turn == 2)
    task = Task(store, job_of(store, job_id), held)
    with task.writing(1) as uow:
        uow.jobs.put_items(held, {"step 0": "twice"})
        with pytest.raises(Taken):
            uow.commit()
    with store.reading() as uow:
        assert list(uow.jobs.items(job_id)) == []


def test_a_live_worker_is_never_taken_for_dead_whatever_the_clocks_say(store: Store, hire: Hire) -> None:
    """Its clock jumps back a day and the other worker's leaps ahead, then the other way round: nothing is decided by them."""
    steps = Steps(1)
    job_id = put(store, "steps")
    crews = [hire({"steps": steps}, name) for name in ("here:1", "here:2")]
    until(steps.begun.is_set)
    now = store._now()
    for days in (1, -1):
        for crew, shift in zip(crews, (-days, days), strict=True):
            crew._store._now = lambda shift=shift: now + timedelta(days=shift)  # type: ignore[misc]
        time.sleep(1.2 * QUICK.patience)
    assert job_of(store, job_id).turn == 1
    steps.go.set()
    until(is_(store, job_id, "done"))
    assert (steps.most, len(steps.taken), job_of(store, job_id).turn) == (1, 1, 1)


def test_a_sign_that_stands_still_is_told_by_the_stopwatch_alone() -> None:
    watch, sign = Watch(10.0), Sign("job-1", "running", cancelling=False, turn=1, beat=7)
    assert watch.still([sign], 100.0) == []
    assert watch.still([sign], 109.9) == []
    assert watch.still([sign], 110.0) == [sign]
    moved = replace(sign, beat=8)
    assert watch.still([moved], 111.0) == []
    assert watch.still([], 200.0) == []
    assert watch.still([moved], 300.0) == []


def test_a_job_that_fails_says_why_and_can_be_gone_on_with(store: Store, hire: Hire) -> None:
    ways = iter([Refused("there is no such boat; name another"), KeyError("rake"), None])

    def work(task: Task) -> None:
        task.begin(0, 1)
        error = next(ways)
        if error:
            raise error

    job_id = put(store, "odd")
    hire({"odd": work})
    until(is_(store, job_id, "failed"))
    assert job_of(store, job_id).trouble == "there is no such boat; name another"
    resume_job(store.writing(), job_id)
    until(lambda: "a fault of the program itself (KeyError: 'rake')" in (job_of(store, job_id).trouble or ""))
    resume_job(store.writing(), job_id)
    until(is_(store, job_id, "done"))
    assert job_of(store, job_id).trouble is None


def test_a_kind_that_is_not_known_fails_and_names_it(store: Store, hire: Hire) -> None:
    job_id = put(store, "tea")
    hire()
    until(is_(store, job_id, "failed"))
    assert "'tea'" in (job_of(store, job_id).trouble or "")


def test_while_the_database_is_away_a_job_waits_and_then_goes_on(
    store: Store, hire: Hire, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("service.flow.work_jobs._PAUSES_S", (0.05,))
    away = iter([True, True, False])

    def work(task: Task) -> None:
        task.begin(0, 1)
        if next(away):
            raise StoreAway("the database went away", "postgresql://desk@host/ledger", "See that the server runs")

    job_id = put(store, "odd")
    hire({"odd": work})
    until(lambda: job_of(store, job_id).turn >= 2)
    told = job_of(store, job_id).trouble
    assert told in ("the database went away. See that the server runs", None)
    until(is_(store, job_id, "done"))
    assert job_of(store, job_id).turn == 3


def test_a_job_that_gets_no_further_is_left_to_a_person(
    store: Store, hire: Hire, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("service.flow.work_jobs._PAUSES_S", (0.01,))

    def work(task: Task) -> None:
        task.begin(0, 1)
        raise StoreAway("the disk is full", "sqlite:///ledger.db", "Make room and try again")

    job_id = put(store, "odd")
    hire({"odd": work})
    until(is_(store, job_id, "failed"))
    job = job_of(store, job_id)
    assert job.turn == MOST_STALLS
    assert job.trouble == (
        f"it came to a halt {MOST_STALLS} times at the same place: the disk is full. Make room and try again"
    )


def test_what_was_asked_for_stands_in_the_audit_under_the_one_who_asked(store: Store, hire: Hire) -> None:
    def work(task: Task) -> None:
        with task.writing() as uow:
            uow.saw("record", "2025-001")
            uow.commit()

    job_id = put(store, "look")
    hire({"look": work})
    until(is_(store, job_id, "done"))
    with store.reading() as uow:
        (entry,) = uow.audit.of("2025-001")
    assert (entry.who, entry.key, entry.request) == (BO.who, BO.key, BO.request)


def test_jobs_are_listed_newest_first(store: Store) -> None:
    ids = [put(store) for _ in range(3)]
    with store.reading() as uow:
        assert [job.id for job in uow.jobs.all()] == ids[::-1]
        assert len(uow.jobs.all(2)) == 2
        assert [sign.id for sign in uow.jobs.signs()] == ids
