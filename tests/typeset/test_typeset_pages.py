"""The finished PDF, measured from outside.

Page sizes: US Letter 8.5 x 11 in (ANSI/ASME Y14.1, size A) and A4 210 x 297 mm (ISO 216),
in points of 1/72 in. Tagging: ISO 14289-1 (PDF/UA-1), the clauses named at each check.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
from hashlib import sha256
from pathlib import Path

import bulrush
import bulrush_drawn
import numpy as np
import pypdfium2.raw as pdfium_raw
import pytest
from finished import Book, read_back

from publish.model.book import LETTER
from publish.typeset import typeset

POINTS = {"letter": (612.0, 792.0), "a4": (595.276, 841.890)}
OURS = re.compile(r"^/?[A-Z]{6}\+Source-(Serif|Sans)-Pro(-|$)")
SHEETS = ("Mini wedge, sheet 1", "Mini wedge, sheet 2", "Throw wedge, sheet 1")
MARGIN = 40.0
"""Points: no words of an ordinary page may come nearer to the paper's sides."""
RUNNING = 20.0
"""Points: the running words keep so far from the paper's head or foot."""


def page_with(book: Book, words: str) -> int:
    return next(n for n, text in enumerate(book.words, start=1) if words in text)


def ordinary(book: Book) -> list[int]:
    """Return the indices of pages that are neither covers nor template sheets."""
    sheets = set(book.edition.sheet_pages.values())
    return [i for i in range(1, len(book.words) - 1) if i + 1 not in sheets]


def test_every_page_is_the_size_of_the_paper(book: Book) -> None:
    expected = POINTS[book.edition.paper.key]
    for page in book.pages:
        assert page.get_size() == pytest.approx(expected, abs=0.01)


def test_only_the_layouts_fonts_are_used_and_all_are_embedded(book: Book) -> None:
    seen = set()
    for page in book.objects.pages:
        for font in page.Resources.get("/Font", {}).values():
            seen.add(str(font.BaseFont))
            (descendant,) = font.DescendantFonts
            descriptor = descendant.FontDescriptor
            assert "/FontFile2" in descriptor or "/FontFile3" in descriptor
    assert seen
    assert [name for name in seen if not OURS.match(name)] == []


def test_bookmarks_follow_the_sections_and_name_each_sheet(book: Book) -> None:
    found = [(b.level, b.get_title()) for b in book.pages.get_toc()]
    expected: list[tuple[int, str]] = []
    for section in bulrush.manual().sections:
        expected.append((1 if section.parent else 0, section.title))
        if section.key == "templates-throw":
            expected += [(1, name) for name in SHEETS]
    assert found == expected


def test_bookmarks_lead_to_the_page_where_the_section_starts(book: Book) -> None:
    for mark in book.pages.get_toc():
        page = mark.get_dest().get_index() + 1
        if mark.get_title() in SHEETS:
            assert page in book.edition.sheet_pages.values()
        else:
            assert mark.get_title() in book.words[page - 1]


def test_contents_gives_the_right_page_for_every_section(book: Book) -> None:
    starts = {m.get_title(): m.get_dest().get_index() + 1 for m in book.pages.get_toc()}
    contents = book.words[page_with(book, "Contents") - 1]
    for section in bulrush.manual().sections:
        # Words of a long title may stand on two lines of their column.
        title = re.escape(section.title).replace(r"\ ", r"\s+")
        after = rf"^{title}[\s.]+(\d+)\s*$"
        before = rf"^(\d+)\s+{title}\s*$"
        match = re.search(before if book.layout == "washland" else after, contents, re.MULTILINE)
        assert match is not None, section.title
        assert int(match[1]) == starts[section.title]


def test_page_numbers_are_printed_outside_as_a_viewer_counts_them(book: Book) -> None:
    """An odd page lies on the right of a spread, so its number stands at its right."""
    for index in ordinary(book):
        page = book.pages[index]
        words = page.get_textpage()
        width, height = page.get_size()
        band = 40.0
        low = 0.0 if book.layout == "tideline" else height - band - 30
        strip = words.get_text_bounded(0, low, width, low + band + 30)
        assert bulrush.FOOT in strip
        half = (0, width / 4) if index % 2 else (3 * width / 4, width)
        outside = words.get_text_bounded(half[0], low, half[1], low + band + 30)
        assert re.search(rf"\b{index + 1}\b", outside), (index + 1, outside)


def test_both_covers_have_their_ground_change_at_one_height(book: Book) -> None:
    """So that no step shows at the spine: where colour changes along the edge of each."""
    edges = []
    for index, column in ((0, 2), (len(book.words) - 1, -3)):
        dots = np.asarray(book.pages[index].render(scale=1).to_numpy())[:, column, :3].astype(int)
        steps = np.abs(np.diff(dots, axis=0)).sum(axis=1)
        edges.append([n for n in range(len(steps)) if steps[n] > 60])
    assert edges[0] and edges[0] == pytest.approx(edges[1], abs=1)


