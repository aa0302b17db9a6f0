"""Forms of prices: an amount of money, and the currency that it is in.

In: the text of one YAML scalar. Out: its value, or an `Unfit`.
Invariant: as in `forms`; an amount keeps the decimals that it is written with.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from publish.read.forms import Form, Hint, Unfit

_AMOUNT = r"^[0-9]{1,7}(\.[0-9]{1,3})?$"
"""No currency of ISO 4217 has more than four decimals, and none that is paid with more than
three."""
_CURRENCY = "^[A-Z]{3}$"


@dataclass(frozen=True)
class Money(Form):
    """An amount above nothing."""

    @property
    def words(self) -> str:
        return "an amount, with a point before its decimals"

    def json(self) -> dict[str, Any]:
        return {
            "anyOf": [
                {"type": "number", "exclusiveMinimum": 0, "maximum": 9_999_999.999},
                {"type": "string", "pattern": _AMOUNT},
            ]
        }

    def read(self, text: str, hint: Hint) -> Any:
        if re.fullmatch(_AMOUNT, text):
            amount = Decimal(text)
            if amount > 0:
                return amount
            return Unfit("R124", "cannot be nothing", "write the price, or remove the key")
        help_ = f"write the amount alone, such as `{hint.example}`"
        if re.fullmatch(_AMOUNT, text.replace(",", ".")):
            help_ = f"write `{text.replace(',', '.')}`"
        return Unfit("R120", "is not an amount of money", help_)


@dataclass(frozen=True)
class Currency(Form):
    """The code of a currency (ISO 4217): three capitals."""

    @property
    def words(self) -> str:
        return "the code of a currency (ISO 4217): three capitals"

    def json(self) -> dict[str, Any]:
        return {"type": "string", "pattern": _CURRENCY}

    def read(self, text: str, hint: Hint) -> Any:
        if re.fullmatch(_CURRENCY, text):
            return text
        help_ = f"write its code, such as `{hint.example}`"
        if re.fullmatch(_CURRENCY, text.upper()):
            help_ = f"write `{text.upper()}`"
        return Unfit("R125", "is not the code of a currency", help_)
