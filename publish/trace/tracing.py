"""A picture of cut paper becomes a motif.

In: the bytes of a picture, the folds where they are known. Out: `Traced`, and notes.
Invariant: a motif comes back only when its copies agree on it; what was measured comes with
it, and what was guessed is a note.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import lru_cache

import numpy as np

from publish.model.book import PAPERS
from publish.model.trade import SLIP, SQUARE
from publish.notes import Note, Place
from publish.trace import findings
from publish.trace.aligned import moves
from publish.trace.candidates import candidates
from publish.trace.consensus import Strayed, Wedge, agreed, edge_spread, gaps, strayed
from publish.trace.counting import Counted, Lens, counted
from publish.trace.cubics import flat
from publish.trace.drawn import Drawn, Meeting, drawn
from publish.trace.folded import folded
from publish.trace.image import Floats, Picture, Points, read_picture
from publish.trace.known import ALIKE, Known, markers, scale, sheet, without
from publish.trace.missed import missed
from publish.trace.outline import Outline, outlined
from publish.trace.paper import Cover, covers
from publish.trace.plane import copies, local
from publish.trace.refined import refined
from publish.trace.ruler import Ruler, rulers
from publish.trace.straighten import Pose, rounded

STRAY = 0.01
"""Share of the width from which a straying copy is said."""

AGREED = 0.005
"""Share of the width up to which the copies agree on average; beyond it none is believed."""

ELSEWHERE = "D377"
"""What is found then: the paper was told, and no other guess at it is better."""

DOUBT = 0.005
"""Share by which proportions may be off before it is said: 1/14 in on a motif of 14 in."""

BLUR = 0.01
SMALLEST = 250
"""Pixels of the motif's width below which nothing is traced."""


@dataclass(frozen=True)
class Traced:
    """A motif from a picture. Lengths are in the plane of the paper; `half` is half the
    side of the square about the centre that holds the opened motif."""

    picture: Picture
    pose: Pose
    folds: int
    wedge: Wedge
    drawn: Drawn
    outline: Outline
    strays: tuple[Strayed, ...]
    half: float
    inches: float | None
    """The opened motif's true width, where the picture tells it."""
    told_by: str = ""
    """What tells it, in words."""
    missed: tuple[Points, ...] = ()
    """Places in the picture, in pixels, where paper is that is not drawn, or none that is."""

    @property
    def opened(self) -> bool:
        """Return whether the paper lay opened, not as a folded wedge."""
        return self.pose.turns > 0

    @property
    def slips(self) -> tuple[Meeting, ...]:
        """Return where an outline meets a fold nearly square."""
        return tuple(m for m in self.drawn.meetings if SQUARE < abs(m.off) <= SLIP)


@lru_cache(maxsize=16)
def traced(
    data: bytes, place: Place, folds: int | None = None, paper: str | None = None
) -> tuple[Traced | None, tuple[Note, ...]]:
    """Return the motif in a picture file, or None and the notes that say why not.

    `folds` is one of 4, 6, 8, 12, 16, or None to count them; `paper` the key of the sheet
    that lies beside the cut, one of `model.book.PAPERS`. Kept by content while the program
    runs.
    """
    picture = read_picture(data, place)
    if isinstance(picture, Note):
        return None, (picture,)
    asked = _asked(picture, place, folds, paper)
    failed: Note | None = None
    for cover in asked.covers():
        for share in candidates(cover):
            if isinstance(share, str):
                failed = failed or findings.cut_off(place, share)
                continue
            found, notes = _from_cover(share, asked)
            if found is not None or notes[0].code == ELSEWHERE:
                return found, notes
            failed = notes[0]
    return None, (failed or findings.no_paper(place),)


