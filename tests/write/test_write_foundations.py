"""The words of foundation piecing: order, counts, cloth, the mirror image, taking paper out."""

from __future__ import annotations

import re

from patchwork_books import Patchwork, demo

from publish.model.words import Box, FigureBlock, Table, TemplateSheets
from publish.units import inches_text


def heronry() -> Patchwork:
    return demo("heronry", "mini", "pillow")


def test_the_printed_side_is_said_to_be_the_mirror_image() -> None:
    boxes = [b for b in heronry().section("foundation").blocks if isinstance(b, Box)]
    said = " ".join(boxes[0].items)
    assert "mirror image" in said and "comes out on the right of the block" in said
    assert "mirror image" in heronry().text("templates")


def test_sewing_goes_place_sew_flip_trim() -> None:
    """Placing on the blank side, sewing on the printed line and trimming to a seam beyond it is
    common practice, no source; so is a stitch of 1.5 mm."""
    steps = [s for s in heronry().steps("foundation") if s.key.count("-") == 1]
    order = [s.key.removeprefix("foundation-") for s in steps]
    assert order == ["print", "machine", "place", "sew", "flip", "on", "trim"]
    text = {s.key.removeprefix("foundation-"): s.text for s in steps}
    assert "100%" in text["print"] and "check square" in text["print"]
    assert "1.5 mm" in text["machine"] and "blank side" in text["place"]
    assert "printed line" in text["sew"] and "without cutting the paper" in text["flip"]
    assert "order of the numbers" in text["on"] and "dashed cut line" in text["trim"]
    stages = [s.figure.get("stage") for s in steps if s.figure is not None]
    assert stages == ["place", "sew", "trim", "done"]


def test_every_patch_of_a_section_has_its_cloth_in_order() -> None:
    book = heronry()
    for key, draft in book.drafts.items():
        pieces = {p.letter: p for p in book.plans[key].pieces}
        section = next(
            s for s in book.manual.sections if s.parent == "foundation" and key in s.sizes
        )
        tables = [b for b in section.blocks if isinstance(b, Table)]
        rows = [r for t in tables for r in t.rows if r.kind == "body"]
        named = [f"{f.letter}{n}" for f in draft.foundations for n in range(1, len(f.patches) + 1)]
        assert [r.cells[0] for r in rows] == named
        patches = [p for f in draft.foundations for p in f.patches]
        for row, patch in zip(rows, patches, strict=True):
            piece = pieces[row.cells[2].strip("*")]
            assert row.fabric == patch.fabric == piece.fabric
            assert inches_text(piece.width) in row.cells[3]
            # Cloth of a patch reaches past all of it, whichever way it is turned.
            left, top, right, bottom = patch.box
            assert piece.width * piece.length > (right - left) * (bottom - top)


def test_sections_are_joined_as_the_tree_says() -> None:
    steps = [s.text for s in heronry().steps("foundation-mini") if s.text.startswith("Join")]
    joined = [re.split("[:.]| in this order|, matching", s)[0] for s in steps]
    assert joined == [
        "Join sections A and B",
        "Join AB, C and D",
        "Join ABCD, E and F",
        "Join ABCDEF and G",
    ]
    assert "Push a pin straight through both ends" in steps[0]
    assert "matching points" in steps[1] and "This is the block" in steps[-1]


def test_paper_comes_out_last() -> None:
    last = heronry().steps("foundation-mini")[-1]
    assert last.key.endswith("paper") and "all seven foundations" in last.text
    assert "until all sides of a block are sewn" in last.text


def test_every_foundation_is_printed_and_pictured() -> None:
    book = heronry()
    asked = {
        (b.motif, b.size)
        for s in book.manual.sections
        for b in s.blocks
        if isinstance(b, TemplateSheets) and b.part == "foundation"
    }
    alone = {(f.key, k) for k, d in book.drafts.items() for f in d.foundations if k != "pillow"}
    assert asked == alone  # the pillow's block is as large as the mini's, and shares its sheets
    shown = {
        (b.figure.kind, b.figure.get("block"))
        for b in book.section("foundation-mini").blocks
        if isinstance(b, FigureBlock)
    }
    assert ("sections", "heron") in shown


def test_tools_for_paper_are_listed_only_where_paper_is_sewn() -> None:
    assert "foundations that tears easily" in heronry().text("tools")
    assert "foundation" not in demo("towpath").text("tools").lower()
    assert "curved seams" in demo("millrace").text("tools")
