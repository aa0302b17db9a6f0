"""From paper to pattern: a photo or scan of the cut paper becomes a drawing.

In: the bytes of a picture. Out: the motif as SVG, an overlay to judge it by, notes.
Invariant: nothing is written or printed here; a picture in gives the same motif out.

Beside the stages, as a library is: drafting calls it where a pattern's drawing is a
picture, the command line for `foldwork trace`.
"""

from __future__ import annotations

from publish.trace.findings import UNREAD
from publish.trace.overlay import overlay
from publish.trace.svg import drawing
from publish.trace.target import target
from publish.trace.tracing import Traced, measured, traced
from publish.trace.words import told

__all__ = ["UNREAD", "Traced", "drawing", "measured", "overlay", "target", "told", "traced"]
