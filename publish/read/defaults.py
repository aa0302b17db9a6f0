"""What stands in for the keys that a designer leaves out.

In: sections of the schema, and what was written. Out: every key with a value.
Invariant: a default is written in the schema as a designer would write it, and is read
by the same code.
"""

from __future__ import annotations

import functools
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import yaml

from publish.notes import Place
from publish.read.check import Checker
from publish.read.ledger import At, Ledger
from publish.read.sections import Key, Section


def fill(section: Section, *layers: Mapping[str, Any]) -> dict[str, Any]:
    """Return a value for every key of `section`: from the first layer that has it, or its
    default, or None."""
    filled = {}
    for key in section.keys:
        found = [layer[key.name] for layer in layers if key.name in layer]
        filled[key.name] = found[0] if found else defaults(section).get(key.name)
    return filled


@functools.cache
def defaults(section: Section) -> Mapping[str, Any]:
    """Return the default of every key of `section` that has one, read as if written."""
    return {k.name: read_value(k, k.default) for k in section.keys if k.default is not None}


def read_value(key: Key, text: str) -> Any:
    """Return the value of a default or an example of the schema's own; it must hold."""
    ledger = Ledger("", text.splitlines(), Path())
    node = yaml.compose(text, Loader=yaml.SafeLoader)
    assert node is not None
    checker = Checker(ledger, Section("", "", (key,)))
    value = checker.keyed(key, node, At((key.name,), Place(""), key.example))
    assert not ledger.notes, ledger.notes
    return value
