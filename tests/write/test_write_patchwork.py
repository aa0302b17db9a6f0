"""The booklet of patchwork: letters, counts and sizes against plans, drafts and handbooks."""

from __future__ import annotations

import re
from collections import Counter

import pytest
from patchwork_books import RING, SLANT, Patchwork, demo, sampler

from publish.model.words import FigureBlock, FigureGrid, Steps, Table, TemplateSheets
from publish.words import english, language
from publish.write.terms import terms

BOOKS = {
    "towpath": lambda: demo("towpath"),
    "millrace": lambda: demo("millrace"),
    "heronry": lambda: demo("heronry", "mini", "pillow"),
    "sampler": sampler,
    "ring": lambda: sampler(RING),
    "slant": lambda: sampler(SLANT_PLAIN),
}
SLANT_PLAIN = SLANT.partition("steps:")[0]
every_book = pytest.mark.parametrize("name", BOOKS)


WORDS = (
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
)


def _number(word: str) -> int:
    return WORDS.index(word) + 1 if word in WORDS else int(word)


@every_book
def test_every_letter_of_the_plan_is_sewn_or_cut_in_a_step(name: str) -> None:
    book = BOOKS[name]()
    for key, plan in book.plans.items():
        said = "\n".join(
            t
            for s in book.manual.sections
            if s.sizes in ((), (key,))
            for b in s.blocks
            if isinstance(b, Steps)
            for step in b.items
            for t in [f"{step.text} {step.right}"]
            if step.sizes in ((), (key,))
        )
        for piece in plan.pieces:
            assert f"**{piece.letter}**" in said, (key, piece.letter, piece.name)


@every_book
def test_keys_of_steps_and_sections_are_unique(name: str) -> None:
    book = BOOKS[name]()
    keys = Counter(s.key for s in book.steps())
    assert [k for k, n in keys.items() if n > 1] == []
    assert max(Counter(s.key for s in book.manual.sections).values()) == 1
    assert book.notes == () or {n.code for n in book.notes} <= {"W504", "W505"}


@every_book
def test_figures_show_units_sections_and_blocks_that_there_are(name: str) -> None:
    book = BOOKS[name]()
    for spec in book.manual.figures():
        if spec.size is None:
            continue
        kinds = {u.kind: u for u in book.units(spec.size)}
        if spec.kind in ("units", "curve", "set-in", "quick", "press"):
            assert kinds[spec.get("unit")].parts, spec
        if spec.kind == "quick":
            assert kinds[spec.get("unit")].made == spec.get("method")
            assert spec.get("stage") in ("mark", "sew", "cut", "trim")
        if spec.kind == "foundation":
            assert spec.get("section") in {f.key for f in book.drafts[spec.size].foundations}
        if spec.kind in ("block", "sections"):
            assert spec.get("block") in {p.block for p in book.drafts[spec.size].patches}


@every_book
def test_terms_that_are_used_are_explained(name: str) -> None:
    book = BOOKS[name]()
    words = next(t for t in book.section("glossary").blocks if isinstance(t, Table))
    explained = {row.cells[0].strip("*") for row in words.rows}
    said = "\n".join(book.text(s.key) for s in book.manual.sections if s.key != "glossary")
    for term in terms(language()):
        if re.search(term.form, said, re.IGNORECASE):
            assert term.name in explained


@pytest.mark.parametrize("name", ["towpath", "heronry", "sampler", "ring", "slant"])
def test_patchwork_without_motifs_never_speaks_of_them(name: str) -> None:
    text = BOOKS[name]().text()
    assert not re.search(r"motif|appliqu|needle-turn|\bground\b|turn-under", text, re.IGNORECASE)


def test_a_motif_on_a_pieced_ground_comes_after_the_piecing() -> None:
    book = demo("millrace")
    keys = [s.key for s in book.manual.sections if s.parent is None]
    order = ["cutting", "piecing", "folding", "placing", "applique", "assembling", "borders"]
    assert [k for k in keys if k in order] == order
    assert "trimmed after the appliqué" in book.text("piecing")


