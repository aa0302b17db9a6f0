"""Stage 4: what to cut and what to buy.

In: pattern, sizes, drafts. Out: a `CutPlan` for each size, and notes.
Invariant: see `publish.model.cutplan`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from publish.cut.codes import CODES
from publish.cut.fabric import Lettered, checked, plan_fabric
from publish.cut.finishing import backing, batting, binding, pillow, sleeve
from publish.cut.letters import Letters
from publish.cut.needs import Need
from publish.cut.patches import borders, grounds, motif_squares
from publish.cut.thread import thread, web
from publish.model.cutplan import BackingPlan, CutPlan, FabricPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.notes import Note, error, warning
from publish.units import inches_text, yards_text

__all__ = ["CODES", "cut"]


def cut(
    pattern: Pattern, sizes: Mapping[str, Size], drafts: Mapping[str, Draft]
) -> tuple[dict[str, CutPlan], tuple[Note, ...]]:
    """Return every size's plan; a purpose keeps its letter in all of them."""
    notes: list[Note] = []
    letters = Letters()
    plans = {}
    needs = {key: _needs(pattern, size, drafts[key], notes) for key, size in sizes.items()}
    letters.give(needs.values())
    for key, size in sizes.items():
        plans[key] = _plan(pattern, size, drafts[key], needs[key], letters, notes)
    return {k: p for k, p in plans.items() if p is not None}, tuple(notes)


def _needs(pattern: Pattern, size: Size, draft: Draft, notes: list[Note]) -> list[Need]:
    """Return everything that is cut but the backing, whose layout is weighed later."""
    ground, found = grounds(pattern, size, draft)
    notes += found
    needs = [*motif_squares(pattern, size, draft), *ground, *borders(pattern, size)]
    made = pillow(pattern, size)
    needs += [made[1]] if made else []
    needs += [need for _, need in backing(pattern, size)[0][:1]]
    bound = binding(pattern, size)
    needs += [bound[1]] if bound else []
    hung = sleeve(pattern, size)
    return [*needs, hung] if hung else needs


def _plan(pattern: Pattern, size: Size, draft: Draft, needs: list[Need], letters: Letters,
          notes: list[Note]) -> CutPlan | None:  # fmt: skip
    lettered = [Lettered(x, n) for x, n in zip(letters.of(needs), needs, strict=True)]
    before = len(notes)
    notes += [_too_wide(pattern, size, n) for n in needs if not _fits(pattern, n)]
    if len(notes) > before:
        return None
    backings, _ = backing(pattern, size)
    fabrics: dict[str, FabricPlan] = {}
    back: BackingPlan | None = None
    for key in pattern.fabrics:
        own = [n for n in lettered if n.need.fabric == key]
        if not own:
            continue
        if backings and backings[0][0].fabric == key:
            fabrics[key], back = _with_backing(pattern, own, backings)
        else:
            fabrics[key] = checked(plan_fabric(pattern.fabrics[key], own, pattern.sewing))
        notes += _at_hand(pattern, size, fabrics[key])
    by_letter = {p.letter: p for plan in fabrics.values() for p in plan.pieces}
    pieces = tuple(by_letter[n.letter] for n in sorted(lettered, key=_in_order))
    bound, made = binding(pattern, size), pillow(pattern, size)
    squares = [p.width for p in pieces if p.purpose == "motif"]
    return CutPlan(
        size=size.key,
        pieces=pieces,
        fabrics=fabrics,
        motif_square=max(squares, default=None),
        backing=back,
        batting=batting(size),
        binding=bound[0] if bound else None,
        pillow=made[0] if made else None,
        web=web(pattern, draft),
        sleeve=next((p for p in pieces if p.purpose == "sleeve"), None),
        thread=thread(pattern, size, draft),
    )


def _in_order(lettered: Lettered) -> tuple[int, str]:
    return len(lettered.letter), lettered.letter


def _with_backing(
    pattern: Pattern, needs: list[Lettered], backings: list[tuple[BackingPlan, Need]]
) -> tuple[FabricPlan, BackingPlan]:
    """Plan the fabric of the backing with each layout; return what buys least."""
    tried = []
    for plan, need in backings:
        own = [Lettered(n.letter, need if n.need.purpose == "backing" else n.need) for n in needs]
        fabric = pattern.fabrics[need.fabric]
        tried.append((checked(plan_fabric(fabric, own, pattern.sewing)), plan, need))
    tried.sort(key=lambda t: (t[0].buy, t[0].length, t[1].panels))
    best, plan, need = tried[0]
    if len(tried) > 1 and need.ways[0].words != tried[1][2].ways[0].words:
        text = f"backing {need.ways[0].words}"
        if tried[1][0].buy > best.buy:
            saved = yards_text(tried[1][0].buy - best.buy)
            text += f": buys {saved} less than {tried[1][2].ways[0].words}"
        best = replace(best, choices=(*best.choices, text))
    return best, plan


def _fits(pattern: Pattern, need: Need) -> bool:
    """Return whether a need can be cut in some way, and drop nothing."""
    usable = pattern.fabrics[need.fabric].usable_width
    return any(w.across <= usable or (w.may_turn and w.along <= usable) for w in need.ways)


def _too_wide(pattern: Pattern, size: Size, need: Need) -> Note:
    fabric = pattern.fabrics[need.fabric]
    return error(
        "C401", pattern.place("sizes", size.key, "block_size"),
        f"the {need.name} of the {size.title} is wider than {fabric.name}",
        expected=f"at most {inches_text(fabric.usable_width)}, its usable width",
        received=f"{inches_text(need.width)} × {inches_text(need.length)}",
        help=f"make the block smaller, or give `{fabric.key}` a wider `usable_width`",
    )  # fmt: skip


def _at_hand(pattern: Pattern, size: Size, plan: FabricPlan) -> list[Note]:
    """Warn when the designer's own length of a fabric does not reach."""
    fabric = pattern.fabrics[plan.fabric]
    if fabric.owned is None or fabric.owned >= plan.needed:
        return []
    note = warning(
        "C403", pattern.place("fabrics", fabric.key, "owned"),
        f"there is too little {fabric.name} for the {size.title}",
        expected=f"at least {inches_text(plan.needed)}",
        received=inches_text(fabric.owned),
        help=f"buy {yards_text(plan.buy)}, or make a smaller size from it",
    )  # fmt: skip
    return [note]
