"""Whether each size is told at its finished size wherever the booklet lists the sizes.

In: a case. Out: notes.
Invariant: the cover, the back cover and the table of sizes name every size once, with the
finished width and height of its top.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.words import Table
from publish.notes import Note, error
from publish.proof.booklet.lengths import said
from publish.proof.case import Case, Code

CODES = {
    "P809": Code(
        "A finished size or length is not told as it is",
        "the quilt does not fit where it goes",
        "`Throw: 62 in square` on the cover of a throw of 64 in",
        "`Throw: 64 in (162.6 cm) square`, as it is computed",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each list that leaves a size out or tells it wrongly."""
    lists = [("cover", case.manual.cover.sizes), ("back cover", case.manual.back.sizes)]
    lists += _tables(case)
    for where, sizes in lists:
        by_title = dict(sizes)
        for key in case.keys:
            size = case.sizes[key]
            words = by_title.get(size.title, "nothing")
            wanted = {case.near(size.width), case.near(size.height)}
            if {length.inches for length in said(words) if length.unit in case.units} != wanted:
                yield error(
                    "P809",
                    case.size_place(key),
                    f"the {where} does not tell the finished size of the {key}",
                    expected=" × ".join(case.text(v) for v in (size.width, size.height)),
                    received=words,
                )


def _tables(case: Case) -> list[tuple[str, tuple[tuple[str, str], ...]]]:
    """Return the rows of finished sizes, as the covers list them."""
    return [
        (f"table {table.title}", tuple(zip(table.head[1:], row.cells[1:], strict=False)))
        for section in case.manual.sections
        for table in section.blocks
        if isinstance(table, Table)
        for row in table.rows
        if row.cells[0].lower() == case.words.text("size-finished").lower()
    ]
