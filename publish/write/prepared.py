"""The prepared edge: turning the edge over paper before sewing, then sewing it down.

In: motifs with a prepared edge. Out: two sections, or none.
Invariant: the paper shape is the finished shape; it is mirrored only for a motif that is
not its own mirror image, because it lies on the wrong side of the cloth.
"""

from __future__ import annotations

from publish.model.pattern import Motif
from publish.model.words import Section
from publish.words.en.phrase import listed, measure, number, rectangle
from publish.write.applique import by_method, finish, thread_for
from publish.write.context import Book
from publish.write.folding import folded
from publish.write.nested import add_stabiliser
from publish.write.practice import STITCH_APART, STITCH_INTERVAL, THREAD_LENGTH
from publish.write.steps import StepList
from publish.write.trimming import add_trim

METHOD = "prepared edge"


def preparing(book: Book) -> Section | None:
    """Return the section that turns the edge over paper, or None."""
    motifs = by_method(book, METHOD)
    if not motifs:
        return None
    steps = StepList(book, "preparing-the-edge")
    for motif in motifs:
        _paper(book, steps, motif)
    _turn(book, steps, motifs)
    lead = "The edge is turned over a paper shape and pressed before sewing."
    return Section("preparing-the-edge", "Preparing the edge", (steps.block(),), lead)


def _paper(book: Book, steps: StepList, motif: Motif) -> None:
    keys = book.with_motif(motif.key)

    def square(key: str) -> str:
        piece = book.motif_piece(key, motif.key)
        return rectangle(piece.width, piece.length)

    name = book.motif_name(motif.key)
    if motif in folded(book):
        text = (
            "Cut a piece of freezer paper as large as the motif square, "
            f"{book.each(keys, square)}, and fold it into {number(motif.folds)} just as you folded "
            "the cloth, waxed side in. "
            f"Staple the layers near the open edges. Lay the smaller wedge template of the {name} "
            "on the folds, draw around it, and cut on that line."
        )
        right = "Opened out, the paper is the finished motif, without any turn-under."
        tip = "The motif is its own mirror image, so either side of the paper may face you."
    else:
        text = (
            f"Turn the joined whole template of the {name} face down on a bright window or a light "
            "box, lay the freezer paper over it dull side up, trace the solid line, and cut on "
            "that line."
        )
        right = "Seen from its dull side, the paper shape is the mirror image of the motif."
        tip = "It is mirrored because it lies on the wrong side of the cloth."
    steps.add(f"paper-{motif.key}", text, sizes=keys, right=right, tip=tip)


def _turn(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    keys = book.with_motif(*(m.key for m in motifs))
    under = listed(list(dict.fromkeys(measure(m.turn_under) for m in motifs)), "or")
    open_ = any(book.shape(k, m.key).holes for k in keys for m in motifs
                if book.motif_count(k, m.key))  # fmt: skip
    inside = " and inside every opening" if open_ else ""
    steps.add(
        "iron-on",
        "Lay the cloth motif wrong side up and the paper shape on it, waxed side down. Line up the "
        "centres and the creases, and iron the paper on, working from the centre outwards.",
        sizes=keys,
        right=f"A strip of fabric {under} wide shows all around the paper{inside}.",
    )
    steps.add(
        "clip",
        "Clip the inside corners to within a thread of the paper, and make a few short clips along "
        "the inward curves. Leave the outward curves whole.",
        sizes=keys,
    )
    steps.add(
        "press-over",
        "Brush a little liquid starch on a short stretch of the turn-under, fold it over the edge "
        "of the paper with the point of a wooden stick, and press it dry with the tip of the iron. "
        "Do the inside corners first, then the curves, and each point last: fold its tip straight "
        "down, then one side, then the other.",
        sizes=keys,
        right="The fold follows the edge of the paper, smooth on the curves.",
        caution="The iron and the damp starch are hot: use the stick, not your fingers.",
    )
    steps.add(
        "peel",
        "Let the motif cool flat. Lift the turned edges just enough to slip the paper out, and "
        "press the motif once more from the back.",
        sizes=keys,
        tip="A paper shape irons on again several times, so keep it for the next motif.",
    )


def sewing(book: Book) -> Section | None:
    """Return the section that sews a prepared edge down, or None."""
    motifs = by_method(book, METHOD)
    if not motifs:
        return None
    keys = book.with_motif(*(m.key for m in motifs))
    steps = StepList(book, "applique-prepared")
    add_stabiliser(book, steps, keys)
    steps.add(
        "thread",
        f"Thread a fine needle with a single strand that matches {thread_for(book, motifs)}, about "
        f"{measure(THREAD_LENGTH.value)} long, and knot one end. Start from inside a fold, on a "
        "gentle curve near the centre.",
        sizes=keys,
    )
    steps.add(
        "stitch",
        "Sew the edge down with small blind stitches: down into the ground right beside the fold, "
        "along underneath, and up through two or three threads of the fold. Keep the stitches "
        f"about {measure(STITCH_APART.value)} apart, never more than "
        f"{measure(STITCH_INTERVAL.value)}. Sew the edges near the centre first and work outward.",
        sizes=keys,
        right="From above you see only the edge, and no part of it lifts under a fingernail.",
        tip="By machine, use a narrow blind-hem or zigzag stitch and fine thread, and let only the "
        "swing of the needle catch the fold.",
    )
    finish(steps, keys)
    add_trim(book, steps, motifs)
    lead = "With the edge already turned, the sewing is a plain blind stitch all the way round."
    return Section("applique-prepared", "Sewing a prepared edge", (steps.block(),), lead)
