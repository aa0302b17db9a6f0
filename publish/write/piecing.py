"""The chapter on piecing: a section for each block, all sizes that make it alike told in one.

In: a book, the moments of piecing. Out: sections; none when every ground is whole cloth.
Invariant: a block's section holds the operations that are made for it and for none before it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from publish.model.words import Block, FigureBlock, Paragraph, Row, Section, Table
from publish.operations.operation import Moment
from publish.operations.piecing import UnitWork
from publish.words import Language
from publish.words.values import (
    Count,
    Length,
    Named,
    Rectangle,
    Said,
    Several,
    Stitch,
    Value,
    Word,
    said,
)
from publish.write.context import Book
from publish.write.practice import PIECING_STITCH
from publish.write.steps import figure, slug
from publish.write.tell import Asked, Teller, alike, titles

CHAPTER = "piecing"
CHAIN = 4
"""From so many alike on, feeding one after another saves thread and time."""
MANY = 5
"""A block of so many patches is shown before its parts are sewn."""

OF_SIZE = ("way", "shared", "first", "again", "before")
"""Values that may differ in a unit that is the same: where it is pressed, what was told before."""
NUMBERED = ("name-unit", "name-numbered", "name-row")
"""Names whose number is part of them."""

Work = tuple[UnitWork, Moment]
Blocks = Mapping[str, Sequence[Work]]
"""By block, what is done for it and for none before it."""


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on piecing."""
    made = {key: _by_block(moments) for key, moments in book.making.chapter(CHAPTER).items()}
    made = {key: made[key] for key in book.keys if made.get(key)}
    if not made:
        return ()
    words = book.words
    blocks = dict.fromkeys(block for found in made.values() for block in found)
    what = book.ground_kind(blocks)
    values: dict[str, Value] = {
        "what": Word(what),
        "seam": Length(book.pattern.sewing.seam),
        "stitch": Stitch(PIECING_STITCH.value),
    }
    title, lead = (words.text(f"chapter-{CHAPTER}", values, part) for part in ("", "lead"))
    intro = _intro(
        book, [work for found in made.values() for works in found.values() for work in works]
    )
    groups = [(block, keys) for block in blocks for keys in _alike(words, made, block)]
    if len(groups) == 1:
        ((block, keys),) = groups
        only = book.only(keys)
        first = (Paragraph(words.text("part-only", {"sizes": titles(book, keys)})),) if only else ()
        told = _block(book, made, block, keys, CHAPTER)
        return (Section(CHAPTER, title, (*first, *intro, *told), lead, sizes=only),)
    found = [Section(CHAPTER, title, intro, lead)]
    apart = {block for block, _ in groups if sum(b == block for b, _ in groups) > 1}
    found += [
        _section(book, made, group, title, apart=group[0] in apart, several=len(blocks) > 1)
        for group in groups
    ]
    return tuple(found)


def _alike(words: Language, made: Mapping[str, Blocks], block: str) -> list[tuple[str, ...]]:
    """Return the sizes of a block in groups in which its units are the same but for numbers."""
    return alike(
        {key: _forms(words, found[block]) for key, found in made.items() if block in found}
    )


def _forms(words: Language, works: Sequence[Work]) -> dict[str, object]:
    """Return what each operation of a block names, by its key and message, without numbers."""
    return {
        f"{moment.operation.key} {words.in_full(moment.operation.says)}": tuple(
            (name, _bare(value))
            for name, value in moment.operation.values(moment).items()
            if name not in OF_SIZE
        )
        for _, moment in works
    }


def _bare(value: Value) -> object:
    """Return a value with every count and length in it taken for any other."""
    if isinstance(value, Count | Length | Rectangle):
        return type(value)
    if isinstance(value, Said):
        return value.message, tuple(
            (name, v if value.message in NUMBERED else _bare(v)) for name, v in value.values
        )
    if isinstance(value, Several):
        return tuple(map(_bare, value.items))
    return value


def _by_block(moments: Sequence[Moment]) -> dict[str, list[Work]]:
    found: dict[str, list[Work]] = {}
    for moment in moments:
        if isinstance(moment.operation, UnitWork):
            work = moment.operation, moment
            found.setdefault(moment.operation.block, []).append(work)
    return found


