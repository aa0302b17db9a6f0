"""Where every strip and piece of a fabric's plan lies on the cloth.

In: a fabric's plan. Out: strips and pieces as rectangles in inches of cloth: `along`
runs with the length from the first cut, `across` with the width from one selvage.
Invariant: strips lie in the plan's order with nothing between them, each cut's pieces
side by side, and beside them its sections; the rectangles are exactly the plan's.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from publish.model.cutplan import Cut, FabricPlan, Piece, Strip


@dataclass(frozen=True)
class Laid:
    """One piece on the cloth."""

    letter: str
    along: Fraction
    across: Fraction
    length: Fraction
    """Along the fabric."""
    width: Fraction
    """Across the fabric."""
    group: int


@dataclass(frozen=True)
class Group:
    """Strips cut alike, one after another: one entry in the cutting order."""

    strip: Strip
    start: Fraction

    @property
    def length(self) -> Fraction:
        return self.strip.depth * self.strip.count


def groups(plan: FabricPlan) -> tuple[Group, ...]:
    """Return the plan's strips in cutting order with where each run begins."""
    found, at = [], Fraction(0)
    for strip in plan.strips:
        found.append(Group(strip, at))
        at += strip.depth * strip.count
    return tuple(found)


def lay(plan: FabricPlan) -> tuple[Laid, ...]:
    """Return every piece on the cloth but those nested by their outlines."""
    found: list[Laid] = []
    for number, group in enumerate(groups(plan)):
        if group.strip.placements:
            continue
        for i in range(group.strip.count):
            start = group.start + i * group.strip.depth
            found += _side_by_side(group.strip, start, Fraction(0), number)
            for band in bands(group, i):
                found += _side_by_side(band.strip, band.along, band.across, number)
    return tuple(found)


def _side_by_side(strip: Strip, along: Fraction, across: Fraction, group: int) -> Iterator[Laid]:
    """Yield the pieces cut from one strip itself, none of its sections'."""
    for cut in strip.cuts:
        for _ in range(cut.count):
            yield Laid(cut.letter, along, across, cut.along, cut.across, group)
            across += cut.across


@dataclass(frozen=True)
class Band:
    """One strip within a section, where it lies."""

    strip: Strip
    along: Fraction
    across: Fraction
    width: Fraction
    """Of its section."""


def bands(group: Group, at: int) -> Iterator[Band]:
    """Yield the strips within the sections of one of a group's strips."""
    across = sum((cut.across * cut.count for cut in group.strip.cuts), Fraction(0))
    for section in group.strip.sections:
        along = group.start + at * group.strip.depth
        for strip in section.strips:
            for _ in range(strip.count):
                yield Band(strip, along, across, section.width)
                along += strip.depth
        across += section.width


def size_of(plan: FabricPlan, cut: Cut) -> tuple[Fraction, Fraction]:
    """Return a cut's size as the cutting table gives it: the piece's width and length.

    A part of a joined piece has a size of its own, across the fabric first.
    """
    piece = piece_of(plan, cut.letter)
    if piece is not None:
        sides = sorted((piece.width, piece.length))
        if sides == sorted((cut.across, cut.along)):
            return piece.width, piece.length
    return cut.across, cut.along


def piece_of(plan: FabricPlan, letter: str) -> Piece | None:
    """Return the plan's piece with a letter."""
    return next((p for p in plan.pieces if p.letter == letter), None)


def spread(wanted: list[float], gap: float, low: float, high: float) -> list[float]:
    """Return positions as near as may be to those wanted, in order, at least `gap` apart.

    The run is kept between `low` and `high` where there is room for it.
    """
    found = list(wanted)
    for i in range(len(found)):
        least = low if i == 0 else found[i - 1] + gap
        found[i] = max(found[i], least)
    for i in reversed(range(len(found))):
        most = high if i == len(found) - 1 else found[i + 1] - gap
        found[i] = min(found[i], most)
    return found
