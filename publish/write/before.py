"""Before you start: printing, seams, width, pressing, washing, abbreviations.

In: pattern, and the text of every other section. Out: the section.
Invariant: the abbreviations listed are exactly those that the booklet uses.
"""

from __future__ import annotations

import re
from fractions import Fraction

from publish.model.words import Block, Box, Paragraph, Row, Section, Steps, Table
from publish.words.en.phrase import listed, stitch
from publish.write.context import Book
from publish.write.practice import PIECING_STITCH
from publish.write.steps import StepList
from publish.write.templates import add_printing, printed

_ABBREVIATIONS = (
    ("in", "inch", re.compile(r"\d in\b")),
    ("yd", "yard, 36 inches", re.compile(r"\d yd\b")),
    ("mm", "millimetre", re.compile(r"\d mm\b")),
    ("cm", "centimetre, 10 millimetres", re.compile(r"\d cm\b")),
    ("m", "metre, 100 centimetres", re.compile(r"\d m\b")),
    ("×", "by: width, then length", re.compile(r" × ")),
    ("%", "per cent", re.compile(r"\d %")),
)


def section(book: Book, others: str) -> Section:
    """Return the section; `others` is the text of all the other sections."""
    steps = StepList(book, "before-you-start")
    if printed(book):
        add_printing(book, steps)
    blocks: list[Block] = []
    printing = steps.block()
    if printing.items:
        blocks += [Paragraph("**Printing at full size**"), printing]
    blocks.append(Box("note", "Seams", _seams(book)))
    blocks.append(Box("note", "Usable width", _width()))
    blocks.append(Box("note", "Pressing", _pressing()))
    blocks.append(Box("note", "Washing first", _washing(book)))
    blocks.append(
        Box(
            "note",
            "Sides of the cloth",
            (
                "The **right side** is the side that shows in the finished piece; the **wrong "
                "side** is "
                "its back. *Right sides together* means that two right sides touch.",
            ),
        )
    )
    blocks.append(_abbreviations(others + text_of(blocks)))
    lead = f"Read the steps{book.your_size} before you cut."
    return Section("before-you-start", "Before you start", tuple(blocks), lead)


def text_of(blocks: list[Block]) -> str:
    """Return the text of the blocks that this section writes."""
    found: list[str] = []
    for block in blocks:
        if isinstance(block, Box):
            found += block.items
        elif isinstance(block, Paragraph):
            found.append(block.text)
        elif isinstance(block, Steps):
            found += [f"{s.text} {s.right}" for s in block.items]
    return "\n".join(found)


def _seams(book: Book) -> tuple[str, ...]:
    seam = book.say.measure(book.pattern.sewing.seam)
    middle = book.pattern.measures.usual(Fraction(1))
    wide = middle + 2 * book.pattern.sewing.seam
    return (
        f"Seams are {seam} unless a step says otherwise. Sew with 50 wt cotton, a needle of size "
        f"80/12 and a stitch about {stitch(PIECING_STITCH.value)} long. Sew a scant seam, a thread "
        "or two narrower: the fold takes up the rest.",
        f"Test: cut three strips {book.say.measure(wide)} wide, sew them side by side and press. "
        f"The middle strip must measure {book.say.measure(middle)}.",
    )


def _width() -> tuple[str, ...]:
    return (
        "The usable width is the width between the selvages. If yours is narrower than the table "
        "of materials assumes, buy more.",
    )


def _pressing() -> tuple[str, ...]:
    return (
        "Set the iron down and lift it; do not slide it. Press each seam flat as sewn first, then "
        "to the side named.",
    )


def _washing(book: Book) -> tuple[str, ...]:
    shrinking: dict[Fraction, list[str]] = {}
    for key in book.fabrics:
        share = book.pattern.fabrics[key].shrinkage
        if share > 0:
            shrinking.setdefault(share, []).append(book.fabric(key))
    sewing = book.pattern.sewing
    if shrinking:
        first = "The lengths to buy allow for shrinkage in the wash: " + listed(
            [f"{float(100 * share):g} % for {listed(names)}" for share, names in shrinking.items()]
        )
        items = [f"{first}. Wash, dry and press those fabrics before you cut."]
    else:
        many = "metres" if book.pattern.measures.metric else "yards"
        more = book.say.to_buy(sewing.yard_step, sewing.metric_step)
        items = [
            "The lengths to buy allow nothing for shrinkage. If you wash your fabrics first, buy "
            f"{more} more for every two {many} or part of them, and check the usable width again.",
        ]
    items.append("Wash all of the fabrics or none: do not mix washed and unwashed.")
    items.append("Test strong colours: rub them with a damp white cloth and look for dye.")
    return tuple(items)


def _abbreviations(text: str) -> Table:
    rows = tuple(
        Row((f"**{short}**", long)) for short, long, mark in _ABBREVIATIONS if mark.search(text)
    )
    return Table("abbreviations", "Abbreviations and signs", ("Sign", "Meaning"), rows)
