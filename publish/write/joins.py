"""How two parts are joined: straight, slanting, curved, set in.

In: a unit whose parts are joined. Out: sentences, from laying out to the sewn seam.
Invariant: what is said of a seam follows from its kind and from the shapes on both sides
of it; pressing is told elsewhere.
"""

from __future__ import annotations

from itertools import pairwise

from publish.model.draft import Arcs, Point, Unit
from publish.model.nouns import HALF_SQUARE
from publish.words.en.phrase import measure, times
from publish.write.bench import Bench, word_for
from publish.write.practice import CLIP_DEPTH, CLIP_INTERVAL
from publish.write.pressing import ways, where_of

_LAID = {
    "across": "side by side, from left to right",
    "down": "one below the other, from the top",
    "slant": "along their slanting edges",
    "curve": "along the curve",
}


def sewn(bench: Bench, unit: Unit, told: dict[str, str] | None = None) -> str:
    """Return how a unit's parts are laid out and sewn: the middle of its step.

    `told` holds, by kind of seam, the unit for which it was told in full; it is told in
    short from then on.
    """
    angled = unit.join in ("across", "down") and not all(part.is_box for part in unit.parts)
    how = "as in the picture" if angled else _LAID.get(unit.join or "", "as in the picture")
    laid = f"{bench.parts_text(unit)} {how}."
    turned = " Turn them as in the picture." if lies_turned(unit) and "picture" not in how else ""
    join = "slant" if angled else unit.join or ""
    write = {"slant": _slant, "curve": _curve, "set in": _set_in}.get(join, _straight)
    kind = "half" if bench.trade(unit) == HALF_SQUARE else _KINDS.get(join, join)
    if told is None:
        return f"{laid}{turned} {write(bench, unit)}"
    before = told.get(kind)
    told.setdefault(kind, bench.the(unit))
    if before is None:
        return f"{laid}{turned} {write(bench, unit)}"
    if kind not in _SHORT:
        return f"{laid}{turned} {_straight_again(bench, unit)}"
    return f"{laid}{turned} {_SHORT[kind].format(before)}{_no_nest(unit)}"


_KINDS = {"across": "straight", "down": "straight"}
_SHORT = {
    "half": "Sew along the long edge without pulling, as for {}.",
    "slant": "Sew with the points shifted as for {}, and cut off what sticks out.",
    "curve": "Clip, pin and sew the curve as for {}.",
    "set in": "Sew from mark to mark and set the corners in as for {}.",
}


def _straight(bench: Bench, unit: Unit) -> str:
    first = _first(len(unit.parts))
    pins = _matched(bench, unit)
    return (
        f"Put {first} right sides together, edges level.{pins} Sew{_onwards(len(unit.parts))}."
        if pins else
        f"Put {first} right sides together, edges level, and sew{_onwards(len(unit.parts))}."
    )  # fmt: skip


def _straight_again(bench: Bench, unit: Unit) -> str:
    order = " in this order" if len(unit.parts) > 2 else ""
    return f"{_matched(bench, unit)} Sew them together{order}.".strip()


def _matched(bench: Bench, unit: Unit) -> str:
    """Say how seams that meet are matched."""
    crossing = any(
        a.parts and b.parts and unit.join not in (a.join, b.join) for a, b in pairwise(unit.parts)
    )
    choose = (
        " Choose them so that the allowances of neighbours lie opposite ways."
        if any(_two_ways(bench, p) for p in unit.parts) else ""
    )  # fmt: skip
    pins = " Pin where seams meet." if crossing and unit.nests else ""
    return f"{choose}{pins}{_no_nest(unit)}"


def _two_ways(bench: Bench, part: Unit) -> bool:
    """Return whether units like a part are pressed two ways."""
    if not part.parts or part.made:
        return False
    group = next(g for g in bench.groups if g.unit.kind == part.kind)
    return len(ways(group, where_of(bench, part))) > 1


def _no_nest(unit: Unit) -> str:
    if unit.nests:
        return ""
    return (
        " Some of the allowances that meet here lie the same way and cannot lock: pin on both "
        "sides of each crossing."
    )


