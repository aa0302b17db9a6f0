"""How the outlines of a pattern's motifs meet their folds, in lines.

In: the drafts of a pattern. Out: text, as `foldwork check` prints it.
Invariant: each motif is told once, at the first size that shows it, since angles and shares
of the width are the same at every size.
"""

from __future__ import annotations

from collections.abc import Iterable

from publish.model.draft import Draft, Meeting, MotifShape
from publish.units import percent_text


def lines(drafts: Iterable[Draft]) -> list[str]:
    """Return a line for each fold of each mirrored motif."""
    shapes: dict[str, MotifShape] = {}
    for draft in drafts:
        shapes = {**draft.motifs, **shapes}
    return [line for shape in shapes.values() for line in _lines(shape)]


def met(meeting: Meeting) -> str:
    """Return what a meeting makes when it is opened."""
    if meeting.runs_on:
        return "square, runs on round"
    if meeting.slips:
        return f"nearly square, {meeting.off:.0f} degrees off"
    if meeting.angle < 90:
        return f"a point of {2 * meeting.angle:.0f} degrees"
    return f"an inside corner of {360 - 2 * meeting.angle:.0f} degrees"


def _lines(shape: MotifShape) -> list[str]:
    found = []
    for edge in shape.edges or ():
        here = [m for m in shape.meetings if m.edge == edge.kind]
        told = "; ".join(
            f"{met(m)}, {percent_text(m.reach / float(shape.span))} of the width from the centre"
            for m in here
        )
        found.append(f"{shape.key} at the {edge.kind} fold: {told or 'nothing was cut there'}")
    return found
