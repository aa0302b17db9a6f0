"""What a studio's patterns share: `studio.yaml`, read and laid under a pattern.

In: a pattern's folder; its values and ledger. Out: the values with those of the studio in
the place of what the pattern leaves out; places in whichever file says a value.
Invariant: a pattern's own key wins; sections are merged key by key, lists are replaced
whole. The file is read in full, so that what every pattern replaces is checked as well.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import yaml

from publish.model.house import StepChange
from publish.notes import Note, Place
from publish.read.changes import change_of, check_changes
from publish.read.characters import shown
from publish.read.check import Checker
from publish.read.ledger import At, Ledger
from publish.read.schema_studio import FILE_NAME, OWN, STUDIO
from publish.read.sections import Key, Section
from publish.read.source import Source, open_beside, tree
from publish.read.telling import Telling, telling

Values = Mapping[str, Any]
STEPS = "steps"
"""The one key that is not merged: the studio's changes are made first, then the pattern's."""
ROOT = "studio"
"""Places in the studio's steps stand below it among the pattern's places."""


@dataclass(frozen=True)
class Shared:
    """A studio's file as it was read. `source` is None where it could not be."""

    path: Path
    source: Source | None
    node: yaml.Node | None
    values: Values
    ledger: Ledger
    telling: Telling
    """How the pattern that asks is told."""

    @property
    def steps(self) -> tuple[StepChange, ...]:
        return tuple(map(change_of, self.values.get(STEPS, ())))


def studio_file(folder: Path) -> Path | None:
    """Return the first `studio.yaml` in a folder or one above it."""
    home = Path(os.path.abspath(folder))
    return next((p for f in (home, *home.parents) if os.path.isfile(p := f / FILE_NAME)), None)


def shared(folder: Path, own: yaml.Node | None = None, language: str = "") -> Shared | None:
    """Return what the studio of a pattern's folder says; None where there is no such file.

    `own` is the tree of the pattern's own file, and `language` the one asked for: they say
    which of the studio's texts serve.
    """
    path = studio_file(folder)
    return None if path is None else _read(path, own, language)


def _read(path: Path, own: yaml.Node | None, language: str) -> Shared:
    source = open_beside(path)
    if isinstance(source, Note):
        ledger = Ledger(source.place.file, [], path.parent)
        ledger.notes.append(source)
        return Shared(path, None, None, {}, ledger, telling(own, None, language))
    ledger = Ledger(source.shown, source.lines, path.parent)
    node, notes = tree(source)
    ledger.notes.extend(notes)
    way = telling(own, node, language)
    values = StudioChecker(ledger, STUDIO, way).read(node) if node is not None else {}
    check_changes(values, ledger)
    return Shared(path, source, node, values, ledger, way)


class StudioChecker(Checker):
    """Reads a studio's nodes into values; says of a pattern's own keys whose they are."""

    def _unknown(
        self, section: Section, name: str, at: At, taken: set[str], present: dict[str, Place]
    ) -> Key | None:
        owner = "pattern" if section is self.root else section.name
        if name not in OWN.get(owner, ()):
            return super()._unknown(section, name, at, taken, present)
        under = "" if section is self.root else f" under `{section.name}`"
        self.note(
            "R173",
            at.place,
            f"`{shown(name)}` is what each pattern says for itself",
            expected="a key that patterns can share",
            received=name,
            help=f"move it to pattern.yaml{under}",
        )
        return None


def lay_under(values: Values, ledger: Ledger, house: Shared) -> dict[str, Any]:
    """Return a pattern's values over its studio's, and take over places, uses and notes."""
    ledger.notes.extend(house.ledger.notes)
    base = {k: v for k, v in house.values.items() if k != STEPS}
    whole, taken = merged(STUDIO, values, base, ())
    for path, place in house.ledger.places.items():
        parts = tuple(path.split("."))
        if any(parts[: len(t)] == t for t in taken):
            ledger.places.setdefault(path, place)
        elif parts[0] == STEPS:
            ledger.places[f"{ROOT}.{path}"] = place
    taken_texts = {
        path: text
        for path, text in house.ledger.texts.items()
        if any(tuple(path.split("."))[: len(t)] == t for t in (*taken, (STEPS,)))
    }
    ledger.texts = {**taken_texts, **ledger.texts}
    ledger.places[ROOT] = house.ledger.places[""]
    return whole


Paths = tuple[tuple[str, ...], ...]


def merged(
    section: Section, own: Values, house: Values, path: tuple[str, ...]
) -> tuple[dict[str, Any], Paths]:
    """Return a section's own values over the studio's, and the ways to what was taken."""
    whole, taken = dict(own), list[tuple[str, ...]]()
    for name, value in house.items():
        here = (*path, name)
        inner = section.key(name).shape
        if name not in own:
            whole[name] = value
            taken.append(here)
        elif isinstance(inner, Section) and isinstance(own[name], Mapping):
            whole[name], more = merged(inner, own[name], value, here)
            taken += more
    return whole, tuple(taken)


def leaves(
    section: Section, node: yaml.Node | None, path: tuple[str, ...] = ()
) -> Iterator[tuple[str, Key, yaml.Node | None]]:
    """Yield the way to each key that patterns may share, and its node where it is written."""
    pairs = node.value if isinstance(node, yaml.MappingNode) else ()
    found = {k.value: v for k, v in pairs if isinstance(k, yaml.ScalarNode)}
    for key in section.keys:
        here, value = (*path, key.name), found.get(key.name)
        if isinstance(key.shape, Section):
            yield from leaves(key.shape, value, here)
        else:
            yield ".".join(here), key, value
