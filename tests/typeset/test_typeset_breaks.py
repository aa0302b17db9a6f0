"""Where pages break between sections. What should stay together is the project's own (common
practice, no source)."""

from __future__ import annotations

from dataclasses import replace

import bulrush
import bulrush_drawn
import pytest
from finished import Book, read_back

from publish.model.book import LETTER
from publish.model.words import Bullets, Paragraph, Row, Section, Step, Steps, Table
from publish.typeset import typeset

LENGTHS = tuple(range(14, 27, 2))
"""Steps before a part, so that it begins at different heights of a page."""


def steps(many: int, name: str) -> Steps:
    items = (Step(f"{name}-{n}", n, f"Fold {n} for {name}, done.") for n in range(1, many + 1))
    return Steps(tuple(items))


def care(name: str) -> tuple[Steps, Bullets]:
    points = (f"Wash {n} for {name}, done. {'Dry it flat in the shade. ' * 6}" for n in range(5))
    return Steps((Step(f"sign-{name}", 1, f"Sign for {name}, done."),)), Bullets(tuple(points))


def printed(layout: str) -> Book:
    """Set each length four times: by itself, and with a part after it: one step and a list,
    one that begins with a paragraph, one that begins with a table."""
    sections = []
    for many in LENGTHS:
        for name in (f"{many} alone", f"{many} led"):
            blocks = (steps(many, name),)
            sections.append(Section(f"s-{name[:2]}-{name[3:]}", name, blocks, new_page=True))
        sections.append(
            Section(f"p-{many}", f"Part {many}", care(f"{many}"), parent=f"s-{many}-led")
        )
        blocks = (steps(many, f"{many} met"),)
        sections.append(Section(f"s-{many}-met", f"{many} met", blocks, new_page=True))
        text = f"Begin {many} here. {'Fold it along the thread. ' * 12} End {many} here."
        told = (Paragraph(text), steps(2, f"{many} after"))
        sections.append(Section(f"q-{many}", f"Told {many}", told, parent=f"s-{many}-met"))
        blocks = (steps(many, f"{many} listed"),)
        sections.append(Section(f"s-{many}-listed", f"{many} listed", blocks, new_page=True))
        rows = (Row((f"Piece {n} of {many} steps", "1 in")) for n in range(1, 31))
        sections.append(
            Section(
                f"t-{many}",
                f"Cut {many}",
                (Table(f"t{many}", "Pieces", ("Piece", "Cut size"), tuple(rows)),),
                parent=f"s-{many}-listed",
            )
        )
    manual = replace(bulrush.manual(), sections=tuple(sections))
    artwork = bulrush_drawn.artwork(LETTER)
    edition, _ = typeset(bulrush.pattern(layout=layout), manual, artwork, LETTER)
    assert edition is not None
    return read_back(edition, layout)


def pages(book: Book, *words: str) -> list[int]:
    texts = (" ".join(t.split()) for t in book.words)
    return [n for n, text in enumerate(texts) if any(w in text for w in words)]


@pytest.mark.parametrize("layout", ["tideline", "washland"])
def test_a_part_takes_nothing_before_it_to_the_next_page(layout: str) -> None:
    book = printed(layout)
    for many in LENGTHS:
        for name in (f"{many} alone", f"{many} led"):
            (first,) = pages(book, f"Fold 1 for {name}, done.")
            (last,) = pages(book, f"Fold {many} for {name}, done.")
            assert last - first <= 1, many
        part = set(pages(book, f"Sign for {many}, done.", f" for {many}, done. Dry it"))
        assert len(part) == 1, f"after {many} steps one step and its list are torn apart"
        top = [pages(book, f"Piece {n} of {many} steps") for n in (1, 2, 3, 4)]
        assert top[0] == top[1] == top[2] == top[3], f"after {many} steps a table is left behind"
        ends = [pages(book, f"{word} {many} here.") for word in ("Begin", "End")]
        assert ends[0] == ends[1], f"after {many} steps the first words of a part are torn apart"
