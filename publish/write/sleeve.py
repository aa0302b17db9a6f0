"""A hanging sleeve for quilts that ask for one.

In: the plan's sleeve piece. Out: the section, or None.
Invariant: the sleeve's cut size is the plan's; its finished depth is the pattern's.
"""

from __future__ import annotations

from fractions import Fraction

from publish.model.cutplan import Piece
from publish.model.words import Section
from publish.words.en.phrase import counted, measure, rectangle
from publish.write.by_size import alone
from publish.write.context import Book
from publish.write.steps import StepList, figure

_EXHIBITED = Fraction(4)
"""Inches: the depth that exhibitions ask for. Common practice, no source."""


def section(book: Book) -> Section | None:
    """Return the section on the hanging sleeve, or None when no size has one."""
    keys = tuple(k for k in book.keys if book.plans[k].sleeve is not None)
    if not keys:
        return None
    steps = StepList(book, "sleeve", keys)
    _make(book, steps, keys)
    _attach(book, steps, keys)
    lead = "Add a sleeve to hang the quilt."
    blocks = (*alone(book, keys), steps.block())
    return Section("sleeve", "Hanging sleeve", blocks, lead, sizes=book.only(keys))


def _piece(book: Book, key: str) -> Piece:
    piece = book.plans[key].sleeve
    assert piece is not None
    return piece


def _depth(book: Book, key: str) -> Fraction:
    depth = book.sizes[key].sleeve
    assert depth is not None
    return depth


def _make(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    joined = [k for k in keys if _piece(book, k).joined_from > 1]
    seam = measure(book.pattern.sewing.seam)
    letter = f"**{_piece(book, keys[0]).letter}**"

    def size(key: str) -> str:
        piece = _piece(book, key)
        return rectangle(piece.width, piece.length)

    def hemmed(key: str) -> str:
        piece = _piece(book, key)
        return measure(max(piece.width, piece.length) - 4 * book.pattern.sewing.seam)

    if joined:
        steps.add(
            "join",
            f"Join the sleeve's cut lengths {letter} end to end with a {seam} seam, "
            f"{book.each(joined, lambda k: counted(_piece(book, k).joined_from, 'length'))}, and "
            "press the seams open.",
            sizes=joined,
        )
    steps.add(
        "hem",
        f"Take the sleeve strip {letter}, {book.each(keys, size)}. Fold each short end under "
        f"{seam} and {seam} again, and sew along the inner fold.",
        right=f"The strip is {book.each(keys, hemmed)} long, a little shorter than the quilt is "
        "wide.",
    )
    steps.add(
        "tube",
        f"Fold the strip in half along its length, wrong sides together, and sew the long edges "
        f"with a {seam} seam. Press the seam open along the middle of the tube, where it will "
        "face the quilt.",
        right=f"The flat sleeve is {book.each(keys, lambda k: measure(_depth(book, k)))} deep.",
        figure=figure("sleeve", keys[0], "Making the sleeve.", detail="make"),
    )


def _attach(book: Book, steps: StepList, keys: tuple[str, ...]) -> None:
    shallow = any(_depth(book, k) < _EXHIBITED for k in keys)
    asked = f"Exhibitions often ask for {measure(_EXHIBITED)}: cut the strip for that depth."
    deep = asked if shallow else ""
    steps.add(
        "top-edge",
        "Centre the sleeve on the back, seam side down, its top fold just below the binding. Sew "
        "the top fold down by hand, through the backing and batting only.",
        right="No stitch shows on the front.",
    )
    steps.add(
        "bottom-edge",
        "Leave slack in the front layer of the tube so that it has room for a rod, and sew the "
        "lower fold down in the same way. Sew down the back layer at both ends too, so that the "
        "rod cannot slip in behind the sleeve.",
        right="With a rod in the sleeve, the quilt hangs flat and the front does not bulge.",
        tip=f"The rod must be shorter than the quilt is wide. {deep}",
        figure=figure("sleeve", keys[0], "Sewing the sleeve to the back.", detail="attach"),
    )