def test_units_are_made_as_often_as_the_tree_holds_them() -> None:
    """Twelve lock blocks hold four four-patches each, six path blocks four: 72, of 144
    segments; four geese in each of twelve stars: 48."""
    book = demo("towpath")
    (table,) = (b for b in book.section("piecing-lock").blocks if isinstance(b, Table))
    told = {row.cells[0]: dict(zip(table.head, row.cells, strict=True)) for row in table.rows}
    assert told["Unit 1"]["Throw"].startswith("144 of 2 in × 3 1/2 in")
    assert told["Unit 2"]["Throw"].startswith("72 of 3 1/2 in")
    assert told["Unit 3"]["Throw"].startswith("48 of 6 1/2 in × 3 1/2 in")
    assert "in the table" in book.text("piecing-lock")
    for key, draft in book.drafts.items():
        counts = Counter(Counter(u.kind for u in book.units(key)).values())
        cells = [told[name][book.sizes[key].title] for name in told]
        assert not Counter(int(c.split(" of ")[0]) for c in cells) - counts, draft.size


def test_towpath_is_cut_as_the_handbooks_say() -> None:
    """Beverly's quilting page, Fast flying geese size table: 4 x 2 in geese from a square of
    5 1/4 in and four of 2 7/8 in, 6 x 3 in geese from 7 1/4 in and four of 3 7/8 in. Setting
    and corner triangle chart (author not shown): blocks of 12 in on point take side squares
    of 18 1/4 in cut twice and corner squares of 9 3/8 in cut once."""
    book = demo("towpath")
    mini, throw = (
        "\n".join(
            " | ".join((*row.cells, ""))
            for b in book.section(f"cutting-{k}").blocks
            if isinstance(b, Table)
            for row in b.rows
        )
        for k in ("mini", "throw")
    )
    assert "5 1/4 in (13.3 cm) square | 2 |" in mini and "2 7/8 in (7.3 cm) square | 8 |" in mini
    assert "7 1/4 in (18.4 cm) square | 12 |" in throw
    assert "3 7/8 in (9.8 cm) square | 48 |" in throw
    sides = re.search(
        r"\| Side triangle; cut twice on the diagonal, in an X: (\d+) triangles, 2 to spare \| "
        r"18 1/4 in \(46\.4 cm\) square \| 3 \|",
        throw,
    )
    assert sides is not None and int(sides.group(1)) >= book.sizes["throw"].side_triangles == 10
    assert "cut once on the diagonal: 4 triangles | 9 3/8 in (23.8 cm) square | 2 |" in throw


def test_geese_are_made_four_at_once_and_trimmed() -> None:
    steps = {s.key: s for s in demo("towpath").steps("piecing-lock")}
    sew, cut, trim = (
        next(s for k, s in steps.items() if k.endswith(f"unit-3-{part}"))
        for part in ("sew", "cut", "trim")
    )
    assert "Draw a diagonal line on the wrong side of four Still water squares" in sew.text
    assert "1/4 in (6 mm) from the line on both sides" in sew.text
    assert "Do this twice for the **Mini wall quilt**" in sew.text
    assert "one more" in cut.text and "four units" in cut.right
    assert "Trim each unit to its size in the table" in trim.text


def test_units_made_from_one_strip_set_are_pressed_one_way() -> None:
    book = demo("towpath")
    sewn = next(s for s in book.steps("piecing-lock") if "strip sets" in s.text)
    assert sewn.text.count("Press the seam") == 1 and " in 2" not in sewn.text
    plan = next(
        b
        for b in book.section("pressing-plan").blocks
        if isinstance(b, Table) and b.key == "pressing-throw"
    )
    way = re.search(r"Press the seam (toward [^.]*)\.", sewn.text)
    assert way and plan.rows[0].cells == ("Unit 1", "144", way.group(1))


