"""Strips laid out anew a few at a time: shorter or the same, and still every piece."""

from __future__ import annotations

from cut_instances import Whole, instances

from publish.cut.strips import Limits, lay_out


def test_an_instance_that_the_search_leaves_open_is_closed():
    """N9 of Burke, Kendall and Whitwell, 2004: its computed value is proven."""
    one = next(i for i in instances() if i.name == "N9 fixed")
    plain = lay_out(one.parts, one.width, Whole(), simple=False)
    longer = lay_out(one.parts, one.width, Whole(), simple=False, limits=Limits(rounds=1500))
    assert longer.length == longer.bound == one.best < plain.length
