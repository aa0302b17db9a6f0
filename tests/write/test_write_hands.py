"""The order of the hands, and figures that a maker can follow: rules over small patterns.

Pin before sewing, tear paper before pressing, mark before cutting, measure before trimming:
common practice, no source. How a goose is built is geometry: what lies beyond its point is
the fabric of the small triangles.
"""

import re

import pytest
from patchwork_books import demo
from small_books import LEAF, NINE, STAR, WEDGE, booklet, motif, plain

from publish.sew.assembling import places_by_way
from publish.sew.bench import Bench
from publish.sew.names import Names

BORDERED = (
    "a: {block: nine, block_size: 9 in, columns: 3, rows: 3, borders: "
    "[{width: 2 in, fabric: mist}, {width: 5 in, fabric: fern}]}"
)
SEW, PIN = re.compile(r"\b[Ss]ew\b"), re.compile(r"\b[Pp]in\b(?! with)")
BOOKS = {
    "patchwork": lambda: booklet(BORDERED),
    "stars": lambda: booklet(BORDERED.replace("nine", "star"), blocks=STAR),
    "sashed": lambda: booklet(
        "a: {block: star, block_size: 8 in, columns: 2, rows: 3, sashing: "
        "{width: 1 in, fabric: mist, cornerstones: amber}}",
        blocks=STAR,
    ),
    "motif": lambda: booklet(
        "a: {block: leaf, block_size: 12 in, motif_size: 10 in}",
        blocks=LEAF,
        motifs=motif(wedge=WEDGE),
    ),
    "foundations": lambda: demo("heronry", "mini"),
}


@pytest.mark.parametrize("name", BOOKS)
def test_pins_go_in_before_the_seam_is_sewn(name):
    """No sentence asks for pins after the one before it has sewn the same parts together."""
    for step in BOOKS[name]().steps():
        if not step.key.startswith(("piecing", "assembling")):
            continue
        text = plain(step.text)
        at = [m.start() for m in PIN.finditer(text)]
        sewn = [m.start() for m in SEW.finditer(text) if "together" in text[m.start() :]]
        assert not at or not sewn or min(at) < max(sewn), (step.key, text)
        assert not re.search(r"\b[Ss]ew\b[^.]*\. (?:Choose[^.]*\. )?Pin where", text), text


def test_marking_comes_before_basting_and_cutting():
    found = BOOKS["motif"]()
    keys = [s.key.removeprefix("marking-and-cutting-the-motif-") for s in found.steps("marking")]
    order = [k.rsplit("-", 1)[0] for k in keys]
    wanted = ["align", "cut-line", "finished-line", "baste-wedge", "cut", "unfold"]
    assert [k for k in order if k in wanted] == wanted
    text = plain(found.text("marking"))
    assert "twice" in text and "Trim the paper" not in text
    assert "iron it" in text and "Press it" not in text
    assert "Print it twice" in found.text("templates")


def test_no_heat_on_marks_until_they_are_out():
    found = BOOKS["motif"]()
    between = found.steps("marking")[-1:] + found.steps("placing") + found.steps("applique")
    for step in between:
        hot = re.search(r"\b(?:iron|press)\b(?!\w)", re.sub("finger-press", "", step.text))
        assert hot is None or "remove" in step.text, step.text


def test_paper_is_torn_before_the_seam_is_pressed_and_is_out_before_layering():
    found = BOOKS["foundations"]()
    for step in found.steps("foundation"):
        if "Tear the paper" in step.text and "Press the seam" in step.text:
            assert step.text.index("Tear the paper") < step.text.index("Press the seam")
    last = found.steps("foundation")[-1]
    assert "is out" not in last.right, "the paper stays in until the sides are sewn"
    (top,) = [s for s in found.steps("quilting") if s.key == "quilting-top"]
    assert top.text.startswith("Remove all paper")
    assert "outer line" not in "\n".join(s.text for s in found.steps("foundation"))


def _alone(strip):
    """Whether a strip of fabric is one piece, with an inch beside it or more."""
    (first, *others) = strip.held
    whole = first.count == 1 and first.along == strip.depth and not strip.sections
    return whole and not others and first.across <= 39


