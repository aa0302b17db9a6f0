"""Seams that part a piece of a map in two, or in several along one direction.

In: a map, faces that make one piece of cloth, how many corners a seam may have. Out: the
parts on either side of each seam.
Invariant: a seam runs along edges from the rim of the piece to the rim, crosses no face,
and leaves two parts that are one piece of cloth each.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from itertools import pairwise
from math import gcd

from publish.draft.planar import Planar, Spot, Way

Faces = frozenset[int]
Parts = tuple[Faces, ...]
Path = tuple[Way, ...]

LEVEL: Spot = (1, 0)
UPRIGHT: Spot = (0, 1)


def parallel_parts(planar: Planar, faces: Faces) -> list[Parts]:
    """Return the ways to take faces apart by smooth seams: for each direction the parts
    between its straight seams in order, level seams first; then by a curve, in two.

    A rectangle with seams along its sides is taken apart by those alone, into rows of
    rectangles, as is usual.
    """
    straight: dict[Spot, list[Path]] = defaultdict(list)
    curved: list[Path] = []
    for path in paths(planar, faces, 0):
        if all(w.bend is None for w in path):
            straight[heading(path[0])].append(path)
        else:
            curved.append(path)
    order = sorted(straight, key=lambda way: (way != LEVEL, way != UPRIGHT, way))
    sides = _square_with(planar.outline(faces))
    if any(way in sides for way in order):
        order, curved = [way for way in order if way in sides], []
    found: list[Parts] = []
    for way in order:
        row = _in_a_row(planar, faces, straight[way])
        found += [row] if row else [parted(planar, faces, p) for p in straight[way]]
    return found + [parted(planar, faces, p) for p in curved]


def paths(planar: Planar, faces: Faces, turns: int) -> list[Path]:
    """Return every seam through faces with just so many corners, each once."""
    after: dict[Spot, list[Way]] = defaultdict(list)
    for face in sorted(faces):
        for way in planar.faces[face]:
            if planar.owner.get(way.back) in faces:
                after[way.start].append(way)
    rim = {w.start for w in planar.rim(faces)}
    found: dict[frozenset[Way], Path] = {}
    for start in sorted(rim):
        for first in after[start]:
            for path in _onwards((first,), after, rim, turns):
                key = frozenset(min(w, w.back, key=lambda v: (v.start, v.end)) for w in path)
                found.setdefault(key, path)
    return list(found.values())


def _onwards(
    path: Path, after: dict[Spot, list[Way]], rim: set[Spot], turns: int
) -> Iterator[Path]:
    """Yield the seams that begin as `path` does and turn so many more corners."""
    last = path[-1]
    if last.end in rim:
        if not turns and last.end != path[0].start:
            yield path
        return
    passed = {w.start for w in path}
    for way in after[last.end]:
        left = turns if last.goes_on(way) else turns - 1
        if left >= 0 and way.end not in passed and way != last.back:
            yield from _onwards((*path, way), after, rim, left)


def parted(planar: Planar, faces: Faces, *seams: Path) -> Parts:
    """Return the parts that seams leave, each one piece of cloth."""
    sewn = {w for path in seams for way in path for w in (way, way.back)}
    left = set(faces)
    found = []
    while left:
        waiting = [min(left)]
        part: set[int] = set()
        while waiting:
            face = waiting.pop()
            if face in part:
                continue
            part.add(face)
            for way in planar.faces[face]:
                other = planar.owner.get(way.back)
                if other in left and other not in part and way not in sewn:
                    waiting.append(other)
        left -= part
        found.append(frozenset(part))
    return tuple(found)


def heading(way: Way) -> Spot:
    """Return the direction of a straight edge, the same for both ways of running it."""
    x, y = way.end[0] - way.start[0], way.end[1] - way.start[1]
    common = gcd(x, y) * (-1 if x < 0 or (x == 0 and y < 0) else 1)
    return x // common, y // common


def _square_with(outline: Path) -> set[Spot]:
    """Return the directions of the sides of a rectangle; none for other outlines."""
    if len(outline) != 4 or any(w.bend for w in outline):
        return set()
    ways = [w.leaves for w in outline]
    if any(x * u + y * v for (x, y), (u, v) in pairwise(ways)):
        return set()
    return {heading(w) for w in outline}


def _in_a_row(planar: Planar, faces: Faces, seams: list[Path]) -> Parts | None:
    """Return the parts between parallel seams in order, None where they branch."""
    x, y = heading(seams[0][0])
    offsets = [path[0].start[1] * x - path[0].start[0] * y for path in seams]
    if len(set(offsets)) < len(seams):
        return None
    parts = parted(planar, faces, *seams)
    owner = {face: n for n, part in enumerate(parts) for face in part}
    ends: dict[int, list[int]] = defaultdict(list)
    for offset, path in sorted(zip(offsets, seams, strict=True), key=lambda pair: pair[0]):
        sides = (owner[planar.owner[w]] for w in (path[0], path[0].back))
        for side in sides:
            ends[side].append(offset)
    if any(len(found) > 2 for found in ends.values()):
        return None
    return tuple(
        parts[n] for n in sorted(ends, key=lambda n: (sum(ends[n]) / len(ends[n]), ends[n][0]))
    )
