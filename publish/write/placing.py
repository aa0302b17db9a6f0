"""Laying a cut motif on its ground: creases, centre, pins, basting.

In: blocks with a motif that is turned under. Out: the section, or None.
Invariant: the creases that the text lines up are those that the drafted wedge's edges
lie on; basting stays clear of the edge that is to be turned.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.draft import MotifShape
from publish.model.pattern import Block, Motif
from publish.model.words import Section
from publish.words.en.phrase import measure
from publish.write.context import Book
from publish.write.marking import flat
from publish.write.practice import BASTE_FROM_EDGE
from publish.write.sewn import ground_letter
from publish.write.steps import StepList, figure


def centre_seams(block: Block) -> tuple[bool, bool]:
    """Return whether seams run through a block's centre: upright, and level."""
    across = Fraction(block.columns) / 2
    down = Fraction(block.rows) / 2
    if len(block.patches) == 1:
        return False, False
    boxes = [list(zip(*p.ring, strict=True)) for p in block.patches]
    upright = all(max(xs) <= across or min(xs) >= across for xs, _ in boxes)
    level = all(max(ys) <= down or min(ys) >= down for _, ys in boxes)
    return upright, level


def turned_blocks(book: Book) -> tuple[str, ...]:
    """Return the blocks whose motif is turned under and so is basted."""
    found = dict.fromkeys(b for k in book.keys for b in book.motif_blocks(k))
    return tuple(b for b in found if book.motif_of(b).method != "fusible")


def section(book: Book) -> Section | None:
    """Return the section on placing, or None when no motif is basted to a ground."""
    blocks = turned_blocks(book)
    if not blocks:
        return None
    steps = StepList(book, "placing")
    for block in blocks:
        add_crease(book, steps, block)
    add_layout(book, steps, blocks)
    _baste(book, steps, blocks)
    lead = "Match the creases."
    return Section("placing", "Placing the motif on the ground", (steps.block(),), lead)


def sizes_of(book: Book, *blocks: str) -> tuple[str, ...]:
    """Return the sizes that use any of these blocks."""
    return tuple(k for k in book.keys if any(b in book.blocks(k) for b in blocks))


def add_crease(book: Book, steps: StepList, block: str) -> None:
    """Add the step that finds the centre and the guide lines of a block's ground."""
    keys = sizes_of(book, block)
    upright, level = centre_seams(book.block(block))
    where = "in half both ways and on both diagonals"
    seams = ""
    if upright and level:
        seams = " The seams replace the creases in half."
        where = "on both diagonals"
    elif upright or level:
        seams = " The seam through the middle stands for one of the creases in half."
        where = "in half across the seam and on both diagonals"
    name = f"ground {ground_letter(book, keys, block)}"
    if book.pieced(block):
        name = "the pieced ground"
    others = [b for b in turned_blocks(book) if book.pieced(b) == book.pieced(block)]
    if len(others) > 1:
        name += f" of the {book.block_name(block)}"
    steps.add(
        f"crease-{block}",
        f"Fold {name} {where}, one fold at a time, and finger-press each fold before opening it "
        f"again.{seams}",
        sizes=keys,
        right="All the lines cross in one point: the centre of the ground.",
        figure=figure("crease-ground", keys[0], "The ground with its guide lines.", block=block),
    )


def add_layout(book: Book, steps: StepList, blocks: tuple[str, ...]) -> None:
    """Add the steps that lay the motif on the ground, centre on centre."""
    block = blocks[0]
    keys = sizes_of(book, *blocks)
    motif = book.motif_of(block)
    steps.add(
        "centre",
        "Lay the ground right side up on a flat surface and the motif right side up on top of it. "
        "Put a pin through the centre of the motif and then through the centre of the ground, and "
        "lower the motif.",
        sizes=keys,
        right="The pin stands upright through both centres.",
    )
    fused = motif.method == "fusible"
    steps.add(
        "align",
        f"Smooth the motif outward from the centre. {_aligned(book, keys[0], motif)} Pin each arm "
        "along its middle.",
        sizes=keys,
        right="The ground shows evenly all round. Once the block is trimmed and sewn, the points "
        "of the motif will lie inside its edge by "
        f"{book.each(keys, lambda k: measure(_clear(book, k)))}.",
        figure=figure(
            "place-motif", keys[0],
            "The motif centred on its guide lines." if fused else
            "The motif centred and basted.",
            motif=motif.key, block=block,
        ),
    )  # fmt: skip


def _clear(book: Book, key: str) -> Fraction:
    """Return how far the motif stays inside the finished block."""
    size = book.sizes[key]
    assert size.motif_span is not None
    return (size.block_side - size.motif_span) / 2


def _guides(shape: MotifShape) -> dict[str, bool]:
    """Return which of the ground's creases the motif's folds lie on."""
    if shape.edges is None:
        return {"half": True, "level": True, "upright": True, "diagonal": False}
    step = 360 / shape.folds
    angles = [(shape.edges[0].angle + k * step) % 180 for k in range(shape.folds)]

    def on(target: float) -> bool:
        return any(min(abs(a - target), 180 - abs(a - target)) < 0.01 for a in angles)

    return {
        "half": on(0) and on(90),
        "level": on(0),
        "upright": on(90),
        "diagonal": on(45) and on(135),
    }


def _aligned(book: Book, size: str, motif: Motif) -> str:
    """Return which folds of the motif go on which creases of the ground, as a sentence."""
    if motif.method == "fusible":
        return "Turn it until it lies evenly between the creases, as in the picture."
    drawn = "creases" if motif in flat(book) else "folds"
    guides = _guides(book.shape(size, motif.key))
    if guides["half"] and guides["diagonal"]:
        return (
            f"Bring its straight {drawn} onto the creases in half and its diagonal {drawn} onto "
            "the diagonal creases."
        )
    if guides["half"]:
        return f"Bring its straight {drawn} onto the creases in half."
    if guides["diagonal"]:
        return f"Bring its {drawn} onto the diagonals."
    one = [w for w in ("level", "upright") if guides[w]]
    if one:
        return f"Bring the fold that runs straight through its centre onto the {one[0]} crease."
    return f"Turn it until its {drawn} lie evenly between the creases, as in the picture."


def _baste(book: Book, steps: StepList, blocks: tuple[str, ...]) -> None:
    keys = sizes_of(book, *blocks)
    distance = measure(BASTE_FROM_EDGE.value)
    narrow = [
        book.shape(k, m).narrowest_neck
        for k in keys
        for m in {book.motif_of(b).key for b in blocks if b in book.blocks(k)}
    ]
    prepared = all(book.motif_of(b).method == "prepared edge" for b in blocks)
    edge = "pressed edge" if prepared else "raw edge"
    stays = "edge you will sew" if prepared else "edge you will turn under"
    tip = ""
    if min(narrow) < 2 * BASTE_FROM_EDGE.value:
        tip = (
            "Where an arm is too narrow for that, run one row of basting down its middle: the "
            "edges stay free."
        )
    steps.add(
        "baste",
        "Baste the motif to the ground with long stitches in a contrasting thread, working from "
        f"the centre out along every arm, and keep the basting {distance} inside the {edge} so "
        f"that it stays clear of the {stays}. Take the pins out as you pass them.",
        sizes=keys,
        right="Lift the ground by one corner: the motif does not shift.",
        tip=tip,
    )
