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
        _baste_and_align(book, steps, folds, motifs)
        _mark(book, steps, motifs)
        _cut(book, steps, motifs)
        _unfold(book, steps, motifs)
        blocks.append(steps.block())
    for motif in whole:
        if several:
            blocks.append(Paragraph(f"**{capital(book.motif_name(motif.key))}: cut flat.**"))
        _flat(book, steps, motif)
        blocks.append(steps.block())
    lead = "Take your time here: a wedge that is marked and cut cleanly opens into a clean motif."
    if not groups:
        lead = "Take your time here: a motif that is marked and cut cleanly is easy to sew."
    return Section("marking-and-cutting-the-motif", "Marking and cutting the motif",
                   tuple(blocks), lead)  # fmt: skip


def _first(book: Book, motifs: tuple[Motif, ...]) -> tuple[Motif, tuple[str, ...], str]:
    """Return the motif that is pictured, the sizes that use any, the size pictured."""
    motif = motifs[0]
    return motif, book.with_motif(*(m.key for m in motifs)), book.with_motif(motif.key)[0]


def _baste_and_align(book: Book, steps: StepList, folds: int, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    names = listed([book.motif_name(m.key) for m in motifs], "or")
    end = "its narrow end at" if open_centre(book.shape(size, motif.key)) else "its point on"
    steps.add(
        f"baste-wedge-{folds}",
        f"Press the folded wedge once more and baste through all {number(folds)} layers with a "
        "contrasting thread: one row of long stitches along each folded edge and one across the "
        "middle. Leave the thread ends long and without knots.",
        sizes=keys,
        right="The layers no longer slide when you rub the wedge between your fingers.",
        figure=figure("wedge-baste", size, "The folded wedge, basted through every layer.",
                      motif=motif.key),
    )  # fmt: skip
    steps.add(
        f"align-{folds}",
        f"Cut out the paper wedge template of the {names}{book.your_size} along its dashed cut "
        f"line and its two fold edges. Lay it on the wedge, printed side up: {end} "
        "the centre, the edge marked *single fold* along the single fold and the edge marked "
        "*multiple folds* along the multiple folds. Pin it.",
        sizes=keys,
        right="Both straight edges of the paper lie exactly on the folds: there is only one place "
        "where they do. Cloth shows beyond the paper along the open edges.",
        tip=_swap(book, size, motif),
        figure=figure("wedge-align", size, "The template on the wedge, edge to fold.",
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
        "Draw round the paper with a fine removable marker, as a dashed line. This is the "
        "**cut line**. Draw nothing along the folds.",
        sizes=keys,
        right="The dashed line runs from fold to fold and never along one.",
        tip="Try the marker on a scrap first: it must come out of your cloth after pressing.",
    )
    steps.add(
        f"finished-line-{motif.folds}",
        "Trim the paper along its solid line, lay it back in the same place and draw round it "
        "again, this time as a solid line. This is the **finished line**, to which the edge is "
        "turned.",
        sizes=keys,
        right=f"The two lines run side by side, {under} apart: that strip is the turn-under.",
        figure=figure("wedge-mark", size, "Finished line solid, cut line dashed.",
                      motif=motif.key),
    )  # fmt: skip


def _cut(book: Book, steps: StepList, motifs: tuple[Motif, ...]) -> None:
    motif, keys, size = _first(book, motifs)
    shape = book.shape(size, motif.key)
    steps.add(
        f"cut-{motif.folds}",
        "Take small scissors that are sharp to the tip and cut along the dashed line through all "
        f"{number(motif.folds)} layers, in short snips. Follow the numbered arrows in the picture: "
        f"{_order(shape)}. Turn the cloth, not your wrist, and keep the blades upright.",
        sizes=keys,
        right="Every layer is cut on the same line: turned over, the wedge looks the same.",
        caution="Do not cut along a fold. The cloth left uncut on the folds is what keeps the "
        "motif in one piece." if shape.pieces == 1 else "Do not cut along a fold where the paper "
        "touched it.",
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
        "Take out the basting. Open the motif one fold at a time on a flat surface, lifting the "
        f"layers apart without pulling.{parts} Press it from above, setting the iron down and "
        "lifting it up rather than sliding it.",
        sizes=keys,
        right=f"The motif lies flat, all {number(motif.folds)} wedges alike, and the creases still "
        "show faintly where the folds were. They will line it up with the ground.",
        tip="Keep the offcuts until the last stitch: they are the right cloth for trying a marker, "
        "a stitch or the iron's heat.",
        figure=figure("unfold", size, "Opening the motif.", motif=motif.key),
    )
    steps.add(
        f"line-{motif.folds}",
        f"Only the wedge that lay on top carries the drawn lines. On the other "
        f"{counted(motif.folds - 1, 'wedge')}, either let the cut edge guide you and turn the "
        "same width under, or lay the trimmed paper on each wedge in turn and draw round it, "
        "printed side down on every second wedge.",
        sizes=keys,
    )
    if several:
        many = book.each(several, lambda k: _make(book, k, motifs))
        steps.add(f"make-{motif.folds}", f"Fold, mark and cut until you have them all: {many}.",
                  sizes=several)  # fmt: skip


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
        "for cutting, and tape them together by their letters and round marks.",
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
        tip="This motif turns round its centre without a mirror, so it cannot be cut from folded "
        "cloth."
        if motif.symmetry != "mirror"
        else "",
    )
    openings = "Cut the openings first, then the outside. " if shape.holes else ""
    steps.add(
        f"cut-{motif.key}",
        f"{openings}Cut on the dashed line with small sharp scissors, turning the cloth rather "
        "than your wrist.",
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
