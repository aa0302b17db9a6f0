"""Reading the seam tree: what is sewn from what, how often, and how large it comes out.

In: a draft's assembly, its plan. Out: groups of like units in sewing order, and words.
Invariant: every unit of the tree that is sewn from parts is in exactly one group; parts
come before what is made of them; a size is the sum of cut sizes less the seams.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from publish.model.cutplan import Piece
from publish.model.draft import Patch, Unit
from publish.write.context import Book
from publish.write.phrase import article, counted, listed, number, plural

Box = tuple[Fraction, Fraction, Fraction, Fraction]
"""Left, top, right, bottom."""


@dataclass(frozen=True)
class Group:
    """Units that are sewn alike; they may differ in name and in how they are pressed."""

    units: tuple[Unit, ...]

    @property
    def unit(self) -> Unit:
        return self.units[0]

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(u.name for u in self.units))


def every(unit: Unit) -> Iterator[Unit]:
    """Yield a unit and everything in it, parts before wholes."""
    for part in unit.parts:
        yield from every(part)
    yield unit


def groups(root: Unit) -> tuple[Group, ...]:
    """Return the units that have parts, grouped by kind, parts before wholes."""
    found: dict[str, list[Unit]] = {}
    for unit in every(root):
        if unit.parts:
            found.setdefault(unit.kind, []).append(unit)
    return tuple(Group(tuple(units)) for units in found.values())


def patches(unit: Unit) -> tuple[Patch, ...]:
    """Return every patch of a unit."""
    if unit.patch is not None:
        return (unit.patch,)
    return tuple(p for part in unit.parts for p in patches(part))


def level(unit: Unit) -> str:
    """Return where a unit is made: `block`, `top` or `border`."""
    found = patches(unit)
    if any(p.role == "border" for p in found):
        return "border"
    homes = {(p.block, p.row, p.column) for p in found}
    return "block" if len(homes) == 1 else "top"


def at_level(root: Unit, where: str) -> tuple[Group, ...]:
    """Return the groups that are made at one level."""
    return tuple(g for g in groups(root) if level(g.unit) == where)


def piece_of(book: Book, key: str, patch: Patch) -> Piece | None:
    """Return the piece that a patch is cut as, or None when the plan has none like it.

    Patches of one fabric and finished size may still be cut differently, by the edges that
    lie on the outside of a ground or of a pillow; the allowances tell them apart.
    """
    left, top, right, bottom = patch.box
    finished = (right - left, bottom - top)
    like = [
        p
        for p in book.pieces(key, patch.role, patch.fabric)
        if (p.finished_width, p.finished_length) in (finished, finished[::-1])
    ]
    home = (patch.row, patch.column)
    before, above, after, below = around(book, key, patch.box, patch.block, home)
    exact = (finished[0] + before + after, finished[1] + above + below)
    best = [p for p in like if exact == (p.exact_width or p.width, p.exact_length or p.length)]
    return next(iter([*best, *like]), None)


def around(book: Book, key: str, box: Box, block: str | None = None,
           home: tuple[int | None, int | None] = (None, None)) -> Box:  # fmt: skip
    """Return what lies beyond each finished edge of a box on the top: left, top, right, bottom.

    A seam; the pillow's own seam on the outside of a pillow; and, for a patch of a block
    that carries a motif, half the trimming margin on the outside of its ground.
    """
    size = book.sizes[key]
    ends = (Fraction(0), Fraction(0), size.width, size.height)
    pillow = size.pillow.seam if size.pillow is not None else book.pattern.sewing.seam
    edges = [pillow if box[i] == ends[i] else book.pattern.sewing.seam for i in range(4)]
    if block is not None and book.block(block).motif is not None:
        mates = [p.box for p in book.drafts[key].patches if (p.row, p.column) == home]
        outer = [pick(b[i] for b in mates) for i, pick in enumerate((min, min, max, max))]
        margin = book.pattern.sewing.ground_margin / 2
        edges = [e + margin if box[i] == outer[i] else e for i, e in enumerate(edges)]
    return edges[0], edges[1], edges[2], edges[3]


def raw_size(book: Book, key: str, unit: Unit) -> tuple[Fraction, Fraction]:
    """Return a unit's width and height with what lies beyond its finished edges."""
    left, top, right, bottom = around(book, key, unit.box)
    return unit.width + left + right, unit.height + top + bottom


def ground_letter(book: Book, keys: Sequence[str], block: str) -> str:
    """Return the bold letter of a block's whole-cloth ground, for each size that differs."""

    def value(key: str) -> str:
        patch = next(p for p in book.drafts[key].patches if p.block == block)
        piece = piece_of(book, key, patch)
        return f"**{piece.letter}**" if piece is not None else ""

    return book.each(keys, value)


