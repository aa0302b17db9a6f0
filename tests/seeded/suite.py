"""Every fault of the suite, and what the checks say to each.

In: the lists of faults. Out: `Fault`s, and the codes that are new once one is put in.
Invariant: a finding counts only when the pattern without the fault does not have it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cache

import draft_faults
import later_faults
import patchwork_faults
import plan_faults
import print_faults
import word_faults
import yaml_faults
from bases import demo, notes_on, printed, samphire, text

from publish.notes import Note

Found = frozenset[tuple[str, str]]
"""Code and headline of each finding."""


@dataclass(frozen=True)
class Fault:
    """One fault: where it is put in, what is wrong, the code that must name it."""

    kind: str
    """`yaml`, `plan`, `draft`, `word` or `print`; or the demo of patchwork it is put into."""
    name: str
    code: str
    notes: Callable[[], Iterable[Note]]

    def new(self) -> set[str]:
        """Return the codes of the findings that the fault brings."""
        return {code for code, _ in _found(self.notes()) - before(self.kind)}


def _found(notes: Iterable[Note]) -> Found:
    return frozenset((n.code, n.what) for n in notes)


@cache
def before(kind: str) -> Found:
    """Return what the checks find in the correct pattern: nothing, but see the tests."""
    if kind == "yaml":
        return _found(notes_on(text()))
    if kind in {name for name, *_ in patchwork_faults.FAULTS}:
        return _found(demo(kind).notes())
    return _found(printed().notes() if kind == "print" else samphire().notes())


def _edited(old: str, new: str) -> Iterable[Note]:
    source = text()
    assert source.count(old) == 1, f"{old!r} stands {source.count(old)} times"
    return notes_on(source.replace(old, new))


def faults() -> list[Fault]:
    """Return the whole suite."""
    found = [
        Fault("yaml", name, code, lambda edit=edit: _edited(*edit))  # type: ignore[misc]
        for name, edit, code in (*yaml_faults.FAULTS, *later_faults.YAML)
    ]
    for kind, listed in (
        ("plan", (*plan_faults.FAULTS, *later_faults.PLAN)),
        ("draft", (*draft_faults.FAULTS, *later_faults.DRAFT)),
        ("word", (*word_faults.FAULTS, *later_faults.WORDS)),
    ):
        found += [
            Fault(kind, name, code, lambda change=change: change(samphire()).notes())  # type: ignore[misc]
            for name, change, code in listed
        ]
    found += [
        Fault(kind, name, code, lambda change=change, kind=kind: change(demo(kind)).notes())  # type: ignore[misc]
        for kind, name, change, code in patchwork_faults.FAULTS
    ]
    found += [
        Fault("print", name, code, lambda change=change: change(printed()).notes())  # type: ignore[misc]
        for name, change, code in (*print_faults.FAULTS, *later_faults.PRINT)
    ]
    return found
