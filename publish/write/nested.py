"""Fused motifs that are nested on web and cloth, and the stabiliser under their stitching.

In: web, stabiliser and fabric plans. Out: steps.
Invariant: lengths and counts are the plans'; a step is written only for sizes that have
what it is about.
"""

from __future__ import annotations

from collections.abc import Sequence

from publish.words.en.phrase import counted, measure
from publish.write.context import Book
from publish.write.practice import WEB_APART
from publish.write.steps import StepList, figure


def nested_on_web(book: Book, keys: Sequence[str]) -> list[str]:
    """Return the sizes whose motifs are nested on the roll of web."""
    return [k for k in keys if (web := book.plans[k].web) is not None and web.placements]


def nested_on_cloth(book: Book, keys: Sequence[str]) -> list[str]:
    """Return the sizes that nest motifs on a stretch of cloth."""
    return [
        k for k in keys
        if any(s.placements for p in book.plans[k].fabrics.values() for s in p.strips)
    ]  # fmt: skip


def add_web(book: Book, steps: StepList, keys: Sequence[str]) -> None:
    """Add a step for each size that lays out its motifs on one length of web."""
    for key in keys:
        web = book.plans[key].web
        assert web is not None
        holds = (
            "It holds the motif as the layout shows: mark its centre before you trace."
            if web.squares == 1 else
            f"It holds the {counted(web.squares, 'motif')} side by side as the layout shows, at "
            f"least {measure(WEB_APART.value)} apart: mark the centre of each before you trace."
        )  # fmt: skip
        steps.add(
            f"nest-web-{key}",
            f"From the fusible web cut a length of {measure(web.length)}, without bending it "
            f"sharply. {holds}",
            sizes=[key],
            right="Paper and web are still one sheet, with room for every motif.",
            figure=figure("cutting-layout", key, f"{book.title(key)}: the paper side of the web.",
                          material="web"),
        )  # fmt: skip


def add_cloth(book: Book, steps: StepList, keys: Sequence[str]) -> None:
    """Add the step that fuses every motif to the stretch of cloth they are nested on."""
    letter = book.letter(keys, "motif")
    steps.add(
        "fuse-stretch",
        f"Lay the stretch of cloth that was cut for {letter} wrong side up. Lay the pieces of web "
        "on it, paper side up, as its cutting layout shows, and fuse them as the maker of the web "
        "says. Let them cool flat.",
        sizes=keys,
        caution="Fusing takes more heat than pressing. Work on a protected board in a "
        "well-ventilated room and let the fabric cool before you touch it.",
    )


def add_stabiliser(book: Book, steps: StepList, keys: Sequence[str]) -> None:
    """Add the step that puts stabiliser under the ground."""

    def value(key: str) -> str:
        plan = book.plans[key].stabiliser
        assert plan is not None
        return f"{counted(plan.squares, 'square')} of {measure(plan.side)}"

    mine = [k for k in keys if book.plans[k].stabiliser is not None]
    if not mine:
        return
    wide = any(p.side > p.width for k in mine if (p := book.plans[k].stabiliser) is not None)
    beside = " Where a square is wider than the roll, lay two lengths side by side." if wide else ""
    steps.add(
        "stabiliser",
        f"From the stabilizer cut {book.each(mine, value)}, and pin one behind each ground so "
        f"that it reaches past the motif on every side.{beside} When the edges are stitched, tear "
        "it away gently, holding the stitches down with a thumb.",
        sizes=mine,
        right="The ground lies flat behind the stitches, without puckers.",
    )
