"""Tops are laid from the cloth that is cut: the pieces make what the units say.

Sewing is geometry: two squares of 3 1/2 in make 6 1/2 by 3 1/2 at a seam of 1/4 in, by hand.
"""

import copy
import json

import pytest
import yaml
from helpers import PROJECTS
from independent import patterns
from shapely.geometry import box

from oracle import cloth
from publish import deliver
from publish.pipeline import examine

SEEDS = [s for s in patterns.SEEDS if patterns.kind_of(s).__name__ != "on_point"]


@pytest.fixture(scope="module")
def numbers_of(tmp_path_factory):
    """Return a function from a pattern's path or seed to its numbers, each made once."""
    known = {}

    def of(pattern):
        if pattern not in known:
            path = pattern
            if isinstance(pattern, int):
                path = tmp_path_factory.mktemp("seed") / "pattern.yaml"
                text = yaml.safe_dump(patterns.pattern(pattern), sort_keys=False)
                path.write_text(text, encoding="utf-8")
            work = examine(path).work
            made = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
            known[pattern] = json.loads(json.dumps(made))
        return copy.deepcopy(known[pattern])

    return of


def laid(numbers):
    """Return what does not fit, of every size that is set straight."""
    return [
        f"{key}: {fault}"
        for key, size in numbers["sizes"].items()
        if size["setting"]["kind"] == "straight"
        for fault in cloth.faults(numbers, key)
    ]


@pytest.mark.parametrize("demo", ["samphire", "towpath", "heronry"])
def test_demo_is_laid(demo, numbers_of):
    assert laid(numbers_of(PROJECTS / demo / "pattern.yaml")) == []


@pytest.mark.parametrize("seed", SEEDS[:6])
def test_random_top_is_laid(seed, numbers_of):
    assert laid(numbers_of(seed)) == []


@pytest.mark.thorough
@pytest.mark.parametrize("seed", SEEDS[6:])
def test_every_random_top_is_laid(seed, numbers_of):
    assert laid(numbers_of(seed)) == []


def test_two_squares_are_sewn():
    assert cloth.sewn(box(0, 0, 3.5, 3.5), box(0, 0, 3.5, 3.5), 0.25).bounds == pytest.approx(
        (0, 0, 6.5, 3.5), abs=1e-4
    )


def test_two_strips_are_sewn_one_below_the_other():
    below = cloth.sewn(box(0, 0, 6.5, 2.5), box(0, 0, 6.5, 3.5), 0.25, down=True)
    assert below.bounds == pytest.approx((0, 0, 6.5, 5.5), abs=1e-4)


@pytest.mark.parametrize("what", ["width", "length"])
def test_piece_cut_too_small_is_found(what, numbers_of):
    """A border cut a quarter of an inch short does not reach."""
    numbers = numbers_of(PROJECTS / "samphire" / "pattern.yaml")
    size = numbers["sizes"]["mini"]
    piece = next(p for p in size["pieces"] if p["purpose"] == "border 1 side")
    assert (piece["width"], piece["length"]) == ("2 1/2", "16 1/2")
    piece[what] = {"width": "2 1/4", "length": "16 1/4"}[what]
    assert cloth.faults(numbers, "mini")


def test_unit_made_too_often_is_found(numbers_of):
    """A row too many has no place in the top."""
    numbers = numbers_of(PROJECTS / "samphire" / "pattern.yaml")
    row = next(u for u in numbers["sizes"]["throw"]["units"] if u["kind"] == "row")
    row["count"] += 1
    assert cloth.faults(numbers, "throw") == ["no parts make the units that are told"]
