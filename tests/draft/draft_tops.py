"""Whole tops built by hand, graded; every traditional block; units walked and measured."""

from __future__ import annotations

import functools
import tempfile
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import shapely
from draft_builders import grid, motif, pattern
from hypothesis import strategies as st
from shapely.geometry import Polygon

from publish import grade, read
from publish.arcs import outline
from publish.draft.assembly import assemble
from publish.draft.sewn import sewn
from publish.draft.topmap import top_patches
from publish.model.block import Block, PatchSpec
from publish.model.draft import Patch, Unit
from publish.model.pattern import BorderSpec, Fabric, Pattern, SashingSpec, SizeSpec
from publish.model.size import Size
from publish.read.library import trade_blocks

F = Fraction
SIDE = F(12)
CLOTH = ("linen", "moss", "sand", "reed", "rust")
NEAR = 1e-6
"""Square inches: what shapely may be off by."""


@functools.cache
def library() -> dict[str, Block]:
    """Return every traditional block by its name, read as a pattern reads it."""
    lines, names = [], []
    for number, values in enumerate(trade_blocks()):
        cloth = ", ".join(f"{role}: {CLOTH[n]}" for n, role in enumerate(values["roles"]))
        names.append(str(values["name"]))
        lines.append(f'  b{number}: {{traditional: "{names[-1]}", fabrics: {{{cloth}}}}}')
    fabrics = [
        f'  {key}: {{name: {key}, colour: "#{n}0{n}0{n}0"}}' for n, key in enumerate(CLOTH, 1)
    ]
    used = ", ".join(f"b{n}" for n in range(len(names)))
    text = "\n".join(
        [
            "title: Osier",
            "fabrics:",
            *fabrics,
            "blocks:",
            *lines,
            "sizes:",
            f"  mini: {{block: [{used}], columns: {len(names)}, block_size: 8 in}}",
            "",
        ]
    )
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pattern.yaml"
        path.write_text(text, encoding="utf-8")
        found, notes, _ = read.load(path)
    assert found is not None, notes
    return dict(zip(names, found.blocks.values(), strict=True))


def top(
    *blocks: Block, columns: int = 1, rows: int = 1, side: Fraction = SIDE, **spec: object
) -> tuple[Pattern, Size]:
    """Return a pattern of one size with these blocks in turn, and that size, graded."""
    extra = spec.pop("others", ())
    made = pattern(motifs=[motif()], blocks=[*blocks, *extra])
    plain = SizeSpec(
        "mini",
        "Mini",
        "quilt",
        columns,
        rows,
        tuple(b.key for b in blocks),
        side,
        None,
        (),
        None,
        None,
        None,
        None,
        (),
        None,
    )
    cloth = {k: Fabric(k, k.title(), f"#{n}0{n}0{n}0", F(40)) for n, k in enumerate(CLOTH, 1)}
    made = replace(made, sizes={"mini": replace(plain, **spec)}, fabrics=cloth)
    size, _ = grade.grade(made, "mini")
    assert size is not None
    return made, size


def tree(*blocks: Block, **spec: object) -> Unit:
    """Return the seam tree of a top, drafted without a note."""
    made, size = top(*blocks, **spec)
    patches, notes = top_patches(made, size)
    unit, more = assemble(made, size, patches)
    assert not notes + more, notes + more
    return unit


def every(unit: Unit) -> Iterator[Unit]:
    """Yield a unit and everything in it, parts before wholes."""
    for part in unit.parts:
        yield from every(part)
    yield unit


def set_in(unit: Unit) -> int:
    """Return how many seams of a tree are set in."""
    return sum(u.set_in for u in every(unit))


def area_of(patch: Patch) -> Polygon:
    return outline(patch.ring, patch.arcs, 1e-5)


def assert_covered_once(unit: Unit) -> None:
    """Shapely's own union of a unit's patches is its outline, and no two overlap."""
    areas = [area_of(p) for p in unit.patches]
    whole = shapely.union_all(areas, grid_size=1e-8)
    said = outline(unit.ring, unit.arcs, 1e-5)
    assert whole.symmetric_difference(said).area < NEAR * max(1.0, said.area)
    assert abs(sum(a.area for a in areas) - said.area) < NEAR * max(1.0, said.area)


def four(key: str = "four", carries: str | None = None) -> Block:
    return grid(key, [["linen", "sand"], ["sand", "linen"]], carries)


@st.composite
def cut_blocks(draw):
    """A block cut by straight lines from edge to edge, one piece after the other."""
    pieces = [((F(0), F(0)), (F(12), F(0)), (F(12), F(12)), (F(0), F(12)))]
    for _ in range(draw(st.integers(1, 7))):
        ring = pieces.pop(draw(st.integers(0, len(pieces) - 1)))
        one, two = sorted(
            draw(st.lists(st.integers(0, len(ring) - 1), min_size=2, max_size=2, unique=True))
        )
        share = st.integers(1, 4).map(lambda n: F(n, 5))

        def at(i, part, ring=ring):
            (a, b), (c, d) = ring[i], ring[(i + 1) % len(ring)]
            return a + part * (c - a), b + part * (d - b)

        start, end = at(one, draw(share)), at(two, draw(share))
        pieces.append((start, *ring[one + 1 : two + 1], end))
        pieces.append((*ring[: one + 1], start, end, *ring[two + 1 :]))
    fabric = st.sampled_from(["linen", "moss"])
    return Block("cut", 12, 12, tuple(PatchSpec(ring, draw(fabric)) for ring in pieces))


@st.composite
def tops(draw):
    """Any top: blocks with straight and curved seams, turned, straight or on point."""
    names = st.sampled_from(["half-square triangle", "drunkard's path", "attic windows"])
    blocks = [library()[draw(names)] for _ in range(draw(st.integers(1, 2)))]
    blocks = list({b.key: b for b in blocks}.values())
    borders = draw(
        st.lists(
            st.builds(
                BorderSpec,
                st.integers(1, 24).map(lambda n: F(n, 8)),
                st.sampled_from(CLOTH[:3]),
                st.sampled_from(["butted", "mitred"]),
            ),
            max_size=2,
        )
    )
    sashing = draw(
        st.none()
        | st.builds(
            SashingSpec,
            st.integers(1, 16).map(lambda n: F(n, 8)),
            st.just("moss"),
            st.none() | st.just("sand"),
            st.booleans(),
        )
    )
    turns = tuple(draw(st.lists(st.sampled_from([0, 90, 180, 270]), min_size=1, max_size=3)))
    return top(
        *blocks,
        columns=draw(st.integers(1, 3)),
        rows=draw(st.integers(1, 3)),
        side=draw(st.integers(40, 100)) * F(1, 8),
        borders=tuple(borders),
        sashing=sashing,
        turns=turns,
        setting=draw(st.sampled_from(["straight", "on point"])),
        setting_fabric="linen",
    )


def assert_sewn(unit):
    """The tree gives back its outline, and each of its units is what it says."""
    assert len(sewn(unit)) == 4
    for part in every(unit):
        assert_covered_once(part)
        assert (part.patch is None) == bool(part.parts or part.section)


def rectangle(left, above, right, below, fabric="linen"):
    points = ((left, above), (right, above), (right, below), (left, below))
    return PatchSpec(tuple((F(x), F(y)) for x, y in points), fabric)
