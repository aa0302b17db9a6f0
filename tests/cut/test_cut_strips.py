"""Strips against published instances: no plan worse than the computed value, all valid.

Instances and their sources: tests/data/packing/README.md. FFDH: Coffman, Garey, Johnson
and Tarjan, SIAM J. Computing 9, 1980 (from memory).
"""

from __future__ import annotations

import pytest
from cut_instances import SHOP, Whole, cut_list, instances

from publish.cut.strips import lay_out

SMALL = [i for i in instances() if i.proven and sum(p.count for p in i.parts) <= 30]


def test_there_are_enough_instances():
    assert len(SMALL) >= 30


@pytest.mark.parametrize("one", SMALL, ids=lambda i: i.name)
def test_the_computed_value_is_met(one):
    laid = lay_out(one.parts, one.width, Whole(), simple=False)
    area = sum(p.across * p.along * p.count for p in one.parts) / one.width
    assert area <= laid.bound <= laid.length == one.best <= one.first_fit


@pytest.mark.parametrize("seed", range(8))
def test_a_simpler_plan_buys_the_same(seed):
    width, parts = cut_list(seed)
    plain = lay_out(parts, width, SHOP, simple=False)
    simple = lay_out(parts, width, SHOP)
    assert SHOP.buy(simple.length) == SHOP.buy(plain.length)
    assert SHOP.buy_metric(simple.length) == SHOP.buy_metric(plain.length)
    assert len(simple.strips) <= len(plain.strips)


def test_the_same_list_gives_the_same_plan():
    width, parts = cut_list(3)
    assert lay_out(parts, width, SHOP) == lay_out(parts, width, SHOP)
