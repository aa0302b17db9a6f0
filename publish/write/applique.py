"""Sewing a motif down by needle-turn, then pressing and trimming the block.

In: motifs, drafts, plans. Out: the section, or None when nothing is needle-turned.
Invariant: points, inside corners and openings are explained only where the drafted motif
has them; the stitch interval is the published one; trimmed sizes come from the pattern.
"""

from __future__ import annotations

from publish.model.draft import MotifShape
from publish.model.pattern import Motif
from publish.model.words import Section
from publish.words.en.phrase import listed, measure
from publish.write.context import Book
from publish.write.marking import open_centre
from publish.write.openings import openings_bend_both_ways
from publish.write.practice import STITCH_APART, STITCH_INTERVAL, THREAD_LENGTH, TURN_AHEAD
from publish.write.steps import StepList, figure
from publish.write.trimming import add_trim


def by_method(book: Book, method: str) -> tuple[Motif, ...]:
    """Return the motifs in use that are applied in one way."""
    return tuple(m for m in book.motifs if m.method == method)


def section(book: Book) -> Section | None:
    """Return the section on needle-turn appliqué, or None."""
    motifs = by_method(book, "needle-turn")
    if not motifs:
        return None
    steps = StepList(book, "applique")
    keys = book.with_motif(*(m.key for m in motifs))
    size = keys[0]
    shapes = [book.shape(k, m.key) for k in keys for m in motifs if book.motif_count(k, m.key)]
    _start(book, steps, keys, motifs, shapes)
    _edge(steps, keys, size, motifs)
    _points(steps, keys, size, shapes)
    _curves(steps, keys)
    _openings(steps, keys, size, shapes)
    finish(steps, keys)
    add_trim(book, steps, motifs)
    lead = "Turn the edge under a little at a time, just ahead of the stitches."
    return Section("applique", "Needle-turn appliqué", (steps.block(),), lead)


def thread_for(book: Book, motifs: tuple[Motif, ...]) -> str:
    """Return what the thread matches: the one fabric, or each motif's own."""
    names = list(dict.fromkeys(book.fabric(m.fabric) for m in motifs))
    return names[0] if len(names) == 1 else f"the fabric of its motif, {listed(names, 'or')}"


def _start(book: Book, steps: StepList, keys: tuple[str, ...], motifs: tuple[Motif, ...],
           shapes: list[MotifShape]) -> None:  # fmt: skip
    steps.add(
        "thread",
        f"Thread an appliqué needle with a single strand of fine thread that matches "
        f"{thread_for(book, motifs)}, about {measure(THREAD_LENGTH.value)} long, and knot one end.",
        sizes=keys,
        tip="Use 60 wt cotton, or fine silk or polyester. Match it to the motif, not the ground.",
    )
    first = "Begin on the part of the edge nearest the centre and work outward"
    if any(s.holes for s in shapes):
        one = any(open_centre(s) for s in shapes)
        first = f"Begin with the {'opening at' if one else 'openings nearest'} the centre, then "
        first += "work outwards along the edge"
    steps.add(
        "order",
        f"{first}. Start on a gentle curve or a straight stretch, never at a point or in a corner. "
        "Slide the needle in under the motif so that the knot is hidden between the layers, and "
        "bring it out through the very edge of the finished line.",
        sizes=keys,
    )


def _edge(steps: StepList, keys: tuple[str, ...], size: str, motifs: tuple[Motif, ...]) -> None:
    under = listed(list(dict.fromkeys(measure(m.turn_under) for m in motifs)), "or")
    steps.add(
        "sweep",
        f"With the side of the needle, sweep the turn-under of {under} beneath the motif, no more "
        f"than {measure(TURN_AHEAD.value)} ahead of your stitches. Hold the turned edge down with "
        "your thumb.",
        sizes=keys,
        right="The finished line has just rolled out of sight, and the edge is smooth.",
        figure=figure("stitch", size, "Turning the edge under and catching its fold.",
                      detail="edge"),
    )  # fmt: skip
    steps.add(
        "stitch",
        "Take the needle down into the ground right beside the place where the thread leaves the "
        "motif, run it along underneath, and bring it up through two or three threads of the "
        f"folded edge. Keep the stitches about {measure(STITCH_APART.value)} apart, never more "
        f"than {measure(STITCH_INTERVAL.value)}. Draw each one snug but not tight.",
        sizes=keys,
        right="From above you see only the edge; from behind, a row of short, even, slanting "
        "stitches.",
        tip="Right-handed: sew counter-clockwise, the edge toward you. Left-handed: clockwise.",
    )


def _points(steps: StepList, keys: tuple[str, ...], size: str, shapes: list[MotifShape]) -> None:
    if any(s.tips for s in shapes):
        steps.add(
            "tips",
            "At a point, stitch right up to the end of the finished line and take one extra stitch "
            "there. Trim the excess tip past the turned side, turn the tip under straight "
            "across, then sweep the second side under and go on.",
            sizes=keys,
            right="The point is sharp, without a lump, and no raw thread shows.",
            figure=figure("stitch", size, "Turning a point.", detail="tip"),
        )
    if any(s.inside_corners for s in shapes):
        steps.add(
            "corners",
            "A little before an inside corner, clip straight into it with the tips of the "
            "scissors, to within a thread of the finished line. Turn the first side as far as the "
            "clip and the second side from it, and take three close stitches in the corner, each "
            "deep enough to hold a few threads of the motif.",
            sizes=keys,
            right="The corner is crisp and no threads escape from the clip.",
            caution="Clip each corner only when you reach it, and never across the finished line.",
            figure=figure("stitch", size, "Clipping and turning an inside corner.",
                          detail="corner"),
        )  # fmt: skip


def _curves(steps: StepList, keys: tuple[str, ...]) -> None:
    steps.add(
        "curves",
        "An outward curve needs no clips: turn it in short stretches and ease the fullness under "
        "with the needle. On an inward curve make a few short clips, halfway through the "
        "turn-under, so that it can spread.",
        sizes=keys,
        right="The curve is smooth.",
        tip="If a bump shows, put the needle back under the fold and sweep it out before the next "
        "stitch.",
    )


def _openings(steps: StepList, keys: tuple[str, ...], size: str, shapes: list[MotifShape]) -> None:
    if not any(s.holes for s in shapes):
        return
    bent = any(openings_bend_both_ways(s.whole) for s in shapes)
    how = (
        "Treat each opening as you treat the outer edge: clip its inward curves lightly, ease its "
        "outward curves under without clips, and turn corners and points as such."
        if bent else
        "Treat each opening as an inward curve all the way around, and clip it lightly."
    )  # fmt: skip
    steps.add(
        "openings",
        f"{how} Turn the edge outward under the motif and take the stitches close together. Look "
        "at the whole opening before you fasten off.",
        sizes=keys,
        right="The ground shows through an even opening.",
        figure=figure("stitch", size, "Turning the edge of an opening.", detail="hole"),
    )


def finish(steps: StepList, keys: tuple[str, ...]) -> None:
    """Add the steps that end the sewing by hand: fasten off, unpick, press."""
    steps.add(
        "fasten-off",
        "To end a thread, take it to the back of the ground and make two tiny stitches in the "
        "ground behind the motif. Run the needle between ground and motif for its own length and "
        "cut the thread.",
        sizes=keys,
    )
    steps.add(
        "press",
        "When every edge is sewn, remove the basting, any pins and all marks. Lay the block face "
        "down on a folded towel and press it from the back.",
        sizes=keys,
        right="The edge shows no shine and no ridge.",
        tip="Remove the marks as the package of the marker says, before you press: heat can set "
        "them.",
    )