@dataclass(frozen=True)
class _Asked:
    """A picture, what is asked of it, and what in it has a known size."""

    picture: Picture
    place: Place
    folds: int | None
    known: tuple[Known, ...]
    rulers: tuple[Ruler, ...]
    missing: str | None
    """The paper of the sheet that was said to be there and is not found."""

    @property
    def lens(self) -> Lens:
        return Lens(self.picture.focal, self.picture.inch is not None, self.known)

    def covers(self) -> Iterator[Cover]:
        """Yield where the paper may be: with what is known taken out of the picture, then,
        should the paper lie over the rulers' place, without the rulers alone put back."""
        beside = [one.outline for one in self.known]
        if self.rulers:
            rulers = [one.outline for one in self.rulers]
            yield from covers(without(self.picture.pixels, [*beside, *rulers]))
        yield from covers(without(self.picture.pixels, beside))


def _asked(picture: Picture, place: Place, folds: int | None, paper: str | None) -> _Asked:
    """Return what is asked of a picture, with what is known in it."""
    known = markers(picture.pixels)
    found = None
    if paper is not None:
        size = PAPERS[paper]
        beside = without(picture.pixels, [one.outline for one in known])
        found = sheet(beside, (size.width, size.height))
        known += [] if found is None else [found]
    left = without(picture.pixels, [one.outline for one in known])
    missing = paper if found is None else None
    return _Asked(picture, place, folds, tuple(known), tuple(rulers(left)), missing)


def _from_cover(share: Floats, asked: _Asked) -> tuple[Traced | None, tuple[Note, ...]]:
    place, folds = asked.place, asked.folds
    start = rounded(share)
    if start is None:
        return None, (findings.no_paper(place),)
    across = 2 * math.sqrt(abs(float(np.linalg.det(start[:2, :2]))))
    if across < SMALLEST:
        return None, (findings.too_small(place, across),)
    found = counted(share, start, folds, asked.lens)
    notes: list[Note] = []
    if found is None:
        found = folded(share, folds)
    if found is None:
        other = None if folds is None else counted(share, start, None, Lens(scanned=True))
        if other is not None and folds is not None:
            return None, (findings.other_folds(place, folds, other.folds),)
        return None, (findings.no_repeat(place, folds),)
    if found.rivals:
        return None, (findings.not_told(place, tuple(sorted((found.folds, *found.rivals)))),)
    if found.folds == 4 and found.pose.turns and not asked.lens.tells:
        notes.append(findings.proportions(place))
    elif found.doubt > DOUBT:
        notes.append(findings.tilted(place, found.doubt))
    if asked.missing is not None:
        notes.append(findings.no_sheet(place, PAPERS[asked.missing].name))
    return _measured(share, found, asked, notes)


def _measured(
    share: Floats, found: Counted, asked: _Asked, notes: list[Note]
) -> tuple[Traced | None, tuple[Note, ...]]:
    """Return the motif with what is measured on it."""
    place = asked.place
    wedge = agreed(share, found.pose, found.folds)
    spread = edge_spread(wedge)
    if spread / wedge.unit / 2 > BLUR:
        return None, (findings.blurred(place, spread / wedge.unit / 2),)
    outline = outlined(wedge)
    if outline.area.is_empty:
        return None, (findings.no_repeat(place, found.folds),)
    copies_: tuple[Strayed, ...] = ()
    if found.pose.turns:
        wedge, copies_ = _aligned(share, found, outline)
        spread, outline = edge_spread(wedge), outlined(wedge)
    made = refined(drawn(outline, wedge, spread), wedge, spread)
    half = _half(made, found.folds)
    usual = _usual(copies_) / (2 * half)
    if usual > AGREED:
        return None, (findings.differs(place, usual),)
    other = missed(share, made, found.pose, STRAY * 2 * half * _unit(found.pose))
    if len(other) > found.folds / 2:
        return None, (findings.elsewhere(place, len(other)),)
    sized = _true_size(asked, found.pose, half, notes)
    whole = Traced(
        asked.picture,
        found.pose,
        found.folds,
        wedge,
        made,
        outline,
        copies_,
        half,
        *sized,
        tuple(other),
    )
    return whole, (*notes, *_notes(whole, place))


