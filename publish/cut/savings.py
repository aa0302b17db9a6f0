"""What a little less would save: offered to the designer, never done unasked.

In: one size's needs and its fabrics' plans. Out: `Saving`s; notes of them, ranked.
Invariant: what is offered has been planned in full, with every other piece of the fabric;
nothing that is offered changes the finished quilt but by a narrower border or a block that
is less by a twelfth at most.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from publish.cut.borders import borders
from publish.cut.fabric import Lettered
from publish.cut.finishing import backing
from publish.cut.needs import Need, plain
from publish.cut.purchase import purchase_of
from publish.measures import Measures
from publish.model.cutplan import FabricPlan
from publish.model.pattern import Fabric, Pattern
from publish.model.size import Size
from publish.notes import Note, Severity
from publish.units import YARD

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
SMALLER = Fraction(1, 12)
"""Share of its side by which a block may be smaller: an inch of a foot."""

Planner = Callable[[Fabric, list[Lettered]], FabricPlan]


@dataclass(frozen=True)
class _Offer:
    """Another way: the needs that it changes, where the key stands, what to write there."""

    needs: list[Lettered]
    path: tuple[str, ...]
    what: str
    mend: str


@dataclass(frozen=True)
class Saving:
    """What one change would save of one fabric: inches, and the note without its rank."""

    saved: Fraction
    note: Note


def offers(
    pattern: Pattern,
    size: Size,
    needs: Sequence[Lettered],
    plans: dict[str, FabricPlan],
    planner: Planner,
) -> Iterator[Saving]:
    """Yield each small change that saves a quarter yard or more."""
    for key, plan in plans.items():
        own = [n for n in needs if n.need.fabric == key]
        fabric = pattern.fabrics[key]
        if plan.precut is not None:
            continue
        for offer in (
            *_squares(pattern, fabric, own),
            *_backing(pattern, size, own),
            *_borders(pattern, size, plan, own),
            *_blocks(pattern, size, plan, own),
        ):
            purchase = purchase_of(fabric, pattern.sewing)
            saved = purchase.leads(plan) - purchase.leads(planner(fabric, offer.needs))
            if saved >= pattern.measures.usual(WORTH_SAYING):
                yield Saving(saved, _note(pattern, size, fabric, offer, saved))


def ranked(savings: Iterable[Saving]) -> list[Note]:
    """Return the notes, the greatest saving first, each with its place among several."""
    ordered = sorted(savings, key=lambda found: -found.saved)
    if len(ordered) < 2:
        return [found.note for found in ordered]
    return [
        replace(s.note, help=f"{s.note.help} (number {at} of {len(ordered)} by what is saved)")
        for at, s in enumerate(ordered, start=1)
    ]


def _squares(pattern: Pattern, fabric: Fabric, own: list[Lettered]) -> Iterator[_Offer]:
    """Yield the squares of motifs, smaller by as little as lets one more lie side by side."""
    squares = [n for n in own if n.need.purpose == "motif"]
    if not squares:
        return
    side, measures = max(n.need.width for n in squares), pattern.measures
    smaller = measures.down(fabric.usable_width / (fabric.usable_width // side + 1))
    margin = pattern.sewing.motif_margin - (side - smaller)
    if not 0 < side - smaller <= LESS or margin <= 0:
        return
    needs = [replace(n, need=_square(n.need, side - smaller, fabric)) for n in own]
    yield _Offer(
        needs,
        ("sewing", "motif_margin"),
        f"squares of {measures.text(smaller)} instead of {measures.text(side)} for the motif, of "
        f"which one more lies across {fabric.name},",
        f"motif_margin: {measures.text(margin)}",
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
    measures = pattern.measures
    overhang = size.backing.overhang - measures.usual(SHORTER)
    if overhang < measures.usual(REACH):
        return
    now = backing(pattern, size)
    made = backing(pattern, replace(size, backing=replace(size.backing, overhang=overhang)))
    assert made is not None and now is not None
    if min(p.panels for p in made[1]) >= min(p.panels for p in now[1]):
        return
    yield _Offer(
        [replace(n, need=made[0]) if n.need.purpose == "backing" else n for n in own],
        ("backing", "overhang"),
        f"a backing that reaches {measures.text(overhang)} past each edge",
        f"overhang: {measures.text(overhang)}",
    )


def _borders(
    pattern: Pattern, size: Size, plan: FabricPlan, own: list[Lettered]
) -> Iterator[_Offer]:
    """Yield borders of plain tops, narrower by an eighth of an inch or 3 mm."""
    measures, narrower = pattern.measures, pattern.measures.usual(NARROWER)
    if plan.gap < LEVEL or size.rounds:
        return
    for at, border in enumerate(size.borders):
        if border.fabric != plan.fabric or border.width <= 2 * narrower:
            continue
        slim = replace(border, width=border.width - narrower)
        other = replace(size, borders=(*size.borders[:at], slim, *size.borders[at + 1 :]))
        made = {need.purpose: need for need in borders(pattern, other)}
        yield _Offer(
            [replace(n, need=made.get(n.need.purpose, n.need)) for n in own],
            ("sizes", size.key, "borders", str(at)),
            f"a border {measures.text(slim.width)} wide instead of {measures.text(border.width)}",
            f"width: {measures.text(slim.width)}",
        )


def _blocks(
    pattern: Pattern, size: Size, plan: FabricPlan, own: list[Lettered]
) -> Iterator[_Offer]:
    """Yield the block that is smaller by as little as lets one more of its pieces lie across.

    Only rectangles shrink, and only where their finished sides stay on the grid;
    what else is cut from the fabric keeps its size, so that less is saved here than in truth.
    """
    if size.on_point or size.rounds:
        return
    side, width, measures = size.block_side, plan.usable_width, pattern.measures
    grid = measures.grid
    for steps in range(1, int(side * SMALLER / grid) + 1):
        share, less = steps * grid / side, side - steps * grid
        smaller = [replace(n, need=_shrunk(n.need, share, measures)) for n in own]
        more = any(
            _abreast(a.need, width) > _abreast(b.need, width)
            for a, b in zip(smaller, own, strict=True)
        )
        if more and all(_on_grid(n.need, grid) for n in smaller):
            yield _Offer(
                smaller,
                ("sizes", size.key, "block_size"),
                f"a block of {measures.text(less)} instead of {measures.text(side)}, "
                "of which one more piece lies across,",
                f"block_size: {measures.text(less)}",
            )
            return


def _whole(need: Need) -> bool:
    """Return whether a need is rectangles of a block, as large as finished size and seams."""
    lengths = need.finished_width, need.finished_length, need.exact_width, need.exact_length
    return (
        need.purpose == "ground"
        and need.shape == "rectangle"
        and all(isinstance(length, Fraction) for length in lengths)
    )


def _shrunk(need: Need, share: Fraction, measures: Measures) -> Need:
    """Return a need of blocks that are smaller by a share of their side."""
    if not _whole(need):
        return need
    finished = need.finished_width, need.finished_length
    exact = need.exact_width, need.exact_length
    less = [length * share for length in finished if isinstance(length, Fraction)]
    now = [e - x for e, x in zip(exact, less, strict=True) if isinstance(e, Fraction)]
    wide, high = map(measures.up, now)
    ways = tuple(
        replace(w, across=wide, along=high)
        if (w.across, w.along) == (need.width, need.length)
        else w
        for w in need.ways
    )
    left = [f - x for f, x in zip(finished, less, strict=True) if isinstance(f, Fraction)]
    return replace(
        need,
        width=wide,
        length=high,
        ways=ways,
        exact_width=now[0],
        exact_length=now[1],
        finished_width=left[0],
        finished_length=left[1],
    )


def _on_grid(need: Need, grid: Fraction) -> bool:
    if not _whole(need):
        return True
    lengths = need.finished_width, need.finished_length
    return all(isinstance(x, Fraction) and not x % grid for x in lengths)


def _abreast(need: Need, width: Fraction) -> int:
    """Return how many of a need lie side by side across the cloth, the better way round."""
    sides = {s for w in need.ways for s in ((w.across, w.along) if w.may_turn else (w.across,))}
    return max((int(width // s) for s in sides), default=0)


def _note(pattern: Pattern, size: Size, fabric: Fabric, offer: _Offer, saved: Fraction) -> Note:
    less = pattern.measures.bought(saved, saved)
    return Note(
        "C408",
        Severity.INFO,
        pattern.place(*offer.path),
        f"{offer.what} would save {less} of {fabric.name} in the {size.title}",
        help=f"`{offer.mend}`, if you agree",
    )
