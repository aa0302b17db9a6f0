"""Whether the cutting table of each size lists the pieces that are cut.

In: a case. Out: notes.
Invariant: a size's cutting table has a row for each piece, under its own fabric, with the
cut size and the number of the plan.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.model.cutplan import Piece
from publish.model.words import Row, Table
from publish.notes import Note, error
from publish.proof.booklet.claims import is_cutting
from publish.proof.booklet.lengths import said
from publish.proof.case import Case, Code

CODES = {
    "P806": Code(
        "The cutting table does not say what is cut",
        "the maker cuts a wrong piece, or none",
        "`B | 10 1/2 in square | 16`, where 18 squares of 10 in are sewn",
        "`B | 10 in square | 18`, as the plan says",
    ),
}

Listed = dict[str, tuple[Row, str | None, Table]]
"""By letter: the row, its group's fabric, and its table."""


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each piece that a cutting table leaves out or tells otherwise."""
    for key in case.keys:
        rows = _rows(case, key)
        for piece in case.plans[key].pieces:
            what = f"piece {piece.letter} of the {key}"
            if piece.letter not in rows:
                yield _note(case, key, f"{what} is not in the cutting table", piece, "no row")
                continue
            wrong = _wrong(case, piece, *rows[piece.letter])
            if wrong:
                yield _note(case, key, f"the cutting table tells {what} wrongly", piece, wrong)


def _rows(case: Case, size: str) -> Listed:
    found: Listed = {}
    for section in case.manual.sections:
        if not is_cutting(section) or section.sizes not in ((size,), *_alone(case, size)):
            continue
        for table in (b for b in section.blocks if isinstance(b, Table)):
            fabric: str | None = None
            for row in table.rows:
                fabric = row.fabric if row.kind == "group" else fabric
                found.setdefault(row.cells[0].strip("*"), (row, fabric, table))
    return found


def _alone(case: Case, size: str) -> tuple[tuple[str, ...], ...]:
    return ((),) if case.keys == (size,) else ()


def _wrong(case: Case, piece: Piece, row: Row, fabric: str | None, table: Table) -> str:
    """Return what a row says that is not so; empty when it is right."""
    names, head = ("piece", "size", "count"), dict(zip(table.head, row.cells, strict=False))
    told = {n: case.words.text("chapter-cutting", part=n) for n in names}
    cells = {name: head[word] for name, word in told.items() if word in head}
    size = cells.get("size", " ".join(row.cells))
    lengths = {length.inches for length in said(size) if length.unit in case.units}
    if "count" in cells and sum(map(int, re.findall(r"\d+", cells["count"]))) != piece.count:
        return f"{cells['count']} of them"
    if not {piece.width, piece.length} <= lengths and not piece.template:
        return size
    if "piece" in cells and case.words.value(piece.called).lower() not in cells["piece"].lower():
        return cells["piece"]
    if fabric is not None and fabric != piece.fabric:
        return f"cut from {fabric}"
    return ""


def _note(case: Case, size: str, what: str, piece: Piece, received: str) -> Note:
    expected = (
        f"{piece.count} of {piece.fabric}, {case.text(piece.width)} × {case.text(piece.length)}"
    )
    return error("P806", case.size_place(size), what, expected=expected, received=received)
