"""Whether the pieces that are cut are the pieces that are sewn.

In: a case. Out: notes.
Invariant: every patch of the seam tree has a piece of its fabric, and there are as many
pieces as their patches need; as many motif squares as motifs on the top; a letter names one thing.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from fractions import Fraction

from publish.model.cutplan import Piece
from publish.model.draft import Patch
from publish.notes import Note, error
from publish.proof.case import Case, Code
from publish.proof.values.sewn_sizes import beyond
from publish.surd import Length, root, turned

CODES = {
    "P811": Code(
        "Patches sewn and pieces cut differ in number",
        "the maker runs out of pieces, or has some left and looks for where they belong",
        "18 patches of 9 in sewn and 17 squares cut",
        "18 squares cut",
    ),
    "P812": Code(
        "Motif squares and motifs differ in number",
        "a motif is missing, or cloth is wasted",
        "nine motifs laid and eight squares cut for them",
        "nine squares",
    ),
    "P813": Code(
        "A letter names two different pieces",
        "the maker sews the wrong piece",
        "**D** for the side border of the mini and the binding of the throw",
        "a letter for each part, the same at every size",
    ),
    "P814": Code(
        "A piece is cut smaller than its finished size and its seams",
        "the seam has no cloth",
        "a 9 in patch cut 9 1/4 in, with seams of 1/4 in",
        "9 1/2 in: 9 + 2 × 1/4",
    ),
}

Kind = tuple[str, Fraction, Fraction]
"""Fabric and finished size, the shorter side first."""

_NO_PATCH = ("motif", "backing", "binding", "pillow back", "sleeve")


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each kind of piece whose count or size cannot be right."""
    for size in case.keys:
        yield from _counts(case, size)
        yield from _squares(case, size)
    yield from _letters(case)


def is_patch(piece: Piece) -> bool:
    """Return whether a piece becomes a patch of the top."""
    return not piece.purpose.startswith(_NO_PATCH)


def _kind(fabric: str, width: Fraction, height: Fraction) -> Kind:
    return fabric, min(width, height), max(width, height)


def patch_kind(patch: Patch) -> Kind | None:
    """Return what a patch is cut as: its sides, or a mitred border's box; None for others."""
    if patch.role == "border" and patch.block is None:
        left, top, right, bottom = patch.box
        return _kind(patch.fabric, right - left, bottom - top)
    if len(patch.ring) != 4:
        return None
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = patch.ring
    wide, high = (bx - ax, by - ay), (dx - ax, dy - ay)
    upright = wide[0] * high[0] + wide[1] * high[1] == 0 and (cx - bx, cy - by) == high
    sides = [root(x * x + y * y) for x, y in (wide, high)]
    exact = [side for side in sides if isinstance(side, Fraction)]
    return _kind(patch.fabric, *exact) if upright and len(exact) == 2 else None


