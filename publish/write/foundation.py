"""The chapter on foundation piecing: what holds for every section, then each size's own.

In: a book, the moments of the chapter. Out: a section, with a child for sizes that are alike.
Invariant: sizes are told in one child where they are alike to the last number; sections,
counts and cloth are those of the operations.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from publish.model.draft import FoundationSection
from publish.model.words import Block, Box, FigureBlock, Paragraph, Row, Section, Table
from publish.operations.foundation import LayFirstPatch, PatchWork, SewPatch
from publish.operations.operation import Moment
from publish.words.language import Language
from publish.words.values import Count, Named, Rectangle, Several, Value, Word, said
from publish.write.context import Book
from publish.write.steps import figure, slug
from publish.write.tell import Asked, Teller, titles

CHAPTER = "foundation"
HOW = ("print", "machine", "place", "sew", "flip", "on", "trim")
"""Steps that hold for every section."""
Made = Mapping[str, Sequence[Moment]]


def on_foundations(book: Book) -> tuple[str, ...]:
    """Return the sizes that have something sewn on foundations."""
    return tuple(k for k in book.keys if book.drafts[k].foundations)


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on foundation piecing; none when nothing is sewn on paper."""
    chapter = book.making.chapter(CHAPTER)
    made = {k: chapter[k] for k in book.keys if k in chapter}
    if not made:
        return ()
    keys = tuple(made)
    speak = book.words
    title, lead = (speak.text(f"chapter-{CHAPTER}", part=part) for part in ("", "lead"))
    how = {k: [m for m in ms if m.operation.step in HOW] for k, ms in made.items()}
    own = {k: [m for m in ms if m.operation.step not in HOW] for k, ms in made.items()}
    values: dict[str, Value] = {
        "several-sizes": Word("yes" if len(book.keys) > 1 else "no"),
        "section": Named(_shown(book, keys[0]).letter),
    }
    mirror = _mirror(speak)
    if len(keys) == 1:
        amid = own[keys[0]][0].operation.step, _size(book, keys, made)
        told = Teller(book, CHAPTER, Asked(values=values, amid=amid)).blocks(CHAPTER, keys, made)
        return (Section(CHAPTER, title, (mirror, *told), lead, sizes=book.only(keys)),)
    told = Teller(book, CHAPTER, Asked(values=values)).blocks(CHAPTER, keys, how)
    children = (_section(book, made, own, group, title) for group in _alike(made))
    return (Section(CHAPTER, title, (mirror, *told), lead), *children)


def _section(book: Book, made: Made, own: Made, keys: tuple[str, ...], title: str) -> Section:
    """Return the section of sizes whose foundations are sewn from the same cloth in one way."""
    speak, child = book.words, slug(CHAPTER, keys[0])
    names = speak.value(titles(book, keys)).replace("**", "")
    whole = speak.text("foundation-of", {"title": Named(title), "sizes": Named(names)})
    asked = Asked(aliases={key: slug(CHAPTER, key) for key in keys})
    told = Teller(book, CHAPTER, asked).blocks(child, keys, own)
    blocks = (*_size(book, keys, made), *told)
    return Section(child, whole, blocks, sizes=keys, parent=CHAPTER)


def _alike(made: Made) -> list[tuple[str, ...]]:
    """Return the sizes in groups that are told alike, to the last number."""
    groups: dict[object, list[str]] = {}
    for key, moments in made.items():
        form = tuple(
            (m.operation.key, m.operation.says, *m.operation.values(m).items(), *_cloth(m))
            for m in moments
        )
        groups.setdefault(form, []).append(key)
    return [tuple(found) for found in groups.values()]


def _cloth(moment: Moment) -> tuple[object, ...]:
    """Return the section, the number and the cut size of a patch that is sewn."""
    operation = moment.operation
    if not isinstance(operation, LayFirstPatch | SewPatch):
        return ()
    cloth = moment.before(operation.area.piece)
    sides = cloth.width.told, cloth.height.told
    return operation.paper, operation.area.number, operation.area.piece, sides


