"""The unit of work: everything a use case reads and writes, in one transaction."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from threading import Event
from types import TracebackType
from typing import Self

import sqlalchemy as sa
from sqlalchemy.exc import DBAPIError

from service.store import dialect, job_queue
from service.store.audit import Audit
from service.store.catalogues import Catalogues
from service.store.check import require, state_in
from service.store.demand import Demand
from service.store.desk import Clock, Desk
from service.store.enquiries import Answers, Enquiries
from service.store.enquiry_steps import EnquirySteps
from service.store.happening import Actor, Happening
from service.store.hulls import Hulls
from service.store.idempotency import Idempotency
from service.store.ids import IdMaker
from service.store.imports import Imports
from service.store.jobs import Jobs
from service.store.kept import Kept
from service.store.kept_people import KeptPeople
from service.store.keys import Keys
from service.store.last_answers import LastAnswers
from service.store.outbox import Outbox
from service.store.people import People
from service.store.recall_weights import RecallWeights
from service.store.records import Records
from service.store.removals import Removals
from service.store.replaced import Replaced
from service.store.stamps import Stamps
from service.store.users import Sessions, Users
from service.store.webhooks import Webhooks

Seal = Callable[["UnitOfWork"], object]


class UnitOfWork:
    """A transaction with its repositories. What is not committed is undone on leaving.

    `with uow:` begins it; a `with` of the same unit inside it joins it, and after leaving it may be begun again. One
    that reads sees one moment throughout and holds nobody up; one that `writes` waits for its turn (StoreAway where
    that takes too long).
    """

    hulls: Hulls
    records: Records
    catalogues: Catalogues
    enquiries: Enquiries
    answers: Answers
    imports: Imports
    jobs: Jobs
    removals: Removals
    replaced: Replaced
    recall_weights: RecallWeights
    stamps: Stamps
    keys: Keys
    idempotency: Idempotency
    webhooks: Webhooks
    outbox: Outbox
    audit: Audit
    people: People
    kept_people: KeptPeople
    demand: Demand
    last_answers: LastAnswers
    users: Users
    sessions: Sessions
    steps: EnquirySteps

    def __init__(
        self,
        engine: sa.Engine,
        *,
        now: Clock,
        new_id: IdMaker,
        writes: bool = False,
        kept: Kept | None = None,
        actor: Actor | None = None,
        seal: Seal | None = None,
    ) -> None:
        """Keep what a transaction needs; none is begun yet. `kept` holds what outlives it, as long as its stamp does.

        What is done on behalf of an `actor` stands in the audit. `seal` is called last before each commit.
        """
        self._engine, self._now, self._new_id, self.writes = engine, now, new_id, writes
        self.kept, self._actor, self._seal, self._joined = kept or Kept(), actor, seal, False
        self._connection: sa.Connection | None = None
        self._depth = 0

    def __enter__(self) -> Self:
        self._depth += 1
        if self._connection is not None:
            return self
        try:
            self._begin()
        except BaseException:
            self._depth = 0
            raise
        return self

    def _begin(self) -> None:
        with dialect.told(self._engine.url):
            connection = dialect.begun(self._engine, writes=self.writes)
        self._connection = connection
        desk = Desk(connection, self._now, self._new_id)
        self.hulls, self.records, self.catalogues = Hulls(desk), Records(desk), Catalogues(desk)
        self.enquiries, self.answers = Enquiries(desk), Answers(desk)
        self.imports, self.jobs, self.removals = Imports(desk), Jobs(desk), Removals(desk)
        self.replaced, self.recall_weights, self.stamps = Replaced(desk), RecallWeights(desk), Stamps(desk)
        self.keys, self.idempotency, self.audit = Keys(desk), Idempotency(desk), Audit(desk)
        self.webhooks, self.outbox = Webhooks(desk), Outbox(desk)
        self.people, self.kept_people = People(desk), KeptPeople(desk)
        self.demand, self.last_answers = Demand(desk), LastAnswers(desk)
        self.users, self.sessions, self.steps = Users(desk), Sessions(desk), EnquirySteps(desk)
        self._happened = desk.happened

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._depth -= 1
        if self._depth == 0 and self._connection is not None:
            connection, self._connection = self._connection, None
            with dialect.told(self._engine.url):
                connection.close()
        if isinstance(error, DBAPIError):
            raise dialect.explain(error, self._engine.url) from error

    def now(self) -> datetime:
        """Return the time."""
        return self._now()

    def new_id(self, kind: str) -> str:
        """Return an id for something that is about to be made."""
        return self._new_id(kind)

    def commit(self) -> None:
        """Make what was written last. RuntimeError in a unit that only reads: it writes nothing, ever."""
        if self._connection is None or not self.writes:
            raise RuntimeError("nothing can be committed here: this unit of work only reads, or was not begun")
        if not self._joined:
            self._settle(self._connection)

    def _settle(self, connection: sa.Connection) -> None:
        with dialect.told(self._engine.url):
            if self._seal is not None:
                self._seal(self)
            self.stamps.settle()
            self.outbox.put(self._happened)
            if self._actor is not None:
                self.audit.note(self._actor, self._happened)
            self._happened.clear()
            connection.commit()

    @contextmanager
    def together(self) -> Iterator[Self]:
        """Begin, and make everything that is committed within last together at the end, or none of it."""
        with self:
            self._joined = True
            try:
                yield self
            finally:
                self._joined = False
            uow = self
            uow.commit()

    def at_head(self) -> bool:
        """Say whether the database is still at this program's revision."""
        return self._connection is not None and state_in(self._connection) == "ok"

    def calls(self) -> bool:
        """Say whether the database calls workers to jobs; else they have to look."""
        return self._connection is not None and job_queue.usable(self._connection)

    def saw(self, kind: str, thing: str) -> None:
        """Say that people's data were read; it stands in the audit once this is committed."""
        self._happened.append(Happening("read", kind, thing))


