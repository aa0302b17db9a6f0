"""Marking the motif and cutting it: on the folded wedge, or flat when it cannot be folded.

In: motifs, drafts, plans. Out: the section, or None when every motif is fused.
Invariant: the cut line and the finished line both come from the printed template, never
from a width judged by eye; no step asks for a cut along a fold.
"""

from __future__ import annotations

from shapely.geometry import Point

from publish.model.draft import MotifShape
from publish.model.pattern import Motif
from publish.model.words import Block, Paragraph, Section
from publish.words.en.phrase import capital, counted, listed, measure, number, plural
from publish.write.context import Book
from publish.write.folding import alike, folded
from publish.write.practice import WEDGE_BASTING
from publish.write.steps import StepList, figure

ORIGIN = Point(0, 0)


def flat(book: Book) -> tuple[Motif, ...]:
    """Return the motifs that are turned under but marked and cut on flat cloth."""
    wedges = {m.key for m in folded(book)}
    return tuple(m for m in book.motifs if m.method != "fusible" and m.key not in wedges)


def section(book: Book) -> Section | None:
    """Return the section on marking and cutting, or None."""
    groups, whole = alike(book), flat(book)
    if not groups and not whole:
        return None
    steps = StepList(book, "marking-and-cutting-the-motif")
    blocks: list[Block] = []
    several = len(groups) + len(whole) > 1
    for folds, motifs in groups.items():
        names = listed([book.motif_name(m.key) for m in motifs])
        if several:
            blocks.append(Paragraph(f"**{capital(names)}: folded into {number(folds)}.**"))
        _align(book, steps, folds, motifs)
        _mark(book, steps, motifs)
        _baste(book, steps, folds, motifs)
        _cut(book, steps, motifs)
        _unfold(book, steps, motifs)
        blocks.append(steps.block())
    for motif in whole:
        if several:
            blocks.append(Paragraph(f"**{capital(book.motif_name(motif.key))}: cut flat.**"))
        _flat(book, steps, motif)
        blocks.append(steps.block())
    lead = "Mark and cut accurately: every layer repeats what you draw on the top one."
    if not groups:
        lead = "Mark and cut accurately: the edge is turned on the line you draw."
    return Section("marking-and-cutting-the-motif", "Marking and cutting the motif",
                   tuple(blocks), lead)  # fmt: skip


def _first(book: Book, motifs: tuple[Motif, ...]) -> tuple[Motif, tuple[str, ...], str]:
    """Return the motif that is pictured, the sizes that use any, the size pictured."""
    motif = motifs[0]
    return motif, book.with_motif(*(m.key for m in motifs)), book.with_motif(motif.key)[0]