def _section(
    book: Book,
    made: Mapping[str, Blocks],
    group: tuple[str, tuple[str, ...]],
    title: str,
    *,
    apart: bool,
    several: bool,
) -> Section:
    """Return a block's own section, of the sizes in which it is made alike; `apart` from others
    that make it differently, beside `several` blocks."""
    (block, keys), words = group, book.words
    name = [CHAPTER, *(keys if apart else ()), *((block,) if several else ())]
    if several:
        title = words.text("piecing-block", {"block": book.block_called(block)})
    only = book.only(keys)
    if apart or only:
        names = words.value(titles(book, keys)).replace("**", "")
        title = words.text("piecing-of", {"title": Named(title), "size": Named(names)})
    told = _block(book, made, block, keys, slug(*name))
    return Section(slug(*name), title, told, sizes=only, parent=CHAPTER)


def _intro(book: Book, works: Sequence[Work]) -> tuple[Block, ...]:
    """Say what holds for all units: numbers, sewing many in a chain."""
    words = book.words
    units = [o for o, _ in works if isinstance(o.the, Said) and o.the.message == "name-unit"]
    found = [words.text("piecing-units")] if units else []
    if any(o.count >= CHAIN for o in units):
        found.append(words.text("piecing-chain"))
    return (Paragraph(" ".join(found)),) if found else ()


def _block(
    book: Book, made: Mapping[str, Blocks], block: str, keys: tuple[str, ...], section: str
) -> tuple[Block, ...]:
    """Return what one block's section holds."""
    words, first = book.words, keys[0]
    many = len(book.block(block).patches) >= MANY
    the = said("the", name=book.block_called(block))
    opening: list[Block] = []
    told = _opening(book, made, block, keys, many)
    if told:
        opening.append(Paragraph(told))
    if len(keys) > 1:
        opening.append(_table(book, made, block, keys))
    if many:
        caption = words.text("block-shown", {"the": the})
        opening.append(FigureBlock(figure("block", first, caption, block=block), "half"))
    old = {k: slug(CHAPTER, k, *((block,) if len(made[k]) > 1 else ())) for k in keys}
    teller = Teller(book, CHAPTER, Asked(aliases=old))
    moments = {k: [moment for _, moment in made[k][block]] for k in keys}
    return (*opening, *teller.blocks(section, keys, moments))


def _opening(
    book: Book, made: Mapping[str, Blocks], block: str, keys: tuple[str, ...], many: bool
) -> str:
    """Return what the block is called in the trade, how large it is and how many to make."""
    words, spec, found = book.words, book.block(block), []
    works = [work for key in keys for work in made[key][block]]
    if len(keys) > 1:
        found.append(words.text("piecing-sizes", {"size": Named(book.title(keys[0]))}))
    elif many or len(made[keys[0]]) > 1:
        found += [
            words.text(
                "finishes",
                {
                    "the": said("the", name=book.sized_called(keys[0], block, side)),
                    "side": Length(side),
                    "count": Count(count),
                },
            )
            for side, count in book.sides(keys[0], block).items()
        ]
    if spec.traditional and found:
        found.append(words.text("traditional", {"name": Named(spec.traditional)}))
    if any(isinstance(o.the, Said) and o.the.message == "name-numbered" for o, _ in works):
        found.append(words.text("block-variants"))
    before = dict.fromkeys(v for key in keys for v in _made_before(made[key], block))
    if before and found:
        found.append(words.text("also-takes", {"units": Several(tuple(before))}))
    return " ".join(found)


def _made_before(blocks: Blocks, block: str) -> list[Value]:
    """Return the units that a block takes and that were made for one before it."""
    makers = {o.unit: o for b, works in blocks.items() if b != block for o, _ in works}
    took = (part.key for _, moment in blocks[block] for part, _ in moment.took)
    return [makers[key].the for key in dict.fromkeys(took) if key in makers]


def _table(book: Book, made: Mapping[str, Blocks], block: str, keys: tuple[str, ...]) -> Table:
    """Return how many of each unit each size takes, and what each measures, once it is sewn."""
    words = book.words
    cells: dict[Value, dict[str, str]] = {}
    for key in keys:
        last = {o.unit: (o, moment) for o, moment in made[key][block]}
        for unit, (operation, moment) in last.items():
            part = next((p for p, _ in reversed(moment.gave) if p.key == unit), None)
            values: dict[str, Value] = {"count": Count(operation.count)}
            if part is not None:
                values["size"] = Rectangle(part.width.told, part.height.told)
            cell = "unit-cell" if part is not None else "unit-cell-count"
            cells.setdefault(operation.the, {})[key] = words.text(cell, values)
    rows = tuple(
        Row((words.capital(words.value(the)), *(mine.get(key, "–") for key in keys)))
        for the, mine in cells.items()
    )
    the = {"the": said("the", name=book.block_called(block))}
    return Table(
        slug("units", *keys, block),
        words.text("units-table", the),
        ("", *(book.title(key) for key in keys)),
        rows,
        "l" * (1 + len(keys)),
    )
