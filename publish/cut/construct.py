"""The seam tree with recipes: what is made alike, how it lies, how large it comes out.

In: pattern, size, draft, plan. Out: the draft with a place and sizes for every unit.
Invariant: two units share a kind exactly when they share a recipe; a kind keeps the name that
the draft gave it where it can. `Unit.made` stays only on what the plan makes in batches.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from hashlib import sha256

from publish.cut.edges import Edges
from publish.cut.recipes import Cloth, Lie, along, in_block, of_places
from publish.cut.told import with_sizes
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft, Unit
from publish.model.homes import BlockHome
from publish.model.pattern import Pattern
from publish.model.recipe import Place, Recipe
from publish.model.size import Size
from publish.surd import Length, turned

KEY = 12
"""Letters of a recipe's key: enough for all that one size ever holds."""


def construct(
    pattern: Pattern,
    sizes: Mapping[str, Size],
    drafts: Mapping[str, Draft],
    plans: Mapping[str, CutPlan],
) -> dict[str, Draft]:
    """Return the drafts with recipes; one without a plan stays as it is."""
    return {
        key: _constructed(pattern, sizes[key], draft, plans[key]) if key in plans else draft
        for key, draft in drafts.items()
    }


def _constructed(pattern: Pattern, size: Size, draft: Draft, plan: CutPlan) -> Draft:
    edges = Edges(pattern, size, draft)
    allow = {p.key: edges.allowances(p) for p in draft.patches}
    after = {p.key: edges.allowances(p, trimmed=True) for p in draft.patches}
    hanging = frozenset(k for k, fabric in pattern.fabrics.items() if fabric.directional)
    root = _unmade(draft.assembly, {m.kind for m in plan.makings}, allow, pattern.sewing.seam)
    recipes = _Recipes(draft, Cloth(plan.sources, allow, hanging), after, root)
    placed = recipes.placed(root)
    return replace(draft, assembly=with_sizes(pattern, size, plan, placed))


def _unmade(
    unit: Unit, batched: set[str], allow: Mapping[str, tuple[Length, ...]], seam: Length
) -> Unit:
    """Return a tree in which only what comes from a batch is said to be made a quicker way."""
    if unit.made:
        even = all(set(allow.get(p.key, ())) <= {seam} for p in unit.patches)
        if unit.kind in batched and even:
            return unit
    parts = tuple(_unmade(part, batched, allow, seam) for part in unit.parts)
    return replace(unit, made="", parts=parts) if unit.made or parts != unit.parts else unit


@dataclass(frozen=True)
class _Known:
    """A recipe with the kind that stands for it in this size, and how its first part lies."""

    recipe: Recipe
    kind: str
    turn: int
    """Of the content, when the recipe lies as it does."""


@dataclass
class _Recipes:
    """The recipes of one size, in the order in which parts are sewn."""

    draft: Draft
    cloth: Cloth
    after: Mapping[str, tuple[Length, ...]]
    """What lies beyond the edges of patches once grounds are trimmed to be joined."""
    root: Unit
    known: dict[str, _Known] = field(default_factory=dict)
    lies: dict[object, Lie] = field(default_factory=dict)
    counts: Counter[BlockHome | None] = field(default_factory=Counter)
    taken: set[str] = field(default_factory=set)

    def __post_init__(self) -> None:
        self.counts = Counter(p.place for p in self.draft.patches)
        for unit in self.root.innermost_first():
            if unit.made:  # the plan knows these by their kinds already
                self._settle(unit, self._lie(unit, ()), ())

    def placed(self, unit: Unit) -> Unit:
        """Return a unit with the places and kinds of all that is in it."""
        parts = tuple(self.placed(part) for part in unit.parts)
        places = tuple(p.place for p in parts if p.place is not None)
        lie = self._lie(unit, places)
        known = self._settle(unit, lie, places)
        turn = min((t - known.turn) % 360 for t in lie.turns)
        home = unit.patches[0].place if _home(unit) else None
        return replace(unit, kind=known.kind, parts=parts, place=Place(known.recipe, turn, home))

    def _lie(self, unit: Unit, places: tuple[Place, ...]) -> Lie:
        if unit.join == "mitred" or (unit.parts and _home(unit) is None):
            return of_places(unit, places)
        mark = self._mark(unit)
        if mark not in self.lies:
            self.lies[mark] = in_block(unit, self.cloth, self._whole(unit))
        return self.lies[mark]

    def _mark(self, unit: Unit) -> object:
        """Return what parts share that need not be looked at again: they differ by a shift."""
        found = unit.patches
        if any(p.spec is None for p in found):
            return tuple(p.key for p in found), len(unit.parts)
        cut = tuple(
            (p.spec, self.cloth.letters.get(p.key), self.cloth.allow.get(p.key)) for p in found
        )
        return (
            found[0].block,
            found[0].turn,
            unit.width,
            unit.height,
            unit.turn,
            len(unit.parts),
            unit.section,
            unit.made,
            cut,
        )

    def _whole(self, unit: Unit) -> str:
        first = unit.patches[0]
        whole = first.block is not None and len(unit.patches) == self.counts[first.place]
        return f"block {first.block}" if whole else ""

    def _settle(self, unit: Unit, lie: Lie, places: tuple[Place, ...]) -> _Known:
        """Return what is known of a content; the first part of it says how its recipe lies."""
        key = sha256(repr(lie.content).encode()).hexdigest()[:KEY]
        if key not in self.known:
            own = lie.turns[0] - unit.turn
            within = _home(unit) is not None or unit.patch is not None
            allow = self.cloth.allow if within else self.after
            recipe = _recipe(unit, key, lie, places, replace(self.cloth, allow=allow))
            self.known[key] = _Known(recipe, self._free(unit.kind), own)
        return self.known[key]

    def _free(self, kind: str) -> str:
        """Return a kind's own name, or, where another recipe has it, one after it."""
        name, number = kind, 2
        while name in self.taken:
            name, number = f"{kind}, {number}", number + 1
        self.taken.add(name)
        return name


def _home(unit: Unit) -> BlockHome | None:
    """Return the one block that all of a unit is in, or None."""
    homes = {p.place for p in unit.patches}
    return next(iter(homes)) if len(homes) == 1 else None


def _recipe(unit: Unit, key: str, lie: Lie, places: tuple[Place, ...], cloth: Cloth) -> Recipe:
    """Return the recipe of its first part, lying as that lies on the table."""
    outline = unit.patch if unit.patch is not None else unit
    left, top, _, _ = unit.box

    def laid(point: tuple[Length, Length]) -> tuple[Length, Length]:
        x, y = turned(point, -unit.turn)
        return x - left, y - top

    patch = unit.patch
    turns = sorted((t - lie.turns[0]) % 360 for t in lie.turns)
    return Recipe(
        key=key,
        join=unit.join,
        ring=tuple(laid(p) for p in outline.ring),
        arcs=tuple((i, laid(p)) for i, p in outline.arcs),
        allow=tuple(along(outline.ring, unit.patches, cloth)),
        letter=cloth.letters.get(patch.key, "") if patch is not None else "",
        fabric=patch.fabric if patch is not None else "",
        method=unit.made,
        section=unit.section,
        symmetry=tuple(turns),
        parts=tuple(replace(p, turn=(p.turn - unit.turn) % 360) for p in places),
    )