def test_blocks_on_point_are_sewn_in_diagonal_rows() -> None:
    """Three columns and four rows on point: 12 blocks, six between, 10 side triangles, in
    3 + 4 - 1 = 6 diagonal rows. A 12 in block is 12 x 1.41421 = 16.97 in across its corners:
    three are 50.91 in and four 67.88 in; with seams about 51 3/8 and 68 3/8 in."""
    book = demo("towpath")
    text = book.text("assembling-throw")
    assert "18 blocks on point" in text and "six diagonal rows" in text
    assert "ten side triangles" in text and "four corner triangles" in text
    assert all(f"**Row {n}**" in text for n in range(1, 7)) and "**Row 7**" not in text
    assert "about 51 3/8 in × 68 3/8 in (130.5 cm × 173.7 cm)" in text
    assert "straight grain" in text and "must stay outside the corners" in text
    rows = re.findall(r"\*\*Row \d\*\*: (.*?)\.", text)
    assert sum(r.count("lock block") for r in rows) == 12
    assert sum(r.count("path block") for r in rows) == 6
    (side,) = {p.letter for p in book.plans["throw"].pieces if english(p.called) == "side triangle"}
    assert sum(r.count(f"**{side}**") for r in rows) == 10
    assert "to the left in rows 1, 3 and 5 and to the right in rows 2, 4 and 6" in text


def test_sashing_and_cornerstones_go_by_turns() -> None:
    text = demo("towpath").text("assembling-mini")
    assert "sashing strips of Still water between and around them" in text
    assert "and cornerstones of Lamp oil where the strips meet" in text
    assert "three Lamp oil cornerstones" in text and "two Still water sashing strips" in text
    assert "sashing rows 1, 2 and 3" in text and "toward the sashing" in text


def test_a_medallion_grows_round_by_round() -> None:
    """A 12 in centre with a 2 in border is 16 in: four blocks of 4 in on each side and four
    corners, 20 in all. With the last border of 1 in it is 26 in square."""
    book = sampler(RING)
    text = book.text("borders")
    assert "first a border of Lock brick 2 in (5.1 cm) wide, second 20 blocks of" in text
    strips = next(s for s in book.steps("borders") if s.key.endswith("round-2-strips"))
    sides = dict(re.findall(r"\*\*(Left|Right|Top|Bottom)\*\*: ([^.;]*)", strips.text))
    counts = {
        side: sum(
            _number(n) if n not in ("a", "an") else 1
            for n in re.findall(r"(\w+) (?:small )?(?:four|plain) blocks?", text_)
        )
        for side, text_ in sides.items()
    }
    assert counts == {"Left": 4, "Right": 4, "Top": 6, "Bottom": 6}
    assert "measure 4 1/2 in × 16 1/2 in" in strips.right
    assert "The top measures 26 1/2 in (67.3 cm) square." in text
    assert next(s.figure.kind for s in book.steps("borders") if s.figure) == "rounds"


def test_curves_are_clipped_matched_and_pinned() -> None:
    book = demo("millrace")
    pin, sew = book.steps("piecing-mini-pillow-millpool")[:2]
    assert "curves in" in pin.text and "Clip" in pin.text and "match the notches" in pin.text
    inward = re.search(r"\*\*(\w+)\*\* has the edge that curves in", pin.text)
    outward = re.search(r"\*\*(\w+)\*\* the edge that curves out", pin.text)
    assert inward and outward
    plan = book.plans["mini"]
    cloth = {p.letter: p.fabric for p in plan.pieces}
    # The flour sack lies round the pool, so its edge is the hollow one.
    assert cloth[inward.group(1)] == "flour" and cloth[outward.group(1)] == "pool"
    assert pin.figure and pin.figure.get("stage") == "pin"
    assert sew.figure and sew.figure.get("stage") == "press"


def test_templates_are_printed_for_every_size_that_cuts_with_them() -> None:
    book = demo("millrace")
    asked = {
        (b.motif, b.size)
        for s in book.manual.sections
        for b in s.blocks
        if isinstance(b, TemplateSheets) and b.part == "piece"
    }
    assert asked == {(t.key, k) for k, plan in book.plans.items() for t in plan.templates}
    assert "100 %" in book.text("before-you-start")