def _counts(case: Case, size: str) -> Iterator[Note]:
    """Every patch of the seam tree has a piece of its fabric, and every piece its patches."""
    yield from _covered(case, size)
    plan = case.plans[size]
    pieces = {piece.letter: piece for piece in plan.pieces}
    at_once = {letter for making in plan.makings for letter in making.letters}
    sewn: Counter[str] = Counter()
    for patch in case.drafts[size].assembly.patches:
        piece = pieces.get(plan.sources.get(patch.key, ""))
        if piece is None or piece.fabric != patch.fabric:
            other = "none" if piece is None else f"{piece.letter}, of {case.name(piece.fabric)}"
            yield error(
                "P811",
                case.size_place(size),
                f"the patch {patch.key} is cut from no piece",
                expected=f"a piece of {case.name(patch.fabric)}",
                received=other,
            )
        else:
            sewn[piece.letter] += 1
            yield from _as_finished(case, size, patch, piece, at_once)
    for piece in filter(is_patch, plan.pieces):
        needed = -(-sewn[piece.letter] // piece.yields)
        if piece.letter not in at_once and piece.count != needed:
            yield error(
                "P811",
                case.size_place(size),
                f"{case.name(piece.fabric)} pieces {piece.letter}, {case.called(piece)}, are not "
                "cut as often as they are sewn",
                expected=f"{needed} sewn",
                received=f"{piece.count} cut",
            )
    yield from _at_once(case, size, pieces)


def _covered(case: Case, size: str) -> Iterator[Note]:
    """A rectangle covers each patch that is cut from it, with what lies beyond its edges:
    a pillow's own seam at the edge of its cover."""
    plan = case.plans[size]
    pieces = {piece.letter: piece for piece in plan.pieces if piece.shape == "rectangle"}
    at_once = {letter for making in plan.makings for letter in making.letters}
    short: dict[str, Note] = {}
    for unit in case.drafts[size].assembly.outermost_first():
        piece = pieces.get(plan.sources.get(unit.patch.key, "")) if unit.patch else None
        if piece is None or piece.letter in at_once or piece.letter in short:
            continue
        least, cut = sorted(beyond(case, size, unit)), sorted((piece.width, piece.length))
        for needed, given in zip(least, cut, strict=True):
            if given < needed:
                short[piece.letter] = error(
                    "P814",
                    case.size_place(size),
                    f"piece {piece.letter}, {case.called(piece)}, is cut too small for its seams",
                    expected=f"at least {case.text(needed)}",
                    received=case.text(given),
                )
    yield from short.values()


def _as_finished(
    case: Case, size: str, patch: Patch, piece: Piece, at_once: set[str]
) -> Iterator[Note]:
    """A rectangle that is one patch finishes as large as the patch."""
    told = piece.finished_width, piece.finished_length
    if piece.shape != "rectangle" or piece.letter in at_once or None in told:
        return
    sides = _sides(patch)
    if sorted(sides) != sorted(side for side in told if side is not None):
        yield error(
            "P811",
            case.size_place(size),
            f"piece {piece.letter}, {case.called(piece)}, does not finish as large as {patch.key}",
            expected=f"{case.text(sides[0])} × {case.text(sides[1])}",
            received=" × ".join(case.text(side) for side in told if side is not None),
        )


def _sides(patch: Patch) -> list[Length]:
    """Return the sides of a rectangle, whichever way it lies; of a mitred border, its box's."""
    corners = [turned(point, -patch.turn) for point in patch.ring]
    (ax, ay), (bx, by), (cx, cy), *_ = corners
    along, aside = (bx - ax, by - ay), (cx - bx, cy - by)
    lengths = [x * x + y * y for x, y in (along, aside)]
    if len(corners) == 4 and along[0] * aside[0] + along[1] * aside[1] == 0:
        edges = [root(square) for square in lengths if isinstance(square, Fraction)]
        found = [edge for edge in edges if edge is not None]
        if len(found) == len(lengths):
            return found
    return [max(axis) - min(axis) for axis in zip(*corners, strict=True)]


def _at_once(case: Case, size: str, pieces: Mapping[str, Piece]) -> Iterator[Note]:
    """Units made several at once: enough batches for the tree's units, cloth for each batch."""
    made = Counter(unit.kind for unit in case.drafts[size].assembly.outermost_first())
    wanted: Counter[str] = Counter()
    for making in case.plans[size].makings:
        batches = -(-made[making.kind] // making.each_batch)
        if (making.count, making.batches) != (made[making.kind], batches):
            yield error(
                "P811",
                case.size_place(size),
                f"{making.method} are not made as often as they are sewn",
                expected=f"{batches} batches for {made[making.kind]}",
                received=f"{making.batches} batches for {making.count}",
            )
        for letter, each in zip(making.letters, making.each, strict=True):
            wanted[letter] += making.batches * each
    for letter, count in wanted.items():
        if letter not in pieces or pieces[letter].count < count:
            yield error(
                "P811",
                case.size_place(size),
                f"piece {letter} is not cut for every batch",
                expected=f"at least {count}",
                received=f"{pieces[letter].count if letter in pieces else 0}",
            )


def _squares(case: Case, size: str) -> Iterator[Note]:
    placed = Counter(case.pattern.motifs[p.motif].fabric for p in case.drafts[size].placements)
    cut: Counter[str] = Counter()
    for piece in case.plans[size].pieces:
        if piece.purpose.split()[0] == "motif":
            cut[piece.fabric] += piece.count
    for fabric in sorted({*placed, *cut}):
        if placed[fabric] != cut[fabric]:
            yield error(
                "P812",
                case.size_place(size),
                f"{case.name(fabric)} squares for motifs are not cut as often as motifs are laid",
                expected=f"{placed[fabric]} laid",
                received=f"{cut[fabric]} cut",
            )


def _letters(case: Case) -> Iterator[Note]:
    meaning: dict[str, Piece] = {}
    for size in case.keys:
        for piece in case.plans[size].pieces:
            first = meaning.setdefault(piece.letter, piece)
            if (first.purpose, first.fabric) != (piece.purpose, piece.fabric):
                yield error(
                    "P813",
                    case.size_place(size),
                    f"the letter {piece.letter} names two pieces",
                    expected=f"{case.called(first)} in {case.name(first.fabric)}",
                    received=f"{case.called(piece)} in {case.name(piece.fabric)}",
                )
