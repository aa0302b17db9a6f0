"""Seeded faults: each small edit to a correct pattern is named by a code, and no check fires
on a correct one.

No source: the faults are a technical editor's list, written before the checks were measured
against it. `python tests/benchmarks/faults.py` prints the rates.
"""

from __future__ import annotations

import pytest
from bases import SAMPHIRE, notes_on, printed, samphire, text
from reedmace_case import case
from suite import Fault, faults

from publish import proof

SUITE = faults()
DEAR = {"yaml": 4, "print": 4, "word": 2, "towpath": 2, "heronry": 2, "millrace": 2}
"""Of the faults that put a whole pattern through the stages or the proof again every so many
is tried; the rest are left to `make thorough` and to the benchmark, which runs them all."""


def test_the_suite_is_large_and_every_fault_has_a_name_of_its_own() -> None:
    assert len(SUITE) >= 80
    assert len({(f.kind, f.name) for f in SUITE}) == len(SUITE)


@pytest.mark.parametrize(
    "fault",
    [
        pytest.param(f, marks=pytest.mark.thorough if n % DEAR.get(f.kind, 1) else ())
        for n, f in enumerate(SUITE)
    ],
    ids=lambda f: f"{f.kind}: {f.name}",
)
def test_a_fault_is_named_by_its_code(fault: Fault) -> None:
    found = fault.new()
    assert fault.code in found, f"found {sorted(found) or 'nothing'}"


def test_the_demo_is_silent() -> None:
    assert [f"{n.code} {n.what}" for n in notes_on(text())] == []
    assert [f"{n.code} {n.what}" for n in samphire().notes()] == []
    assert SAMPHIRE.is_dir()


def test_the_printed_demo_is_silent() -> None:
    assert [f"{n.code} {n.what}" for n in printed().notes()] == []


def test_a_pattern_worked_by_hand_is_silent() -> None:
    hand = case()
    notes = proof.check(hand.pattern, hand.sizes, hand.drafts, hand.plans, hand.manual)
    assert [f"{n.code} {n.what}" for n in notes] == []