@pytest.mark.parametrize(
    ("part", "words"),
    [
        ("block-sail-sew", "1/4 in (6 mm) from the line on both sides of it"),
        ("block-sail-trim", "Cut on the drawn lines"),
        ("block-glass-cut", "different fabrics facing"),
        ("block-snow-sew", "Sew a thread outside the lines"),
        ("block-snow-trim", "Do the same on the other two corners"),
        ("block-window", "lock the stitches there"),
    ],
)
def test_each_way_of_making_has_its_own_words(part: str, words: str) -> None:
    step = next(s for s in sampler().steps("piecing") if s.key.endswith(part))
    assert words in step.text


def test_two_triangles_are_trimmed_to_the_published_size() -> None:
    """North Hampshire Quilters, Half square and quarter square triangles: a unit that finishes
    3 in measures 3 1/2 in; so 9 in finishes from 9 1/2 in."""
    trim = next(s for s in sampler().steps("piecing") if s.key.endswith("block-sail-trim"))
    assert "Trim each unit to 9 1/2 in (24.1 cm) square" in trim.text


def test_single_pictures_stand_only_where_a_block_has_many_patches() -> None:
    book: Patchwork = sampler()
    shown = [
        b.figure.get("block")
        for s in book.manual.sections
        for b in s.blocks
        if isinstance(b, FigureBlock) and b.figure.kind == "block"
    ]
    assert shown == ["snow", "star"]
    grids = [b for b in book.section("pressing-plan").blocks if isinstance(b, FigureGrid)]
    assert len(grids) == 1


def test_slanting_shapes_are_cut_from_strips_right_side_up() -> None:
    """A parallelogram 2 in high on a 4 in base leaning 45 degrees, in an 8 in block: finished
    strip 4 in, cut 4 1/2 in. Its slanting sides lie 4/sqrt 2 = 2.828 in apart, with seams
    3.328 in, up to 3 3/8 in."""
    steps = {s.key: s.text for s in sampler(SLANT).steps("cutting")}
    water = steps["cutting-water"]
    assert "Trim one end of the strip **B** at 45 degrees" in water
    assert "every 3 3/8 in (8.6 cm), measured square to the cut" in water
    assert "right side up in a single layer" in water
    (table,) = (b for b in sampler(SLANT).section("cutting").blocks if isinstance(b, Table))
    rows = " ".join(row.cells[1] for row in table.rows if row.kind == "body")
    assert set(re.findall(r"6 parallelograms leaning (left|right)", rows)) == {"left", "right"}


def test_points_are_shifted_by_the_seam_and_told_once() -> None:
    first, second = (s for s in sampler(SLANT_PLAIN).steps("piecing") if "unit" in s.key)
    assert "cross exactly 1/4 in (6 mm) from the edge" in first.text
    assert "points shifted as for unit 1" in second.text and "exactly" not in second.text


def test_rows_carry_on_across_a_sashing_strip_that_runs_through() -> None:
    text = sampler(SLANT).text("assembling")
    assert "three blocks and two Lock brick sashing strips" in text
    assert "so that the row below carries on in line" in text


def test_patchwork_steps_can_be_reworded_and_inserted() -> None:
    book = sampler(SLANT)
    steps = {s.key: s for s in book.steps()}
    assert steps["piecing-unit-1"].text == "Sew the blue arrows, six in all."
    keys = [s.key for s in book.steps("assembling")]
    assert keys.index("assembling-own-2") == keys.index("assembling-row") + 1


def test_rows_that_lie_turned_are_told_as_they_lie() -> None:
    """Row 2 is row 1 turned about: both seams go to the pieced block, so that they lock."""
    four = "block: [four, plain, plain, four]\n    columns: 2\n    rows: 2\n"
    book = sampler(RING.replace("block: plain\n", four))
    one, two = (s.text for s in book.steps("assembling") if "For row " in s.text)
    assert re.search(r"four block and a (large )?plain block \*\*A\*\*", one)
    assert re.search(r"plain block \*\*A\*\* and a (large )?four block", two)
    toward = [re.search(r"Press the seam toward ([^.]*)\.", text) for text in (one, two)]
    assert toward[0] and toward[1] and toward[0][1] == toward[1][1]
