"""Whether the prices of a pattern can stand beside each other.

In: the values that hold, and the ledger. Out: notes in the ledger.
Invariant: only what is written is compared; nothing is converted.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from publish.notes import Severity
from publish.read.ledger import Ledger


def check_prices(values: Mapping[str, Any], ledger: Ledger) -> None:
    """Note a currency that comes twice, and a price for shops above the one for makers."""
    seen: dict[str, int] = {}
    for number, price in enumerate(values.get("prices") or ()):
        currency, wholesale = price.get("currency"), price.get("wholesale")
        if currency in seen:
            first = ledger.place("prices", seen[currency], "currency")
            ledger.note(
                "R174",
                ledger.place("prices", number, "currency"),
                f"there are two prices in {currency}",
                expected="each currency once",
                received=f"first at {first}",
                help="remove one of the two",
            )
        elif currency is not None:
            seen[currency] = number
        if wholesale is not None and wholesale > price.get("retail", wholesale):
            ledger.note(
                "R175",
                ledger.place("prices", number, "wholesale"),
                "a shop is to pay more than a maker",
                expected=f"at most the price for makers, {price['retail']}",
                received=str(wholesale),
                help="write the smaller of the two at `wholesale`",
                severity=Severity.WARNING,
            )
