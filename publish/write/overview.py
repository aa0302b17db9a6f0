"""What the maker will make: sizes side by side, and what each asks of the hands.

In: sizes, drafts. Out: the first section.
Invariant: one column for each size; every figure in it is drafted or graded.
"""

from __future__ import annotations

from publish.model.words import Block, FigureBlock, Paragraph, Row, Section, Table
from publish.operations.folding import SEQUENCE
from publish.words.en.phrase import capital, counted, listed, number
from publish.write.context import Book
from publish.write.foundation import on_foundations
from publish.write.motifs import folded, share
from publish.write.steps import figure

_INSIDE = "inside_corners"
METHODS = {
    "needle-turn": "by needle-turn appliqué",
    "prepared edge": "by hand with a prepared edge",
    "fusible": "with fusible web and a stitched edge",
}


def section(book: Book) -> Section:
    """Return the section that shows what the pattern makes."""
    many = len(book.keys)
    lead = (
        f"Choose one of {counted(many, 'size')}." if many > 1 else "This is what the pattern makes."
    )
    caption = (
        "Finished sizes, drawn to one scale."
        if many > 1
        else "The finished piece with its measurements."
    )
    blocks: list[Block] = [
        FigureBlock(figure("sizes", None, caption)),
        Paragraph(" ".join([*_motifs(book), *_grounds(book), *_finishes(book)])),
        table(book),
    ]
    return Section("what-you-will-make", "What you will make", tuple(blocks), lead)


def _motifs(book: Book) -> list[str]:
    """Return a sentence on each motif: how it is cut, how it is applied."""
    said = []
    for motif in book.motifs:
        name = capital(f"the {book.motif_name(motif.key)}")
        shape = book.shape(book.with_motif(motif.key)[0], motif.key)
        method = METHODS[motif.method]
        if motif in folded(book):
            whole = "one piece of cloth" if shape.pieces == 1 else "cloth"
            last = f"folded into {share(motif.folds)}s"
            said.append(
                f"{name} is cut from {whole} {last}, like a paper snowflake, and sewn to its "
                f"ground {method}."
            )
        elif motif.symmetry != "mirror":
            said.append(
                f"{name} turns round its centre in {number(motif.folds)} like parts, is cut flat "
                f"from a full-size template, and is held to its ground {method}."
            )
        else:
            parts = f"{number(motif.folds)} wedges" if motif.folds in SEQUENCE else "wedges"
            said.append(
                f"{name} is drawn from {parts} round its centre and held to its ground {method}."
            )
    return said


def _grounds(book: Book) -> list[str]:
    """Return sentences on pieced grounds, then on pieced blocks without a motif."""
    return [*_pieced_grounds(book), *_patchwork(book)]


def _pieced_grounds(book: Book) -> list[str]:
    pieced = [k for k in book.keys if any(map(book.pieced, book.motif_blocks(k)))]
    with_motif = [k for k in book.keys if book.motif_blocks(k)]
    if not pieced:
        return []
    if pieced == with_motif:
        return ["The grounds are pieced by machine before the motif goes on."]
    return [
        f"The ground of the {book.titles(pieced)} is pieced by machine before the motif goes "
        "on; the other grounds are one piece."
    ]


def _patchwork(book: Book) -> list[str]:
    """Return sentences on how blocks without motifs are made and set."""
    mine = [
        (k, b) for k in book.keys for b in book.blocks(k) if book.pieced(b) and not book.carries(b)
    ]
    sewn = [b for k, b in mine if not book.on_foundations(k, b)]
    said = []
    paper = on_foundations(book)
    if paper:
        names = list(dict.fromkeys(f.block for k in paper for f in book.drafts[k].foundations))
        which = listed([f"the {book.block_name(b)}" for b in names])
        said.append(
            f"{capital(which)} {'is' if len(names) == 1 else 'are'} sewn on printed foundations."
        )
    if sewn:
        said.append(f"The {'other ' if paper or book.motifs else ''}blocks are pieced by machine.")
    pointed = [k for k in book.keys if book.sizes[k].on_point]
    if pointed:
        said.append(f"The blocks of the {book.titles(pointed)} are set on point.")
    return said


def _finishes(book: Book) -> list[str]:
    said = []
    if book.quilts:
        which = "The quilt is" if not book.pillows else f"The {book.titles(book.quilts)} is"
        if len(book.quilts) > 1:
            which = "The quilts are"
        said.append(f"{which} layered, quilted and bound.")
    if book.pillows:
        many = len(book.pillows) > 1
        which = "The pillows have" if many else "The pillow has"
        said.append(
            f"{which} a quilted front and a plain back that opens, so that the cover comes "
            "off for washing."
        )
    return said


def table(book: Book) -> Table:
    """Return the table of sizes, a column for each."""
    sizes = [book.sizes[k] for k in book.keys]
    rows = [
        ("Finished size", [book.say.rectangle(s.width, s.height) for s in sizes]),
        ("Blocks", [_blocks(book, k) for k in book.keys]),
    ]
    if book.motifs:
        rows.append(("Motif, across", [_span(book, k) for k in book.keys]))
    if book.pattern.publication.skill:
        rows.append(("Skill", [book.pattern.publication.skill] * len(book.keys)))
    if book.motifs:
        rows += [
            ("Appliqué edge to sew", [_stitching(book, k) for k in book.keys]),
            ("Points on each motif", [_count(book, k, "tips") for k in book.keys]),
            ("Inside corners on each motif", [_count(book, k, _INSIDE) for k in book.keys]),
        ]
    head = ("", *(book.title(k) for k in book.keys))
    return Table(
        "sizes",
        "The sizes" if len(book.keys) > 1 else "The size",
        head,
        tuple(Row((name, *cells)) for name, cells in rows),
    )


def _blocks(book: Book, key: str) -> str:
    size = book.sizes[key]
    side = book.say.measure(size.block_side)
    sides = [(b, *one) for b in book.blocks(key) for one in book.sides(key, b).items()]
    if len(sides) > 1:
        return capital(
            "; ".join(
                f"{counted(n, book.sized_name(key, b, s))}, {book.say.measure(s)}"
                for b, s, n in sides
            )
        )
    if size.block_count == 1:
        return f"One, {side}"
    if size.on_point:
        return f"{capital(number(size.block_count))} on point, each {side}"
    grid = f"{number(size.columns)} by {number(size.rows)}"
    return f"{capital(number(size.block_count))}, {grid}, each {side}"


def _span(book: Book, key: str) -> str:
    span = book.sizes[key].motif_span
    return book.say.measure(span) if span is not None and book.drafts[key].placements else "–"


def _stitching(book: Book, key: str) -> str:
    total = book.drafts[key].applique_length
    return f"About {book.say.run(total)}" if total else "–"


def _count(book: Book, key: str, what: str) -> str:
    draft = book.drafts[key]
    used = dict.fromkeys(p.motif for p in draft.placements)
    counts = [str(getattr(draft.motifs[m], what)) for m in used]
    return listed(list(dict.fromkeys(counts)), "or") or "–"
