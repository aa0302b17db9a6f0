"""Seeded faults in patchwork: a step or a section is taken out of a correct booklet.

No source: the faults are a technical editor's list, as those of `test_seeded.py` are.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest
from bases import demo as _of
from state import State

from publish.model.words import Table

Change = Callable[[State], State]


@cache
def _before(project: str) -> frozenset[tuple[str, str]]:
    return frozenset((n.code, n.what) for n in _of(project).notes())


def _without(*keys: str) -> Change:
    return lambda s: s.steps(lambda x: () if x.key in keys else (x,))


def _without_section(key: str) -> Change:
    return lambda s: s.sections(lambda x: () if x.key == key else (x,))


def _without_table(section: str) -> Change:
    return lambda s: s.blocks(section, lambda b: () if isinstance(b, Table) else (b,))


def _without_pictures(s: State) -> State:
    """Take the figure of every step: what the words say is still said."""
    return s.steps(lambda x: (replace(x, figure=None),))


FAULTS: tuple[tuple[str, str, Change, str, str], ...] = (
    (
        "a unit is never joined",
        "towpath",
        _without("piecing-lock-unit-4"),
        "P857",
        "of unit 4",
    ),
    (
        "geese are never cut apart",
        "towpath",
        _without("piecing-lock-unit-3-cut"),
        "P857",
        "unit 3 in halves",
    ),
    (
        "strip sets without a picture are never cut",
        "towpath",
        _without("piecing-path-unit-8-cut"),
        "P857",
        "2 of unit 8",
    ),
    (
        "sashing rows are never sewn",
        "towpath",
        _without("assembling-mini-sashing-row"),
        "P857",
        "sashing row 1",
    ),
    (
        "diagonal rows are never joined",
        "towpath",
        _without("assembling-throw-join"),
        "P857",
        "square-top of the throw needs top",
    ),
    (
        "one block's piece is sewn by no step",
        "towpath",
        _without("piecing-path-unit-7"),
        "P804",
        "piece D",
    ),
    (
        "a row of unlike blocks is never sewn",
        "millrace",
        _without("assembling-row-2"),
        "P857",
        "row 2",
    ),
    (
        "a pinned curve is never sewn",
        "millrace",
        _without("piecing-eddy-unit-3"),
        "P857",
        "needs 16 of unit 3",
    ),
    (
        "foundation sections are never joined",
        "heronry",
        _without("foundation-mini-unit-2"),
        "P857",
        "unit, 2",
    ),
    (
        "no step sews a patch to its foundation",
        "heronry",
        _without("foundation-sew"),
        "P857",
        "patch 2",
    ),
    (
        "foundation piecing is never told",
        "heronry",
        _without_section("foundation"),
        "P804",
        "no step sews it",
    ),
    (
        "a size's foundations have no section",
        "heronry",
        _without_section("foundation-throw"),
        "P857",
        "throw needs block reeds",
    ),
    (
        "a size's foundations have no table",
        "heronry",
        _without_table("foundation-mini"),
        "P804",
        "in no table of the mini",
    ),
    (
        "a round of blocks is never sewn on",
        "heronry",
        _without("borders-throw-round-5-on"),
        "P857",
        "top at borders.sides-4",
    ),
)


@pytest.mark.parametrize("fault", FAULTS, ids=lambda f: f"{f[1]}: {f[0]}")
def test_a_fault_of_patchwork_is_named(fault: tuple[str, str, Change, str, str]) -> None:
    _, project, change, code, words = fault
    state = _of(project)
    notes = change(state).notes()
    new = {(n.code, n.what) for n in notes} - _before(project)
    assert any(c == code and words in what for c, what in new), sorted(new)


@pytest.mark.parametrize("project", ["samphire", "towpath", "millrace", "heronry"])
def test_words_tell_what_pictures_do_not_have_to(project: str) -> None:
    for state in (_of(project), _without_pictures(_of(project))):
        assert [n.what for n in state.notes() if n.code in ("P857", "P804")] == []
