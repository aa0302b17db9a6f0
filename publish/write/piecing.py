"""The chapter on piecing: a section for each size, or for each block of a size.

In: a book, the moments of piecing. Out: sections; none when every ground is whole cloth.
Invariant: a block's section holds the operations that are made for it and for none before it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from publish.model.words import Block, FigureBlock, Paragraph, Section
from publish.operations.operation import Moment
from publish.operations.piecing import UnitWork
from publish.words import language
from publish.words.values import Count, Length, Named, Said, Several, Stitch, Titles, Value, Word
from publish.write.context import Book
from publish.write.practice import PIECING_STITCH
from publish.write.steps import figure, slug
from publish.write.tell import Asked, Teller

CHAPTER = "piecing"
CHAIN = 4
"""From so many alike on, feeding one after another saves thread and time."""
MANY = 5
"""A block of so many patches is shown before its parts are sewn."""

Work = tuple[UnitWork, Moment]
Blocks = Mapping[str, Sequence[Work]]
"""By block, what is done for it and for none before it."""


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on piecing."""
    made = {key: _by_block(moments) for key, moments in book.making.chapter(CHAPTER).items()}
    made = {key: made[key] for key in book.keys if made.get(key)}
    if not made:
        return ()
    words = language(measures=book.pattern.measures)
    ground = book.ground_word(dict.fromkeys(b for blocks in made.values() for b in blocks))
    what = {"ground": "ground", "grounds and blocks": "both"}.get(ground, "blocks")
    values: dict[str, Value] = {
        "what": Word(what),
        "seam": Length(book.pattern.sewing.seam),
        "stitch": Stitch(PIECING_STITCH.value),
    }
    title, lead = (words.text(f"chapter-{CHAPTER}", values, part) for part in ("", "lead"))
    intro = _intro(
        book, [work for blocks in made.values() for works in blocks.values() for work in works]
    )
    if len(made) == 1 and len(next(iter(made.values()))) == 1:
        ((key, blocks),) = made.items()
        only = book.only([key])
        titles = Titles((book.title(key),))
        first = (Paragraph(words.text("part-only", {"sizes": titles})),) if only else ()
        told = _block(book, key, blocks, next(iter(blocks)), CHAPTER)
        return (Section(CHAPTER, title, (*first, *intro, *told), lead, sizes=only),)
    found = [Section(CHAPTER, title, intro, lead)]
    found += [_section(book, k, bs, b, title) for k, bs in made.items() for b in bs]
    return tuple(found)


def _by_block(moments: Sequence[Moment]) -> dict[str, list[Work]]:
    found: dict[str, list[Work]] = {}
    for moment in moments:
        if isinstance(moment.operation, UnitWork):
            work = moment.operation, moment
            found.setdefault(moment.operation.block, []).append(work)
    return found


def _section(book: Book, key: str, blocks: Blocks, block: str, title: str) -> Section:
    words, many = language(measures=book.pattern.measures), len(blocks) > 1
    name = slug(CHAPTER, key, block) if many else slug(CHAPTER, key)
    if many:
        title = words.text("piecing-block", {"block": Named(book.block_name(block))})
    of = {"title": Named(title), "size": Named(book.title(key))}
    return Section(
        name,
        words.text("piecing-of", of),
        _block(book, key, blocks, block, name),
        sizes=(key,),
        parent=CHAPTER,
    )


def _intro(book: Book, works: Sequence[Work]) -> tuple[Block, ...]:
    """Say what holds for all units: numbers, sewing many in a chain."""
    words = language(measures=book.pattern.measures)
    units = [o for o, _ in works if isinstance(o.the, Said) and o.the.message == "name-unit"]
    found = [words.text("piecing-units")] if units else []
    if any(o.count >= CHAIN for o in units):
        found.append(words.text("piecing-chain"))
    return (Paragraph(" ".join(found)),) if found else ()


def _block(book: Book, key: str, blocks: Blocks, block: str, section: str) -> tuple[Block, ...]:
    """Return what one block's section holds."""
    many = len(book.block(block).patches) >= MANY
    opening: list[Block] = []
    if len(blocks) > 1 or many:
        opening.append(Paragraph(_opening(book, key, blocks, block)))
    if many:
        the = {"the": Named(f"the {book.block_name(block)}")}
        caption = language(measures=book.pattern.measures).text("block-shown", the)
        opening.append(FigureBlock(figure("block", key, caption, block=block), "half"))
    teller = Teller(book, CHAPTER, Asked())
    told = teller.blocks(section, (key,), {key: [moment for _, moment in blocks[block]]})
    return (*opening, *told)


def _opening(book: Book, key: str, blocks: Blocks, block: str) -> str:
    """Return what the block is called in the trade, how large it is and how many to make."""
    words, spec = language(measures=book.pattern.measures), book.block(block)
    found = [
        words.text(
            "finishes",
            {
                "the": Named(f"the {book.sized_name(key, block, side)}"),
                "side": Length(side),
                "count": Count(count),
            },
        )
        for side, count in book.sides(key, block).items()
    ]
    if spec.traditional:
        found.append(words.text("traditional", {"name": Named(spec.traditional)}))
    mine = [o for o, _ in blocks[block]]
    if any(isinstance(o.the, Said) and o.the.message == "name-numbered" for o in mine):
        found.append(words.text("block-variants"))
    before = _made_before(blocks, block)
    if before:
        found.append(words.text("also-takes", {"units": Several(tuple(before))}))
    return " ".join(found)


def _made_before(blocks: Blocks, block: str) -> list[Value]:
    """Return the units that a block takes and that were made for one before it."""
    makers = {o.unit: o for b, works in blocks.items() if b != block for o, _ in works}
    took = (part.key for _, moment in blocks[block] for part, _ in moment.took)
    return [makers[key].the for key in dict.fromkeys(took) if key in makers]
