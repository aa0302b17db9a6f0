"""The local page of a pattern: its pages as pictures, made anew after each save.

In: a pattern's path, a paper, a port. Out: a page served on this machine only, until stopped.
Invariant: the last good pages stay while new ones are made or fail; the findings of the
newest try stand beside them. A build runs in a process of its own, which a later save ends.
"""

from publish.preview.building import Choice
from publish.preview.service import HOST, address, application, listening, serve
from publish.preview.shown import Shown
from publish.preview.watching import Watching, watched

__all__ = [
    "HOST",
    "Choice",
    "Shown",
    "Watching",
    "address",
    "application",
    "listening",
    "serve",
    "watched",
]
