"""Whether blocks, rows, sizes, fabrics and spools are counted rightly in words.

In: a case. Out: notes.
Invariant: a count with one of these nouns is the design's own, wherever the booklet says it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from math import ceil

from publish.model.size import Size
from publish.model.words import Table
from publish.notes import Note, Place, warning
from publish.proof.booklet.claims import COUNT, Told, number, said_at, step_place
from publish.proof.booklet.words import passages
from publish.proof.case import Case, Code

CODES = {
    "P840": Code(
        "A count in words is not the design's",
        "the maker looks for the missing block, or buys for another",
        "`subtitle: A quilt in four sizes`, of a pattern with three",
        "`subtitle: A quilt in three sizes`",
    ),
}

_SIZES = re.compile(rf"({COUNT}) sizes\b", re.IGNORECASE)
_FABRICS = re.compile(rf"^({COUNT}) fabrics\.|({COUNT}) fabrics,", re.IGNORECASE)
_FOLDS = re.compile(r"\b(four|six|eight|twelve|sixteen)(?:-fold|th of the (?!yard))", re.IGNORECASE)
_FOLD_NUMBERS = {"four": 4, "six": 6, "eight": 8, "twelve": 12, "sixteen": 16}
_KINDS = re.compile(
    rf"(?:^|; |, (?={COUNT} [^;,]+ blocks?\b))({COUNT})(?: ([^;,]+?) blocks?\b)?", re.IGNORECASE
)
"""In a table: a count, and the kind of block that it counts where there are several."""
_SPOOL = re.compile(r"\bspool is (\d+) m\b")
_POINTS = {"Points on each motif": "tips", "Inside corners on each motif": "inside_corners"}
_SPOOLS = re.compile(rf"(?<![\d.])(\d+) m\)?(?: \([^)]*\))?: ({COUNT}) spools?\b")


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each count that is wrong."""
    yield from _sizes_and_folds(case)
    fabrics = {f for _, f, _ in case.fabric_plans()}
    for passage in passages(case.manual):
        for found in _FABRICS.finditer(passage.text):
            count = found[1] or found[2]
            if number(count) != len(fabrics):
                place = said_at(case, passage)
                yield _note(case, passage.where, "fabrics", len(fabrics), count, place)
    yield from _tables(case)


def _sizes_and_folds(case: Case) -> Iterator[Note]:
    """What the designer says on the covers."""
    folds = {m.folds for m in case.pattern.motifs.values()}
    texts = (
        (("subtitle",), case.pattern.subtitle),
        (("publication", "blurb"), case.pattern.publication.blurb),
    )
    for way, text in texts:
        key, place = way[-1], case.pattern.place(*way)
        for count in _SIZES.findall(text):
            if number(count) != len(case.pattern.sizes):
                yield _note(case, f"the {key}", "sizes", len(case.pattern.sizes), count, place)
        for word in _FOLDS.findall(text):
            if folds and _FOLD_NUMBERS[word.lower()] not in folds:
                yield _note(case, f"the {key}", "folds", max(folds), word, place)


def _tables(case: Case) -> Iterator[Note]:
    titles = {case.sizes[k].title: case.sizes[k] for k in case.keys}
    for table in (b for s in case.manual.sections for b in s.blocks if isinstance(b, Table)):
        spool = next((int(m[1]) for n in table.notes if (m := _SPOOL.search(n))), None)
        for row in table.rows:
            for title, cell in zip(table.head, row.cells, strict=False):
                for metres, count in _SPOOLS.findall(cell) if spool else ():
                    needed = max(1, ceil(int(metres) / (spool or 1)))
                    if number(count) != needed:
                        yield _note(case, f"the table {table.title}", "spools", needed, count)
                if title in titles and row.cells[0] in _POINTS:
                    yield from _points(case, titles[title], row.cells[0], cell)
                if row.cells[0] == "Blocks" and title in titles:
                    yield from _blocks(case, titles[title], table.title, cell)


def _made(size: Size) -> Counter[str]:
    """Return how many blocks of each kind a size has, those of rounds included."""
    laid = [b for row in (*size.arrangement, *size.alternates) for b in row]
    return Counter([*laid, *(b.block for layer in size.rounds for b in layer.blocks)])


def _blocks(case: Case, size: Size, table: str, cell: str) -> Iterator[Note]:
    """`Two lock blocks, 8 in; one path block, 8 in`: each count, and all together."""
    said, made = _KINDS.findall(cell), _made(size)
    where = f"the table {table}"
    total = sum(number(count) for count, _ in said)
    if said and total != made.total():
        received = " + ".join(count for count, _ in said)
        yield _note(case, where, "blocks", made.total(), received)
        return
    for count, name in said:
        keys = [k for k in made if _plain(k) == _plain(name)]
        if len(keys) == 1 and number(count) != made[keys[0]]:
            yield _note(case, where, f"{name} blocks", made[keys[0]], count)


def _plain(name: str) -> str:
    return " ".join(re.findall(r"[^\W_]+", name.lower()))


def _points(case: Case, size: Size, name: str, cell: str) -> Iterator[Note]:
    shapes = case.drafts[size.key].motifs.values()
    found = [getattr(shape, _POINTS[name]) for shape in shapes]
    if len(found) == 1 and cell.isdigit() and int(cell) != found[0]:
        yield _note(case, f"the table of the {size.key}", name.lower(), found[0], cell)


def _note(
    case: Case, where: str, what: str, right: int, count: str, one: Told | Place | None = None
) -> Note:
    place = step_place(case, one) if isinstance(one, Told) else one or case.pattern.place("title")
    return warning(
        "P840",
        place,
        f"the number of {what} in {where} is not the design's",
        expected=str(right),
        received=count,
    )
