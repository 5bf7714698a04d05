"""Steps of the bench of reports, each run in a process of its own: python -m scripts.report_steps STEP ARGUMENTS."""

from __future__ import annotations

import json
import resource
import sys
import time
from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

FLEET = Path(__file__).resolve().parent.parent / "seed_fixtures" / "fleet.jsonl"
AS_OF = date(2026, 1, 15)
COLUMNS = ("gear", "lower", "upper", "shaft", "date", "country", "stern", "status", "loa_mm", "offset_mm")
AT_ONCE = 50_000


def parquet(file: str, records: str) -> int:
    """Write so many records as Parquet: boats, metal, dealers and dates of the demo fleet, each drawn apart."""
    size, dice = int(records), np.random.default_rng(5)
    known = [json.loads(line) for line in FLEET.read_text("utf-8").splitlines()]
    boat, place, when, state = (dice.integers(0, len(known), size) for _ in range(4))

    def column(at: np.ndarray[Any, Any], value: Callable[[dict[str, Any]], Any], kind: pa.DataType) -> pa.Array:
        return pa.array([value(one) for one in known], kind).take(pa.array(at))

    days = np.array([date.fromisoformat(one["date"]).toordinal() for one in known])[when] + dice.integers(-40, 40, size)
    codes = {name: column(boat, lambda one, name=name: one["configuration"][name], pa.string()) for name in COLUMNS[:4]}  # type: ignore[misc] # bound now
    found = {
        **codes,
        "date": pa.array(days - date(1970, 1, 1).toordinal(), pa.int32()).cast(pa.date32()),
        "country": column(place, lambda one: one["form"]["enquiry"].get("country"), pa.string()),
        "stern": column(boat, lambda one: one["form"]["boat"].get("stern"), pa.string()),
        "status": column(state, lambda one: one["status"], pa.string()),
        "loa_mm": column(boat, lambda one: one["form"]["boat"].get("loa_mm"), pa.float64()),
        "offset_mm": column(place, lambda one: one["placement"].get("offset_mm"), pa.float64()),
    }
    pq.write_table(pa.table(found), file, compression="zstd")
    return size


def fill(url: str, file: str) -> int:
    """Put the records of a Parquet file straight into a database, documents left out: nothing here reads them."""
    from service.store import dialect, schema  # noqa: PLC0415 - each step loads what it needs

    engine = dialect.connect(dialect.address(url))
    table = pq.read_table(file)
    at = datetime(2026, 1, 1, tzinfo=UTC)
    number = 0
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        for part in table.to_batches(AT_ONCE):
            rows, boats = [], []
            for one in part.to_pylist():
                number += 1
                boats.append({"id": f"boat-{number:012d}", "key": f"record:{number}", "created": at})
                name = f"{number:012d}"
                own = {"id": f"record-{name}", "reference": f"bench-{number}", "boat_id": f"boat-{name}"}
                rows.append({**own, "head": 1, "created": at, **one})
            dialect.insert(connection, schema.boats, boats)
            dialect.insert(connection, schema.records, rows)
    if engine.dialect.name == "postgresql":
        with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
            connection.exec_driver_sql("VACUUM ANALYZE records")  # as a server does by itself after so many new rows
    engine.dispose()
    return number


def count(url: str) -> int:
    """Count alone, as the report asks for it, and return how many boats were counted."""
    from service.store.demand import Counting  # noqa: PLC0415 - each step loads what it needs

    asked = Counting(("shipped", "installed"), None, AS_OF)
    with _opened(url).reading() as uow:
        found = uow.demand.counted(asked)
    return _same(found.by_month.values(), found.by_place.values())


def _same(one: Any, other: Any) -> int:  # noqa: ANN401 - counts
    if sum(one) != sum(other):
        raise SystemExit("the counts by month and by place differ")
    return int(sum(one))


def _opened(url: str) -> Any:  # noqa: ANN401 - a store
    from service import bootstrap  # noqa: PLC0415 - each step loads what it needs

    return bootstrap.open_store(bootstrap.settings(url))


BAND = (
    "CASE WHEN loa_mm < 8000 THEN 0 WHEN loa_mm < 10000 THEN 1 WHEN loa_mm < 12000 THEN 2 WHEN loa_mm < 14000 THEN 3 "
    "WHEN loa_mm IS NOT NULL THEN 4 END"
)
SIDE = "CASE WHEN abs(offset_mm) <= 25 THEN 0 WHEN offset_mm > 0 THEN 1 WHEN offset_mm IS NOT NULL THEN -1 END"


def duckdb(file: str) -> int:
    """Count the same with DuckDB over the Parquet file."""
    import duckdb as engine  # noqa: PLC0415 - each step loads what it needs

    source = f"FROM '{file}' WHERE status IN ('shipped', 'installed') AND date <= DATE '{AS_OF}'"
    codes = "gear, lower, upper, shaft"
    months = engine.sql(
        f"SELECT {codes}, year(date) * 12 + month(date) AS m, count(*) {source} GROUP BY {codes}, m"
    ).fetchall()
    places = engine.sql(
        f"SELECT {codes}, country, {BAND} AS band, stern, {SIDE} AS side, count(*) {source} GROUP BY ALL"
    ).fetchall()
    engine.sql(f"SELECT status, date > DATE '{AS_OF}' AS late, count(*) FROM '{file}' GROUP BY ALL").fetchall()  # noqa: S608 - the same
    return _same([row[-1] for row in months], [row[-1] for row in places])


def pandas(file: str) -> int:
    """Count the same with plain pandas over the Parquet file."""
    import pandas as pd  # noqa: PLC0415 - each step loads what it needs

    every = pd.read_parquet(file, columns=list(COLUMNS))
    every.groupby(["status", pd.to_datetime(every.date) > pd.Timestamp(AS_OF)]).size()
    mine = every[every.status.isin(("shipped", "installed")) & (pd.to_datetime(every.date) <= pd.Timestamp(AS_OF))]
    dates = pd.to_datetime(mine.date)
    codes = ["gear", "lower", "upper", "shaft"]
    mine = mine.assign(
        month=dates.dt.year * 12 + dates.dt.month,
        band=pd.cut(mine.loa_mm, [0, 8000, 10000, 12000, 14000, 1e9], right=False, labels=False),
        side=np.sign(mine.offset_mm.where(mine.offset_mm.abs() > 25, mine.offset_mm * 0)),  # noqa: PLR2004 - mm
    )
    months = mine.groupby([*codes, "month"], dropna=False).size()
    places = mine.groupby([*codes, "country", "band", "stern", "side"], dropna=False).size()
    return _same(months, places)


STEPS: dict[str, Callable[..., int]] = {
    "parquet": parquet, "fill": fill, "count": count, "duckdb": duckdb, "pandas": pandas,
}  # fmt: skip


def main() -> None:
    """Run a step and print what it took: seconds, those of the processor, and the most memory held."""
    start, worked = time.perf_counter(), time.process_time()
    counted = STEPS[sys.argv[1]](*sys.argv[2:])
    print(
        json.dumps(
            {
                "seconds": time.perf_counter() - start,
                "cpu": time.process_time() - worked,
                "peak_mb": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000,
                "counted": counted,
            }
        )
    )


if __name__ == "__main__":
    main()
