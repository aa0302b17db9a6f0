"""Every number with a unit in the text is one that a stage computed or a named practice."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterator, Mapping
from fractions import Fraction

import pytest
from shapely.geometry.base import BaseGeometry
from write_cases import CASES, made_for, manual, strings, tables
from write_made import Made

from publish.measures import INCHES
from publish.model import trade
from publish.operations.rehearsal import lengths_told
from publish.sew import fusing, placing, quilting, sew
from publish.sew.pillow import BASTING_STITCH
from publish.units import INCH_IN_MM, YARD, parse_number, round_near, round_up
from publish.write import practice
from publish.write.practice import Practice

every_case = pytest.mark.parametrize("name", CASES)
NUMBER = r"(?<![\d/.])((?:\d+ )?\d+/\d+|\d+(?:\.\d+)?)"
METRE = 1000 / INCH_IN_MM


def fractions_in(value: object) -> Iterator[Fraction]:
    """Yield every exact number inside a value of the model."""
    if isinstance(value, Fraction):
        yield value
    elif isinstance(value, Mapping):
        for item in value.values():
            yield from fractions_in(item)
    elif isinstance(value, tuple | list):
        for item in value:
            yield from fractions_in(item)
    elif dataclasses.is_dataclass(value) and not isinstance(value, BaseGeometry):
        for field in dataclasses.fields(value):
            yield from fractions_in(getattr(value, field.name))


def constants() -> set[Fraction]:
    return {p.value for p in vars(practice).values() if isinstance(p, Practice)}


def units(unit) -> Iterator:
    yield unit
    for part in unit.parts:
        yield from units(part)


def settled(made: Made) -> set[Fraction]:
    """Return the lengths in inches that the text may say, with the rules that give them.

    - whatever the model holds;
    - a side of a unit with its seams: finished + 2 seams (teaching handout, Lesson 1:
      Allowing for seam allowances: 3 -> 3 1/2);
    - a ground before it is trimmed: half its margin more at each outer edge;
    - what an operation tells: read off the table, or an operand;
    - the top between two borders; a pillow's front; half a hem; the room round a motif;
    - a sleeve hemmed twice by a seam at both ends.
    """
    seam = made.pattern.sewing.seam
    found = {*fractions_in(made.pattern.sewing), *constants()}
    found |= {m.turn_under for m in made.pattern.motifs.values()}
    found |= {Fraction(n) for n in (1, 2, 6, 8, 10, 24)} | {1 + 2 * seam}
    for key, size in made.sizes.items():
        draft, plan = made.drafts[key], made.plans[key]
        found |= {*fractions_in(size), *fractions_in(plan)}
        if plan.sleeve is not None:
            found.add(max(plan.sleeve.width, plan.sleeve.length) - 4 * seam)
        found |= packages(plan)
        for unit in units(draft.assembly):
            for side in (unit.width, unit.height):
                margin = made.pattern.sewing.ground_margin
                found |= {side, side + 2 * seam, side + 2 * seam + margin}
                found.add(side + 2 * seam + margin / 2)
        if size.pillow is not None:
            found |= {size.width + 2 * size.pillow.seam, size.pillow.hem / 2}
        if size.motif_span is not None:
            found.add((size.block_side - size.motif_span) / 2)
    making, _ = sew(made.pattern, made.sizes, made.drafts, made.plans)
    return found | {n for m in making.sizes.values() for n in lengths_told(m.moments)}


def packages(plan) -> set[Fraction]:
    package = plan.batting.package if plan.batting is not None else None
    return {package.short, package.long} if package is not None else set()


def inches(text: str) -> list[Fraction]:
    return [parse_number(n) for n in re.findall(NUMBER + r" in\b", text)]


@every_case
def test_every_length_in_inches_is_settled(name: str) -> None:
    known = settled(made_for(name))
    for where, text in strings(manual(name)):
        for value in inches(text):
            assert value in known, (where, text)


@every_case
def test_every_metric_length_is_the_inches_before_it(name: str) -> None:
    """1 in = 25.4 mm exactly; the places shown decide the rounding, halves up."""
    for where, text in strings(manual(name)):
        if where == "glossary":
            continue
        groups = re.findall(rf"{NUMBER} in(?: × {NUMBER} in)? \(([^)]*)\)", text)
        for first, second, metric in groups:
            said = re.findall(r"([\d.]+) (mm|cm)", metric)
            exact = [parse_number(n) for n in (first, second) if n]
            assert len(said) == len(exact), text
            for value, (shown, unit) in zip(exact, said, strict=True):
                step = Fraction(1, 10 ** len(shown.partition(".")[2]))
                scale = INCH_IN_MM / {"mm": 1, "cm": 10}[unit]
                assert round_near(value * scale, step) == Fraction(shown), (where, text)
        loose = re.sub(rf"{NUMBER} in(?: × {NUMBER} in)? \([^)]*\)", "", text)
        for shown, unit in re.findall(r"([\d.]+) (mm|cm)\b", loose):
            stitches = {
                practice.PIECING_STITCH.value,
                BASTING_STITCH,
                INCHES.checks[1],
                quilting.STITCH,
                fusing.ZIGZAG_LENGTH,
                fusing.ZIGZAG_WIDTH,
            }
            scale = INCH_IN_MM / {"mm": 1, "cm": 10}[unit]
            assert any(p * scale == Fraction(shown) for p in stitches), (where, text)


@every_case
def test_the_metric_table_is_exact(name: str) -> None:
    for row in tables(manual(name))["metric"].rows:
        for at in (0, 2, 4):
            if row.cells[at]:
                shown, unit = row.cells[at + 1].split(" ")
                step = Fraction(1, 10 ** len(shown.partition(".")[2]))
                scale = INCH_IN_MM / {"mm": 1, "cm": 10}[unit]
                assert round_near(parse_number(row.cells[at]) * scale, step) == Fraction(shown)


def purchases(made: Made) -> set[tuple[Fraction, Fraction]]:
    """Return each length to buy in yards with its metres, as the plan rounds them, and
    what its choices say."""
    pairs = {
        (p.buy / YARD, p.buy_metric / METRE)
        for plan in made.plans.values()
        for p in plan.fabrics.values()
    }
    said = [t for plan in made.plans.values() for p in plan.fabrics.values() for t in p.choices]
    pairs |= {
        (parse_number(y), Fraction(m))
        for text in said
        for y, m in re.findall(rf"{NUMBER} yd \(([\d.]+) m\)", text)
    }
    sewing = made.pattern.sewing
    return pairs | {(sewing.purchase_step / YARD, sewing.metric_step / METRE)}


def long_runs(made: Made) -> set[tuple[Fraction, Fraction]]:
    """Return thread, rounded up, and runs of stitching, to the nearest quarter yard."""
    found = set()
    for key, draft in made.drafts.items():
        thread = made.plans[key].thread
        for length in (thread.piecing, thread.applique, thread.quilting, thread.binding):
            found.add((round_up(length, YARD) / YARD, round_up(length, METRE) / METRE))
        lines = [told(Fraction(q.length)) for q in draft.quilting if q.length]
        around = sum(draft.motifs[p.motif].perimeter for p in draft.placements)
        found |= {*lines, told(Fraction(around))}
        found.add((sum(y for y, _ in lines), sum(m for _, m in lines)))
    return found


def told(length: Fraction) -> tuple[Fraction, Fraction]:
    """Return a run of stitching in quarter yards and tenths of a metre, at least one."""
    quarter = max(Fraction(1, 4), round_near(length / YARD, Fraction(1, 4)))
    return quarter, max(Fraction(1, 10), round_near(length / METRE, Fraction(1, 10)))


@every_case
def test_every_total_is_the_sum_of_the_rows_above_it(name: str) -> None:
    """In each unit that is printed, whatever the rows were rounded to."""
    for key, table in tables(manual(name)).items():
        above: list[tuple[str, ...]] = []
        for row in table.rows:
            if row.kind == "total":
                for column, cell in enumerate(row.cells):
                    rows = [figures(cells[column]) for cells in above if figures(cells[column])]
                    total = figures(cell)
                    assert not total or total == [sum(c) for c in zip(*rows, strict=True)], key
            above = [*above, row.cells] if row.kind == "body" else []


def figures(cell: str) -> list[Fraction]:
    """Return the numbers of a cell: `2 1/4 yd (2.1 m)` is 2 1/4 and 2.1."""
    return [parse_number(n) for n in re.findall(r"\d+ \d+/\d+|\d+/\d+|\d+\.\d+|\d+", cell)]


BOBBIN = (Fraction(64), Fraction(59))
"""Yards, and whole metres, of thread on a full bobbin: common practice, no source."""


@every_case
def test_every_length_in_yards_is_a_purchase_a_thread_or_a_run(name: str) -> None:
    known = purchases(made_for(name)) | long_runs(made_for(name)) | {BOBBIN}
    told = 0
    for where, text in strings(manual(name)):
        for yards, metres in re.findall(rf"{NUMBER} yd \(([\d.]+) m\)", text):
            told += 1
            assert (parse_number(yards), Fraction(metres)) in known, (where, text)
        loose = re.sub(rf"{NUMBER} yd \([\d.]+ m\)", "", text)
        assert not re.search(r"\d yd\b", loose), (where, text)
        for metres in re.findall(r"(\d+) m\b", loose):
            assert Fraction(metres) == practice.SPOOL_METRES.value, (where, text)
    assert told > 3


@every_case
def test_the_table_of_materials_is_the_plans(name: str) -> None:
    made = made_for(name)
    rows = {row.fabric: row.cells[1:] for row in tables(manual(name))["fabric"].rows}
    for at, (key, plan) in enumerate(made.plans.items()):
        assert key in made.sizes
        for fabric, bought in plan.fabrics.items():
            cell = rows[fabric][at].split("; or ")[-1]  # ready cut, the length is what would do
            yards = re.match(NUMBER, cell)
            assert yards is not None and parse_number(yards[0]) * YARD == bought.buy


@every_case
def test_cut_sizes_and_counts_are_the_plans(name: str) -> None:
    for key, plan in made_for(name).plans.items():
        rows = {r.cells[0].strip("*"): r.cells for r in tables(manual(name))[f"cutting-{key}"].rows}
        for piece in plan.pieces:
            cells = rows[piece.letter]
            sides = inches(cells[2])
            assert sorted((sides[0], sides[-1])) == sorted((piece.width, piece.length))
            assert cells[3] == str(piece.count)


def test_published_figures_are_quoted_as_published() -> None:
    """Martha Stewart, How to applique by hand: stitches 1/8 in apart, baste 1/2 in from the
    raw edge. melgeecrafts.com: 2.5 mm is about 10 stitches to the inch. quiltadvice.com:
    3.0 mm when quilting. easysewingtechniques blog: basting 4 to 5 mm. Quiltmaker magazine:
    web cut 3/16 in outside the line."""
    assert Fraction(1, 8) == trade.STITCH_INTERVAL
    assert Fraction(1, 2) == placing.BASTE_FROM_EDGE
    assert round(1 / float(practice.PIECING_STITCH.value), 2) == 10.16
    assert quilting.STITCH * INCH_IN_MM == 3
    assert 4 <= BASTING_STITCH * INCH_IN_MM <= 5
    assert Fraction(3, 16) == fusing.FUSED_SPARE


def test_every_practice_names_its_source() -> None:
    found = [p for p in vars(practice).values() if isinstance(p, Practice)]
    assert len(found) > 5
    assert all(len(p.source) > 10 for p in found)