def _slant(bench: Bench, unit: Unit) -> str:
    seam = measure(bench.pattern_seam)
    if bench.trade(unit) == HALF_SQUARE:
        return (
            "Put them right sides together, the long edges level, and sew along the long edge. It "
            "lies on the bias: let the machine feed it, and do not pull."
        )
    return (
        f"Put {_first(len(unit.parts))} right sides together, the edges that meet level. Points "
        "stick out at the ends of the seam: shift the parts until their edges cross exactly "
        f"{seam} from the edge, where the seam begins and ends. Sew{_onwards(len(unit.parts))}, "
        f"and cut off the points that stick out.{_no_nest(unit)}"
    )


def _curve(bench: Bench, unit: Unit) -> str:
    inward, outward = _hollow_first(unit)
    over, under = (_short(bench, p) for p in (inward, outward))
    return (
        f"{over} has the edge that curves in, {under} the edge that curves out. Clip the edge that "
        f"curves in about every {measure(CLIP_INTERVAL.value)}, no deeper than "
        f"{measure(CLIP_DEPTH.value)}. Lay {over} on top of {under}, right sides together, and "
        "match the notches. Pin the middle of the curve first, then both ends with the straight "
        "edges level, then every notch between, and more pins where the edges gape."
    )


def curve_sewn(bench: Bench, unit: Unit) -> str:
    """Return how a pinned curve is sewn."""
    over = _short(bench, _hollow_first(unit)[0])
    return (
        f"Sew slowly with {over} on top, taking out each pin before the needle reaches it. Stop "
        "with the needle down and lift the presser foot to smooth the cloth before it can pleat."
    )


def _short(bench: Bench, part: Unit) -> str:
    """Return a part in a word: its letter, or its name."""
    piece = bench.piece(part)
    if piece is not None:
        return f"**{piece.letter}**"
    if part.patch is not None:
        return f"the {bench.book.fabric(part.patch.fabric)} {word_for(None, part)}"
    return bench.the(part)


def _hollow_first(unit: Unit) -> tuple[Unit, Unit]:
    """Return the part whose shared edge curves in, then the one whose edge curves out."""
    first, last = unit.parts[0], unit.parts[-1]
    return (last, first) if _bulges(first) and not _bulges(last) else (first, last)


def _bulges(part: Unit) -> bool:
    """Return whether the first arc of a part's outline curves out of it."""
    ring, arcs = _outline(part)
    for at, through in arcs:
        (ax, ay), (bx, by), (tx, ty) = ring[at], ring[(at + 1) % len(ring)], through
        return bool((bx - ax) * (ty - ay) - (by - ay) * (tx - ax) < 0)
    return False


def _outline(part: Unit) -> tuple[tuple[Point, ...], Arcs]:
    if part.patch is not None:
        return part.patch.ring, part.patch.arcs
    return part.ring, part.arcs


def _set_in(bench: Bench, unit: Unit) -> str:
    seam = measure(bench.pattern_seam)
    often = f", {times(unit.set_in)} in this unit" if unit.set_in > 1 else ""
    return (
        f"Mark the corners of the seams on the wrong side, {seam} in from both edges. Sew the "
        "first two parts together from edge to mark and lock the stitches there, so that the last "
        f"{seam} stays open. Set the next part in: sew one side from the edge to the mark with the "
        f"needle down, lift the presser foot, turn the cloth so that the next edges lie level, and "
        f"sew on{often}."
    )


def _first(parts: int) -> str:
    return "the first two" if parts > 2 else "them"


def _onwards(parts: int) -> str:
    return ", then add the next in the same way until the last is on" if parts > 2 else ""


def lies_turned(unit: Unit) -> bool:
    """Return whether one kind of part lies in two ways in a unit, or a unit among the parts
    lies otherwise than where it was made."""
    if any(_otherwise(part, unit) for part in unit.parts if part.parts):
        return True
    lying: dict[str, set[frozenset[object]]] = {}
    for part in unit.parts:
        left, top, _, _ = part.patches[0].box if part.turn else part.box
        spots = frozenset(
            (p.fabric, frozenset((x - left, y - top) for x, y in p.ring)) for p in part.patches
        )
        lying.setdefault(part.kind, set()).add(spots)
    return any(len(ways) > 1 for ways in lying.values())


def _otherwise(part: Unit, unit: Unit) -> bool:
    """Return whether a part lies turned against how its recipe does."""
    if part.place is None:
        return False
    lies = part.place.turn - unit.turn
    return all((lies + turn) % 360 for turn in part.place.recipe.symmetry)
