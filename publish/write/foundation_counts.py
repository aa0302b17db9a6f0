"""What is said before anything is sewn on paper: that it is a mirror image, and how often
each section is sewn, for which blocks.

In: foundation sections of one size. Out: a sentence.
Invariant: counts and letters are the draft's.
"""

from __future__ import annotations

from collections import Counter

from publish.model.words import Box
from publish.words.en.phrase import listed, number
from publish.write.bench import Bench


def counts(bench: Bench) -> str:
    """Return `Sew section A three times for the block.`"""
    book, key = bench.book, bench.key
    made: dict[tuple[str, int], list[str]] = {}
    for found in book.drafts[key].foundations:
        made.setdefault((found.block, found.count), []).append(found.letter)
    sole = Counter(f.block for f in book.drafts[key].foundations)
    told = [
        f"{_each(letters, count)} for the {book.block_name(block)}{'s' if count > 1 else ''}"
        f"{', whole on one foundation' if sole[block] == 1 else ''}"
        for (block, count), letters in made.items()
    ]
    return f"Sew {listed(told)}."


def _each(letters: list[str], count: int) -> str:
    """Return `section A three times`, `sections A to G once each`."""
    often = {1: "once", 2: "twice"}.get(count, f"{number(count)} times")
    if len(letters) == 1:
        return f"section {letters[0]} {often}"
    run = [chr(ord(letters[0]) + n) for n in range(len(letters))] if len(letters[0]) == 1 else []
    named = (
        f"{letters[0]} to {letters[-1]}"
        if len(letters) > 2 and letters == run
        else (listed(letters))
    )
    return f"sections {named} {often} each"


def mirror() -> Box:
    """Say which side of the paper is which."""
    return Box(
        "note",
        "The printed side is a mirror image",
        (
            "The lines are printed on the side that you sew on. The cloth lies on the other, blank "
            "side, so the finished block is the mirror image of the print: what is on the left of "
            "the paper comes out on the right of the block.",
            "A1 on a foundation is section A, patch 1, which is sewn first. Bold letters in the "
            "table are pieces that you cut.",
        ),
    )
