"""Whether a motif can be sewn at one size: one check for each thing that can go wrong.

In: a drafted motif, its pattern and size. Out: notes, each with the place on the motif.
Invariant: an error is what cannot be sewn, a warning what is hard; a finding that a larger
motif would mend says from which size on, rounded up to 1/8 in.

Nothing here scales with the motif: cloth needs the same room at every size.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from publish.draft.in_wedge import count, in_wedge, width
from publish.draft.likely import why_apart
from publish.draft.motif import DraftedMotif
from publish.draft.narrow import narrow_places
from publish.draft.narrowpart import Narrow
from publish.model.draft import MotifShape
from publish.model.pattern import Motif, Pattern
from publish.model.size import Size
from publish.notes import Note, Place, Spot, error, warning
from publish.surd import Exact
from publish.units import SIXTEENTH, percent_text, round_up


@dataclass(frozen=True)
class Room:
    """What a method of appliqué needs. All values are common practice, no source.

    `neck` and `slit` are inches beyond twice the turn-under: a neck's two turned edges
    must not lie on each other, a slit must leave room for the needle. `tip` and `inside`
    are the smallest angles of cloth and of ground, in degrees.
    """

    neck: Fraction
    slit: Fraction
    tip: int
    inside: int


ROOM: dict[str, Room] = {
    "needle-turn": Room(SIXTEENTH, SIXTEENTH, 30, 30),
    "prepared edge": Room(2 * SIXTEENTH, 2 * SIXTEENTH, 45, 45),
    "fusible": Room(2 * SIXTEENTH, SIXTEENTH, 15, 10),
}

THREAD = SIXTEENTH
"""A motif that touches a fold along less than this hangs by a thread. Common practice."""

GROUND = Fraction(1, 4)
"""Ground to show between motif and seam, so that piecing never catches an edge. Common
practice, no source."""

AT_MOST = 6
"""Places named by one check: more would hide the next finding."""


@dataclass(frozen=True)
class _Case:
    """One motif at one size, and how notes about it are placed."""

    drafted: DraftedMotif
    size: Size
    place: Place
    first: bool
    """Whether it is the first size that shows the motif."""
    text: Callable[[Exact], str]
    """How a length is told."""

    @property
    def shape(self) -> MotifShape:
        return self.drafted.shape

    @property
    def motif(self) -> Motif:
        return self.drafted.motif

    @property
    def room(self) -> Room:
        return ROOM[self.motif.method]

    def spot(
        self, x: float, y: float, measure: float | None = None, needed: Fraction | None = None
    ) -> Spot:
        x, y = in_wedge(x, y, self.shape.folds, self.motif.symmetry)
        least = None if needed is None else float(needed)
        return Spot(self.size.key, self.motif.key, x, y, measure, least)

    def enough(self, measure: float, needed: Fraction) -> str:
        """Say at which motif size a measure reaches what is needed."""
        if measure <= 0:
            return "redraw it there"
        span = round_up(self.shape.span * needed / Fraction(measure))
        return f"widen it in the drawing, or make the motif at least {self.text(span)}"


def makeable(pattern: Pattern, size: Size, drafted: DraftedMotif) -> tuple[Note, ...]:
    """Return every finding about one motif at one size."""
    place = pattern.place("sizes", size.key, "motif_size")
    case = _Case(
        drafted,
        size,
        place,
        _first(pattern, drafted.motif.key) in (size.key, None),
        pattern.measures.text,
    )
    source = pattern.place("motifs", drafted.motif.key)
    return (
        *pieces_hold(case, source),
        *folds_hold(case, source),
        *meets_folds(case, source),
        *necks_hold(case),
        *slits_open(case),
        *tips_turn(case),
        *insides_clip(case),
        *ground_shows(case),
    )


def _first(pattern: Pattern, motif: str) -> str | None:
    """Return the key of the first size that shows a motif."""
    for key, size in pattern.sizes.items():
        blocks = size.blocks + (size.alternate if size.setting == "on point" else ())
        if any(pattern.blocks[block].motif == motif for block in blocks):
            return key
    return None


def pieces_hold(case: _Case, source: Place) -> Iterator[Note]:
    """A motif opens into as many pieces as the pattern says."""
    found, meant = case.shape.pieces, case.motif.pieces
    if found > meant:
        likely = why_apart(case.shape, meant, case.text)
        yield error(
            "D330",
            source,
            "the motif falls apart when it is opened",
            expected=count(meant),
            received=f"{count(found)} at size {case.size.key}",
            help=likely.help,
            spot=case.spot(likely.x, likely.y),
        )
    elif found < meant:
        yield warning(
            "D337",
            source,
            "the motif has fewer pieces than the pattern says",
            expected=count(meant),
            received=count(found),
            help=f"set `pieces: {found}`, or part them in the drawing",
        )


def folds_hold(case: _Case, source: Place) -> Iterator[Note]:
    """Cloth that runs across a fold must be more than a thread."""
    for edge in case.shape.edges or ():
        longest = max((b - a for a, b in edge.contact), default=None)
        if longest is None or longest >= THREAD:
            continue
        low, high = max(edge.contact, key=lambda c: c[1] - c[0])
        turn, middle = math.radians(edge.angle), (low + high) / 2
        yield error(
            "D331",
            source,
            f"the motif hardly touches the {edge.kind} fold",
            expected=f"at least {case.text(THREAD)} of the fold",
            received=f"{longest:.3f} in at size {case.size.key}",
            help="let more cloth run across that fold",
            spot=case.spot(middle * math.cos(turn), middle * math.sin(turn), longest, THREAD),
        )


def meets_folds(case: _Case, source: Place) -> Iterator[Note]:
    """An outline meets a fold square, to run on round, or clearly aslant, for a point.

    It is so at every size and said at one.
    """
    if not case.first:
        return
    for meeting in case.shape.meetings:
        if not meeting.slips:
            continue
        turn = math.radians(0 if meeting.edge == "multiple" else case.shape.wedge_angle)
        out = percent_text(meeting.reach / float(case.shape.span))
        yield warning(
            "D379",
            source,
            f"the outline is nearly square to the {meeting.edge} fold",
            expected="square, to run on round when it is opened; or clearly aslant, for a point",
            received=f"{meeting.off:.0f} degrees off, {out} of the width from the centre",
            help="a slip of the hand, most likely: set it square in the drawing, or accept it",
            spot=case.spot(meeting.reach * math.cos(turn), meeting.reach * math.sin(turn)),
        )


def necks_hold(case: _Case) -> Iterator[Note]:
    """A neck of cloth leaves room for the edges turned under from both its sides."""
    needed = case.motif.smallest_neck
    if needed is None:
        needed = 2 * case.motif.turn_under + case.room.neck
    for place in _narrow(case, case.drafted.neck, needed, ground=False):
        yield warning(
            "D332",
            case.place,
            "a neck of cloth is narrow",
            expected=f"at least {case.text(needed)} for {case.motif.method}",
            received=width(place, case.text),
            help=case.enough(place.width, needed),
            spot=case.spot(place.x, place.y, place.width, needed),
        )


def slits_open(case: _Case) -> Iterator[Note]:
    """A slit has room for the allowances of both its edges, and for the needle."""
    turned = 2 * case.motif.turn_under
    needed = case.motif.smallest_slit
    if needed is None:
        needed = turned + case.room.slit
    needed = max(needed, turned)
    if case.drafted.slit is None:
        return
    for place in _narrow(case, case.drafted.slit, needed, ground=True):
        closed = place.width < turned
        say, least = (error, turned) if closed else (warning, needed)
        what = "a slit is too narrow to turn both edges under" if closed else "a slit is narrow"
        yield say(
            "D333",
            case.place,
            what,
            expected=f"at least {case.text(least)} for {case.motif.method}",
            received=width(place, case.text),
            help=case.enough(place.width, needed),
            spot=case.spot(place.x, place.y, place.width, least),
        )


def tips_turn(case: _Case) -> Iterator[Note]:
    """A tip is not sharper than the method can turn."""
    least = case.motif.sharpest_tip or case.room.tip
    sharp = [t for t in case.drafted.tips if t.angle < least]
    for x, y, angle in _once(case, ((t.x, t.y, t.angle) for t in sharp), 0.1):
        yield warning(
            "D334",
            case.place,
            "a tip is sharp",
            expected=f"at least {least} degrees for {case.motif.method}",
            received=f"{angle:.0f} degrees",
            help="blunt it in the drawing, or set `sharpest_tip`",
            spot=case.spot(x, y),
        )


def insides_clip(case: _Case) -> Iterator[Note]:
    """An inside corner is not so sharp that nothing is left to turn under in it."""
    least = case.room.inside
    sharp = [c for c in case.drafted.insides if c.angle < least]
    for x, y, angle in _once(case, ((c.x, c.y, c.angle) for c in sharp), 0.1):
        yield warning(
            "D335",
            case.place,
            "an inside corner is sharp",
            expected=f"at least {least} degrees for {case.motif.method}",
            received=f"{angle:.0f} degrees",
            help="round it in the drawing: allowances fray in a sharp corner",
            spot=case.spot(x, y),
        )


def ground_shows(case: _Case) -> Iterator[Note]:
    """The motif stays clear of the seam round its block."""
    margin = (case.size.block_side - case.shape.span) / 2
    if margin >= GROUND:
        return
    largest = case.text(case.size.block_side - 2 * GROUND)
    say = error if margin < 0 else warning
    yield say(
        "D336",
        case.place,
        "the motif comes too close to the edge of its block",
        expected=f"at least {case.text(GROUND)} of ground beside it",
        received=case.text(margin),
        help=f"make the motif at most {largest}, or the block larger",
    )


def _narrow(case: _Case, known: Narrow, needed: Fraction, ground: bool) -> list[Narrow]:
    """Return the narrow places of one wedge, the narrowest one known among them."""
    if known.width >= needed:
        return []
    area = case.drafted.ground if ground else case.drafted.cloth
    found = sorted([known, *narrow_places(area, float(needed))], key=lambda n: n.width)
    spots = _once(case, ((n.x, n.y, n.width) for n in found), float(needed) / 2)
    return [Narrow(*spot) for spot in spots]


def _once(
    case: _Case, places: Iterable[tuple[float, float, float]], near: float
) -> list[tuple[float, float, float]]:
    """Return places that are not images of each other under folding, a few at most."""
    found: list[tuple[float, float, float]] = []
    for x, y, value in places:
        x, y = in_wedge(x, y, case.shape.folds, case.motif.symmetry)
        if all(math.hypot(x - a, y - b) > near for a, b, _ in found):
            found.append((x, y, value))
        if len(found) == AT_MOST:
            break
    return found