def _align(book: Book, steps: StepList, folds: int, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    names = listed([book.motif_name(m.key) for m in motifs], "or")
    end = "its narrow end at" if open_centre(book.shape(size, motif.key)) else "its point on"
    steps.add(
        f"align-{folds}",
        f"Print the wedge template of the {names}{book.your_size} twice. Cut one along its dashed "
        "cut line, the other along its solid line, both along their two fold edges. Lay the larger "
        f"on the wedge, printed side up: {end} the centre, the edge marked *single fold* on the "
        "single fold, the edge marked *multiple folds* on the multiple folds. Pin it.",
        sizes=keys,
        right="Both straight edges of the paper lie exactly on the folds: there is only one place "
        "where they do. Fabric shows beyond the paper along the open edges.",
        tip=_swap(book, size, motif),
        figure=figure("wedge-align", size, "The template on the wedge, edge to fold.",
                      motif=motif.key),
    )  # fmt: skip


def _baste(book: Book, steps: StepList, folds: int, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    steps.add(
        f"baste-wedge-{folds}",
        f"Baste through all {number(folds)} layers with a contrasting thread, "
        f"{measure(WEDGE_BASTING.value)} inside the finished line. Where an arm is too narrow for "
        "two rows, sew one along its middle. Then sew once through the part that is cut away. "
        "Leave the thread ends long and without knots.",
        sizes=keys,
        right="The layers no longer slide when you rub the wedge between your fingers.",
        tip="By machine, use the longest stitch, from the point outward. A hot iron closes the "
        "needle holes at the end. Baste every motif the same way.",
        figure=figure("wedge-baste", size, "The marked wedge, basted through every layer.",
                      motif=motif.key),
    )  # fmt: skip


def _swap(book: Book, size: str, motif: Motif) -> str:
    """Say what to do when the wedge lies the other way round from the template."""
    if book.shape(size, motif.key).edges is None:
        return ""
    return (
        "If the folds of your wedge lie the other way round from the template, turn the cloth "
        "over, not the paper."
    )


def _mark(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    under = listed(list(dict.fromkeys(measure(m.turn_under) for m in motifs)), "or")
    steps.add(
        f"cut-line-{motif.folds}",
        "Draw around the paper in light dashes with a fine marker for fabric. This is the "
        "**cut line**. Do not mark the folds.",
        sizes=keys,
        right="The dashed line runs from fold to fold and never along one.",
        tip="Chalk or a white pencil suits most fabrics. Test on a scrap: the mark must survive "
        "the iron and wash out.",
    )
    steps.add(
        f"finished-line-{motif.folds}",
        "Lay the smaller paper in the same place, edges on the folds. Draw around it in a solid "
        "line. This is the **finished line**: the folded edge.",
        sizes=keys,
        right=f"The two lines run side by side, {under} apart: that strip is the turn-under.",
        tip="Keep both papers whole for the next motif.",
        figure=figure("wedge-mark", size, "Finished line solid, cut line dashed.",
                      motif=motif.key),
    )  # fmt: skip


def _cut(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    shape = book.shape(size, motif.key)
    fine = "corners and openings" if shape.holes else "corners"
    steps.add(
        f"cut-{motif.folds}",
        f"Cut along the dashed line through all {number(motif.folds)} layers. Take larger sharp "
        f"scissors for the long edges and small scissors for {fine}. Follow the numbered arrows in "
        f"the picture: {_order(shape)}. Turn the fabric, not your wrist, and keep the blades "
        "upright.",
        sizes=keys,
        right="Every layer is cut on the same line: turned over, the wedge looks the same.",
        tip="Cross a fold at the drawn angle. Cut square to the fold, the edge opens smooth; at "
        "any other angle it opens to a point.",
        caution="Do not cut along a fold. The uncut folds hold the motif together."
        if shape.pieces == 1 else "Do not cut along a fold where the paper touched it.",
        figure=figure("wedge-cut", size, "Where to start, and which way to cut.",
                      motif=motif.key),
    )  # fmt: skip


def _order(shape: MotifShape) -> str:
    """Return the order of the cuts in words, as the picture numbers them."""
    centre = open_centre(shape)
    outer = "the outer edge from the multiple folds to the single fold"
    first = "the openings first, while the layers are held all round, then " if (
        shape.holes > centre) else ""  # fmt: skip
    return f"{first}{outer}{', and the opening at the centre last' if centre else ''}"


def open_centre(shape: MotifShape) -> bool:
    """Return whether the motif has an opening round its centre."""
    return shape.holes > 0 and not shape.whole.covers(ORIGIN)


def _unfold(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    shape = book.shape(size, motif.key)
    several = [k for k in keys if _make(book, k, motifs)]
    parts = (
        f" The motif comes away in {counted(shape.pieces, 'piece')}: keep them in their places."
        if shape.pieces > 1
        else ""
    )
    steps.add(
        f"unfold-{motif.folds}",
        "Remove the basting. Open the motif one fold at a time on a flat surface, lifting the "
        f"layers apart without pulling.{parts} Smooth it from the centre with your hands. Do not "
        "iron it: the creases are needed, and heat can set the marks.",
        sizes=keys,
        right=f"The motif lies flat, all {number(motif.folds)} wedges alike, and the creases show "
        "where the folds were. Use them to place the motif.",
        tip="Save the scraps for trying a marker, a stitch or the iron's heat.",
        figure=figure("unfold", size, "Opening the motif.", motif=motif.key),
    )
    steps.add(
        f"line-{motif.folds}",
        f"Only the top wedge is marked. On the other {counted(motif.folds - 1, 'wedge')}, either "
        "turn the same width under all along the cut edge, or lay the smaller paper on each wedge "
        "in turn and draw around it, printed side down on every second wedge.",
        sizes=keys,
    )
    if several:
        many = book.each(several, lambda k: _make(book, k, motifs))
        steps.add(
            f"make-{motif.folds}",
            f"Fold, mark, baste and cut until you have them all: {many}.",
            sizes=several,
        )


def _make(book: Book, key: str, motifs: tuple[Motif, ...]) -> str:
    """Return `make nine motifs`, or nothing where one of each is enough."""
    counts = [(book.motif_name(m.key), book.motif_count(key, m.key)) for m in motifs]
    counts = [(name, n) for name, n in counts if n]
    if all(n == 1 for _, n in counts):
        return ""
    return listed([counted(n, name) for name, n in counts])


def _flat(book: Book, steps: StepList, motif: Motif) -> None:
    keys = book.with_motif(motif.key)
    shape = book.shape(keys[0], motif.key)
    letter = book.motif_letter(motif.key)
    steps.add(
        f"join-{motif.key}",
        f"Print the sheets of the whole template{book.your_size}, cut them where they are marked "
        "for cutting, and tape them together by their letters and numbered diamonds.",
        sizes=keys,
        right="The lines run across every join without a step.",
    )
    steps.add(
        f"trace-{motif.key}",
        f"Press the motif square {letter} of {book.fabric(motif.fabric)} and crease it in half "
        "both ways. Tape the template to a bright window or a light box, lay the square over it "
        "right side up with its creases on the template's centre lines, and trace the finished "
        "line solid and the cut line dashed.",
        sizes=keys,
        right=f"The two lines run side by side, {measure(motif.turn_under)} apart.",
        tip="This design has no mirror line, so it cannot be cut folded."
        if motif.symmetry != "mirror"
        else "",
    )
    openings = "Cut the openings first, then the outside. " if shape.holes else ""
    steps.add(
        f"cut-{motif.key}",
        f"{openings}Cut on the dashed line with sharp scissors, small scissors in corners. Turn "
        "the fabric, not your wrist.",
        sizes=keys,
        right=f"The motif is in {counted(shape.pieces, 'piece')} with the solid line all round.",
    )
    _make_all(book, steps, motif, keys)


def _make_all(book: Book, steps: StepList, motif: Motif, keys: tuple[str, ...]) -> None:
    many = {k: book.motif_count(k, motif.key) for k in keys}
    if max(many.values()) > 1:
        steps.add(
            f"make-{motif.key}",
            "Trace and cut until you have them all: "
            + book.each(keys, lambda k: f"{number(many[k])} {plural(many[k], 'motif')}")
            + ".",
            sizes=keys,
        )
