"""The made-up patterns that every general test of the words runs over, and their text."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from functools import cache

import write_made as w
from rehearsed import write
from write_material import facts

from publish.model.pattern import BorderSpec, Motif, QuiltingSpec
from publish.model.words import Manual, Section, Step, Steps, Table
from publish.notes import Note
from publish.write.collect import section_strings

TWO = (
    Motif("star", "moss", 8, "mirror", "needle-turn", Fraction(1, 8)),
    Motif("rush", "red", 12, "mirror", "prepared edge", Fraction(3, 16)),
)
BED = w.Wish(
    "bed",
    "Bed",
    ("quartered", "other"),
    4,
    Fraction(18),
    Fraction(15),
    (BorderSpec(Fraction(6), "sand", "mitred"),),
    bias=True,
)
WALL = w.Wish(
    "wall",
    "Wall",
    ("nine",),
    3,
    Fraction(9),
    None,
    quilting=(QuiltingSpec("ground", "grid", Fraction(3, 2)),),
)

CASES: dict[str, Callable[[], w.Made]] = {
    "three sizes": lambda: w.made(),
    "one size": lambda: w.made(w.MINI),
    "pillow alone": lambda: w.made(w.PILLOW, publication=w.UNPUBLISHED),
    "zip": lambda: w.made(replace(w.PILLOW, pillow=w.ZIP)),
    "fusible": lambda: w.made(method="fusible"),
    "prepared edge": lambda: w.made(method="prepared edge"),
    "four folds": lambda: w.made(w.MINI, folds=4),
    "six folds": lambda: w.made(w.MINI, folds=6),
    "twelve folds": lambda: w.made(w.MINI, folds=12),
    "sixteen folds": lambda: w.made(w.MINI, folds=16),
    "turning": lambda: w.made(w.MINI, folds=6, symmetry="turning"),
    "turning and fused": lambda: w.made(w.MINI, symmetry="turning", method="fusible"),
    "turning, prepared": lambda: w.made(w.MINI, symmetry="turning", method="prepared edge"),
    "material facts": facts,
    "no borders": lambda: w.made(replace(w.MINI, borders=(), sleeve=None)),
    "two motifs": lambda: w.made(w.MINI, w.THROW, BED, motifs=TWO),
    "patchwork": lambda: w.made(WALL),
    "one fabric": lambda: w.made(
        w.Wish("mat", "Mat", quilting=(QuiltingSpec("ground", "as desired"),)),
        motifs=(Motif("star", "linen", 8, "mirror", "needle-turn", Fraction(1, 8)),),
    ),
}


@cache
def made_for(name: str) -> w.Made:
    return CASES[name]()


@cache
def written(name: str) -> tuple[Manual, tuple[Note, ...]]:
    """Return the booklet of a case and its notes."""
    m = made_for(name)
    return write(m.pattern, m.sizes, m.drafts, m.plans)


def manual(name: str) -> Manual:
    return written(name)[0]


def section(name: str, key: str) -> Section:
    """Return a case's section by key; KeyError when it has none."""
    return {s.key: s for s in manual(name).sections}[key]


def steps(found: Section) -> list[Step]:
    """Return every step of a section in order."""
    return [s for b in found.blocks if isinstance(b, Steps) for s in b.items]


def step(name: str, key: str) -> Step:
    """Return a case's step by its key; KeyError when it has none."""
    return {s.key: s for found in manual(name).sections for s in steps(found)}[key]


def section_text(found: Section) -> list[str]:
    """Return every printed string of a section."""
    return [text for text in section_strings(found) if text]


def tables(book: Manual) -> dict[str, Table]:
    return {b.key: b for s in book.sections for b in s.blocks if isinstance(b, Table)}


def strings(book: Manual) -> Iterator[tuple[str, str]]:
    """Yield every printed string with the key of its section, covers included."""
    for found in book.sections:
        for text in section_strings(found):
            if text:
                yield found.key, text
    cover, back = book.cover, book.back
    for text in (
        cover.title,
        cover.subtitle,
        cover.studio,
        cover.skill,
        book.running_foot,
        back.blurb,
        back.stock_number,
        back.edition,
        back.licence,
        back.contact,
        *back.materials,
        *(t for pair in (*cover.sizes, *back.sizes) for t in pair),
    ):
        if text:
            yield "cover", text


def text_of(name: str) -> str:
    return "\n".join(text for _, text in strings(manual(name)))