def test_border_strips_are_left_long_where_nothing_else_is_cut_from_them():
    found = BOOKS["patchwork"]()
    plan, text = found.plans["a"], plain(found.text("cutting"))
    for piece in plan.pieces:
        if not piece.purpose.startswith("border"):
            continue
        strips = [
            s
            for s in plan.fabrics[piece.fabric].strips
            if any(c.letter == piece.letter for c in s.held)
        ]
        alone = all(map(_alone, strips))
        said = re.search(rf"one {piece.letter}: leave it long until", text) is not None
        assert said == alone, piece
    borders = plain(found.text("borders"))
    assert "near both edges" in borders and "quarter points" in borders


def test_a_goose_keeps_its_allowance_in_the_fabric_beyond_its_point():
    found = booklet(
        "a: {block: star, block_size: 8 in, columns: 2, rows: 2}",
        blocks=STAR,
        more="piecing: {geese: four at once}\n",
    )
    (making,) = [m for m in found.plans["a"].makings if m.method == "geese"]
    size = {p.letter: p.width for p in found.plans["a"].pieces}
    large, small = sorted(making.letters, key=lambda letter: -size[letter])
    (step,) = [
        s
        for s in found.steps("piecing")
        if "four units" not in s.text and re.search(r"Leave .* beyond the point", s.text)
    ]
    assert f"of **{small}** beyond the point of **{large}**" in step.text


def test_openings_that_bend_both_ways_are_turned_as_edges_are():
    """The opening of the first wedge is a star of eight points, that of the second round."""
    star = (
        "[[40, 0, corner], [90, 0, corner], [50, 30], [50, 50, corner], [16, 16, corner], [26, 8]]"
    )
    told = []
    for wedge in (star, WEDGE):
        found = booklet(
            "a: {block: leaf, block_size: 12 in, motif_size: 10 in}",
            blocks=LEAF,
            motifs=motif(wedge=wedge),
        )
        told.append(plain(found.text("applique")))
    assert "opening as you turn the outer edge" in told[0]
    assert "opening as an inward curve" in told[1]


def test_blocks_pressed_two_ways_are_given_their_places():
    """In rows of three, like blocks are pressed up and down so that neighbours lock; each of
    the fewer has its place named."""
    found = demo("samphire", "throw")
    names = Names(
        Bench(found.pattern, found.sizes["throw"], found.drafts["throw"], found.plans["throw"])
    )
    text = plain(found.text("assembling"))
    assert "next to each other" not in text
    for ways in places_by_way(names).values():
        assert sum(map(len, ways.values())) == found.sizes["throw"].block_count
        for row, column in list(ways.values())[-1]:
            there = rf"rows? [\d, and]*{row}[\d, and]*, places? [\d, and]*{column}"
            assert re.search(there, text), text


def test_rounds_lock_at_both_corners():
    text = plain(demo("heronry", "throw").text("borders"))
    assert "seams beside the corner blocks toward the middle of the strip" in text
    assert "Alternate blocks of one kind" in text
    table = demo("heronry", "throw").text("pressing-plan")
    assert "ound 3" in table, "the strips of rounds are in the pressing plan"


@pytest.mark.parametrize("name", ["patchwork", "motif", "foundations"])
def test_parts_for_some_sizes_say_so(name):
    found = demo("samphire")
    for section in found.manual.sections:
        if section.key in ("sleeve", "binding", "pillow") and section.sizes:
            first = section.blocks[0]
            assert "This part is for the" in getattr(first, "text", ""), section.key
    assert found.section("sleeve").sizes


def test_no_selvage_is_cut_from_panels_that_are_cut_to_size():
    wide = BORDERED.replace("columns: 3, rows: 3", "columns: 5, rows: 5")
    text = plain(booklet(wide).text("quilting"))
    assert "backing panels" in text and "Cut the selvages off" not in text


def test_words_are_of_one_place():
    """Spelling and trade words of North America, Canadian spelling: no `towards`, `zip`."""
    text = demo("samphire").text() + demo("towpath", "pillow").text()
    assert not re.search(r"\b(?:towards|zip|stabiliser|sticky|aired)\b", text)


def test_nine_patches_alone_need_no_cloth_word_for_ground():
    assert "ground" not in plain(booklet(BORDERED, blocks=NINE).text("piecing"))
