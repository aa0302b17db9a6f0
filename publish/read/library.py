"""The library of traditional blocks, as its files say.

In: a trade name. Out: the values of that block's file.
Invariant: the files are read by the code that reads patterns, against the same
declarations; a fault in one of them is a fault of this package.
"""

from __future__ import annotations

import functools
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import yaml

from publish.read.check import Checker
from publish.read.ledger import Ledger
from publish.read.schema_blocks import TRADITIONAL
from publish.read.trade_names import trade_names


@functools.cache
def trade_values(name: str) -> Mapping[str, Any] | None:
    """Return the values of a traditional block by any of its names; None for another name."""
    file = trade_names().get(name)
    if file is None:
        return None
    text = file.read_text(encoding="utf-8")
    ledger = Ledger(file.name, text.splitlines(), Path())
    node = yaml.compose(text, Loader=yaml.SafeLoader)
    assert node is not None, file.name
    values = Checker(ledger, TRADITIONAL).read(node)
    assert not ledger.notes, ledger.notes
    return values


def trade_blocks() -> list[Mapping[str, Any]]:
    """Return every block of the library, in the order of their names."""
    found = (trade_values(name) for name in trade_names())
    return sorted({v["name"]: v for v in found if v}.values(), key=lambda v: str(v["name"]))


def trade_roles(name: str) -> Mapping[str, str]:
    """Return the roles of a traditional block, and what each is."""
    values = trade_values(name)
    roles: Mapping[str, str] = values["roles"] if values else {}
    return roles
