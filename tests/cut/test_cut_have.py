"""Cloth that is there: worked out by hand, held against published counts, cut up again.

Squares from a fat quarter, 18 x 22 in: Measurements, quiltersresources.com. The checker of
its own is `guillotine`.
"""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pytest
import reedmace
from guillotine import Sheet, inches
from helpers import SMALLEST, changed, pattern

from publish import deliver, pipeline
from publish.cut.fabric import Lettered, plan_fabric
from publish.cut.have import with_have
from publish.cut.needs import Need, plain
from publish.deliver.cloth import fabric_numbers
from publish.model.pattern import Have
from publish.words.values import Named

F = Fraction


def planned(pieces, there, width=40, directional=False):
    """Return the plan of rectangles (width, length, count) with what is there of them."""
    made = reedmace.pattern()
    fabric = replace(made.fabrics["linen"], usable_width=F(width), directional=directional)
    made = replace(made, have=tuple(Have("linen", F(w), F(h), n) for w, h, n in there))
    needs = [
        Lettered(
            chr(65 + i),
            Need(
                Named("piece"), "ground", "linen", F(w), F(h), n, plain(F(w), F(h), n, directional)
            ),
        )
        for i, (w, h, n) in enumerate(pieces)
    ]
    plan = plan_fabric(fabric, needs, made.sewing)
    return with_have(made, fabric, plan, needs)


def cut_from(there):
    """Cut one piece of cloth as `numbers.json` says; return its pieces, however they lie."""
    found = Counter()
    for one in there["sheets"]:
        for _ in range(one["count"]):
            sides = inches(there["width"]), inches(there["length"])
            sheet = Sheet(*(sides[::-1] if one["lengthwise"] else sides))
            for strip in one["strips"]:
                for _ in range(strip["count"]):
                    part = sheet.across(inches(strip["depth"]))
                    for cut in strip["cuts"]:
                        for _ in range(cut["count"]):
                            part.along(inches(cut["across"])).across(inches(cut["along"]))
                            found[cut["letter"]] += 1
    return found


@pytest.mark.parametrize(("side", "squares"), [(2, 99), (3, 42), (4, 20), (6, 9), (F(13, 2), 6)])
def test_squares_from_a_fat_quarter_that_is_there(side, squares):
    whole = planned([(side, side, squares)], [(22, 18, 1)]).have
    assert whole.rest is None and whole.bound == 0
    short = planned([(side, side, squares + 1)], [(22, 18, 1)]).have
    assert [p.count for p in short.rest.pieces] == [1]
    assert short.rest.length == side


def test_what_spares_most_is_cut_from_what_is_there():
    """Of one 20 in square and eight of 10 in, 30 in of cloth are bought (two strips of 10 in
    beside and below the square). A piece 20 in square holds the large one: then two strips
    of 10 in are left to buy; four small ones from it would leave 20 + 10."""
    made = planned([(20, 20, 1), (10, 10, 8)], [(20, 20, 1)])
    assert made.length == 30
    (used,) = made.have.used
    assert [c.letter for sheet in used.sheets for s in sheet.strips for c in s.cuts] == ["A"]
    assert made.have.rest.length == 20


def test_no_more_is_cut_into_than_is_needed():
    """Four squares of 5 in come out of one of three pieces 10 in square."""
    (used,) = planned([(5, 5, 4)], [(10, 10, 3)]).have.used
    assert (used.count, used.have.count) == (1, 3)


def test_cloth_with_a_direction_is_not_turned():
    """A piece of 4 x 9 in is no 9 x 4 in: it serves only where the print may turn."""
    assert planned([(9, 4, 1)], [(4, 9, 1)]).have.rest is None
    assert planned([(9, 4, 1)], [(4, 9, 1)], directional=True).have.rest is not None


@pytest.mark.parametrize("seed", range(12))
def test_every_piece_is_cut_once_and_no_cloth_more_often_than_it_is_there(seed):
    rng = random.Random(seed)
    pieces, there = [
        [
            (F(rng.randint(4, 40), 2), F(rng.randint(4, 40), 2), rng.randint(1, most))
            for _ in range(rng.randint(1, kinds))
        ]
        for kinds, most in ((5, 9), (3, 3))
    ]
    plan = planned(pieces, there)
    told = fabric_numbers(plan)["have"]
    held = sum(map(cut_from, told["pieces"]), Counter())
    assert all(one["used"] <= one["count"] for one in told["pieces"])
    for strip in (told["rest"] or {"strips": []})["strips"]:
        inner = [(s, strip["count"]) for x in strip["sections"] for s in x["strips"]]
        for one, times in [(strip, 1), *inner]:
            for cut in one["cuts"]:
                held[cut["letter"]] += cut["count"] * one["count"] * times
    assert held == Counter({chr(65 + i): n for i, (_, _, n) in enumerate(pieces)})
    rest = plan.have.rest
    area = sum(w * h * n for w, h, n in pieces) - sum(w * h * n for w, h, n in there)
    assert max(0, area) / 40 - F(1, 8) <= plan.have.bound <= (rest.length if rest else 0)
    assert rest is None or rest.buy <= plan.buy