class Store:
    """A database that was looked at and found to be this program's. `reading()` and `writing()` give units of work."""

    def __init__(self, url: str, *, now: Clock, new_id: IdMaker) -> None:
        """Open the database. NeedsUpgrade, NewerSchema, NotOurs or StoreAway say why not; nothing is changed then."""
        target = dialect.address(url)
        require(target)
        self._engine, self._now, self._new_id = dialect.connect(target), now, new_id
        self._kept = Kept()
        dialect.use_wal(self._engine)

    @property
    def address(self) -> str:
        """Return the database's address, with its password: for this program alone."""
        return self._engine.url.render_as_string(hide_password=False)

    @property
    def folder(self) -> Path | None:
        """Return the folder of a database that is a file; None for a server."""
        file = dialect.file_of(self._engine.url)
        return None if file is None else file.absolute().parent

    def reading(self) -> UnitOfWork:
        """Return a unit of work that only reads."""
        return UnitOfWork(self._engine, now=self._now, new_id=self._new_id, kept=self._kept)

    def writing(self, actor: Actor | None = None, seal: Seal | None = None) -> UnitOfWork:
        """Return a unit of work that may write; on behalf of `actor` what it writes stands in the audit.

        `seal` is called last before each commit, within it: what it raises undoes all of it.
        """
        return UnitOfWork(
            self._engine, now=self._now, new_id=self._new_id, writes=True, kept=self._kept, actor=actor, seal=seal
        )

    def answer_calls(self, work: job_queue.Work, stop: Event, *, name: str, hands: int) -> None:
        """Do the jobs that the database calls to, until `stop`. Returns at once where it calls nobody: look for them."""
        with self.reading() as uow:
            called = uow.calls()
        if called:
            job_queue.answer(self._engine.url, work, stop, name=name, hands=hands)

    def close(self) -> None:
        """Let go of every connection."""
        self._engine.dispose()
