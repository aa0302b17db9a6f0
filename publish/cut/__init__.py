"""Stage 4: what to cut and what to buy.

In: pattern, sizes, drafts. Out: a `CutPlan` for each size, and notes.
Invariant: see `publish.model.cutplan`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import partial

from publish.cut import asked
from publish.cut.codes import CODES
from publish.cut.construct import construct
from publish.cut.fabric import Lettered, checked, plan_fabric, template_key
from publish.cut.finishing import backing, batting, binding, binding_plan, pillow, sleeve
from publish.cut.fused import Fused, fused, web
from publish.cut.have import answers, with_have
from publish.cut.letters import Letters
from publish.cut.needs import Need, cloth_of
from publish.cut.notes import at_hand, too_large_note, too_wide_note
from publish.cut.patches import Top, gather, top_needs
from publish.cut.precut import alternative, ready_cut, sold_as, too_large
from publish.cut.precut import offers as ready_offers
from publish.cut.purchase import purchase_of
from publish.cut.rolls import stabiliser
from publish.cut.savings import Saving, offers, ranked
from publish.cut.stock import with_stock
from publish.cut.stretch import Nestable, nested_cloth
from publish.cut.thread import thread
from publish.cut.traced import traced
from publish.model.cutplan import (
    Alternative,
    BackingPlan,
    BindingPlan,
    CutPlan,
    FabricPlan,
    Piece,
    PieceTemplate,
    Share,
)
from publish.model.draft import Draft
from publish.model.pattern import Fabric, Pattern
from publish.model.size import Size
from publish.notes import Note

__all__ = ["CODES", "construct", "cut"]

MOST_SIZES = 20
"""Sizes of pieces in one fabric up to which it is also planned from cloth sold ready cut."""


@dataclass(frozen=True)
class Task:
    """One size to plan, with its needs and their letters."""

    pattern: Pattern
    size: Size
    draft: Draft
    top: Top
    letters: Letters

    def needs(self, pattern: Pattern | None = None) -> list[Lettered]:
        """Return the size's needs; `pattern` may sell its fabrics another way."""
        needs = _needs(pattern or self.pattern, self.size, self.draft, self.top)
        return [Lettered(x, n) for x, n in self.letters.of(self.size.key, needs)]


def cut(
    pattern: Pattern, sizes: Mapping[str, Size], drafts: Mapping[str, Draft]
) -> tuple[dict[str, CutPlan], tuple[Note, ...]]:
    """Return every size's plan; what is cut again in another size keeps its letter."""
    notes: list[Note] = []
    letters = Letters()
    tops = {key: gather(pattern, size, drafts[key]) for key, size in sizes.items()}
    letters.give({s.key: _needs(pattern, s, drafts[k], tops[k]) for k, s in sizes.items()})
    plans, savings = {}, list[Saving]()
    for key, size in sizes.items():
        plans[key] = _plan(Task(pattern, size, drafts[key], tops[key], letters), notes, savings)
    found = {k: p for k, p in plans.items() if p is not None}
    return found, (
        *notes,
        *ranked(savings),
        *answers(pattern, found),
        *asked.check(pattern, drafts, found),
    )


def _needs(pattern: Pattern, size: Size, draft: Draft, top: Top) -> list[Need]:
    """Return everything that is cut."""
    needs = top_needs(pattern, size, draft, top)
    made, back, hung = pillow(pattern, size), backing(pattern, size), sleeve(pattern, size)
    needs += [made[1]] if made else []
    needs += [back[0]] if back else []
    if size.binding is not None:
        cloth = cloth_of(pattern.fabrics[size.binding.fabric])
        lengths = [
            w.along
            for n in needs
            if n.fabric == size.binding.fabric
            for w in n.ways
            if w.along > cloth.across
        ]
        bound = binding(pattern, size, lengths)
        needs += [bound] if bound else []
    return [*needs, hung] if hung else needs


def _plan(task: Task, notes: list[Note], savings: list[Saving]) -> CutPlan | None:
    pattern, size, draft = task.pattern, task.size, task.draft
    notes += task.top.notes
    needs = task.needs()
    wrong = [note for n in needs if (note := _refused(pattern, size, n)) is not None]
    notes += wrong
    if wrong:
        return None
    motifs = fused(pattern, draft, needs)
    fabrics: dict[str, FabricPlan] = {}
    for key, fabric in pattern.fabrics.items():
        own = [n for n in needs if n.need.fabric == key]
        if own:
            laid = with_stock(fabric, _fabric(task, fabric, own, motifs), pattern.sewing)
            fabrics[key] = with_have(pattern, fabric, laid, own)
            notes += at_hand(pattern, size, fabrics[key])
    bolt = partial(_by_length, task, motifs=motifs)
    savings += offers(pattern, size, needs, fabrics, bolt)
    by_letter = {p.letter: p for plan in fabrics.values() for p in plan.pieces}
    pieces = tuple(by_letter[n.letter] for n in sorted(needs, key=_in_order))
    made = pillow(pattern, size)
    side = [n.need.width for n in needs if n.need.purpose == "motif"]
    return CutPlan(
        size=size.key,
        pieces=pieces,
        fabrics=fabrics,
        motif_square=max(side, default=None),
        backing=_backing(pattern, size, pieces),
        batting=batting(size, pattern.measures),
        binding=_binding(pattern, size, pieces),
        pillow=made[0] if made else None,
        web=web(pattern, draft, motifs),
        sleeve=next((p for p in pieces if p.purpose == "sleeve"), None),
        thread=thread(pattern, size, draft),
        stabiliser=stabiliser(pattern, draft),
        sources={key: n.letter for n in needs for key in n.need.patches},
        templates=_templates(needs),
        makings=task.top.makings({n.need.key: n.letter for n in needs}),
    )


