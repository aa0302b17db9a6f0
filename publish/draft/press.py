"""Which way each seam is pressed, so that seams that meet lock together.

In: the parts of a top. Out: for each part that joins others a way, and whether its seams
nest.
Invariant: where a seam ends at a crossing seam and another carries it on, the two are
pressed to opposite sides, or both parts are said not to nest. Borders are pressed out,
sashing towards the strips, triangles on two sides of a middle towards the triangles;
everything else is free to follow what it meets.

The homes of a block are pressed alike if that lets all seams nest; otherwise each home
follows its neighbours. What is cut from strip sets is pressed alike wherever it goes.
Where nesting leaves both ways open, most seams go towards the darker fabric, or towards
the single patch that is sewn to a unit.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Collection, Hashable, Mapping
from dataclasses import dataclass, field

from publish.draft.parts import TOWARDS_FIRST, TOWARDS_LAST, Part, Stitched
from publish.draft.planar import Spot
from publish.model.draft import Point

WAYS = {"across": ("left", "right"), "down": ("up", "down")}
BEGINS = {"across": TOWARDS_FIRST, "down": TOWARDS_LAST}
"""How the first of several seams that meet is pressed where it is no matter: to the left,
down; slanted and curved ones towards what is sewn on."""

Choice = Hashable
Decided = tuple[Choice, int]
"""What decides how a part is pressed, and 1, or -1 where it is pressed the other way."""

DARKER = 5.0
"""Steps of lightness (CIE L*) from which one fabric counts as darker: allowances show
through a pale fabric, and are pressed to the dark one. Common practice, no source."""


@dataclass(frozen=True)
class Cloth:
    """What pressing asks about fabrics and methods: how light each fabric is, and the kinds
    that are cut from strip sets, which are pressed before they are cut."""

    lightness: Mapping[str, float]
    strips: Collection[str] = ()


@dataclass(frozen=True)
class _Seam:
    """A seam of a part: what decides how it is pressed, and the side of that decision."""

    part: Part
    stitched: Stitched
    choice: Choice
    sign: int


@dataclass
class _Pressing:
    """The choices of a top: how those that are settled are made, how the others begin, what
    speaks for or against that, and which meet."""

    fixed: dict[Choice, int] = field(default_factory=dict)
    begins: dict[Choice, int] = field(default_factory=dict)
    votes: dict[Choice, int] = field(default_factory=lambda: defaultdict(int))
    links: dict[Choice, list[tuple[Choice, bool]]] = field(
        default_factory=lambda: defaultdict(list)
    )

    def made(self) -> dict[Choice, int]:
        """Return every choice, spread from those that are settled to what they meet."""
        found = dict(self.fixed)
        self._spread(found, list(found))
        for start, first in self.begins.items():
            if start not in found:
                found[start] = first
                group = self._spread(found, [start])
                if sum(self.votes[choice] * found[choice] for choice in group) < 0:
                    found.update({choice: -found[choice] for choice in group})
        return found

    def _spread(self, found: dict[Choice, int], starts: list[Choice]) -> list[Choice]:
        """Make the choices that follow from some, and return them all."""
        group, waiting = list(starts), deque(starts)
        while waiting:
            choice = waiting.popleft()
            for other, differ in self.links[choice]:
                if other not in found:
                    found[other] = -found[choice] if differ else found[choice]
                    waiting.append(other)
                    group.append(other)
        return group


def pressing(root: Part, cloth: Cloth) -> dict[Part, tuple[str, bool]]:
    """Return how each joined part is pressed, and whether its seams nest."""
    parts = [p for p in root.every() if p.parts]
    alike, loose = _settle(parts, cloth, together=True)
    if loose:
        apart, fewer = _settle(parts, cloth, together=False)
        if len(fewer) < len(loose):
            alike, loose = apart, fewer
    return {part: (_word(part, alike.get(part, 1)), part not in loose) for part in parts}


def _settle(parts: list[Part], cloth: Cloth, together: bool) -> tuple[dict[Part, int], set[Part]]:
    """Return how each part is pressed, and the parts whose seams do not nest; `together`
    presses all homes of a block alike."""
    decided = {part: _decided(part, cloth, together) for part in parts}
    seams = [s for part in parts for s in _seams(part, decided[part])]
    pressing = _Pressing()
    for part, (choice, sign) in decided.items():
        if part.settled:
            pressing.fixed["settled"] = 1
        else:
            first = BEGINS.get(part.join or "", TOWARDS_LAST)
            pressing.begins.setdefault(choice, first * sign)
            pressing.votes[choice] += _better(part, cloth) * sign
    meetings = _meetings(seams)
    for one, two, differ in meetings:
        differ = differ == (one.sign == two.sign)
        pressing.links[one.choice].append((two.choice, differ))
        pressing.links[two.choice].append((one.choice, differ))
    made = pressing.made()
    loose: set[Part] = set()
    for one, two, differ in meetings:
        if (made[one.choice] * one.sign != made[two.choice] * two.sign) != differ:
            loose |= {one.part, two.part}
    return {s.part: made[s.choice] * s.sign for s in seams}, loose


def _decided(part: Part, cloth: Cloth, together: bool) -> Decided:
    """Return what decides how a part is pressed that is not settled."""
    fabrics = tuple(p.patch.fabric for p in part.parts if p.patch is not None)
    if part.kind in cloth.strips and fabrics != fabrics[::-1]:
        return ("strips", part.kind), 1 if fabrics < fabrics[::-1] else -1
    if together and part.choice is not None:
        return part.choice, -1 if part.flipped else 1
    return part, 1


def _better(part: Part, cloth: Cloth) -> int:
    """Return towards which of two parts a part is better pressed, 0 where it is no matter:
    of two patches the darker, of a patch and what it is sewn to the patch, which has no
    seams that would lie double."""
    patches = [p.patch for p in part.parts]
    if len(patches) != 2:
        return 0
    if patches[0] is None or patches[1] is None:
        return (
            0 if patches[0] is patches[1] else TOWARDS_LAST if patches[0] is None else TOWARDS_FIRST
        )
    first, last = (cloth.lightness[p.fabric] for p in patches if p is not None)
    if abs(first - last) < DARKER:
        return 0
    return TOWARDS_LAST if last < first else TOWARDS_FIRST


def _seams(part: Part, decided: Decided) -> list[_Seam]:
    if part.settled:
        return [
            _Seam(part, s, "settled", sign)
            for s, sign in zip(part.seams, part.settled, strict=True)
        ]
    return [_Seam(part, s, *decided) for s in part.seams]


def _meetings(seams: list[_Seam]) -> list[tuple[_Seam, _Seam, bool]]:
    """Return the seams that carry each other on, and whether they must be pressed towards
    different parts: earlier parts lie on the same side of both when one ends where the
    other starts."""
    ends: dict[tuple[Point, Spot], list[tuple[_Seam, bool]]] = defaultdict(list)
    for seam in seams:
        s = seam.stitched
        ends[s.start, s.leaves].append((seam, True))
        ends[s.end, (-s.arrives[0], -s.arrives[1])].append((seam, False))
    found = []
    for (point, (x, y)), heads in ends.items():
        if (x, y) > (-x, -y):  # each pair once
            for one, begins in heads:
                for two, starts in ends.get((point, (-x, -y)), ()):
                    if one.part is not two.part:
                        found.append((one, two, begins != starts))
    return found


def _word(part: Part, sign: int) -> str:
    if part.press:
        return part.press
    if part.settled:
        return "out"
    first, last = WAYS.get(part.join or "", ("first", "last"))
    return last if sign == TOWARDS_LAST else first
