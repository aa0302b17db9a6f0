"""The words of patterns that went through the real stages before this one."""

from __future__ import annotations

import re
from pathlib import Path

import demos
import pytest
from helpers import DRAWING, SMALLEST
from rehearsed import write
from write_cases import section_text, steps

from publish import cut, draft, grade, read
from publish.model.cutplan import CutPlan
from publish.model.draft import Draft
from publish.model.pattern import Pattern
from publish.model.size import Size
from publish.model.words import Manual, Step
from publish.notes import Severity
from publish.proof import check
from publish.sew import sew

HEAD = SMALLEST.partition("sizes:\n")[0]
PIECED = (
    HEAD.replace("{ground: linen,", "{ground: {rows: [[linen, moss], [moss, linen]]},")
    .replace("fabric: moss}", "fabric: rush}")
    .replace("motifs:\n", '  rush: {name: Rush brown, colour: "#6a4a2a"}\nmotifs:\n')
)
PATTERNS = {
    "smallest": SMALLEST,
    "fusible": HEAD.replace("folds: 8,", "folds: 8, method: fusible,")
    + "sizes:\n  mini: {block_size: 16 in, motif_size: 14 in}\n",
    "prepared edge, mitred, bias": HEAD.replace("folds: 8,", "folds: 8, method: prepared edge,")
    + "binding: {cut: bias}\n"
    "sizes:\n  wall: {block_size: 16 in, motif_size: 14 in, columns: 2, rows: 3,"
    " borders: [{width: 3 in, fabric: moss, corners: mitred}], sleeve: 4 in}\n",
    "pieced": PIECED + "sizes:\n  throw: {block_size: 18 in, motif_size: 15 in, columns: 3,"
    " rows: 2, borders: [{width: 1 in, fabric: rush}, {width: 4 in, fabric: linen}]}\n",
    "pillows": HEAD + "sizes:\n"
    "  four: {finish: pillow, block_size: 11 in, motif_size: 10 in, columns: 2, rows: 2,"
    " pillow: {form: 23 in}}\n"
    "  framed: {finish: pillow, block_size: 15 in, motif_size: 13 in,"
    " borders: [{width: 2 in, fabric: moss}], pillow: {form: 20 in, back: zip}}\n",
}
Made = tuple[Pattern, dict[str, Size], dict[str, Draft], dict[str, CutPlan], Manual]


def through(path: Path) -> Made:
    """Run a pattern through reading, grading, drafting, cutting and writing."""
    pattern, notes, _ = read.load(path)
    assert pattern is not None, notes
    sizes: dict[str, Size] = {}
    drafts: dict[str, Draft] = {}
    for key in pattern.sizes:
        size, _ = grade.grade(pattern, key)
        assert size is not None
        drafted, _ = draft.draft(pattern, size)
        assert drafted is not None
        sizes[key], drafts[key] = size, drafted
    plans, notes = cut.cut(pattern, sizes, drafts)
    assert not [n for n in notes if n.severity is Severity.ERROR]
    drafts = cut.construct(pattern, sizes, drafts, plans)
    book, notes = write(pattern, sizes, drafts, plans)
    assert notes == () or {n.code for n in notes} <= {"W504", "W505"}
    return pattern, sizes, drafts, plans, book


def demo() -> Made:
    work = demos.demo("samphire")
    assert work.manual is not None
    return work.pattern, work.sizes, work.drafts, dict(work.plans), work.manual


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Made]:
    """Return every pattern of this file, put through the stages once."""
    found = {"samphire": demo()}
    for name, text in PATTERNS.items():
        folder = tmp_path_factory.mktemp("pattern")
        (folder / "bulrush.svg").write_text(DRAWING, encoding="utf-8")
        (folder / "pattern.yaml").write_text(text, encoding="utf-8")
        found[name] = through(folder / "pattern.yaml")
    return found


every_pattern = pytest.mark.parametrize("name", ["samphire", *PATTERNS])


@every_pattern
def test_nothing_that_proof_reads_in_the_words_is_wrong(made: dict[str, Made], name: str) -> None:
    """Lengths that nothing computed, wrong metric, unexplained short forms: P86x."""
    making, _ = sew(*made[name][:4])
    notes = [n for n in check(*made[name], making) if n.code.startswith("P86")]
    wrong = [f"{n.what}: {n.expected}" for n in notes]
    assert wrong == []


@every_pattern
def test_everything_can_be_made(made: dict[str, Made], name: str) -> None:
    assert [n.what for n in sew(*made[name][:4])[1]] == []


@every_pattern
def test_every_piece_is_cut_and_taken_up(made: dict[str, Made], name: str) -> None:
    _, _, _, plans, book = made[name]
    cutting = " ".join(
        t for s in book.sections if s.key.startswith("cutting") for t in section_text(s)
    )
    told = " ".join(
        st.text for s in book.sections if not s.key.startswith("cutting") for st in steps(s)
    )
    for plan in plans.values():
        for piece in plan.pieces:
            assert cutting.count(f"**{piece.letter}**") >= 2, piece
            assert f"**{piece.letter}**" in told, piece


@every_pattern
def test_text_has_no_slips(made: dict[str, Made], name: str) -> None:
    for part in made[name][4].sections:
        for text in section_text(part):
            assert not re.search(r"None|  |[{}<>|]| [,.;:!?]|\.\.|::", text), text
            assert text.count("**") % 2 == 0


def found_step(book: Manual, key: str) -> Step:
    return {s.key: s for part in book.sections for s in steps(part)}[key]


def test_the_demo_names_what_it_is_made_of(made: dict[str, Made]) -> None:
    book = made["samphire"][4]
    last = steps(next(p for p in book.sections if p.key == "folding"))[-1]
    assert "eight layers" in last.right and "on the straight grain" in last.right
    assert "Make nine." in found_step(book, "piecing-ground-quartered").text
    assert "Make 18." in found_step(book, "piecing-half-ground").text
    assert "creases in half" in found_step(book, "placing-align").text


def test_sewn_grounds_measure_what_their_pieces_give(made: dict[str, Made]) -> None:
    """Cut 9 + 1/2 + 1/2 twice, less a seam of 1/2: 19 1/2 in, the 18 in block with its
    seams and 1 in to trim."""
    right = found_step(made["samphire"][4], "piecing-ground-quartered").right
    assert "19 1/2 in (49.5 cm) square" in right


def test_pillow_blocks_keep_the_closing_seam_at_the_edge(made: dict[str, Made]) -> None:
    """Blocks of 11 in meet in 1/4 in seams; the cover closes with 1/2 in: 22 in and 1 in."""
    book = made["pillows"][4]
    text = found_step(book, "applique-trim-four").text
    assert "11 in (27.9 cm) on every side" in text
    assert "1/4 in (6 mm) outside the line where a side meets another block" in text
    assert "1/2 in (13 mm) outside it at the edge of the cover" in text
    top = found_step(book, "assembling-top").right
    assert "23 in (58.4 cm) square" in top
    assert "23 in (58.4 cm) square for the **Four**" in found_step(book, "pillow-trim").text


def test_a_framed_pillow_grows_to_its_front(made: dict[str, Made]) -> None:
    """15 in and 2 in borders make 19; the closing seam of 1/2 in all round, 20 in."""
    ends = found_step(made["pillows"][4], "borders-ends-1")
    assert "20 in (50.8 cm) square" in ends.right
    back = found_step(made["pillows"][4], "pillow-zip").text
    assert "21 in × 20 in" in back and "1/2 in (13 mm) seam" in back