def _templates(needs: list[Lettered]) -> tuple[PieceTemplate, ...]:
    """Return the template of each need that is cut with one."""
    return tuple(
        PieceTemplate(
            template_key(n),
            n.letter,
            n.need.fabric,
            n.need.count - n.need.mirrored,
            n.need.mirrored,
            shape.finished,
            shape.cut,
            shape.notches,
            0.0,
            shape.allowances,
        )
        for n in sorted(needs, key=_in_order)
        if (shape := n.need.outline) is not None
    )


def _in_order(lettered: Lettered) -> tuple[int, str]:
    return len(lettered.letter), lettered.letter


def _fabric(task: Task, fabric: Fabric, own: list[Lettered], motifs: list[Fused]) -> FabricPlan:
    """Return one fabric's plan: by length, ready cut, and what else it could be cut from."""
    sewing = task.pattern.sewing
    if fabric.sold_as is not None:
        made = ready_cut(fabric, own)
        kept = [
            Lettered(n.letter, replace(n.need, ways=(way,)))
            for n, way in zip(own, made.ways, strict=True)
        ]
        return replace(checked(plan_fabric(fabric, kept, sewing)), precut=made.plan)
    plan = _by_length(task, fabric, own, motifs)
    others = [
        _alternative(task, sold_as(fabric, offer), plan)
        for offer in ready_offers(fabric, sewing.measures)
    ]
    return replace(plan, alternatives=tuple(others), shares=_shares(task, fabric, own, motifs))


def _by_length(task: Task, fabric: Fabric, own: list[Lettered], motifs: list[Fused]) -> FabricPlan:
    """Return the plan of some needs from a length of one fabric, shapes nested where it pays."""
    sewing = task.pattern.sewing
    plan = checked(plan_fabric(fabric, own, sewing))
    here = {n.letter for n in own}
    fitting = (m for m in motifs if m.motif.fabric == fabric.key and m.letter in here)
    mine: list[Nestable] = [*fitting, *traced(own)]
    if not mine:
        return plan
    letters = {m.letter for m in mine}
    left = [n for n in own if n.letter not in letters]
    rest = plan_fabric(fabric, left, sewing) if left else None
    purchase = purchase_of(fabric, sewing)
    return checked(nested_cloth(mine, plan, rest, purchase, fabric.directional))


BESIDES = ("backing", "binding", "pillow back", "sleeve")
"""Purposes of what is cut from a top's fabric and is no part of the top."""


def _shares(
    task: Task, fabric: Fabric, own: list[Lettered], motifs: list[Fused]
) -> tuple[Share, ...]:
    """Return what each use of a fabric would be bought as alone; nothing for a single use."""
    uses: dict[str, list[Lettered]] = {}
    for need in own:
        use = next((b for b in BESIDES if need.need.purpose.startswith(b)), "top")
        uses.setdefault(use, []).append(need)
    if len(uses) < 2:
        return ()
    plans = {use: _by_length(task, fabric, needs, motifs) for use, needs in uses.items()}
    return tuple(Share(use, p.buy, p.buy_metric) for use, p in plans.items())


def _alternative(task: Task, fabric: Fabric, plan: FabricPlan) -> Alternative:
    """Return whether a fabric's pieces could be cut from what it is given as sold as."""
    pattern = replace(task.pattern, fabrics={**task.pattern.fabrics, fabric.key: fabric})
    own = [n for n in task.needs(pattern) if n.need.fabric == fabric.key]
    # Nobody cuts so many different sizes from fat quarters to save what may be left over.
    return alternative(fabric, own, plan.pieces, looked_for=len(own) <= MOST_SIZES)


def _binding(pattern: Pattern, size: Size, pieces: tuple[Piece, ...]) -> BindingPlan | None:
    piece = next((p for p in pieces if p.purpose == "binding"), None)
    return (
        None if piece is None else binding_plan(size, piece, pattern.sewing.seam, pattern.measures)
    )


def _backing(pattern: Pattern, size: Size, pieces: tuple[Piece, ...]) -> BackingPlan | None:
    """Return the backing that the size's backing piece was cut for."""
    found = backing(pattern, size)
    piece = next((p for p in pieces if p.purpose == "backing"), None)
    if found is None or piece is None:
        return None
    cut_as = piece.count, piece.width, piece.length
    return next(p for p in found[1] if (p.panels, p.panel_width, p.panel_length) == cut_as)


def _refused(pattern: Pattern, size: Size, lettered: Lettered) -> Note | None:
    """Return why a need cannot be cut from its fabric, or None."""
    need, fabric = lettered.need, pattern.fabrics[lettered.need.fabric]
    if too_large(fabric, [lettered]) is None:
        return None
    note = too_wide_note if fabric.sold_as is None else too_large_note
    return note(pattern, size, need)
