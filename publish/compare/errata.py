"""The changes said: as lines in the terminal, as data, as a page to post.

In: two editions and their changes. Out: text, a dictionary, HTML.
Invariant: every change is in all three, in one order; numbers in the data are exact, as
strings.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from publish.compare.model import CONSEQUENCES, COSMETIC, Change, Edition, Overlay, Words
from publish.compare.overlay import alt, overlays
from publish.units import decimal_text
from publish.web import embedded, render
from publish.words.en.phrase import capital

NOTHING = "Nothing changed for a maker."
NEAR, LONG = 9, 24
"""Words of context that are shown beside a change, and how many stay as they are."""
_MARKS = {"gone": ("[-", "-]"), "new": ("{+", "+}"), "same": ("", "")}


def lines(old: Edition, new: Edition, changes: Sequence[Change]) -> Iterator[str]:
    """Yield the changes as text for the terminal."""
    yield f"{new.title}: {_subject(old, new)}"
    if not changes:
        yield NOTHING
    for key, title in CONSEQUENCES.items():
        held = [c for c in changes if c.consequence == key]
        if held:
            yield f"\n{title}"
        for change in held:
            yield f"  - {change.sentence}"
            if change.words:
                yield f"    {_marked(shortened(change.words))}"
            if change.advice:
                yield f"    {change.advice}"


def shortened(words: Words) -> Words:
    """Return a difference with what is long and the same cut down to its nearest words."""
    last = len(words) - 1
    found = []
    for at, (kind, said) in enumerate(words):
        parts = said.split(" ")
        if kind == "same" and last and len(parts) > LONG:
            head = parts[:NEAR] if at else []
            tail = parts[-NEAR:] if at < last else []
            said = " ".join([*head, "…", *tail])
        found.append((kind, said))
    return tuple(found)


def _marked(words: Words) -> str:
    return " ".join(f"{_MARKS[kind][0]}{said}{_MARKS[kind][1]}" for kind, said in words)


def _subject(old: Edition, new: Edition) -> str:
    if old.edition and new.edition and old.edition != new.edition:
        return f"what changed from “{old.edition}” to “{new.edition}”"
    return "what changed since the last edition"


def _lead(changes: Sequence[Change]) -> str:
    if not changes:
        return f"{NOTHING} What you have bought, cut and sewn by the older one is right."
    if all(c.consequence == COSMETIC for c in changes):
        return (
            "Only looks and wording changed. What you have bought, cut and sewn by the older "
            "edition is right."
        )
    return (
        "If you have not begun, the new edition is all you need. If you have, look under the "
        "heading for how far you are, and under those above it."
    )


def data(old: Edition, new: Edition, changes: Sequence[Change]) -> dict[str, Any]:
    """Return the changes as plain data; DEVELOPERS.md documents the shape."""
    return {
        "pattern": new.pattern,
        "title": new.title,
        "old": {"source": old.source, "edition": old.edition},
        "new": {"source": new.source, "edition": new.edition},
        "changed": bool(changes),
        "changes": [_plain(c) for c in changes],
    }


def _plain(change: Change) -> dict[str, Any]:
    return {
        "consequence": change.consequence,
        "subject": change.subject,
        "size": change.size or None,
        "sentence": change.sentence,
        "advice": change.advice,
        "old": dict(change.old),
        "new": dict(change.new),
        "words": [{"kind": kind, "text": said} for kind, said in change.words],
        "template": change.overlay and _laid(change.overlay),
    }


def _laid(overlay: Overlay) -> dict[str, str]:
    """Return what is measured between two outlines: decimals, since it follows curves."""
    return {
        "picture": f"overlay-{overlay.name}.svg",
        "area": decimal_text(Fraction(overlay.area), 2),
        "distance": decimal_text(Fraction(overlay.distance), 3),
    }


def page(old: Edition, new: Edition, changes: Sequence[Change]) -> str:
    """Return the errata as a page that is complete in itself."""
    laid = [c.overlay for c in changes if c.overlay is not None]
    return render(
        "errata.html",
        title=f"{new.title}: corrections",
        subject=capital(_subject(old, new)),
        lead=_lead(changes),
        new=new,
        groups=[
            {
                "key": key,
                "title": title,
                "changes": [replace(c, words=shortened(c.words)) for c in held],
            }
            for key, title in CONSEQUENCES.items()
            if (held := [c for c in changes if c.consequence == key])
        ],
        pictures={name: embedded(svg.encode()) for name, svg in overlays(changes).items()},
        alts={o.name: alt(o) for o in laid},
    )
