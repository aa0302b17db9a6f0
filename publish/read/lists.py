"""Lists in the tree of YAML nodes: how long they are, and what each item must be.

In: sequence nodes and their shapes. Out: the values that hold; notes in a `Ledger`.
Invariant: a list with an item that does not hold does not hold either, so that what is
read later can count on every item of a list.
"""

from __future__ import annotations

from typing import Any

import yaml

from publish.read.ledger import At, Ledger
from publish.read.sections import Many, Row, Shape

FAULTY = object()
"""Stands for a value that a note was made for."""


class Lists:
    """Reads lists; what their items are is for the reader that this is part of."""

    def __init__(self, ledger: Ledger) -> None:
        self.ledger, self.note = ledger, ledger.note

    def value(self, shape: Shape, node: yaml.Node, at: At) -> Any:
        """Return what `node` stands for in the given shape, or FAULTY."""
        raise NotImplementedError

    def many(self, many: Many, node: yaml.SequenceNode, at: At) -> Any:
        counted = self.count(len(node.value), many.least, many.most, at)
        values: list[Any] = []
        for number, item in enumerate(node.value[: many.most]):
            path = (*at.path, str(number))
            under = self.ledger.keep(self.ledger.at(item, path, many.item_example(at.example)))
            value = self.value(many.item, item, under)
            if many.distinct and value is not FAULTY and value in values:
                self.note(
                    "R129",
                    under.place,
                    f"{under.subject} repeats another",
                    expected="each item once",
                    received=str(value),
                    help="remove the repeated item",
                )
            values.append(value)
        return values if counted and FAULTY not in values else FAULTY

    def row(self, row: Row, node: yaml.SequenceNode, at: At) -> Any:
        counted = self.count(len(node.value), row.least, len(row.forms), at)
        values = []
        for number, (form, item) in enumerate(zip(row.forms, node.value, strict=False)):
            under = self.ledger.keep(
                self.ledger.at(item, (*at.path, str(number)), row.form_example(number))
            )
            values.append(self.value(form, item, under))
        return tuple(values) if counted and FAULTY not in values else FAULTY

    def count(self, count: int, least: int, most: int, at: At) -> bool:
        if least <= count <= most:
            return True
        self.note(
            "R128",
            at.place,
            f"{at.subject} has too {'few' if count < least else 'many'} items",
            expected=f"{least} to {most}" if least < most else str(least),
            received=str(count),
            help=f"write at least {least}, such as `{at.example}`"
            if count < least
            else f"leave no more than {most}",
        )
        return False