def test_running_words_name_the_section_that_a_page_begins_in(book: Book) -> None:
    named = begun = 0
    starts = {m.get_title(): m.get_dest().get_index() for m in book.pages.get_toc() if not m.level}
    for index in ordinary(book):
        before = [t for t, page in starts.items() if page < index and t not in SHEETS]
        opening = [t for t, page in starts.items() if page == index]
        text = book.words[index]
        running = [t for t in starts if re.search(rf"(^|\s){re.escape(t)}\s", text)]
        begun += bool(opening)
        if before and not opening:
            named += 1
            assert before[-1] in running, (index + 1, before[-1])
    # A short booklet's pages may all begin a section.
    assert named or begun == len(list(ordinary(book)))


def test_covers_and_sheets_have_no_running_foot(book: Book) -> None:
    for number in (1, len(book.words), *book.edition.sheet_pages.values()):
        assert bulrush.FOOT not in book.words[number - 1]


@pytest.mark.parametrize(
    "length",
    [
        "1/4 in seam",
        "3/8 in inside",
        "within 1/16 in of",
        "18 1/2 in × 54 1/2 in",
        "3 1/4 yd (3.00 m)",
        "3 1/2 in × 4 5/8 in",
        "20 1/2 in × 20 1/2 in (52.1 cm × 52.1 cm)",
    ],
)
def test_lengths_are_read_back_as_the_manual_writes_them(book: Book, length: str) -> None:
    assert length in " ".join("\n".join(book.words).split())


def test_words_stay_on_their_page(book: Book) -> None:
    plain = set(ordinary(book))
    for index, page in enumerate(book.pages):
        width, height = page.get_size()
        edge = MARGIN if index in plain else 0.0
        above = RUNNING if index in plain else 0.0
        words = page.get_textpage()
        for n in range(words.count_rects()):
            left, bottom, right, top = words.get_rect(n)
            assert left >= edge - 0.5 and right <= width - edge + 0.5, (index + 1, n)
            assert bottom >= above - 0.5 and top <= height - above + 0.5, (index + 1, n)


def test_a_table_repeats_its_heading_wherever_it_goes_on(book: Book) -> None:
    """In each column and on each page: rows of the table stand below one of its headings."""
    head = r"Pieces to cut\s+Piece\s+Cut\s+Size\s+Note"
    pages = [t for t in book.words if "moss piece" in t or "clay piece" in t or "linen piece" in t]
    assert sum(len(re.findall(head, text)) for text in pages) > 1
    for text in pages:
        assert re.search(head, re.split(r"(?:linen|moss|clay) piece", text)[0])


def test_no_group_row_ends_a_page_or_column(book: Book) -> None:
    for text in book.words:
        above_foot = text.split(bulrush.FOOT)[0].strip().splitlines()
        for line, after in zip(above_foot, [*above_foot[1:], ""], strict=True):
            if line.strip() in ("Pale linen", "Deep moss", "Bank clay") and "piece" in text:
                assert after and not after.startswith("Pieces to cut")


def test_steps_and_their_figures_share_a_page(book: Book) -> None:
    for row in range(1, 5):
        text = book.words[page_with(book, f"Join row {row}:") - 1]
        assert f"{row + 4} Row {row}." in text


@pytest.mark.parametrize(
    "words",
    [
        "The mini hangs in a hall",
        "fabric scissors, and scissors",
        "CAUTION Blades and heat",
        "TIP Press, do not push",
        "NOTE",
        "Four layers, one point",
        "Tip Light thread shows",
        "Caution Keep your other hand",
        "a ruler that shows 1/8 in",
        "Amounts allow 40 in",
        "All fabrics",
        "How the linen is cut",
        "Try your own fabrics.",
        "Sheet 2",
        "Confident beginner",
        "HF-140",
        "A week of quiet evenings",
        "patterns@hollowfen.example",
    ],
)
def test_every_kind_of_block_is_on_a_page(book: Book, words: str) -> None:
    assert words in " ".join("\n".join(book.words).split())


def test_sheets_are_at_their_pages_and_at_full_size(book: Book) -> None:
    """The drawing's square, 1 in from 1 in, is found at 72 pt from 72 pt on the page."""
    assert len(book.edition.sheet_pages) == 3
    for number in book.edition.sheet_pages.values():
        page = book.pages[number - 1]
        boxes = [obj.get_bounds() for obj in page.get_objects([pdfium_raw.FPDF_PAGEOBJ_PATH], 9)]
        height = page.get_size()[1]
        line = 0.01 * 72
        expected = (72 - line / 2, height - 144 - line / 2, 144 + line / 2, height - 72 + line / 2)
        assert any(b == pytest.approx(expected, abs=0.5) for b in boxes), boxes


