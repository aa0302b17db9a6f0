"""Folding the motif's square of cloth into one wedge.

In: the motifs that are cut on folds. Out: the section, or None.
Invariant: each motif is folded as often as its number of folds asks, every fold is named,
and the last picture says which edge is the single fold and which holds the multiple ones.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.pattern import Motif
from publish.model.words import Paragraph, Section
from publish.words.en.phrase import capital, counted, listed, number, rectangle
from publish.write.context import Book
from publish.write.steps import StepList, figure

SEQUENCE = {
    4: ("half", "quarter"),
    6: ("half", "third", "last third"),
    8: ("half", "quarter", "diagonal"),
    12: ("half", "third", "last third", "again"),
    16: ("half", "quarter", "diagonal", "again"),
}
"""The folds that make a wedge of each number, in order."""

_LAYERS = {"half": 2, "quarter": 4, "diagonal": 8, "third": 4, "last third": 6}


def folded(book: Book) -> tuple[Motif, ...]:
    """Return the motifs that are cut from folded cloth."""
    return tuple(
        m
        for m in book.motifs
        if m.symmetry == "mirror" and m.method != "fusible" and m.folds in SEQUENCE
    )


def share(folds: int) -> str:
    """Return what a wedge is called: `eighth`."""
    return {4: "quarter", 6: "sixth", 8: "eighth", 12: "twelfth", 16: "sixteenth"}[folds]


def alike(book: Book) -> dict[int, tuple[Motif, ...]]:
    """Return the folded motifs by their number of folds."""
    groups: dict[int, tuple[Motif, ...]] = {}
    for motif in folded(book):
        groups[motif.folds] = (*groups.get(motif.folds, ()), motif)
    return groups


def section(book: Book) -> Section | None:
    """Return the section on folding, or None when no motif is folded."""
    groups = alike(book)
    if not groups:
        return None
    steps = StepList(book, "folding")
    blocks: list[Paragraph | object] = []
    for folds, motifs in groups.items():
        if len(groups) > 1:
            names = listed([book.motif_name(m.key) for m in motifs])
            blocks.append(Paragraph(f"**{capital(names)}: {counted(folds, 'layer')}.**"))
        for motif in motifs:
            _square(book, steps, motif)
        _folds(book, steps, folds, motifs)
        blocks.append(steps.block())
    lead = (
        "The motif is cut the way a paper snowflake is cut: fold the cloth, cut one wedge, open it."
        if len(folded(book)) == 1
        else "Each motif is cut the way a paper snowflake is cut: fold the cloth, cut one wedge, "
        "open it."
    )
    return Section("folding", "Folding the cloth", tuple(blocks), lead)  # type: ignore[arg-type]


def _square(book: Book, steps: StepList, motif: Motif) -> None:
    """Say which square to take, how many, and how to make it ready."""
    keys = book.with_motif(motif.key)
    letter = book.motif_letter(motif.key)

    def value(key: str) -> str:
        piece = book.motif_piece(key, motif.key)
        many = book.motif_count(key, motif.key)
        size = rectangle(piece.width, piece.length)
        return size if many == 1 else f"{size}, of which you need {number(many)},"

    many = max(book.motif_count(k, motif.key) for k in keys)
    again = " Fold and cut them one at a time." if many > 1 else ""
    steps.add(
        f"square-{motif.key}",
        f"Take the motif square {letter} of {book.fabric(motif.fabric)}: "
        f"{book.each(keys, value).rstrip(',')}. Press it with a hot, dry iron: steam takes the "
        f"starch out. Lay it wrong side up.{again}",
        sizes=keys,
        right="The square lies flat without a crease, and its threads run parallel to its edges.",
        tip="Starch the length of fabric before you cut the square: damp and heat can skew a cut "
        "one. Starched fabric takes a sharper fold.",
        figure=figure("fold", keys[0], "The motif square, wrong side up.", stage="0",
                      motif=motif.key),
    )  # fmt: skip


def _folds(book: Book, steps: StepList, folds: int, motifs: tuple[Motif, ...]) -> None:
    motif = motifs[0]
    keys = book.with_motif(*(m.key for m in motifs))
    size = book.with_motif(motif.key)[0]
    sequence = SEQUENCE[folds]
    layers = 1
    for at, fold in enumerate(sequence, start=1):
        layers = folds if at == len(sequence) else _LAYERS[fold]
        last = at == len(sequence)
        text, right = _FOLD[fold]
        if last:
            right += " " + _edges(book, size, motif)
        steps.add(
            f"{fold}-{folds}",
            text.format(layers=number(layers), angle=_angle(folds)),
            sizes=keys,
            right=right.strip().format(layers=number(layers)),
            tip=_thick(layers) if last else "",
            figure=figure(
                "fold", size, _caption(fold, layers, last, folds), stage=str(at), motif=motif.key
            ),
        )


def _angle(folds: int) -> str:
    """Return the wedge's angle in degrees as text: `22.5`."""
    whole, half = divmod(Fraction(360, folds), 1)
    return f"{whole}.5" if half else str(whole)


