"""The pieces of the top: ground patches, motif squares, borders.

In: pattern, size, draft. Out: needs and notes.
Invariant: the only place where seam allowance and trimming margin are added to the
patches of a top. Patch sizes are finished + seams, rounded up to 1/8 in; the exact size
is kept beside the rounded one.

Common practice, no source: the square for a folded motif is at least 1 1/2 in larger
than the motif; a ground that carries appliqué is cut larger and trimmed afterwards.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction

from publish.cut.needs import Need, cloth_of, long_ways, plain
from publish.model.draft import Draft, Patch
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note, error
from publish.units import cm_text, inches_text, round_up


@dataclass(frozen=True)
class _Ground:
    """A kind of ground patch: what makes two of them the same piece."""

    fabric: str
    finished: tuple[Fraction, Fraction]
    exact: tuple[Fraction, Fraction]
    note: str


def motif_squares(pattern: Pattern, size: Size, draft: Draft) -> list[Need]:
    """Return the squares that motifs are folded and cut from, one need for each motif."""
    found = []
    for key, count in Counter(p.motif for p in draft.placements).items():
        fabric = pattern.motifs[key].fabric
        exact = draft.motifs[key].span + pattern.sewing.motif_margin
        side = round_up(exact)
        found.append(
            Need("motif square", "motif", fabric, side, side, count,
                 plain(side, side, count, pattern.fabrics[fabric].directional),
                 exact_width=exact, exact_length=exact, motif=key)
        )  # fmt: skip
    return found


def grounds(pattern: Pattern, size: Size, draft: Draft) -> tuple[list[Need], list[Note]]:
    """Return the ground patches, like with like, the largest first."""
    notes, kinds = [], Counter[_Ground]()
    for patch in draft.patches:
        if patch.role != "ground":
            continue
        if not _is_rectangle(patch):
            notes.append(_not_rectangle(pattern, patch))
            continue
        kinds[_ground(pattern, size, patch)] += 1
    ordered = sorted(kinds, key=lambda k: (-k.exact[0] * k.exact[1], -k.exact[0]))
    return [_ground_need(pattern, kind, kinds[kind]) for kind in ordered], notes


def _ground(pattern: Pattern, size: Size, patch: Patch) -> _Ground:
    left, top, right, bottom = patch.box
    around = [_allowance(pattern, size, patch, side) for side in range(4)]
    finished = right - left, bottom - top
    exact = finished[0] + around[0] + around[2], finished[1] + around[1] + around[3]
    note = ""
    if patch.block is not None and pattern.blocks[patch.block].motif is not None:
        whole = finished == (size.block_side, size.block_side)
        note = _trim_note(pattern, size, size.block_side) if whole else ""
    return _Ground(patch.fabric, finished, exact, note)


def _trim_note(pattern: Pattern, size: Size, finished: Fraction) -> str:
    # A block that is a whole pillow's front gets the pillow's own seam all round.
    alone = size.pillow is not None and size.block_count == 1 and not size.borders
    seam = size.pillow.seam if alone and size.pillow is not None else pattern.sewing.seam
    trimmed = finished + 2 * seam
    return f"trim to {inches_text(trimmed)} ({cm_text(trimmed)}) square after appliqué"


def _allowance(pattern: Pattern, size: Size, patch: Patch, side: int) -> Fraction:
    """Return what one side of a patch gets: its seam, and margin where it is trimmed.

    Sides count left, top, right, bottom. The outer edge of a pillow gets the pillow's
    own seam; the outer edge of a block that carries a motif gets half the margin.
    """
    edge = patch.box[side]
    outer = (Fraction(0), Fraction(0), size.width, size.height)[side]
    allowance = pattern.sewing.seam
    if size.pillow is not None and edge == outer:
        allowance = size.pillow.seam
    if patch.block is not None and pattern.blocks[patch.block].motif is not None:
        assert patch.row is not None and patch.column is not None
        cell = (patch.column, patch.row)[side % 2] + side // 2
        inset = sum((b.width for b in size.borders), Fraction(0))
        if edge == inset + cell * size.block_side:
            allowance += pattern.sewing.ground_margin / 2
    return allowance


def _ground_need(pattern: Pattern, kind: _Ground, count: int) -> Need:
    width, length = round_up(kind.exact[0]), round_up(kind.exact[1])
    directional = pattern.fabrics[kind.fabric].directional
    return Need("ground", "ground", kind.fabric, width, length, count,
                plain(width, length, count, directional), *kind.finished, *kind.exact,
                kind.note)  # fmt: skip


def borders(pattern: Pattern, size: Size) -> list[Need]:
    """Return each border's strips: sides first, then top and bottom.

    Butted: the sides are as long as what they are sewn to, the top and bottom cover the
    sides. Mitred: every strip is as long as the finished border outside, and one border
    width more.
    """
    found = []
    width, height = size.inner_width, size.inner_height
    for number, border in enumerate(size.borders, start=1):
        grown = width + 2 * border.width, height + 2 * border.width
        mitred = border.corners == "mitred"
        last = number == len(size.borders) and size.pillow is not None
        for part, finished in (("side", height), ("top", grown[0])):
            outside = grown[1] if part == "side" else grown[0]
            reach = outside if mitred else finished
            found.append(
                _border(pattern, size, (number, part), (border.width, reach), mitred, last)
            )
        width, height = grown
    return found


def _border(pattern: Pattern, size: Size, which: tuple[int, str],
            finished: tuple[Fraction, Fraction], mitred: bool, last: bool) -> Need:  # fmt: skip
    number, part = which
    spec = size.borders[number - 1]
    seam = pattern.sewing.seam
    outer = size.pillow.seam if last and size.pillow is not None else seam
    width = finished[0] + seam + outer
    ends = 2 * (outer if part == "top" or mitred else seam)
    length = finished[1] + ends + (spec.width if mitred else 0)
    cloth = cloth_of(pattern.fabrics[spec.fabric])
    cut, exact = (round_up(width), round_up(length)), (width, length)
    ways = long_ways(*cut, 2, cloth, 2 * seam, level=part == "top")
    if cloth.directional and part == "top":  # the strip's length runs across the fabric
        cut, exact, finished = cut[::-1], exact[::-1], finished[::-1]
    name = {"side": "side border", "top": "top and bottom border"}[part]
    if len(size.borders) > 1:
        name = f"{_ordinal(number, len(size.borders))} {name}"
    return Need(name, f"border {number} {part}", spec.fabric, *cut, 2, ways, *finished, *exact)


def _ordinal(number: int, of: int) -> str:
    if number == 1:
        return "inner"
    return "outer" if number == of else "middle" if of == 3 else f"border {number}"


def _is_rectangle(patch: Patch) -> bool:
    left, top, right, bottom = patch.box
    corners = {(left, top), (right, top), (right, bottom), (left, bottom)}
    return len(patch.ring) == 4 and set(patch.ring) == corners


def _not_rectangle(pattern: Pattern, patch: Patch) -> Note:
    return error(
        "C402", pattern.place("blocks", patch.block or ""),
        f"patch {patch.key} is not a rectangle",
        expected="patches that are cut as squares or rectangles",
        received=f"a patch with {len(patch.ring)} corners",
        help="divide the block into squares and rectangles",
    )  # fmt: skip
