"""What stands in for the keys that a designer leaves out.

In: sections of the schema, and what was written. Out: every key with a value.
Invariant: a default is written in the schema as a designer would write it, and is read
by the same code.
"""

from __future__ import annotations

import functools
from collections.abc import Mapping
from fractions import Fraction
from pathlib import Path
from typing import Any

import yaml

from publish.measures import UNITS, Measures
from publish.notes import Place
from publish.read.check import Checker
from publish.read.ledger import At, Ledger
from publish.read.schema_design import METRIC_TURN_UNDER, TURN_UNDER
from publish.read.sections import Key, Section
from publish.units import parse_length


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


def usual(section: Section, pattern: Mapping[str, Any]) -> Mapping[str, Any]:
    """Return the defaults that are other where the units of a pattern begin with metric;
    nothing where they do not."""
    return _metric(section) if measures_of(pattern).metric else {}


def measures_of(pattern: Mapping[str, Any]) -> Measures:
    """Return how a pattern's makers measure, from what it says so far."""
    return Measures(pattern.get("units", UNITS[0]))


def turn_under(pattern: Mapping[str, Any]) -> Fraction:
    """Return the turn-under, in inches, of a motif that says none and whose edges are turned."""
    return parse_length(METRIC_TURN_UNDER if measures_of(pattern).metric else TURN_UNDER)


@functools.cache
def _metric(section: Section) -> Mapping[str, Any]:
    return {k.name: read_value(k, k.metric) for k in section.keys if k.metric}


def read_value(key: Key, text: str) -> Any:
    """Return the value of a default or an example of the schema's own; it must hold."""
    ledger = Ledger("", text.splitlines(), Path())
    node = yaml.compose(text, Loader=yaml.SafeLoader)
    assert node is not None
    checker = Checker(ledger, Section("", "", (key,)))
    value = checker.keyed(key, node, At((key.name,), Place(""), key.example))
    assert not ledger.notes, ledger.notes
    return value