def _aligned(share: Floats, found: Counted, outline: Outline) -> tuple[Wedge, tuple[Strayed, ...]]:
    """Return the wedge agreed on by its copies laid on one another, and how they strayed."""
    edge, inward = _along(outline)
    away = gaps(share, found.pose, found.folds, edge, inward)
    wedge = agreed(share, found.pose, found.folds, moves(away, edge, inward))
    return wedge, tuple(strayed(away, found.folds, edge))


def _true_size(
    asked: _Asked, pose: Pose, half: float, notes: list[Note]
) -> tuple[float | None, str]:
    """Return the opened motif's width in inches, and what tells it."""
    read = [one for one in asked.rulers if one.division is not None]
    if asked.known or read:
        inches, apart = scale([*asked.known, *read], pose.matrix)
        if apart <= ALIKE:
            count = sum(one.marker for one in asked.known)
            each = [f"{count} marker{'s' if count > 1 else ''}"] if count else []
            each += ["the sheet of paper"] if count < len(asked.known) else []
            each += [f"the ruler's {one.division.name}" for one in read if one.division]
            return 2 * half * inches, " and ".join(each)
        notes.append(findings.sizes_differ(asked.place, apart))
    elif asked.rulers:
        notes.append(findings.ruler_unread(asked.place, len(asked.rulers[0].ticks)))
    if asked.picture.inch is None:
        return None, ""
    return 2 * half * _unit(pose) / asked.picture.inch, "the scanner's resolution"


def _unit(pose: Pose) -> float:
    """Return the pixels of a unit of the plane at its centre."""
    return math.sqrt(abs(float(np.linalg.det(local(pose.matrix, np.zeros((1, 2)))[0]))))


def measured(found: Traced, width: Fraction, place: Place) -> tuple[Traced, tuple[Note, ...]]:
    """Return a motif with its opened width in inches as a ruler told it, and a note where the
    picture tells another."""
    notes: list[Note] = []
    if found.inches is not None:
        apart = abs(found.inches / float(width) - 1)
        if apart > ALIKE:
            notes.append(findings.sizes_differ(place, apart))
    return replace(found, inches=float(width), told_by="your ruler"), tuple(notes)


def _usual(strays: tuple[Strayed, ...]) -> float:
    return float(np.mean([s.usual for s in strays])) if strays else 0.0


def _half(made: Drawn, folds: int) -> float:
    points = np.concatenate([flat(list(p.curves)) for part in made.parts for p in part])
    return max(float(np.abs(points @ w.T).max()) for w in copies(folds // 2, 0.0))


def _along(outline: Outline) -> tuple[Points, Points]:
    """Return points along the cut edges, and the direction to the paper at each."""
    edges, ways = [], []
    for run in (run for part in outline.rings for ring in part for run in ring.runs):
        step = max(1, len(run.points) // 120)
        points = run.points[step // 2 :: step]
        if len(points) < 3:
            continue
        along = np.gradient(points, axis=0)
        along /= np.maximum(np.hypot(*along.T), 1e-12)[:, None]
        edges.append(points)
        ways.append(np.column_stack([-along[:, 1], along[:, 0]]))
    return np.concatenate(edges), np.concatenate(ways)


def _notes(found: Traced, place: Place) -> Iterator[Note]:
    worst = max((s.greatest for s in found.strays), default=0.0) / (2 * found.half)
    if worst > STRAY:
        size = "" if found.inches is None else f" ({worst * found.inches * 25.4:.1f} mm)"
        yield findings.strays(place, worst, size)
    elif found.missed:
        yield findings.strays(place, STRAY, " or more")
    if found.outline.specks:
        yield findings.specks(place, found.outline.specks)
    for m in found.slips:
        fold = "first" if m.fold == 0 else "second"
        where = f"{m.reach / found.half / 2:.0%} of the width".replace("%", " %")
        yield findings.slips(
            place, f"{abs(m.off):.0f} degrees off, on the {fold} fold, {where} from the centre"
        )