def sewn_size(book: Book, key: str, unit: Unit) -> tuple[Fraction, Fraction] | None:
    """Return a unit's width and height as sewn, before any trimming.

    None when a patch has no piece of its own shape in the plan, or when a seam slants.
    """
    if unit.patch is not None:
        piece = piece_of(book, key, unit.patch)
        if piece is None:
            return None
        upright = (unit.width, unit.height) == (piece.finished_width, piece.finished_length)
        return (piece.width, piece.length) if upright else (piece.length, piece.width)
    sizes = [sewn_size(book, key, part) for part in unit.parts]
    known = [s for s in sizes if s is not None]
    if len(known) < len(sizes):
        return None
    if unit.join not in ("across", "down"):
        return None
    lost = 2 * book.pattern.sewing.seam * (len(known) - 1)
    widths, heights = zip(*known, strict=True)
    if unit.join == "across":
        return sum(widths, Fraction(0)) - lost, max(heights)
    return max(widths), sum(heights, Fraction(0)) - lost


def part_name(book: Book, key: str, part: Unit, count: int, *, blocks: bool) -> str:
    """Return `two Salt linen pieces **A**`, `a block`, `three rows`.

    `blocks` says that the parts are whole blocks or larger, so that a block of a single
    patch is called a block and not a piece of cloth.
    """
    if part.patch is not None and not (blocks and part.patch.role == "ground"):
        piece = piece_of(book, key, part.patch)
        mark = f" **{piece.letter}**" if piece is not None else ""
        noun = f"{book.fabric(part.patch.fabric)} {plural(count, 'piece')}{mark}"
        return article(noun) if count == 1 else f"{number(count)} {noun}"
    block = patches(part)[0].block
    if blocks and level(part) == "block" and block is not None:
        name = book.block_name(block)
        return article(name) if count == 1 else counted(count, name)
    if count > 1 and not numbered(part):
        return counted(count, part.name)
    return part.name if numbered(part) else article(part.name)


def numbered(part: Unit) -> bool:
    """Return whether a unit's name ends in a number, as `row 2` does."""
    return part.name.split(" ")[-1].isdigit()


def _noun(part: Unit) -> str:
    """Return a unit's name without its number."""
    return part.name.rsplit(" ", 1)[0] if numbered(part) else part.name


def runs(unit: Unit) -> list[tuple[Unit, int]]:
    """Return the parts in order, neighbours of one kind taken together with their count."""
    found: list[tuple[Unit, int]] = []
    for part in unit.parts:
        if found and _alike(found[-1][0], part):
            found[-1] = (found[-1][0], found[-1][1] + 1)
        else:
            found.append((part, 1))
    return found


def _alike(one: Unit, two: Unit) -> bool:
    return one.kind == two.kind and (one.patch is None) == (two.patch is None)


def parts_text(book: Book, key: str, unit: Unit) -> str:
    """Return the parts of a unit in order: `a Linen piece **A** and a Moss piece **B**`.

    Numbered parts that come in order are taken together: `rows 1 to 3`.
    """
    above = level(unit) != "block"
    noun, count = _noun(unit.parts[0]), len(unit.parts)
    if count > 2 and [p.name for p in unit.parts] == [f"{noun} {n + 1}" for n in range(count)]:
        return f"{noun}s 1 to {count}"
    return listed([part_name(book, key, p, n, blocks=above) for p, n in runs(unit)])


_WAYS = {"left": "to the left", "right": "to the right", "up": "upwards", "down": "downwards",
         "open": "open"}  # fmt: skip


def press_way(book: Book, unit: Unit) -> str:
    """Return where the allowances of a unit's seams are pressed, as a phrase.

    Where a seam joins patches of two fabrics the phrase names the fabric, which stays
    true however the unit is turned later.
    """
    ends = [p.patch.fabric for p in unit.parts if p.patch is not None]
    if unit.press in ("left", "right", "up", "down") and len(unit.parts) == 2 == len(set(ends)):
        last = ends[0] if unit.press in ("left", "up") else ends[1]
        return f"towards {book.fabric(last)}"
    return _WAYS.get(unit.press, "to one side")


def press_text(book: Book, group: Group, why: str = "") -> str:
    """Return how the units of a group are pressed, as a sentence.

    Units pressed alike are named together, or counted when they share a name; `why`
    follows when they are not all pressed alike.
    """
    seam = plural(len(group.unit.parts) - 1, "seam")
    ways: dict[str, list[str]] = {}
    for unit in group.units:
        ways.setdefault(press_way(book, unit), []).append(unit.name)
    if len(ways) == 1:
        return f"Press the {seam} {next(iter(ways))}."
    named = len(group.names) == len(group.units)
    phrases = [
        f"{way} in {listed(names) if named else number(len(names))}" for way, names in ways.items()
    ]
    return f"Press the {seam} {listed(phrases)}{why}."