def test_sheets_follow_the_words_of_their_group_in_one_run(book: Book) -> None:
    """Both sections' words share a page and say where the sheets are."""
    words = page_with(book, "Print at 100 %")
    assert "The throw uses the same wedge" in book.words[words - 1]
    assert list(book.edition.sheet_pages.values()) == [words + 1, words + 2, words + 3]
    assert f"Sheets on pages {words + 1}, {words + 2}" in book.words[words - 1]
    assert f"Sheet on page {words + 3}" in book.words[words - 1]


def test_a_small_figure_stands_with_its_paragraph(book: Book) -> None:
    """Beside it, or right below or above it in its column."""
    page = book.pages[page_with(book, "The throw uses the same wedge") - 1]
    words = page.get_textpage()
    tops = {}
    for wanted in ("The throw uses", "tile"):
        index, _ = words.search(wanted).get_next()
        left, _, _, top = words.get_charbox(index)
        tops[wanted] = (left, top)
    (text_left, text_top), (figure_left, figure_top) = tops.values()
    beside = figure_left > text_left + 150 and abs(figure_top - text_top) < 28
    same_column = abs(figure_left - text_left) < 150 and abs(figure_top - text_top) < 250
    assert beside or same_column


def test_a_short_table_stays_whole(book: Book) -> None:
    text = book.words[page_with(book, "Fabric to buy") - 1]
    assert all(name in text for name in ("Pale linen", "Deep moss", "Bank clay", "All fabrics"))


def test_the_file_says_what_it_is(book: Book) -> None:
    info = book.objects.docinfo
    assert str(info["/Title"]) == "Bulrush"
    assert str(info["/Author"]) == "Hollow Fen Studio"
    assert "/CreationDate" not in info and "/ModDate" not in info
    root = book.objects.Root
    assert str(root.Lang) == "en-CA"  # ISO 14289-1, 7.2; "colour", and "batting"
    assert bool(root.MarkInfo.Marked)  # ISO 14289-1, 6.2
    assert bool(root.ViewerPreferences.DisplayDocTitle)  # ISO 14289-1, 7.1
    assert b"pdfuaid:part" in root.Metadata.read_bytes()  # ISO 14289-1, clause 5


def test_every_figure_is_tagged_with_words(book: Book) -> None:
    """ISO 14289-1, 7.3: figures have alternative text."""
    pdf = book.objects
    figures = [o for o in pdf.objects if getattr(o, "get", None) and _tag(o) == "/Figure"]
    assert len(figures) >= len(bulrush.manual().figures())
    assert all(str(f.get("/Alt", "")) for f in figures)


def _tag(thing: object) -> str:
    try:
        return str(thing.get("/S"))  # type: ignore[attr-defined]
    except (TypeError, ValueError):
        return ""


def test_an_edition_of_templates_is_its_sheets_and_nothing_else() -> None:
    edition, notes = typeset(
        bulrush.pattern(), bulrush.manual(), bulrush_drawn.artwork(LETTER), LETTER, "templates"
    )
    assert notes == () and edition is not None
    assert edition.name == "templates-letter"
    book = read_back(edition)
    assert len(book.words) == 3
    assert sorted(edition.sheet_pages.values()) == [1, 2, 3]
    assert "HF-140" not in "".join(book.words)
    assert [m.get_title() for m in book.pages.get_toc()] == list(SHEETS)


_BUILD = """
import sys
sys.path[:0] = sys.argv[1:3]
import bulrush
import bulrush_drawn
from publish.model.book import A4
from publish.typeset import typeset
edition, _ = typeset(bulrush.pattern(), bulrush.manual(), bulrush_drawn.artwork(A4), A4)
sys.stdout.buffer.write(edition.pdf)
"""


def test_two_builds_give_the_same_bytes() -> None:
    """In processes of their own, with different hash seeds, time zones and working folders."""
    here = Path(__file__).parent
    sums = set()
    for seed, zone, folder in (("1", "UTC", here), ("2", "Asia/Tokyo", here.parent)):
        run = subprocess.run(
            [sys.executable, "-c", _BUILD, str(here), str(here.parents[1])],
            env={**os.environ, "PYTHONHASHSEED": seed, "TZ": zone},
            cwd=folder,
            capture_output=True,
            check=True,
        )
        sums.add(sha256(run.stdout).hexdigest())
        assert run.stdout.startswith(b"%PDF-")
    assert len(sums) == 1