def _caption(fold: str, layers: int, last: bool, folds: int) -> str:
    if last:
        return (
            f"Folded into {number(folds)}: the single fold, the multiple folds, the open edges "
            "and the centre."
        )
    return {
        "half": f"Folded in half: {number(layers)} layers.",
        "quarter": f"Folded into quarters: {number(layers)} layers.",
        "diagonal": f"Folded on the diagonal: {number(layers)} layers.",
        "third": "The first third folded across.",
        "last third": f"The last third folded across on top: {number(layers)} layers.",
    }[fold]


def _edges(book: Book, size: str, motif: Motif) -> str:
    """Name the two fold edges and their grain, from the drafted wedge."""
    edges = book.shape(size, motif.key).edges
    grain = {e.kind: e.grain for e in edges or ()}
    on = {"straight": ", on the straight grain,", "bias": ", on the bias,"}
    return (
        f"The edge you have just made is the **single fold**. The other folded edge"
        f"{on.get(grain.get('multiple', ''), '')} has the earlier folds: the **multiple folds**. "
        "They meet at the **centre**."
    )


def _thick(layers: int) -> str:
    if layers < 12:
        return "Mark the centre with a pencil dot; it is easy to lose once the wedge is turned."
    return (
        f"{capital(number(layers))} layers are as many as scissors will cut cleanly. Choose "
        "a fine, closely woven cotton and press every fold hard."
    )


_FOLD: dict[str, tuple[str, str]] = {
    "half": (
        "Fold the square in half, right side out, bringing one edge over to the opposite edge. "
        "Match the corners, smooth toward the fold and press it straight down.",
        "You have {layers} layers, and the fold follows a thread of the fabric. The raw edges need "
        "only match roughly; the folds must match exactly.",
    ),
    "quarter": (
        "Fold in half again the other way, matching the first fold to itself, and press. The "
        "corner that is folded both ways, with no raw edge, is the centre of the motif.",
        "You have {layers} layers and a smaller square: two of its edges are folded, two are raw.",
    ),
    "diagonal": (
        "Fold once more on the diagonal, from the centre to the opposite corner, matching the "
        "folded edges. Align the layers and press.",
        "You have {layers} layers in a triangle.",
    ),
    "third": (
        "Pinch the middle of the fold: this is the centre of the motif. Cut the paper wedge "
        "template along its two fold edges only, right to the centre. Lay it on the cloth with its "
        "centre on the centre and one fold edge along the fold, and mark a line along its other "
        "fold edge with a removable marker. Fold that third up and across on the line, and press.",
        "The folded third covers the middle third exactly: their folded edges lie together.",
    ),
    "last third": (
        "Fold the remaining third across on top of the other two in the same way, its folded edge "
        "along the folded edge beneath. Press.",
        "You have {layers} layers in a wedge, and both edges that reach the centre are folded.",
    ),
    "again": (
        "Fold the wedge in half once more, bringing one folded edge over to the other. The new "
        "fold runs from the centre and halves the angle there, to {angle} degrees. Press hard.",
        "You have {layers} layers in a narrow wedge.",
    ),
}
