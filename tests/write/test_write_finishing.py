"""The words of finishing: binding, pillows, webs, quilting, covers, colours."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest
import write_made as w
from rehearsed import write
from write_cases import made_for, manual, section, step, steps, strings, tables, text_of

from publish.model.pattern import BorderSpec, Colourway, QuiltingSpec
from publish.model.words import FigureBlock, Steps
from publish.sew.placing import centre_seams


def test_bias_binding_is_made_from_its_square() -> None:
    made = w.made(replace(w.MINI, bias=True))
    book, _ = write(made.pattern, made.sizes, made.drafts, made.plans)
    found = {s.key: s for part in book.sections for s in steps(part)}
    assert "23 in (58.4 cm) square" in found["binding-bias"].text
    assert "binding-join" not in found


def test_a_pillow_front_is_trimmed_to_the_form() -> None:
    """everythingsewing blog, Cushion cover tutorial: the front is cut the size of the form,
    and 1/2 in seams make the cover 1 in smaller."""
    assert "18 in (45.7 cm) square" in step("pillow alone", "pillow-trim").text
    turn = step("pillow alone", "pillow-turn")
    assert "17 in (43.2 cm) square" in turn.right and "18 in (45.7 cm) square" in turn.text


def test_envelope_backs_are_the_published_pieces() -> None:
    """House on Hill Road blog, Pillow fit and closures: two pieces 18 x 12 for an 18 form."""
    hem = step("pillow alone", "pillow-hem")
    assert "two back pieces" in hem.text and "12 in × 18 in" in hem.text
    assert "4 in (10.2 cm)" in step("pillow alone", "pillow-layer").right


def test_a_pillow_of_one_block_is_not_trimmed_twice() -> None:
    keys = [s.key for s in steps(section("pillow alone", "applique"))]
    assert "applique-trim" not in keys and "applique-leave-pillow" in keys


def test_a_zip_back_is_told_with_its_picture() -> None:
    found = steps(section("zip", "pillow"))
    assert any(s.figure and s.figure.get("detail") == "zip" for s in found)
    # everythingsewing blog, Cushion cover tutorial: a back 1 in longer than its front; cut in
    # two and sewn again with 1/2 in seams it is as long as the front.
    text = step("zip", "pillow-zip").text
    assert "19 in × 18 in" in text and "two sides of 18 in" in text
    assert "with a 1/2 in (13 mm) seam" in text
    assert not any("overlap" in s.text + s.right for s in found)


def test_web_is_traced_in_mirror_image_only_where_it_matters() -> None:
    plain = step("fusible", "fusing-trace-star")
    turning = step("turning and fused", "fusing-trace-star")
    assert "mirror image of the motif" in turning.right and "face down" in turning.text
    assert "face down" not in plain.text and "its own mirror image" in plain.tip


def test_freezer_paper_is_mirrored_only_where_it_matters() -> None:
    plain = step("prepared edge", "preparing-the-edge-paper-star")
    turning = step("turning, prepared", "preparing-the-edge-paper-star")
    assert "mirror image of the motif" in turning.right
    assert "fold it into eight" in plain.text and "mirrored" not in plain.tip


@pytest.mark.parametrize(
    ("folds", "upright", "level_", "slanting"),
    [(4, True, True, False), (8, True, True, True), (12, True, True, False)],
)
def test_folds_go_on_the_creases_they_coincide_with(
    folds: int, upright: bool, level_: bool, slanting: bool
) -> None:
    """Folds lie every 360/n degrees from a straight one: with 4 on the halves, with 8 on
    halves and diagonals, with 12 on the halves (30, 60 ... never 45)."""
    made = w.made(w.MINI, folds=folds)
    book, _ = write(made.pattern, made.sizes, made.drafts, made.plans)
    found = {s.key: s for part in book.sections for s in steps(part)}
    text = found["placing-align"].text
    assert ("creases in half" in text) == (upright and level_)
    assert ("diagonal creases" in text) == slanting


def test_six_folds_share_one_line_with_the_ground() -> None:
    assert "onto the level crease" in step("six folds", "placing-align").text


def test_seams_through_the_centre_stand_for_creases() -> None:
    blocks = made_for("three sizes").pattern.blocks
    assert centre_seams(blocks["quartered"]) == (True, True)
    assert centre_seams(blocks["nine"]) == (False, False)
    assert centre_seams(blocks["sprig"]) == (False, False)
    text = step("three sizes", "placing-crease-quartered").text
    assert "diagonals" in text and "in half both ways" not in text


def test_quilting_directions_are_said_as_drafted() -> None:
    wishes = [
        (QuiltingSpec("ground", "parallel", Fraction(1), 90), "vertical parallel lines"),
        (QuiltingSpec("ground", "grid", Fraction(2), 0), "a diagonal grid"),
        (QuiltingSpec("ground", "grid", Fraction(2), 45), "an upright grid"),
        (QuiltingSpec("border", "parallel", Fraction(1), 90), "straight across"),
        (QuiltingSpec("border", "parallel", Fraction(1), 0), "along each side"),
        (QuiltingSpec("border", "echo", Fraction(1)), "innermost border"),
        (QuiltingSpec("motif", "echo", Fraction(1)), "inside its edge"),
        (QuiltingSpec("ground", "ditch"), "along every seam"),
        (QuiltingSpec("ground", "as desired"), "as you like"),
    ]
    for spec, words in wishes:
        made = w.made(replace(w.MINI, quilting=(spec,)))
        book, _ = write(made.pattern, made.sizes, made.drafts, made.plans)
        quilting = next(s for s in book.sections if s.key == "quilting")
        assert words in " ".join(s.text for s in steps(quilting)), spec


def test_the_label_of_the_batting_decides() -> None:
    assert "with lines no more than 8 in (20.3 cm) apart" in text_of("three sizes")
    assert "label of your batting" in text_of("three sizes")


def test_every_cut_layout_follows_its_strips() -> None:
    blocks = section("three sizes", "cutting-throw").blocks
    for before, block in pairwise(blocks):
        if isinstance(block, FigureBlock):
            assert isinstance(before, Steps) and block.figure.kind == "cutting-layout"


def test_covers_carry_what_the_designer_gave() -> None:
    book = manual("three sizes")
    assert (book.cover.title, book.cover.studio) == ("Samphire", "Hollow Fen Studio")
    assert book.cover.figure.size == "throw"
    assert book.cover.sizes[0] == ("Mini wall quilt", "20 in (50.8 cm) square")
    assert book.running_foot == "Samphire · Hollow Fen Studio"
    assert book.back.edition == "First edition, 2026"
    assert any(m.startswith("Salt linen: ") for m in book.back.materials)
    assert "18 in pillow form" in book.back.materials


def test_nothing_is_printed_for_publication_data_that_is_missing() -> None:
    book = manual("pillow alone")
    assert book.running_foot == "Samphire"
    assert (book.back.edition, book.back.licence, book.cover.skill) == ("", "", "")
    assert "Skill" not in [row.cells[0] for row in tables(book)["sizes"].rows]
    assert " 0" not in book.back.edition


def test_template_sheets_can_stand_alone() -> None:
    alone = manual("three sizes").templates_only()
    assert {s.key.split("-")[0] for s in alone.sections} == {"templates"}
    assert {type(b).__name__ for s in alone.sections for b in s.blocks} == {"TemplateSheets"}
    whole = manual("three sizes").whole_templates()
    assert {b.part for s in whole.sections for b in s.blocks} == {"whole"}
    assert manual("patchwork").templates_only().sections == ()


def test_dark_over_light_and_light_over_dark() -> None:
    assert "Deep moss is darker than Salt linen" in text_of("three sizes")
    pale = w.made(
        w.MINI, motifs=(replace(made_for("one size").pattern.motifs["star"], fabric="linen"),)
    )
    fabrics = {
        **pale.pattern.fabrics,
        "linen": replace(pale.pattern.fabrics["linen"], colour="#24483a"),
    }
    dark = replace(pale.pattern, fabrics=fabrics)
    book, _ = write(dark, pale.sizes, pale.drafts, pale.plans)
    text = " ".join(
        i
        for s in book.sections
        if s.key == "colour-and-fabric"
        for b in s.blocks
        for i in getattr(b, "items", ())
    )
    assert "both Salt linen" in text


def test_shrinkage_and_width_are_said_as_the_pattern_has_them() -> None:
    made = made_for("one size")
    fabrics = {
        **made.pattern.fabrics,
        "red": replace(made.pattern.fabrics["red"], shrinkage=Fraction(3, 100)),
        "sand": replace(made.pattern.fabrics["sand"], usable_width=Fraction(42)),
    }
    pattern = replace(made.pattern, fabrics=fabrics)
    book, _ = write(pattern, made.sizes, made.drafts, made.plans)
    text = "\n".join(
        i
        for s in book.sections
        for b in s.blocks
        for i in (*getattr(b, "items", ()), getattr(b, "text", ""))
        if isinstance(i, str)
    )
    assert "3 % for Glasswort red" in text
    assert "42 in (106.7 cm) for Sandbar" in text


def test_border_names_by_their_number() -> None:
    three = tuple(BorderSpec(Fraction(n), "sand") for n in (1, 2, 3))
    made = w.made(replace(w.MINI, borders=three))
    book, _ = write(made.pattern, made.sizes, made.drafts, made.plans)
    text = " ".join(s.text for part in book.sections for s in steps(part))
    for word in ("inner border", "middle border", "outer border"):
        assert f"The {word} is Sandbar" in text


def test_other_colourways_are_shown_with_their_swaps() -> None:
    made = made_for("one size")
    night = replace(made.pattern.fabrics["linen"], name="Night water", colour="#26343c")
    ways = {"dusk": Colourway("dusk", "Dusk", {"linen": night})}
    pattern = replace(made.pattern, colourways=ways)
    book, _ = write(pattern, made.sizes, made.drafts, made.plans)
    rows = tables(book)["colourways"].rows
    assert [row.cells for row in rows] == [("Dusk",), ("Salt linen", "Night water")]
    assert "colourways" in {f.kind for f in book.figures()}
    assert "colourways" not in {f.kind for f in manual("one size").figures()}


def test_fabrics_that_are_close_are_called_close() -> None:
    made = made_for("one size")
    fabrics = {
        **made.pattern.fabrics,
        "moss": replace(made.pattern.fabrics["moss"], colour="#efe8d8"),
    }
    book, _ = write(replace(made.pattern, fabrics=fabrics), made.sizes, made.drafts, made.plans)
    said = [
        i
        for s in book.sections
        if s.key == "colour-and-fabric"
        for b in s.blocks
        for i in getattr(b, "items", ())
    ]
    assert any("close in lightness" in text for text in said)
    assert not any("close in lightness" in text for _, text in strings(manual("one size")))