LIST = "have:\n  - {fabric: linen, width: 40 in, length: 2 yd}\n"


def examined(folder, lines, text=SMALLEST):
    return pipeline.examine(pattern(folder, text + lines))


def test_the_report_says_what_is_still_to_buy(tmp_path):
    found = examined(tmp_path, LIST)
    (note,) = [n for n in found.report if n.code == "C410"]
    assert note.what.startswith("beside what is there, the Mini takes")
    assert "Pale linen" not in note.what
    assert not [n for n in found.report if n.code == "C409"]


def test_a_quilt_that_can_be_made_from_what_is_there(tmp_path):
    keys = [line.split(":")[0].strip() for line in SMALLEST.split("fabrics:\n")[1].splitlines()]
    keys = keys[: next(i for i, k in enumerate(keys) if k in ("motifs", "blocks"))]
    lines = [f"  - {{fabric: {key}, width: 40 in, length: 3 yd}}" for key in keys]
    (note,) = [
        n
        for n in examined(tmp_path, "have:\n" + "\n".join(lines) + "\n").report
        if n.code == "C410"
    ]
    assert note.what == "the Mini can be made from what is there"


def test_cloth_that_nothing_is_cut_from_is_a_finding(tmp_path):
    lines = LIST + "  - {fabric: linen, width: 1 in, length: 2 in, count: 3}\n"
    (note,) = [n for n in examined(tmp_path, lines).report if n.code == "C409"]
    assert note.place.path == "have.1" and note.severity.name == "WARNING"
    assert note.received == "1 in × 2 in"


@pytest.mark.parametrize(
    ("line", "path"),
    [
        ("{fabric: linnen, width: 3 in, length: 4 in}", "have.0.fabric"),
        ("{fabric: linen, width: 3 in}", "have.0"),
        ("{fabric: linen}", "have.0"),
        ("{fabric: linen, precut: fat quarter, length: 4 in}", "have.0"),
        ("{fabric: linen, width: 3 in, length: 4 in, count: none}", "have.0.count"),
    ],
)
def test_a_list_that_cannot_be_read_is_refused(tmp_path, line, path):
    found = examined(tmp_path, f"have:\n  - {line}\n")
    assert found.work is None
    assert any(n.place.path.startswith(path) for n in found.report)


def test_precuts_in_packets(tmp_path):
    lines = "have:\n  - {fabric: linen, precut: {squares: 10 in, count: 42}, count: 2}\n"
    found = examined(tmp_path, lines)
    (have,) = found.work.pattern.have
    assert (have.kind, have.width, have.length, have.count) == ("square", 10, 10, 84)


def test_the_booklet_and_the_numbers_tell_the_plan(tmp_path):
    work = examined(tmp_path, LIST).work
    (section,) = [s for s in work.manual.sections if s.key == "materials"]
    (table,) = [b for b in section.blocks if getattr(b, "key", "") == "at-hand"]
    assert table.rows[0].cells == (
        "**Pale linen**",
        "One piece of 40 in × 72 in (101.6 cm × 182.9 cm)",
        "Nothing",
    )
    (cuts,) = [b for b in section.blocks if getattr(b, "key", "") == "cutting-at-hand"]
    group, row = cuts.rows
    assert group.cells == ("Pale linen",)
    assert "one **C**" in row.cells[1] and "one **B**" in row.cells[1]
    numbers = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    told = numbers["sizes"]["mini"]["fabrics"]
    assert told["linen"]["have"]["rest"] is None
    assert told["linen"]["have"]["pieces"][0]["used"] == 1
    assert all(told[key]["have"] is None for key in told if key != "linen")


def test_cloth_of_a_fabric_sold_ready_cut_spares_some_of_it(tmp_path):
    text = changed("{name: Deep moss,", "{sold_as: fat quarter, name: Deep moss,", SMALLEST)
    plan = examined(tmp_path, "", text).work.plans["mini"].fabrics["moss"]
    lines = "have:\n  - {fabric: moss, precut: fat quarter}\n"
    after = examined(tmp_path, lines, text).work.plans["mini"].fabrics["moss"]
    left = after.have.rest.precut.used if after.have.rest else 0
    assert left == plan.precut.used - 1
