"""Whether the tables of materials say what is to be bought for each size.

In: a case. Out: notes.
Invariant: each fabric has a row with the length to buy in the column of each size that uses
it; batting and pillow form stand there at their sizes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from publish.model.cutplan import BattingPlan, FabricPlan
from publish.model.words import Row, Table
from publish.notes import Note, Place, error
from publish.proof.booklet.claims import COUNT, number
from publish.proof.booklet.lengths import said
from publish.proof.case import Case, Code
from publish.units import metres_text, yards_text
from publish.words.values import Named

CODES = {
    "P807": Code(
        "The materials do not say what is bought",
        "the maker stands in the shop with a wrong list",
        "`Salt linen | 2 1/4 yd`, where the plan needs 2 3/8 yd and buys 2 1/2 yd",
        "`Salt linen | 2 1/2 yd (2.30 m)`",
    ),
}

Cells = dict[tuple[str, str], str]
"""Cell by row (a fabric's key or the row's first words, in small letters) and size title."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each purchase that the materials lack or tell otherwise."""
    yield from _precuts(case)
    cells = _cells(case)
    for key, fabric, plan in case.fabric_plans():
        cell = cells.get((fabric, case.sizes[key].title), "")
        wanted = _purchase(case, plan)
        if plan.precut is not None:
            count = plan.precut.packets if plan.precut.sold_as.packet > 1 else plan.precut.used
            wanted = (str(count), "")
            cell = _first_count(cell)
        if not all(text in cell for text in wanted):
            yield _note(
                case.pattern.place("fabrics", fabric),
                f"{case.name(fabric)} for the {key}",
                " and ".join(filter(None, wanted)),
                cell,
            )
    for key in case.keys:
        title, size, plan_ = case.sizes[key].title, case.sizes[key], case.plans[key]
        if plan_.batting is not None:
            sides = set(map(case.near, (plan_.batting.width, plan_.batting.height)))
            cell = cells.get((_named(case, "material-batting"), title), "")
            if (
                _inches(case, cell.split(";")[0]) != sides
                or _package(case, plan_.batting) not in cell
            ):
                yield _note(
                    case.size_place(key, "batting"),
                    f"the batting of the {key}",
                    " × ".join(map(case.text, sorted(sides))),
                    cell,
                )
        if size.pillow is not None:
            cell = cells.get((_named(case, "material-form"), title), "")
            if _inches(case, cell) != {case.near(size.pillow.form)}:
                yield _note(
                    case.size_place(key, "pillow", "form"),
                    f"the form of the {key}",
                    case.text(size.pillow.form),
                    cell,
                )


def _package(case: Case, plan: BattingPlan) -> str:
    return case.words.value(plan.package.called) if plan.package else ""


def _named(case: Case, message: str) -> str:
    """Return what the row of a message is found by."""
    return _first_words(case.words.text(message, {"name": Named("")}))


def _purchase(case: Case, plan: FabricPlan) -> tuple[str, ...]:
    """Return what a cell tells of a length to buy: in what leads, and in what follows."""
    first = case.words.measures.bought(plan.buy, plan.buy_metric)
    if not case.measures.both:
        return (first,)
    other = (
        yards_text(plan.buy)
        if case.measures.metric
        else case.words.measures.marked(metres_text(plan.buy_metric))
    )
    return first, other


def _first_count(cell: str) -> str:
    """Return the count that a cell begins with, in figures: `5` of `Five strips`."""
    found = re.match(COUNT, cell.strip(), re.IGNORECASE)
    return cell if found is None else str(number(found.group()))


def _precuts(case: Case) -> Iterator[Note]:
    """The table of precuts tells from how many each fabric can be cut, size after size."""
    keys = {case.sizes[k].title: k for k in case.keys}
    for table in (b for s in case.manual.sections for b in s.blocks if isinstance(b, Table)):
        key = case.keys[0] if len(case.keys) == 1 else ""
        for row in table.rows if table.key == "precuts" else ():
            key = keys.get(row.cells[0], key) if row.kind == "group" else key
            plan = case.plans[key].fabrics.get(row.fabric or "") if key else None
            for other, cell in zip(plan.alternatives if plan else (), row.cells[1:], strict=False):
                told = cell.split(",")[0]
                if other.count is not None and told != str(other.count):
                    yield _note(
                        case.pattern.place("fabrics", row.fabric or ""),
                        f"{case.name(row.fabric or '')} for the {key}, cut from precuts",
                        str(other.count),
                        cell,
                    )


def _cells(case: Case) -> Cells:
    titles = {case.sizes[k].title for k in case.keys}
    found: Cells = {}
    for section in case.manual.sections:
        for table in (b for b in section.blocks if isinstance(b, Table)):
            for row in table.rows if titles & set(table.head) else ():
                for title, cell in zip(table.head[1:], row.cells[1:], strict=False):
                    found.setdefault((_name(row), title), cell)
    return found


def _name(row: Row) -> str:
    return row.fabric or _first_words(row.cells[0])


def _first_words(text: str) -> str:
    return text.split(":")[0].strip("* ").lower()


def _inches(case: Case, text: str) -> set[Fraction]:
    return {length.inches for length in said(text) if length.unit in case.units}


def _note(place: Place, what: str, expected: str, cell: str) -> Note:
    return error(
        "P807",
        place,
        f"the materials do not say what to buy: {what}",
        expected=expected,
        received=cell or "no such cell",
    )
