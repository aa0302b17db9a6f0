"""The fused motif: web, cutting out, fusing, and the stitching that holds the raw edge.

In: motifs that are fused, the web's plan. Out: the section, or None.
Invariant: the web is traced in mirror image exactly when the motif is not its own mirror
image; heat, time and steam are left to the maker of the web.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.model.words import Section
from publish.words.en.phrase import counted, listed, measure, number, ordinal, stitch
from publish.write.applique import by_method
from publish.write.context import Book
from publish.write.marking import open_centre
from publish.write.nested import (
    add_cloth,
    add_stabiliser,
    add_web,
    nested_on_cloth,
    nested_on_web,
)
from publish.write.placing import add_crease, add_layout
from publish.write.practice import FUSED_SPARE, ZIGZAG_LENGTH, ZIGZAG_WIDTH
from publish.write.steps import StepList
from publish.write.trimming import add_trim

METHOD = "fusible"


def section(book: Book) -> Section | None:
    """Return the section on fusing and stitching a motif, or None."""
    motifs = by_method(book, METHOD)
    if not motifs:
        return None
    keys = book.with_motif(*(m.key for m in motifs))
    steps = StepList(book, "fusing")
    _web(book, steps, keys)
    for motif in motifs:
        _trace(book, steps, motif)
    _fuse(book, steps, keys, motifs)
    blocks = tuple(
        dict.fromkeys(b for k in keys for b in book.motif_blocks(k) if book.motif_of(b) in motifs)
    )
    for block in blocks:
        add_crease(book, steps, block)
    add_layout(book, steps, blocks)
    _stitch(book, steps, keys)
    add_trim(book, steps, motifs)
    lead = (
        "The motif is held by fusible web and a line of stitching; its edges are cut to size and "
        "not turned under."
    )
    return Section("fusing", "Fusing and stitching the motif", (steps.block(),), lead)


def _web(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    def value(key: str) -> str:
        web = book.plans[key].web
        assert web is not None
        return f"{counted(web.squares, 'square')} of {measure(web.side)}"

    nested = nested_on_web(book, keys)
    add_web(book, steps, nested)
    with_web = [k for k in keys if book.plans[k].web is not None and k not in nested]
    if with_web:
        steps.add(
            "cut-web",
            f"From the fusible web cut {book.each(with_web, value)}, without bending it sharply."
            f"{_wide(book, with_web)}",
            sizes=with_web,
            right="Paper and web are still one sheet.",
            tip="Keep the web flat; web and paper can separate. Wash the finish out of fabric "
            "that is to be fused, and use no softener on it.",
        )


def _wide(book: Book, keys: list[str]) -> str:
    """Say how to make a square that is wider than the roll."""
    webs = [w for k in keys if (w := book.plans[k].web) is not None]
    if all(w.side <= w.width for w in webs):
        return ""
    return (
        " Where a square is wider than the roll, lay lengths of web side by side, edge to edge "
        "without overlapping, and tape them together on the paper side."
    )


def _trace(book: Book, steps: StepList, motif: Motif) -> None:
    keys = book.with_motif(motif.key)
    name = book.motif_name(motif.key)
    if motif.symmetry == "mirror":
        opening = open_centre(book.shape(keys[0], motif.key))
        leave = ", but leave the opening at the centre in the paper" if opening else ""
        last = (
            " Last, cut the opening out of the paper and draw its edge in each wedge too."
            if opening
            else ""
        )
        text = (
            "Mark the centre of the paper side of the web. Cut out the wedge template of the "
            f"{name} along its line and its two fold edges{leave}. Lay its point on the centre, "
            "with one straight edge along a pencil line that runs to the middle of a side, and "
            "draw around its outer edge. Flip the template and rotate it about the centre "
            "until its straight edge meets the one just drawn, and draw again. Flip it each time "
            f"until the {ordinal(motif.folds)} wedge closes the circle. Do not mark the straight "
            f"edges.{last}"
        )
        right = (
            f"All {number(motif.folds)} wedges meet at the centre and join without a step into one "
            "outline."
        )
        tip = (
            "Or fuse the web to the whole square of fabric first, then fold, mark and cut: never "
            "fuse after folding. The motif is its own mirror image, so either side may be traced."
        )
    else:
        text = (
            f"Print and join the sheets of the whole template of the {name}, turn it face down on "
            "a bright window or a light box, and trace its outline on the paper side of the web."
        )
        right = "The outline on the web is the mirror image of the motif in the pictures."
        tip = "It comes out the right way round once the web is on the wrong side of the cloth."
    steps.add(f"trace-{motif.key}", text, sizes=keys, right=right, tip=tip)


def _fuse(book: Book, steps: StepList, keys: tuple[str, ...], motifs: tuple[Motif, ...]) -> None:
    spare = measure(FUSED_SPARE.value)
    steps.add(
        "rough-cut",
        f"Cut the web out about {spare} outside the line.",
        sizes=keys,
        tip="For a softer quilt, cut the web away inside the line too and keep only a band "
        f"{spare} wide along it.",
    )
    squares = listed(
        list(dict.fromkeys(f"{book.motif_letter(m.key)} of {book.fabric(m.fabric)}"
                           for m in motifs))
    )  # fmt: skip
    open_ = any(book.shape(k, m.key).holes for k in keys for m in motifs
                if book.motif_count(k, m.key))  # fmt: skip
    first = ", openings first" if open_ else ""
    nested = nested_on_cloth(book, keys)
    single = [k for k in keys if k not in nested]
    if nested:
        add_cloth(book, steps, nested)
    if single:
        steps.add(
            "fuse-cloth",
            f"Lay the motif square {squares} wrong side up, the web on it paper side up, and fuse "
            "them as the package of the web says. Let them cool flat.",
            sizes=single,
            caution="Fusing takes more heat than pressing. Work on a protected board in a "
            "well-ventilated room and let the fabric cool before you touch it.",
        )
    steps.add(
        "cut-out",
        f"Cut through paper and fabric exactly on the line{first}. Turn the fabric, not your "
        "wrist. Then score the paper with a pin and peel it away.",
        sizes=keys,
        right="The edge is clean, and the whole back of the motif has the slight sheen of the web.",
    )


def _stitch(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    steps.add(
        "fuse-ground",
        "When the motif lies as it should, fuse it as the package of the web says, lifting the "
        "iron from place to place. Let the block cool, then fuse it once more from the back.",
        sizes=keys,
        right="No part of the edge lifts under a fingernail.",
    )
    add_stabiliser(book, steps, keys)
    without = any(book.plans[k].stabiliser is None for k in keys)
    steps.add(
        "stitch-edge",
        f"Stitch along every edge. Zigzag: {stitch(ZIGZAG_LENGTH.value)} long and "
        f"{stitch(ZIGZAG_WIDTH.value)} wide. Blanket stitch, by machine or by hand: about "
        f"{stitch(ZIGZAG_WIDTH.value)} long. The outer stitch falls in the ground, the inner in "
        "the motif. Stop with the needle down to turn: outside the motif at points and outward "
        "curves, inside it at inside corners and inward curves.",
        sizes=keys,
        right="The stitches lie square to the edge and cover it all round.",
        tip="Put a sheet of tear-away stabilizer under the ground if the stitches pull it in."
        if without
        else "",
    )
