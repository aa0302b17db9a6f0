"""What the maker will make: sizes side by side, and what each asks of the hands.

In: sizes, drafts. Out: the first section.
Invariant: one column for each size; every figure in it is drafted or graded.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.model.words import Block, FigureBlock, Paragraph, Row, Section, Table
from publish.operations.folding import SEQUENCE
from publish.words.values import Count, Length, Run, Several, Value, Word, said, yes
from publish.write.context import Book
from publish.write.foundation import on_foundations
from publish.write.motifs import folded
from publish.write.steps import figure, slug

_KEY = "what-you-will-make"
_NONE = "–"
_INSIDE = "inside_corners"


def section(book: Book) -> Section:
    """Return the section that shows what the pattern makes."""
    chapter, sizes = f"chapter-{_KEY}", Count(len(book.keys), "size")
    blocks: list[Block] = [
        FigureBlock(figure("sizes", None, book.text(chapter, "caption", sizes=sizes))),
        Paragraph(" ".join([*_motifs(book), *_grounds(book), *_finishes(book)])),
        table(book),
    ]
    title, lead = (book.text(chapter, part, sizes=sizes) for part in ("", "lead"))
    return Section(_KEY, title, tuple(blocks), lead)


def _motifs(book: Book) -> list[str]:
    """Return a sentence on each motif: how it is cut, how it is applied."""
    return [_motif(book, motif) for motif in book.motifs]


def _motif(book: Book, motif: Motif) -> str:
    shape = book.shape(book.with_motif(motif.key)[0], motif.key)
    how = "drawn"
    if motif in folded(book):
        how = "folded"
    elif motif.symmetry != "mirror":
        how = "turned"
    return book.text(
        f"motif-{how}",
        motif=book.motif_called(motif.key),
        method=Word(slug(motif.method)),
        pieces=Count(shape.pieces),
        folds=Count(motif.folds),
        counted=yes(motif.folds in SEQUENCE),
    )


def _grounds(book: Book) -> list[str]:
    """Return sentences on pieced grounds, then on pieced blocks without a motif."""
    return [*_pieced_grounds(book), *_patchwork(book)]


def _pieced_grounds(book: Book) -> list[str]:
    pieced = [k for k in book.keys if any(map(book.pieced, book.motif_blocks(k)))]
    with_motif = [k for k in book.keys if book.motif_blocks(k)]
    if not pieced:
        return []
    some = yes(pieced != with_motif)
    return [book.text("grounds-pieced", some=some, sizes=book.called(pieced))]


def _patchwork(book: Book) -> list[str]:
    """Return sentences on how blocks without motifs are made and set."""
    mine = [
        (k, b) for k in book.keys for b in book.blocks(k) if book.pieced(b) and not book.carries(b)
    ]
    told = []
    paper = on_foundations(book)
    if paper:
        names = dict.fromkeys(f.block for k in paper for f in book.drafts[k].foundations)
        which = Several(tuple(said("the", name=book.block_called(b)) for b in names))
        told.append(book.text("blocks-on-foundations", blocks=which, count=Count(len(names))))
    if any(not book.on_foundations(k, b) for k, b in mine):
        told.append(book.text("blocks-pieced", others=yes(paper or book.motifs)))
    pointed = [k for k in book.keys if book.sizes[k].on_point]
    if pointed:
        told.append(book.text("blocks-set-on-point", sizes=book.called(pointed)))
    return told


def _finishes(book: Book) -> list[str]:
    told = []
    if book.quilts:
        which = "several" if len(book.quilts) > 1 else "one" if book.pillows else "only"
        sizes = book.called(book.quilts)
        told.append(book.text("quilts-finished", which=Word(which), sizes=sizes))
    if book.pillows:
        told.append(book.text("pillows-finished", count=Count(len(book.pillows))))
    return told


def table(book: Book) -> Table:
    """Return the table of sizes, a column for each."""
    sizes = [book.sizes[k] for k in book.keys]
    rows = [
        ("finished", [book.say.rectangle(s.width, s.height) for s in sizes]),
        ("blocks", [_blocks(book, k) for k in book.keys]),
    ]
    if book.motifs:
        rows.append(("motif", [_span(book, k) for k in book.keys]))
    if book.pattern.publication.skill:
        rows.append(("skill", [book.pattern.publication.skill] * len(book.keys)))
    if book.motifs:
        rows += [
            ("edge", [_stitching(book, k) for k in book.keys]),
            ("points", [_count(book, k, "tips") for k in book.keys]),
            ("inside-corners", [_count(book, k, _INSIDE) for k in book.keys]),
        ]
    return Table(
        "sizes",
        book.text("table-sizes", sizes=Count(len(book.keys))),
        ("", *(book.title(k) for k in book.keys)),
        tuple(Row((book.text(f"size-{name}"), *cells)) for name, cells in rows),
    )


def _blocks(book: Book, key: str) -> str:
    size = book.sizes[key]
    sides = [(b, *one) for b in book.blocks(key) for one in book.sides(key, b).items()]
    if len(sides) > 1:
        each: tuple[Value, ...] = tuple(
            said(
                "blocks-of-side",
                count=Count(n),
                name=book.sized_called(key, b, s),
                side=Length(s),
            )
            for b, s, n in sides
        )
        return book.words.capital(book.words.value(Several(each, ";")))
    how = "one" if size.block_count == 1 else "on-point" if size.on_point else "grid"
    return book.text(
        f"blocks-{how}",
        count=Count(size.block_count),
        columns=Count(size.columns),
        rows=Count(size.rows),
        side=Length(size.block_side),
    )


def _span(book: Book, key: str) -> str:
    span = book.sizes[key].motif_span
    return book.say.measure(span) if span is not None and book.drafts[key].placements else _NONE


def _stitching(book: Book, key: str) -> str:
    total = book.drafts[key].applique_length
    return book.text("edge-to-sew", length=Run((total,))) if total else _NONE


def _count(book: Book, key: str, what: str) -> str:
    draft = book.drafts[key]
    used = dict.fromkeys(p.motif for p in draft.placements)
    counts = [str(getattr(draft.motifs[m], what)) for m in used]
    return book.words.listed(list(dict.fromkeys(counts)), "or") or _NONE
