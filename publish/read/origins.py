"""Where each value that patterns may share comes from: pattern, studio or default.

In: the trees of both files. Out: `Origin`s, in the order of the schema.
Invariant: every key that studio.yaml may have is listed once, whoever says it.
"""

from __future__ import annotations

import yaml

from publish.model.studio import Origin
from publish.notes import Place
from publish.read.characters import shown
from publish.read.ledger import Ledger
from publish.read.schema_studio import STUDIO
from publish.read.sections import Key
from publish.read.source import Source
from publish.read.studio import STEPS, Shared, leaves


def origins(
    node: yaml.Node, source: Source, ledger: Ledger, house: Shared | None, metric: bool = False
) -> tuple[Origin, ...]:
    """Return the origin of each value; `metric` says which defaults hold."""
    lent = {path: n for path, _, n in leaves(STUDIO, house.node if house else None)}
    found = []
    for path, key, own in leaves(STUDIO, node):
        theirs = lent[path]
        if path == STEPS:
            found += _changes(own, source, ledger, theirs, house) or [_nobodys(path, key, metric)]
        elif own is not None:
            over = _place(house.ledger, theirs) if house and theirs is not None else None
            found.append(Origin(path, _text(own, source), _place(ledger, own), over))
        elif theirs is not None and house is not None and house.source is not None:
            place = _place(house.ledger, theirs)
            found.append(Origin(path, _text(theirs, house.source), place))
        else:
            found.append(_nobodys(path, key, metric))
    return tuple(found)


def _changes(
    own: yaml.Node | None,
    source: Source,
    ledger: Ledger,
    theirs: yaml.Node | None,
    house: Shared | None,
) -> list[Origin]:
    """Return the changes of steps of both: neither replaces the other."""
    found = []
    if theirs is not None and house is not None and house.source is not None:
        place = _place(house.ledger, theirs)
        found.append(Origin(STEPS, _text(theirs, house.source), place))
    if own is not None:
        found.append(Origin(STEPS, _text(own, source), _place(ledger, own)))
    return found


def _place(ledger: Ledger, node: yaml.Node) -> Place:
    return ledger.at(node, ()).place


def _text(node: yaml.Node, source: Source) -> str:
    """Return a value as it is written, on one line."""
    if isinstance(node, yaml.ScalarNode):
        return shown(node.value)
    assert node.start_mark is not None and node.end_mark is not None
    return shown(source.text[node.start_mark.index : node.end_mark.index])


def _nobodys(path: str, key: Key, metric: bool) -> Origin:
    """Return what stands in for a value that nobody writes."""
    usual = key.derived.replace("`", "")
    if not usual:
        default = key.metric or key.default if metric else key.default
        usual = "nothing" if default in ('""', "[]", None) else str(default)
    return Origin(path, usual, None)
