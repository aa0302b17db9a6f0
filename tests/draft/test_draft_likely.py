"""What is named as the cause when a motif falls apart: the slip that a hand makes.

No source: each drawing is sound but for one slip put into it.
"""

import math
from pathlib import Path

import pytest

from publish import draft, grade, read

PATTERN = """
title: Osier slip
fabrics: {{linen: {{name: Linen, colour: "#f0e9d9"}}, green: {{name: Green, colour: "#2f6152"}}}}
motifs: {{leaf: {{drawing: leaf.svg, folds: {folds}, fabric: green, method: fusible}}}}
blocks: {{a: {{ground: linen, motif: leaf}}}}
backing: {{fabric: linen}}
binding: {{fabric: green}}
sizes: {{mini: {{block: a, columns: 1, rows: 1, block_size: 18 in, motif_size: 15 in}}}}
"""


def leaf(folds):
    """A shape from the first fold to the last of so many, in the drawing's units."""
    turn = 2 * math.pi / folds
    last = [(0.8 * 96, turn), (14, turn)]
    points = [(12, 0), (96, 0), (80, 14), *((r * math.cos(a), r * math.sin(a)) for r, a in last)]
    return '<polygon points="' + " ".join(f"{x:.4f},{y:.4f}" for x, y in points) + '"/>'


def notes(folder: Path, body: str, folds: int):
    (folder / "leaf.svg").write_text(
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200">{body}</svg>'
    )
    (folder / "pattern.yaml").write_text(PATTERN.format(folds=folds))
    pattern, told, _ = read.load(folder)
    assert pattern is not None, told
    size, _ = grade.grade(pattern, "mini")
    assert size is not None
    return draft.draft(pattern, size)[1]


@pytest.mark.parametrize("folds", [4, 6, 8, 12, 16])
def test_sound_leaf_is_silent(tmp_path, folds):
    assert not [n for n in notes(tmp_path, leaf(folds), folds) if n.code in ("D315", "D330")]


def test_stray_dot_is_named(tmp_path):
    body = leaf(16) + '<circle cx="140" cy="10" r="0.3"/>'
    (found,) = [n for n in notes(tmp_path, body, 16) if n.code == "D330"]
    assert "stray dot" in found.help and "pieces:" not in found.help


@pytest.mark.parametrize(("drawn", "said"), [(16, 8), (16, 6), (12, 8), (8, 4), (12, 4)])
def test_wedge_of_other_folds_is_named(tmp_path, drawn, said):
    (found,) = [n for n in notes(tmp_path, leaf(drawn), said) if n.code == "D330"]
    assert f"set `folds: {drawn}`" in found.help


def test_touching_one_fold_alone_is_still_told(tmp_path):
    body = '<polygon points="12,0 96,0 80,14"/>'
    (found,) = [n for n in notes(tmp_path, body, 8) if n.code == "D330"]
    assert "does not touch the single fold" in found.help


@pytest.mark.parametrize("shift", [0, 0.2])
def test_outline_drawn_twice_is_named(tmp_path, shift):
    body = leaf(8) + f'<g transform="translate({shift} {shift / 2})">{leaf(8)}</g>'
    assert "D315" in [n.code for n in notes(tmp_path, body, 8)]


def test_ring_that_can_be_sewn_is_not_drawn_twice(tmp_path):
    """A ring 1/2 in wide in a motif of 15 in."""
    ring = '<circle cx="0" cy="0" r="50"/><circle cx="0" cy="0" r="46.7"/>'
    assert "D315" not in [n.code for n in notes(tmp_path, ring, 8)]
