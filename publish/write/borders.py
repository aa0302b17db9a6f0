"""Sewing borders round the centre: measured through the middle, sides first, or mitred.

In: sizes with borders or rounds, their plans. Out: the section, or nothing.
Invariant: each border's size before and after is the running size of the top; a border
strip's length comes from the plan.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.model.cutplan import Piece
from publish.model.size import Round
from publish.model.words import Section
from publish.surd import Length
from publish.write import rounds
from publish.write.bench import Bench
from publish.write.by_size import per_size
from publish.write.context import Book
from publish.write.phrase import counted, listed, measure, number, ordinal, rectangle
from publish.write.practice import RULER_SPARE
from publish.write.spare import left_long
from publish.write.steps import StepList, figure


def border_name(index: int, count: int) -> str:
    """Return what the text calls a border: `border`, `inner border`, `second border`."""
    if count == 1:
        return "border"
    if index in (0, count - 1):
        return "inner border" if index == 0 else "outer border"
    if count == 3:
        return "middle border"
    return f"{ordinal(index + 1)} border"


def sections(book: Book) -> tuple[Section, ...]:
    """Return the sections on borders; none when no size has any."""
    keys = [k for k in book.keys if book.sizes[k].layers]
    lead = (
        "Measure the top at its middle and near both edges, and trim the strips to the average: it "
        "keeps the top square."
    )
    blocks = any(book.sizes[k].rounds for k in keys)
    title = "Adding the borders and rounds" if blocks else "Adding the borders"
    return per_size(book, "borders", title, lead, keys, _steps)


def _steps(book: Book, key: str, steps: StepList) -> None:
    size = book.sizes[key]
    if size.rounds:
        rounds.add_overview(book, key, steps)
    index = 0
    for number_, layer in enumerate(size.layers, 1):
        if layer.border is None:
            rounds.add_blocks(Bench(book, key), steps, number_, layer)
            continue
        name = border_name(index, len(size.borders))
        writer = _mitred if layer.border.corners == "mitred" else _butted
        writer(book, key, steps, (number_, index), name, layer)
        index += 1


def _join(book: Book, key: str, steps: StepList, index: int, name: str,
          pieces: Sequence[Piece]) -> None:  # fmt: skip
    """Add the step that joins cut lengths end to end, where the plan cuts them short."""
    joined = [p for p in pieces if p.joined_from > 1]
    if not joined:
        return
    what = listed([
        f"{counted(p.joined_from, 'length')} of **{p.letter}** for each of the "
        f"{counted(p.count, 'strip')}" for p in joined
    ])  # fmt: skip
    steps.add(
        f"join-{index + 1}",
        f"Join the {name}'s cut lengths end to end, right sides together, with a straight "
        f"{measure(book.pattern.sewing.seam)} seam: {what}. Press the seams open.",
        sizes=[key],
        right=f"Laid out straight, {_measures(joined)}.",
    )


def _measures(pieces: Sequence[Piece]) -> str:
    return listed([f"**{p.letter}** measures {rectangle(p.width, p.length)}" for p in pieces])


def _outer(book: Book, key: str, place: int, layer: Round) -> tuple[Length, Length]:
    """Return what the top measures once a border is on, `place` counting rounds from 1."""
    beyond = 2 * book.seam_beyond(key, place)
    return layer.width + beyond, layer.height + beyond


def _butted(book: Book, key: str, steps: StepList, at: tuple[int, int], name: str,
            layer: Round) -> None:  # fmt: skip
    """Add the steps of a border with butted corners; `at` is its place among the rounds,
    from 1, and among the borders, from 0."""
    (place, index), border = at, layer.border
    assert border is not None
    sides = book.pieces(key, f"border {index + 1} side")
    ends = book.pieces(key, f"border {index + 1} top")
    _join(book, key, steps, index, name, [*sides, *ends])
    raw = book.raw
    wide, high = _outer(book, key, place, layer)
    fabric = book.fabric(border.fabric)
    steps.add(
        f"sides-{index + 1}",
        f"{_opening(book, key, place, name)} is {fabric}. Measure the top from top to bottom at "
        "the middle and near both edges: it should be "
        f"{measure(raw(layer.inner_height))} on average. Trim the two side "
        f"strips{_letters(sides)} to your average. Pin one to each side at the ends, the "
        "middle and the quarter points, ease the rest between the pins, and sew. Press toward the "
        "border.",
        sizes=[key],
        right=f"The top now measures {rectangle(wide, raw(layer.inner_height))} and lies flat.",
        tip=_spare(book, key, [*sides, *ends]),
        figure=figure("borders", key, f"{book.title(key)}: the {name}, sides first.",
                      border=str(index)),
    )  # fmt: skip
    steps.add(
        f"ends-{index + 1}",
        "Measure from side to side in the same way, side strips included: it should be "
        f"{measure(wide)} on average. Trim the top and bottom strips{_letters(ends)} to your "
        "average, pin them in the same way, sew, and press toward the border.",
        sizes=[key],
        right=f"The top measures {rectangle(wide, high)}.",
    )


def _spare(book: Book, key: str, pieces: Sequence[Piece]) -> str:
    """Say what to do with strips that were cut to length and cannot be trimmed to more."""
    long = left_long(book.plans[key])
    if all(p.letter in long for p in pieces):
        return ""
    exact = listed([f"**{p.letter}**" for p in pieces if p.letter not in long])
    return (
        f"Strips {exact} have nothing to spare. If your average is more than "
        f"{measure(RULER_SPARE.value)} longer, check the width of your seams before you sew on."
    )


def _opening(book: Book, key: str, place: int, name: str) -> str:
    """Return `The inner border`, or, in a medallion, `The fourth round, the third border,`."""
    if not book.sizes[key].rounds:
        return f"The {name}"
    return f"The {ordinal(place)} round, the {name},"


def _letters(pieces: Sequence[Piece]) -> str:
    marks = list(dict.fromkeys(f"**{p.letter}**" for p in pieces))
    return f" {listed(marks)}" if marks else ""


def _mitred(book: Book, key: str, steps: StepList, at: tuple[int, int], name: str,
            layer: Round) -> None:  # fmt: skip
    """Add the steps of a border with mitred corners; `at` as for `_butted`."""
    (place, index), border = at, layer.border
    assert border is not None
    pieces = book.pieces(key, f"border {index + 1}")
    _join(book, key, steps, index, name, pieces)
    raw, seam = book.raw, book.pattern.sewing.seam
    outer = _outer(book, key, place, layer)
    steps.add(
        f"pin-{index + 1}",
        f"{_opening(book, key, place, name)} is {book.fabric(border.fabric)} with mitred "
        "corners. Measure the top through the middle both ways: it should be "
        f"{rectangle(raw(layer.inner_width), raw(layer.inner_height))}. "
        f"Fold each of the {number(4)} strips{_letters(pieces)} in half to find its middle, pin "
        "it to the middle of its side, "
        "and pin outwards; the ends stick out beyond the corners.",
        sizes=[key],
        right="Each strip reaches past both corners by at least its cut width.",
        figure=figure("borders", key, f"{book.title(key)}: the {name}, mitred.",
                      border=str(index)),
    )  # fmt: skip
    steps.add(
        f"sew-{index + 1}",
        f"Sew the strips on, starting and stopping exactly {measure(seam)} from each corner of the "
        "top. Backstitch at both ends. Press toward the border.",
        sizes=[key],
        right="At each corner the two lines of stitching meet in one point.",
    )
    steps.add(
        f"mitre-{index + 1}",
        "Fold the top on the diagonal, right sides together, so that two neighbouring strips lie "
        "on each other. Lay a ruler along the fold and mark its line across the strips; sew on it "
        f"from the corner of the seams out to the edge. Trim to {measure(seam)} and press the seam "
        "open. Do the same at the other corners.",
        sizes=[key],
        right=f"The corners lie flat, and the top measures {rectangle(outer[0], outer[1])}.",
    )
