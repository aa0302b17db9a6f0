"""Which things stand on which page: held against pages packed by hand.

What a page should be (full, nothing parted from its heading, read down and then across) is
the project's own (common practice, no source).
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import bulrush
import bulrush_drawn
import pytest
from finished import made, read_back

from publish.model.book import LETTER
from publish.model.words import Paragraph, Row, Section, Table
from publish.typeset import typeset
from publish.typeset.composing.filling import leaf
from publish.typeset.composing.forms import COLUMN, SMALLEST, WIDE, Form, forms
from publish.typeset.composing.grid import GAPS, Grid, grid
from publish.typeset.composing.items import Item, Sheets, flow
from publish.typeset.composing.measuring import Measured
from publish.typeset.composing.packing import pack
from publish.typeset.composing.pieces import Piece, Shape, pieces
from publish.typeset.layout import find
from publish.typeset.plates import Plate

FRAME = Grid(
    measure=500,
    columns=2,
    gutter=20,
    hang=30,
    narrow=200,
    words=400,
    height=600,
    legible=0.86,
    grow=1.5,
    gaps=dict.fromkeys(GAPS, 10.0),
    stretch=8,
)
PLATE = Plate("one", "figure:one", "One.", "", 200, 100, True)


def words(number: int, height: float, **says: bool) -> Piece:
    """Return a piece that stands in a column, or as high across the measure."""
    item = Item(number, "words", None, **says)
    return Piece(item, {n: Shape(Form(n, 240), height, 0.0, 0.0, 0.0) for n in (COLUMN, WIDE)})


def title(number: int, **says: bool) -> Piece:
    item = Item(number, "title", None, heads=True, **says)
    return Piece(item, {WIDE: Shape(Form(WIDE, 500), 60, 0.0, 0.0, 0.0)})


def picture(number: int, words_high: float) -> Piece:
    """Return a step whose figure is 100 points high and may grow by a half."""
    form = Form(COLUMN, 240, PLATE, 0.8, 1.2)
    return Piece(Item(number, "step", None), {COLUMN: Shape(form, words_high, 0.0, 100, 0.0)})


def test_two_columns_take_what_fits_two_columns() -> None:
    """Eight pieces of 140 and three gaps of 10 between four of them: 590 of 600."""
    (page,) = pack([words(n, 140) for n in range(8)], FRAME)
    assert sum(b.height for b in page.bands) + 10 * (len(page.bands) - 1) <= 600
    assert page.bands[0].start == 0 and page.bands[-1].stop == 8


def test_every_piece_is_set_once_and_in_order() -> None:
    run = [title(0), *(words(n, 37 + 11 * (n % 7)) for n in range(1, 60))]
    bands = [b for p in pack(run, FRAME) for b in p.bands]
    assert bands[0].start == 0 and bands[-1].stop == 60
    assert all(a.stop == b.start for a, b in pairwise(bands))
    assert all(b.start < b.middle <= b.stop for b in bands)


def test_no_page_is_higher_than_the_paper_and_few_are_empty() -> None:
    run = [title(0), *(words(n, 37 + 11 * (n % 7)) for n in range(1, 60))]
    pages = pack(run, FRAME)
    high = [sum(b.height for b in p.bands) + 10 * (len(p.bands) - 1) for p in pages]
    assert max(high) <= FRAME.height
    assert min(high[:-1]) > 0.85 * FRAME.height


def test_nothing_is_parted_from_its_heading() -> None:
    """The heading would fit the foot of the first page; what it heads would not."""
    for before in range(420, 600, 10):
        run = [words(0, before), words(1, before), title(2), words(3, 200), words(4, 200)]
        for page in pack(run, FRAME):
            assert page.bands[-1].stop != 3, before


def test_what_follows_stands_below_what_it_follows() -> None:
    run = [words(0, 300), words(1, 20, follows=True), words(2, 300), words(3, 20, follows=True)]
    for page in pack(run, FRAME):
        assert page.bands[0].start not in (1, 3)
        assert all(b.middle not in (1, 3) for b in page.bands if b.middle < b.stop)


def test_what_begins_a_page_begins_one_unless_the_page_before_is_nearly_empty() -> None:
    full = pack([title(0), words(1, 500), words(2, 500), title(3, fresh=True), words(4, 50)], FRAME)
    assert [p.bands[0].start for p in full] == [0, 3]
    light = pack([title(0), words(1, 60), title(2, fresh=True), words(3, 300)], FRAME)
    assert [p.bands[0].start for p in light] == [0]
    own = pack([title(0, fresh=True), words(1, 60), title(2, fresh=True), words(3, 300)], FRAME)
    assert [p.bands[0].start for p in own] == [0, 2], "a page that is nearly empty on purpose"


def test_figures_grow_until_the_page_is_full_and_no_further() -> None:
    run = [picture(n, 150) for n in range(4)] + [words(n, 500) for n in (4, 5)]
    pages = pack(run, FRAME)
    made = leaf(pages[0], run, FRAME)
    for row in made.rows:
        for column in row.columns:
            for one in column:
                assert one.plate is None or 0.8 <= one.plate.width / PLATE.width <= 1.2
    columns = [c for row in made.rows for c in row.columns]
    high = [sum(150 + p.plate.height + p.gap for p in c if p.plate) for c in columns]
    assert max(high) == pytest.approx(2 * (150 + 120) + 10 + 8, abs=9)


def test_the_same_pieces_give_the_same_pages() -> None:
    run = [title(0), *(picture(n, 40 + 13 * (n % 5)) for n in range(1, 40))]
    assert pack(run, FRAME) == pack(list(run), FRAME)


def table(rows: int) -> Table:
    cells = [Row((f"{n}", "x"), "group" if n % 6 == 0 else "body") for n in range(rows)]
    return Table("t", "T", ("A", "B"), tuple(cells))


def test_a_long_table_goes_on_with_its_heading_and_never_after_a_groups() -> None:
    item = Item(0, "table", None, table(60))
    measured = Measured(40 + 60 * 20, head=40, rows=(20.0,) * 60, columns=(100.0, 140.0))
    run = list(pieces(item, [(Form(COLUMN, 240), measured)], FRAME))
    assert [p.rows[0] for p in run[1:]] == [p.rows[1] for p in run[:-1]]
    assert all((p.rows[1] - 1) % 6 for p in run), "a group's heading ends a piece"
    made = [leaf(p, run, FRAME) for p in pack(run, FRAME)]
    parts = [one for page in made for row in page.rows for c in row.columns for one in c]
    assert len(parts) > 1
    for part in parts:
        high = 40 + 20 * len(part.some.rows)
        assert high <= FRAME.height
    again = [p for p in parts if p.rows[0] % 6]
    assert again and all(p.some.rows[0].kind == "group" for p in parts), "a group is named again"
    assert sum(len(p.some.rows) for p in parts) == 60 + len(again)


def test_a_short_table_is_one_piece() -> None:
    item = Item(0, "table", None, table(9))
    measured = Measured(220, head=40, rows=(20.0,) * 9, columns=(100.0, 140.0))
    assert len(list(pieces(item, [(Form(COLUMN, 240), measured)], FRAME))) == 1


def test_a_table_too_wide_for_a_column_stands_across() -> None:
    item = Item(0, "table", None, table(9))
    narrow = Measured(90, head=40, rows=(20.0,) * 9, columns=(200.0, 140.0), fits=False)
    wide = Measured(220, head=40, rows=(20.0,) * 9, columns=(200.0, 140.0))
    found = [(Form(COLUMN, 240), narrow), (Form(WIDE, 500), wide)]
    (piece,) = pieces(item, found, FRAME)
    assert list(piece.shapes) == [WIDE]


def test_no_figure_is_made_smaller_than_its_lettering_can_be_read() -> None:
    """The drawings of the small booklet are lettered at 8 points."""
    artwork = bulrush_drawn.artwork(LETTER)
    layout, _ = find(bulrush.pattern(), LETTER)
    assert layout is not None
    frame, notes = grid(layout)
    assert frame is not None and notes == ()
    seen = 0
    for item in flow(bulrush.manual(), (), contents=True):
        if isinstance(item, Item):
            for form in forms(item, frame, artwork):
                seen += form.plate is not None
                assert form.plate is None or form.least <= form.usual <= form.most
    assert seen and SMALLEST > 6


def test_sheets_follow_the_words_of_their_group() -> None:
    run = flow(bulrush.manual(), (), contents=True)
    (at,) = [n for n, one in enumerate(run) if isinstance(one, Sheets)]
    before, sheets = run[at - 1], run[at]
    assert isinstance(before, Item) and before.kind == "where"
    assert isinstance(sheets, Sheets) and len(sheets.blocks) == 2


def test_a_setting_that_is_no_number_is_told() -> None:
    layout, _ = find(bulrush.pattern(), LETTER)
    assert layout is not None
    compose = {**layout.settings["compose"], "gutter": "wide", "columns": 5}
    spoilt = replace(layout, settings={**layout.settings, "compose": compose})
    frame, notes = grid(spoilt)
    assert frame is None
    assert [n.received for n in notes] == ["settings.compose.gutter", "settings.compose.columns"]
    assert {n.code for n in notes} == {"T702"}


def test_pages_hold_what_was_measured() -> None:
    """Fifty sections of mixed length: the PDF has a page for each that was composed."""
    text = "Fold the cloth along the thread and press it dry. "
    sections = tuple(
        Section(f"s{n}", f"Section {n}", tuple(Paragraph(text * (1 + k % 5)) for k in range(n % 7)))
        for n in range(50)
    )
    manual = replace(bulrush.manual(), sections=sections)
    edition, notes = typeset(bulrush.pattern(), manual, bulrush_drawn.artwork(LETTER), LETTER)
    assert edition is not None and notes == ()
    pages = edition.html.count('class="leaf"')
    assert len(read_back(edition).words) == pages + 2


@pytest.mark.parametrize("name", ["tideline-letter", "washland-a4", "washland-half-letter"])
def test_the_booklet_has_the_pages_that_were_composed(name: str) -> None:
    book = made(name)
    leaves = book.edition.html.count('class="leaf"')
    assert len(book.words) == leaves + len(book.edition.sheet_pages) + 2
