"""What is told to be made is what is used, and measures what is said, for any top.

Recounted from the words and the plan alone: units are counted where later steps take them,
pieces where steps lay them out, and sizes are added up from the cut pieces as they are told,
less two seams of 1/4 in at each join (Teaching handout, Lesson 1: three 3 1/2 in squares sewn
in a row are 9 1/2 in). Common practice, no source: an edge may be eased by 1/16 in.
"""

from __future__ import annotations

import re
import tempfile
from collections import Counter
from fractions import Fraction
from functools import cache
from pathlib import Path

import pytest
from helpers import DRAWING
from rehearsed import write

from publish import cut, draft, grade, read
from publish.model.words import Steps
from publish.read import SMALLEST

HEAD = """
title: Osier heap
fabrics:
  mist: {name: Mist, colour: "#ece5d6"}
  water: {name: Water, colour: "#2f4a5c"}
  brick: {name: Brick, colour: "#a4553f"}
backing: {fabric: mist}
"""
DARK = "fabrics: {dark: water, light: mist}"
STAR = "fabrics: {star: water, background: mist, centre: brick}"
BLOCKS = {
    "nine": f"traditional: nine patch, {DARK}",
    "four": f"traditional: four patch, {DARK}",
    "sail": f"traditional: half-square triangle, {DARK}",
    "shoo": "traditional: shoofly, fabrics: {wings: water, centre: brick, background: mist}",
    "cabin": "traditional: log cabin, fabrics: {centre: brick, light: mist, dark: water}",
    "star": f"traditional: sawtooth star, {STAR}",
    "ohio": f"traditional: ohio star, {STAR}",
}
PILLOW = "finish: pillow, pillow: {form: SIDE, fabric: mist}"
TOPS = {
    "nine turned": ("nine", "columns: 3, rows: 3, block_size: 9 in, turns: [0, 90]"),
    "cabin turned": ("cabin", "columns: 2, rows: 2, block_size: 7 in, turns: [0, 90]"),
    "star turned": ("star", "columns: 3, rows: 2, block_size: 8 in, turns: [0, 180, 90]"),
    "shoofly turned": ("shoo", "columns: 2, rows: 2, block_size: 9 in, turns: [0, 90]"),
    "nine of 4 in": ("nine", "columns: 2, rows: 2, block_size: 4 in"),
    "nine of 8 in": ("nine", "columns: 1, rows: 4, block_size: 8 in"),
    "nine of 10 in": ("nine", "columns: 3, rows: 3, block_size: 10 in"),
    "nine of 9 7/16 in": ("nine", "columns: 2, rows: 2, block_size: 9 7/16 in"),
    "ohio of 8 in": ("ohio", "columns: 2, rows: 2, block_size: 8 in"),
    "four in a row": ("nine", "columns: 4, rows: 1, block_size: 6 in"),
    "six in a column": ("sail", "columns: 1, rows: 6, block_size: 6 in"),
    "nine as a pillow": ("nine", f"{PILLOW}, columns: 1, rows: 1, block_size: 18 in"),
    "star as a pillow": ("star", f"{PILLOW}, columns: 2, rows: 2, block_size: 9 in"),
    "nine by nine as a pillow": ("nine", f"{PILLOW}, columns: 3, rows: 3, block_size: 6 in"),
    "four as a pillow": ("four", f"{PILLOW}, columns: 2, rows: 2, block_size: 9 in"),
}
WORDS = (
    "no",
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
SEAM = Fraction(1, 4)
EASED = Fraction(1, 16)


def text_of(name: str) -> str:
    """Return a pattern with one kind of block."""
    block, size = TOPS[name]
    text = f"{HEAD}blocks:\n  {block}: {{{BLOCKS[block]}}}\n"
    end = "" if "pillow" in size else "binding: {fabric: brick}\n"
    return f"{text}{end}sizes:\n  one: {{block: {block}, {size.replace('SIDE', '18 in')}}}\n"


class Told:
    """The steps that sew one top, and what was cut for them."""

    def __init__(self, folder: Path, text: str) -> None:
        path = folder / "pattern.yaml"
        path.write_text(text, encoding="utf-8")
        pattern, notes, _ = read.load(path)
        assert pattern is not None, notes
        graded, _ = grade.grade(pattern, "one")
        assert graded is not None
        drafted, _ = draft.draft(pattern, graded)
        assert drafted is not None
        sizes, drafts = {"one": graded}, {"one": drafted}
        plans, _ = cut.cut(pattern, sizes, drafts)
        drafts = cut.construct(pattern, sizes, drafts, plans)
        manual, _ = write(pattern, sizes, drafts, plans)
        self.size, self.pieces = graded, plans["one"].pieces
        steps = [
            step
            for section in manual.sections
            if section.key.startswith(("piecing", "assembling"))
            for block in section.blocks
            if isinstance(block, Steps)
            for step in block.items
        ]
        self.pieced = [s for s in steps if s.key.startswith("piecing")]
        self.joined = [s for s in steps if s.key.startswith("assembling") and "sew" in s.text]
        self.words = "\n".join(f"{s.text}\n{s.right}" for s in steps)


def number(word: str) -> int:
    return int(word) if word.isdigit() else 1 if word in ("a", "an", "the") else WORDS.index(word)


def made(text: str) -> int:
    found = re.search(r"Make (\w+)\.", text)
    return number(found[1]) if found else 1


def name_of(text: str) -> str:
    """Return what a step makes: `unit 2`, `block 3`, `block`."""
    found = re.match(r"For (?:the )?(?:\*\*)?([a-z ]*?(?:unit|block)(?: \d+)?)\b", text)
    return found[1] if found else "block"


def taken(text: str) -> Counter[str]:
    """Return what one step lays out: units and blocks by name, pieces by letter."""
    laid = re.split(r"lay out |Lay out ", text)[-1].split(" side by side")[0]
    laid = re.split(r" one below| along | as in | together", laid)[0]
    laid = laid.split(", sew ")[-1]
    found: Counter[str] = Counter()
    for part in re.split(r", | and ", laid):
        letter = re.search(r"\*\*([A-Z]{1,2})\*\*", part)
        named = re.search(r"(?:(\w+) of )?((?:unit|block) \d+)", part)
        plain = re.match(r"(\w+) blocks?$", part)
        if letter:
            found[letter[1]] += number(part.split()[0])
        elif named:
            found[named[2]] += number(named[1] or "one")
        elif plain:
            found["block"] += number(plain[1])
    return found


every_top = pytest.mark.parametrize("name", TOPS)


@cache
def told_of(name: str) -> Told:
    with tempfile.TemporaryDirectory() as folder:
        return Told(Path(folder), text_of(name))


@pytest.fixture
def told(name: str) -> Told:
    return told_of(name)


@every_top
def test_every_heap_is_used_up(told: Told) -> None:
    """Units are made as often as later steps take them, blocks as often as the top has."""
    use: Counter[str] = Counter()
    make = {name_of(s.text): made(s.text) for s in told.pieced}
    for step in told.pieced:
        for what, count in taken(step.text).items():
            use[what] += count * made(step.text)
    blocks = {what: count for what, count in make.items() if what.startswith("block")}
    assert sum(blocks.values()) == told.size.block_count
    units = {what: count for what, count in make.items() if what.startswith("unit")}
    assert units == {what: count for what, count in use.items() if what.startswith("unit")}


@every_top
def test_every_piece_that_is_cut_is_laid_out_once(told: Told) -> None:
    use: Counter[str] = Counter()
    for step in told.pieced:
        for what, count in taken(step.text).items():
            use[what] += count * made(step.text)
    patches = {p.letter: p.count * p.yields for p in told.pieces if p.purpose == "ground"}
    letters = {what: count for what, count in use.items() if what.isupper()}
    assert letters.keys() == patches.keys()
    for letter, count in letters.items():  # a square cut twice may leave triangles over
        spare = patches[letter] - count
        piece = next(p for p in told.pieces if p.letter == letter)
        assert 0 <= spare < piece.yields


def measured(text: str) -> tuple[Fraction, Fraction] | None:
    one = r"((?:\d+ )?\d+/\d+|\d+) in"
    found = re.search(rf"measures {one}(?: × {one})?", text)
    if found is None:
        return None
    sides = [sum(map(Fraction, side.split())) for side in found.groups() if side]
    return sides[0], sides[-1]  # type: ignore[return-value]


@every_top
def test_no_size_is_told_that_no_ruler_shows(told: Told) -> None:
    fractions = {int(part) for part in re.findall(r"\d+/(\d+)", told.words)}
    assert fractions <= {2, 4, 8, 16}


@every_top
def test_sizes_add_up_from_the_cut_pieces(told: Told) -> None:
    """A unit in a row is the sum of what it is sewn from, unless its step trims it."""
    sizes: dict[str, tuple[Fraction, Fraction]] = {
        p.letter: (p.width, p.length) for p in told.pieces if p.shape == "rectangle"
    }
    checked = 0
    for step in told.pieced:
        size = measured(step.right)
        parts = list(taken(step.text).elements())
        axis = 0 if "side by side" in step.text else 1 if "one below" in step.text else None
        if size is not None and axis is not None and all(p in sizes for p in parts):
            # Each part lies either way round: some choice of the ways gives the size.
            sums = {-2 * SEAM * (len(parts) - 1)}
            for part in parts:
                sums = {s + side for s in sums for side in sizes[part]}
            if " trim " in step.text:
                assert max(sums) > size[axis]
            else:
                assert size[axis] in sums
                assert all(size[1 - axis] in sizes[part] for part in parts)
            checked += 1
        if size is not None:
            sizes[name_of(step.text)] = size
    assert checked or told.size.block_count == 6


@every_top
def test_blocks_and_rows_measure_what_the_top_asks_for(told: Told) -> None:
    """Finished sides and an allowance at both ends; on a pillow's outside its own."""
    size = told.size
    outer = size.pillow.seam if size.pillow else SEAM
    side = size.block_side
    edges = {side + 2 * SEAM, side + SEAM + outer, side + 2 * outer}
    for step in told.pieced:
        if name_of(step.text).startswith("block"):
            found = measured(step.right)
            assert found is not None
            assert all(min(abs(s - e) for e in edges) <= EASED for s in found)
    whole = {size.width + 2 * outer, size.height + 2 * outer}
    if told.joined and (last := measured(told.joined[-1].right)):
        assert all(min(abs(s - e) for e in whole) <= EASED * size.columns for s in last)


@every_top
def test_nothing_goes_by_turns_that_does_not(told: Told) -> None:
    for text in re.findall(r"sew ([^.]*) by turns", told.words):
        assert len(set(re.findall(r"block \d+|\*\*[A-Z]+\*\*|[a-z]+ blocks?", text))) > 1


def test_a_pieced_ground_measures_what_its_squares_give(tmp_path: Path) -> None:
    """Nine squares of 5 in under a motif, 15 in finished: with a seam and half of an inch for
    trimming at each end the ground is 16 1/2 in square, its middle row 5 1/2 in high."""
    (tmp_path / "bulrush.svg").write_text(DRAWING, encoding="utf-8")
    grid = "{rows: [[linen, moss, linen], [moss, linen, moss], [linen, moss, linen]]}"
    text = SMALLEST.replace("ground: linen", f"ground: {grid}").replace("mini:", "one:")
    told = Told(tmp_path, text.replace("16 in, motif_size: 14 in", "15 in, motif_size: 13 in"))
    sizes = {measured(s.right) for s in told.pieced}
    half, whole = Fraction(11, 2), Fraction(33, 2)
    assert sizes == {(whole, half), (whole, Fraction(6)), (whole, whole)}


def test_a_block_in_two_sizes_is_two_blocks(tmp_path: Path) -> None:
    """A 12 in block and twenty of 3 in round it: both are made, under names of their own."""
    text = f"{HEAD}blocks:\n  nine: {{{BLOCKS['nine']}}}\nbinding: {{fabric: brick}}\n"
    size = "one: {block: nine, columns: 1, rows: 1, block_size: 12 in, rounds: [ROUND]}"
    told = Told(
        tmp_path, f"{text}sizes:\n  {size}\n".replace("ROUND", "{blocks: nine, block_size: 3 in}")
    )
    made_ = {
        m[1]: made(s.text)
        for s in told.pieced
        if (m := re.match(r"For the (small block|large block)", s.text))
    }
    assert made_ == {"small block": 20, "large block": 1}


def test_rows_alternate_only_where_they_do(tmp_path: Path) -> None:
    """Two plain blocks by turns, four of one kind together, three kinds one by one."""
    plain = {"p": "mist", "q": "water", "r": "brick"}
    lines = "".join(f"  {key}: {{ground: {cloth}}}\n" for key, cloth in plain.items())
    head = f"{HEAD}blocks:\n{lines}"
    size = "{block: BLOCKS, columns: 4, rows: 1, block_size: 6 in}"
    sizes = f"binding: {{fabric: brick}}\nsizes:\n  one: {size}\n"
    said = {}
    for blocks in ("p", "[p, q]", "[p, q, r, p]", "[p, p, q, q]"):
        told = Told(tmp_path, head + sizes.replace("BLOCKS", blocks))
        (step,) = told.joined
        said[blocks] = step.text.partition(" together")[0].partition("sew ")[2]
    assert re.fullmatch(r"four (p )?blocks \*\*[A-Z]\*\*", said["p"])
    assert said["[p, q]"].endswith("by turns, beginning with a p block **A**,")
    assert "by turns" not in said["[p, q, r, p]"] + said["[p, p, q, q]"]
    assert said["[p, p, q, q]"].startswith("two p blocks")
