"""One strip in words: how it is cut, its pieces, its sections and theirs.

In: a fabric plan and one of its strips. Out: paragraphs.
Invariant: each paragraph begins with the strips that it cuts, and names every piece of
each of them with its number.
"""

from __future__ import annotations

from collections.abc import Container
from fractions import Fraction
from functools import partial

from publish.model.cutplan import Cut, FabricPlan, Strip
from publish.words.en.lengths import Lengths
from publish.words.en.phrase import counted, listed, number, ordinal


def strip_words(
    tell: Lengths, plan: FabricPlan, strip: Strip, at: int, long: Container[str] = ()
) -> list[str]:
    """Return how one kind of strip is cut and what is cut from it, then from its sections."""
    marked = f", number {at} on the layout" if len(plan.strips) > 1 else ""
    depth = f"{counted(strip.count, 'strip')} {tell.measure(strip.depth)} deep"
    if strip.placements:
        return [f"Cut {depth}{marked}, and leave it whole: {_holds(tell, strip)}"]
    pieces = _pieces(tell, strip, plan.usable_width, long)
    return [f"Cut {depth}{marked}. {pieces}.", *_in_sections(tell, strip)]


def _in_sections(tell: Lengths, strip: Strip) -> list[str]:
    """Return how each section of a strip is cut, one kind of its strips after another."""
    found = []
    for place, section in enumerate(strip.sections, start=1):
        which = f"{ordinal(place)} section" if len(strip.sections) > 1 else "section"
        each = f"each of the {number(strip.count)} {which}s" if strip.count > 1 else f"the {which}"
        for inner in section.strips:
            cut = f"{counted(inner.count, 'strip')} {tell.measure(inner.depth)} deep"
            found.append(f"From {each} cut {cut}. {_pieces(tell, inner, section.width)}.")
    return found


def _pieces(tell: Lengths, strip: Strip, width: Fraction, long: Container[str] = ()) -> str:
    """Return what is cut from each strip of one kind, sections last."""
    many = strip.count > 1
    if not strip.cuts or strip.sections:
        each = "From each" if many else "From it"
        return (
            f"{each} cut {listed([*map(partial(_cut, tell), strip.cuts), *_sections(tell, strip)])}"
        )
    whole = len(strip.cuts) == 1 and strip.cuts[0].count == 1 and (strip.cuts[0].across == width)
    first = strip.cuts[0]
    if first.letter in long:
        each = "Each" if many else "It"
        pieces = (
            f"{each} is one **{first.letter}**, {tell.rectangle(first.across, first.along)} once "
            "it is trimmed: leave it long until the top is measured"
        )
    elif whole and first.along == strip.depth:
        each = "Each strip" if many else "The whole strip"
        pieces = f"{each} is one **{strip.cuts[0].letter}**"
    else:
        each = "From each" if many else "From it"
        pieces = f"{each} cut {listed([_cut(tell, c) for c in strip.cuts])}"
    return pieces


def _sections(tell: Lengths, strip: Strip) -> list[str]:
    """Return a strip's sections: `a section 10 in wide`."""
    wide = [tell.measure(section.width) for section in strip.sections]
    if len(wide) == 1:
        return [f"a section {wide[0]} wide"]
    return [f"{counted(len(wide), 'section')}, {listed(wide)} wide"] if wide else []


def _cut(tell: Lengths, cut: Cut) -> str:
    each = "each " if cut.count > 1 else ""
    return f"{number(cut.count)} **{cut.letter}**, {each}{tell.rectangle(cut.across, cut.along)}"


def _holds(tell: Lengths, strip: Strip) -> str:
    """Return what a strip holds whose shapes lie in one another's hollows, so that the
    rectangles round them would not all fit."""
    which = listed([f"{number(c.count)} **{c.letter}**" for c in strip.cuts])
    over = listed(
        [f"**{c.letter}** measures {tell.rectangle(c.across, c.along)}" for c in strip.cuts]
    )
    close = "fitted together by their outlines" if sum(c.count for c in strip.cuts) > 1 else "laid"
    return f"it holds {which}, {close} as on the layout. From edge to edge, {over}."