def _shown(book: Book, key: str) -> FoundationSection:
    """Return the section that pictures show: the first of three patches or more."""
    found = book.drafts[key].foundations
    return next((f for f in found if len(f.patches) > 2), found[0])


def _mirror(speak: Language) -> Box:
    """Say which side of the paper is which."""
    items = tuple(speak.text("foundation-mirror", part=part) for part in ("sides", "numbers"))
    return Box("note", speak.text("foundation-mirror"), items)


def _size(book: Book, keys: tuple[str, ...], made: Made) -> tuple[Block, ...]:
    """Return what sizes that are alike need: how many sections, and from what."""
    speak, key = book.words, keys[0]
    blocks: list[Block] = [Paragraph(_counts(book, speak, key))]
    by_block: dict[str, list[FoundationSection]] = {}
    for found in book.drafts[key].foundations:
        by_block.setdefault(found.block, []).append(found)
    for block, those in by_block.items():
        name = {"block": Named(book.block_name(block))}
        if len(those) > 1:
            caption = speak.text("foundation-sections", name)
            blocks.append(FigureBlock(figure("sections", key, caption, block=block), "half"))
        blocks.append(_table(book, keys, block, those, made[key]))
    return tuple(blocks)


def _counts(book: Book, speak: Language, key: str) -> str:
    """Return how often each section is sewn, for which blocks."""
    foundations = book.drafts[key].foundations
    made: dict[tuple[str, int], list[str]] = {}
    for found in foundations:
        made.setdefault((found.block, found.count), []).append(found.letter)
    alone = Counter(f.block for f in foundations)
    counts = tuple(
        said(
            "foundation-count",
            letters=Count(len(letters)),
            named=_run(letters),
            count=Count(count),
            block=Named(book.block_name(block)),
            whole=Word("yes" if alone[block] == 1 and book.on_foundations(key, block) else "no"),
        )
        for (block, count), letters in made.items()
    )
    return speak.text("foundation-counts", {"counts": Several(counts)})


def _run(letters: Sequence[str]) -> Value:
    """Return `A to G` for letters that follow each other, else each."""
    run = [chr(ord(letters[0]) + n) for n in range(len(letters))] if len(letters[0]) == 1 else []
    if len(letters) > 2 and list(letters) == run:
        return said("foundation-letters", first=Named(letters[0]), last=Named(letters[-1]))
    return Several(tuple(map(Named, letters)))


def _table(
    book: Book,
    keys: tuple[str, ...],
    block: str,
    those: Sequence[FoundationSection],
    moments: Sequence[Moment],
) -> Table:
    """Return the cloth of every patch of a block's sections, in the order of sewing."""
    speak = book.words
    cloth = {
        (m.operation.paper.section, m.operation.area.number): m
        for m in moments
        if isinstance(m.operation, LayFirstPatch | SewPatch)
    }
    rows: list[Row] = []
    for found in those:
        values: dict[str, Value] = {"letter": Named(found.letter), "count": Count(found.count)}
        rows.append(Row((speak.text("foundation-section", values),), "group"))
        for at, patch in enumerate(found.patches, 1):
            piece, size = _piece(speak, cloth[found.key, at])
            name = f"{found.letter}{at}"
            rows.append(Row((name, book.fabric(patch.fabric), piece, size), fabric=patch.fabric))
    names = speak.value(titles(book, keys)).replace("**", "")
    told: dict[str, Value] = {"block": Named(book.block_name(block)), "sizes": Named(names)}
    head = tuple(
        speak.text("foundation-fabric", told, part) for part in ("patch", "fabric", "piece", "size")
    )
    return Table(
        f"foundation-{keys[0]}-{block}",
        speak.text("foundation-fabric", told),
        head,
        tuple(rows),
        "llll",
        (speak.text("foundation-fabric", told, "note"),),
    )


def _piece(speak: Language, moment: Moment) -> tuple[str, str]:
    """Return the letter of a patch's cloth, and its cut size."""
    operation = moment.operation
    assert isinstance(operation, PatchWork)
    cloth = moment.before(operation.area.piece)
    letter = operation.area.piece.removeprefix("piece ")
    return f"**{letter}**", speak.value(Rectangle(cloth.width.told, cloth.height.told))
