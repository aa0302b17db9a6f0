"""What a little less would save: offered to the designer, never done unasked.

In: one size's needs and its fabrics' plans. Out: notes, the greatest saving first.
Invariant: what is offered has been planned in full, with every other piece of the fabric;
nothing that is offered changes the finished quilt but by a narrower border.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from publish.cut.borders import borders
from publish.cut.fabric import Lettered
from publish.cut.finishing import backing
from publish.cut.needs import Need, plain
from publish.model.cutplan import FabricPlan
from publish.model.pattern import Fabric, Pattern
from publish.model.size import Size
from publish.notes import Note, Severity
from publish.units import EIGHTH, YARD, inches_text, round_down, yards_text

WORTH_SAYING = YARD / 4
"""Inches: smaller savings are not offered."""
LESS = Fraction(1, 2)
"""Inches by which a motif's square may be smaller: its margin has cloth to hold and to turn,
and 1 in is left of the usual 1 1/2 in (common practice, no source)."""
SHORTER = Fraction(1)
"""Inches by which a backing may reach less far past each edge, where that takes a panel
fewer; `REACH` is left (common practice, no source)."""
REACH = Fraction(3)

NARROWER = Fraction(1, 8)
"""Inches by which a border may be narrower: nobody sees it on the bed."""
LEVEL = YARD / 8
"""Inches that must lie between a plan and its bound for a border to be planned again."""

Planner = Callable[[Fabric, list[Lettered]], FabricPlan]


@dataclass(frozen=True)
class _Offer:
    """Another way: the needs that it changes, where the key stands, what to write there."""

    needs: list[Lettered]
    path: tuple[str, ...]
    what: str
    mend: str


def offers(
    pattern: Pattern,
    size: Size,
    needs: Sequence[Lettered],
    plans: dict[str, FabricPlan],
    planner: Planner,
) -> list[Note]:
    """Return a note for each small change that saves a quarter yard or more."""
    found: list[tuple[Fraction, Note]] = []
    for key, plan in plans.items():
        own = [n for n in needs if n.need.fabric == key]
        fabric = pattern.fabrics[key]
        if plan.precut is not None:
            continue
        narrower = _borders(pattern, size, plan, own)
        for offer in (*_squares(pattern, fabric, own), *_backing(pattern, size, own), *narrower):
            saved = plan.buy - planner(fabric, offer.needs).buy
            if saved >= WORTH_SAYING:
                found.append((saved, _note(pattern, size, fabric, offer, saved)))
    return [note for _, note in sorted(found, key=lambda item: -item[0])]


def _squares(pattern: Pattern, fabric: Fabric, own: list[Lettered]) -> Iterator[_Offer]:
    """Yield the squares of motifs, smaller by as little as lets one more lie side by side."""
    squares = [n for n in own if n.need.purpose == "motif"]
    if not squares:
        return
    side = max(n.need.width for n in squares)
    smaller = round_down(fabric.usable_width / (fabric.usable_width // side + 1), EIGHTH)
    margin = pattern.sewing.motif_margin - (side - smaller)
    if not 0 < side - smaller <= LESS or margin <= 0:
        return
    needs = [replace(n, need=_square(n.need, side - smaller, fabric)) for n in own]
    yield _Offer(
        needs,
        ("sewing", "motif_margin"),
        f"squares of {inches_text(smaller)} instead of {inches_text(side)} for the motif, of which "
        f"one more lies across {fabric.name},",
        f"motif_margin: {inches_text(margin)}",
    )


def _square(need: Need, less: Fraction, fabric: Fabric) -> Need:
    if need.purpose != "motif":
        return need
    side = need.width - less
    ways = plain(side, side, need.count, fabric.directional)
    return replace(need, width=side, length=side, exact_width=None, exact_length=None, ways=ways)


def _backing(pattern: Pattern, size: Size, own: list[Lettered]) -> Iterator[_Offer]:
    """Yield backings that reach a little less far past the top."""
    if size.backing is None or not any(n.need.purpose == "backing" for n in own):
        return
    overhang = size.backing.overhang - SHORTER
    if overhang < REACH:
        return
    now = backing(pattern, size)
    made = backing(pattern, replace(size, backing=replace(size.backing, overhang=overhang)))
    assert made is not None and now is not None
    if min(p.panels for p in made[1]) >= min(p.panels for p in now[1]):
        return
    yield _Offer(
        [replace(n, need=made[0]) if n.need.purpose == "backing" else n for n in own],
        ("backing", "overhang"),
        f"a backing that reaches {inches_text(overhang)} past each edge",
        f"overhang: {inches_text(overhang)}",
    )


def _borders(
    pattern: Pattern, size: Size, plan: FabricPlan, own: list[Lettered]
) -> Iterator[_Offer]:
    """Yield borders of plain tops, narrower by an eighth of an inch."""
    if plan.gap < LEVEL or size.rounds:
        return
    for at, border in enumerate(size.borders):
        if border.fabric != plan.fabric or border.width <= 2 * NARROWER:
            continue
        slim = replace(border, width=border.width - NARROWER)
        other = replace(size, borders=(*size.borders[:at], slim, *size.borders[at + 1 :]))
        made = {need.purpose: need for need in borders(pattern, other)}
        yield _Offer(
            [replace(n, need=made.get(n.need.purpose, n.need)) for n in own],
            ("sizes", size.key, "borders", str(at)),
            f"a border {inches_text(slim.width)} wide instead of {inches_text(border.width)}",
            f"width: {inches_text(slim.width)}",
        )


def _note(pattern: Pattern, size: Size, fabric: Fabric, offer: _Offer, saved: Fraction) -> Note:
    return Note(
        "C408", Severity.INFO, pattern.place(*offer.path),
        f"{offer.what} would save {yards_text(saved)} of {fabric.name} in the {size.title}",
        help=f"`{offer.mend}`, if you agree",
    )  # fmt: skip
