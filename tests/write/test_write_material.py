"""Material facts in words: cloth sold ready cut, cloth at hand, nesting, stabiliser."""

from __future__ import annotations

from dataclasses import replace

import pytest
from write_cases import made_for, manual, section, step, steps, tables, text_of
from write_material import STRIPS, F, placements

from publish.model.cloth import FAT_QUARTER
from publish.model.cutplan import Alternative, Cut, Strip
from publish.operations.cutting import CutOff, CutPieces
from publish.operations.operation import Moment, Where
from publish.operations.parts import measured, sheet
from publish.words import language
from publish.write.context import Book
from publish.write.precut import alternatives, sold

FACTS = "material facts"


def cells(key: str) -> list[tuple[str, ...]]:
    return [row.cells for row in tables(manual(FACTS))[key].rows]


def test_a_fabric_sold_ready_cut_says_how_many_and_what_length_would_do() -> None:
    row = {c[0].split("**")[1]: c for c in cells("fabric")}
    sand, red = row["Sandbar"], row["Glasswort red"]
    assert "fat quarters, 18 in × 22 in" in sand[2] and "; or " in sand[2] and " yd (" in sand[2]
    assert red[2].startswith("One packet of 20 strips 2 1/2 in (6.4 cm) wide; ")
    assert " are used; or " in red[2]


def test_cloth_at_hand_stands_beside_what_to_buy() -> None:
    mini, throw = next(c for c in cells("fabric") if "Salt linen" in c[0])[1:]
    assert mini.endswith("; at hand: enough, with 1/4 yd (0.20 m) left")
    assert throw.endswith("; at hand: short by 3/8 yd (0.30 m)")


def test_the_table_of_precuts_answers_for_every_fabric_sold_by_length() -> None:
    table = tables(manual(FACTS))["precuts"]
    assert table.head == ("", "Fat quarters", "Fat eighths", "10 in squares", "2 1/2 in strips")
    named = [row.cells[0] for row in table.rows if row.kind == "body"]
    assert not any("Sandbar" in name or "Glasswort" in name for name in named)
    answers = {
        cell.split(":")[0].split(",")[0]
        for row in table.rows
        if row.kind == "body"
        for cell in row.cells[1:]
    }
    assert answers == {"3", "no"}
    assert any("joined" in note.lower() for note in table.notes)


def test_what_nobody_looked_for_is_said_to_be_bought_by_length() -> None:
    made = made_for(FACTS)
    plans = {
        key: replace(
            plan,
            fabrics={
                f: replace(
                    p, alternatives=tuple(Alternative(a.sold_as, None) for a in p.alternatives)
                )
                for f, p in plan.fabrics.items()
            },
        )
        for key, plan in made.plans.items()
    }
    table = alternatives(Book(made.pattern, made.sizes, made.drafts, plans))
    assert table is not None
    assert {cell for row in table.rows if row.kind == "body" for cell in row.cells[1:]} == {"–"}
    assert any("**–**" in note and "by length" in note for note in table.notes)
    assert not any("larger" in note for note in table.notes)


def test_no_table_of_precuts_without_answers() -> None:
    assert "precuts" not in tables(manual("three sizes"))


def test_sheets_are_cut_in_steps_with_their_layout() -> None:
    found = step(FACTS, "cutting-throw-sand")
    assert found.figure is not None and found.figure.kind == "cutting-layout"
    assert "**Sandbar.** From each of 18 fat quarters" in found.text
    strips = step(FACTS, "cutting-throw-red").text
    assert "along its length" not in strips  # a strip is only cut across
    assert "**1** From each of four strips cut one **" in strips


@pytest.mark.parametrize(
    ("count", "kind", "words"),
    [
        (1, FAT_QUARTER, "one fat quarter, 18 in × 22 in (45.7 cm × 55.9 cm)"),
        (13, STRIPS, "13 strips 2 1/2 in (6.4 cm) wide"),
    ],
)
def test_what_is_sold_in_words(count, kind, words) -> None:
    assert language().value(sold(count, kind)) == words


def test_nested_motifs_are_traced_and_fused_as_their_layouts_show() -> None:
    web = step(FACTS, "fusing-nest-web-throw")
    assert web.sizes == ("throw",) and web.figure is not None
    assert ("material", "web") in web.figure.values
    assert "145 in (368.3 cm)" in web.text
    # Quiltmaker magazine (F+W), Piecing and applique: 1/2 in between shapes on web.
    assert "at least 1/2 in (13 mm) apart" in web.text
    assert step(FACTS, "fusing-cut-web").sizes == ("mini",)
    stretch = step(FACTS, "fusing-fuse-stretch")
    assert stretch.sizes == ("throw",) and stretch.caution
    assert step(FACTS, "fusing-fuse-cloth").sizes == ("mini",)
    cut = step(FACTS, "cutting-throw-moss").text
    assert "Leave it whole" in cut and "80 in (203.2 cm) wide" in cut


def test_the_boxes_round_nested_shapes_are_never_promised_from_the_cloth() -> None:
    """L-shapes: 20 in boxes of 10 in and 16 of 9 1/2 in are more than 40 by 80 in."""
    cuts = (Cut("B", F(10), F(10), 20), Cut("C", F(19, 2), F(19, 2), 16))
    laid = Strip(F(80), cuts, 1, placements("B", 20, 4) + placements("C", 16, 4))
    assert sum(c.across * c.along * c.count for c in cuts) > 40 * laid.depth
    pieces = tuple(
        CutOff(
            c.letter,
            sheet(c.letter, measured(c.across), measured(c.along)),
            c.count,
            (c.across, c.along),
        )
        for c in laid.cuts
    )
    where: Where = {"chapter": "cutting", "step": "moss"}
    cutting = CutPieces(**where, strips="strips", count=1, pieces=pieces, how="nested")
    told = language().text(cutting.says, cutting.values(Moment(cutting)))
    assert "holds 20 **B** and 16 **C**, fitted together by their outlines" in told
    assert "From edge to edge, **B** measures 10 in" in told and "each" not in told


def test_stabiliser_is_bought_cut_and_torn_away() -> None:
    keys = [s.key for s in steps(section(FACTS, "fusing"))]
    assert keys.index("fusing-stabiliser") < keys.index("fusing-stitch-edge")
    assert any("stabilizer" in c[0] for c in cells("other-materials"))
    assert step(FACTS, "fusing-stitch-edge").tip == ""
    plain = [s.key for s in steps(section("fusible", "fusing"))]
    assert "fusing-stabiliser" not in plain
    assert "stabilizer" in step("fusible", "fusing-stitch-edge").tip


# Quilt backings: fabric calculation, BellaOnline: one full panel, one split in two.
def test_a_split_panel_keeps_the_seam_from_the_middle() -> None:
    found = step(FACTS, "quilting-backing-throw")
    assert "Cut one of them in two along its length, 20 in (50.8 cm) wide each" in found.text
    assert "on either side of the whole panel" in found.text
    assert "two vertical seams, none of them down the middle" in found.right
    whole = step("three sizes", "quilting-backing-throw")
    assert "in two along" not in whole.text and "one vertical seam" in whole.right


def test_terms_are_explained_where_they_are_used() -> None:
    terms = tables(manual(FACTS))
    text = text_of(FACTS)
    assert "fat quarter" in text and terms
    glossary = "\n".join(str(b) for b in section(FACTS, "glossary").blocks)
    assert "fat quarter" in glossary and "stabilizer" in glossary
