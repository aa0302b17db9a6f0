"""HiGHS behind two plain functions: a linear and an integer covering model.

In: columns with costs, rows with lower and upper limits. Out: `Answer`.
Invariant: every solver object runs with the same settings on one thread, its status is
checked, and the limits are counts of nodes, never seconds, so that a plan does not
depend on the machine. Anything but a solution or "no solution" raises `SolverError`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import highspy
import numpy as np

INFINITY = float(highspy.kHighsInf)


class SolverError(RuntimeError):
    """HiGHS ended in a state that the caller cannot use."""


@dataclass(frozen=True)
class Column:
    """A variable: cost per unit, limits, and its (row, coefficient) entries."""

    cost: float
    entries: tuple[tuple[int, float], ...]
    upper: float = INFINITY


@dataclass(frozen=True)
class Answer:
    """A solved model. `proven` says that no better solution exists; `values` is None
    when there is no solution, or none was found within the node limit."""

    values: tuple[float, ...] | None
    duals: tuple[float, ...] = ()
    proven: bool = True


class Quiet(highspy.Highs):
    """HiGHS that prints nothing: its constructor would otherwise write a banner to the
    standard output, where `--json` must stand alone."""

    def enableCallbacks(self) -> None:  # noqa: N802  (the constructor's own hook)
        self.silent()
        super().enableCallbacks()  # type: ignore[no-untyped-call]


def solver(nodes: int | None = None) -> highspy.Highs:
    """Return a HiGHS object with the settings that all of ours share."""
    highs = Quiet()  # type: ignore[no-untyped-call]
    for name, value in (
        ("output_flag", False),
        ("threads", 1),  # one global scheduler: a second value would fail the run
        ("parallel", "off"),
        ("random_seed", 0),
        ("mip_rel_gap", 0.0),
        ("mip_abs_gap", 1e-6),
        ("presolve", "off"),  # small models: it costs more than it saves
        # Searches near a relaxed solution took half of all time and shortened no plan of
        # tests/benchmarks/strips.py.
        ("mip_heuristic_run_rins", False),
        ("mip_heuristic_run_rens", False),
    ):
        _check(highs.setOptionValue(name, value), f"option {name}")
    if nodes is not None:
        _check(highs.setOptionValue("mip_max_nodes", nodes), "option mip_max_nodes")
    return highs


def _check(status: highspy.HighsStatus, what: str) -> None:
    if status == highspy.HighsStatus.kError:
        raise SolverError(f"HiGHS failed: {what}")


def _fill(
    highs: highspy.Highs,
    columns: Sequence[Column],
    lower: Sequence[float],
    upper: Sequence[float],
    whole: bool,
) -> None:
    empty_i, empty_f = np.array([], dtype=np.int32), np.array([], dtype=np.float64)
    for low, high in zip(lower, upper, strict=True):
        _check(highs.addRow(low, high, 0, empty_i, empty_f), "row")
    add_columns(highs, columns)
    if whole:
        which = np.arange(len(columns), dtype=np.int32)
        kinds = np.full(len(which), int(highspy.HighsVarType.kInteger), dtype=np.uint8)
        _check(highs.changeColsIntegrality(len(which), which, kinds), "integrality")


def add_columns(highs: highspy.Highs, columns: Sequence[Column]) -> None:
    """Append columns to a model."""
    starts: list[int] = []
    rows: list[int] = []
    values: list[float] = []
    for column in columns:
        starts.append(len(rows))
        rows.extend(row for row, _ in column.entries)
        values.extend(value for _, value in column.entries)
    _check(
        highs.addCols(
            len(columns),
            np.array([c.cost for c in columns]),
            np.zeros(len(columns)),
            np.array([c.upper for c in columns]),
            len(rows),
            np.array(starts, dtype=np.int32),
            np.array(rows, dtype=np.int32),
            np.array(values, dtype=np.float64),
        ),
        "columns",
    )


class Linear:
    """A linear model that grows by columns: minimise the cost."""

    def __init__(self, lower: Sequence[float], columns: Sequence[Column]) -> None:
        self._highs = solver()
        _fill(self._highs, columns, lower, [INFINITY] * len(lower), whole=False)

    def add(self, columns: Sequence[Column]) -> None:
        add_columns(self._highs, columns)

    def solve(self) -> Answer:
        """Return the optimum with the row duals; SolverError if there is none."""
        _check(self._highs.run(), "run")
        status = self._highs.getModelStatus()
        if status != highspy.HighsModelStatus.kOptimal:
            raise SolverError(f"linear model: {self._highs.modelStatusToString(status)}")
        found = self._highs.getSolution()
        return Answer(tuple(found.col_value), tuple(found.row_dual))


def integer(
    columns: Sequence[Column],
    lower: Sequence[float],
    upper: Sequence[float],
    nodes: int,
    start: Sequence[float] | None = None,
) -> Answer:
    """Minimise the cost over whole numbers, searching at most `nodes` nodes."""
    highs = solver(nodes)
    _fill(highs, columns, lower, upper, whole=True)
    if start is not None:
        given = highspy.HighsSolution()
        given.col_value = list(start)
        _check(highs.setSolution(given), "start")
    _check(highs.run(), "run")
    status = highs.getModelStatus()
    if status == highspy.HighsModelStatus.kInfeasible:
        return Answer(None)
    proven = status == highspy.HighsModelStatus.kOptimal
    if not proven and status not in (
        highspy.HighsModelStatus.kSolutionLimit,
        highspy.HighsModelStatus.kIterationLimit,
    ):
        raise SolverError(f"integer model: {highs.modelStatusToString(status)}")
    feasible = int(highspy.SolutionStatus.kSolutionStatusFeasible)
    if highs.getInfo().primal_solution_status != feasible:
        return Answer(None, proven=False)
    return Answer(tuple(highs.getSolution().col_value), proven=proven)
