"""Each note of this stage, and silence without cause."""

from __future__ import annotations

from dataclasses import replace

import write_made as w
from rehearsed import write
from write_cases import made_for

from publish.notes import Severity
from publish.write import CODES


def codes(made: w.Made) -> list[str]:
    return [n.code for n in write(made.pattern, made.sizes, made.drafts, made.plans)[1]]


def test_codes_are_in_the_range_of_this_stage() -> None:
    assert CODES and all(code.startswith("W5") and title for code, title in CODES.items())


def test_nothing_to_write_about_is_an_error_and_still_a_manual() -> None:
    made = made_for("one size")
    book, notes = write(made.pattern, {}, {}, {})
    assert [(n.code, n.severity) for n in notes] == [("W501", Severity.ERROR)]
    assert book.sections == () and book.cover.title == "Samphire"


def test_a_size_without_a_plan_is_left_out() -> None:
    made = made_for("three sizes")
    plans = {k: p for k, p in made.plans.items() if k != "throw"}
    book, notes = write(made.pattern, made.sizes, made.drafts, plans)
    assert notes == ()
    assert [t for t, _ in book.cover.sizes] == ["Mini wall quilt", "Pillow"]


def test_two_sizes_with_one_title() -> None:
    twin = replace(w.MINI, key="twin")
    assert codes(w.made(w.MINI, twin)) == ["W502"]


def test_two_fabrics_with_one_name() -> None:
    made = made_for("one size")
    fabrics = dict(made.pattern.fabrics)
    fabrics["sand"] = replace(fabrics["sand"], name="Salt linen")
    pattern = replace(made.pattern, fabrics=fabrics)
    notes = write(pattern, made.sizes, made.drafts, made.plans)[1]
    assert [n.code for n in notes] == ["W503"]
    assert "`linen`" in notes[0].expected


def test_a_published_pattern_without_licence_or_contact() -> None:
    out = replace(w.PUBLISHED, licence="", contact="")
    assert codes(w.made(w.MINI, publication=out)) == ["W504", "W505"]
    assert codes(w.made(w.MINI, publication=w.UNPUBLISHED)) == []
