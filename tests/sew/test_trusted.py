"""What is still trusted and not rehearsed. The list may only get shorter."""

from __future__ import annotations

from sewing_cases import CASES, makings

from publish.operations.trusted import Trusted

STILL = {"materials.buy", "cutting.whole"}


def test_no_more_is_trusted_than_there_was() -> None:
    found = {
        f"{o.chapter}.{o.step.rstrip('0123456789-')}"
        for name in CASES
        for made in makings(name)
        for o in made.operations
        if isinstance(o, Trusted)
    }
    assert found == STILL
