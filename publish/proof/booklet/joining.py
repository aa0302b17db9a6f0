"""Which steps join the units of blocks, and which of them no step joins.

In: a case, a size, its steps. Out: the units that are left untold, in words.
Invariant: a unit is told by the step whose figure shows it joined, or else by a step that
names all of its parts; one step without a figure tells one kind of unit. What lies inside a
unit that is made a quicker way, or on a foundation, needs no step of its own.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from publish.model.draft import Unit
from publish.proof.booklet.claims import LETTER, Told, is_cutting
from publish.proof.case import Case

_NUMBER = re.compile(r"\*\*(unit \d+)\b", re.IGNORECASE)
"""What a step calls the unit that it begins: `For **unit 4**, `, `**Unit 3, a flying geese`."""
_OPENS = re.compile(r"(?:\*\*[^*]*only\*\*[^:]*: )?(?:\*\*[^*]+\*\*\. |For (?:\*\*|the ))")
_SECTIONS = re.compile(r"\bsections? ((?:[A-Z]{1,2}(?:, | and |(?![\w])))+)")
_JOINS = re.compile(r"\b(?:sew|join|pin)\b", re.IGNORECASE)


def untold(case: Case, key: str, steps: Sequence[Told]) -> Iterator[str]:
    """Yield what no step of a size does to the units of its blocks: `joins unit 4`."""
    own = [s for s in steps if not is_cutting(s.section)]
    told = _Names(case, key, own)
    for unit in filter(_on_paper, inner(case.drafts[key].assembly)):
        if not told.run(unit):
            yield f"joins {told.name(unit)}"


def _on_paper(unit: Unit) -> bool:
    """Return whether a unit holds a foundation section; what does not is rehearsed."""
    return bool(unit.section) or any(map(_on_paper, unit.parts))


def inner(root: Unit) -> list[Unit]:
    """Return the first unit of each kind that is joined inside blocks, parts before wholes."""
    found: dict[str, Unit] = {}
    for unit in made(root):
        homes = {(p.place, p.role) for p in unit.patches}
        if len(unit.parts) > 1 and len(homes) == 1 and unit.patches[0].role == "ground":
            found.setdefault(unit.kind, unit)
    return list(found.values())


def made(unit: Unit) -> Iterator[Unit]:
    """Yield a unit and all in it that is made by itself, parts before wholes."""
    if not (unit.made or unit.section):
        for part in unit.parts:
            yield from made(part)
    yield unit


class _Names:
    """What the steps of a size call its units; learnt from the parts to the wholes."""

    def __init__(self, case: Case, key: str, steps: Sequence[Told]) -> None:
        self._draft, self._plan, self._key = case.drafts[key], case.plans[key], key
        self._steps = steps
        self._claimed: set[int] = set()
        self._called: dict[str, str] = {}

    def run(self, unit: Unit) -> Sequence[Told]:
        """Return the steps that make a unit, one after the other; none where none does."""
        at = self._shown(unit)
        if at is None:
            at = self._named(unit)
        if at is None:
            return ()
        self._claimed.add(at)
        run = [self._steps[at], *self._onwards(at, unit)]
        pinned = [s for s in self._steps if _shows(s, unit)]
        number = next((m for s in (*run, *pinned) if (m := _NUMBER.search(s.step.text))), None)
        if number is not None:
            self._called[unit.kind] = number[1].lower()
        return run

    def name(self, unit: Unit) -> str:
        """Return what a note calls a unit: by its parts where no step names it."""
        if unit.kind in self._called:
            return self._called[unit.kind]
        letters = self._on_paper(unit)
        if letters:
            return f"sections {', '.join(letters[:-1])} and {letters[-1]}"
        parts = self._letters(unit) if unit.made else map(self._part, unit.parts)
        *before, last = sorted(set(parts)) or [unit.name]
        named = f"{', '.join(before)} and {last}" if before else last
        return f"the {unit.name} of {named}"

    def _part(self, part: Unit) -> str:
        if part.patch is not None:
            return self._plan.sources.get(part.patch.key, part.name)
        letters = self._on_paper(part)
        if letters:
            return f"section{'s' if len(letters) > 1 else ''} {'-'.join(letters)}"
        return self._called.get(part.kind, part.name)

    def _shown(self, unit: Unit) -> int | None:
        """Return the first step with a figure of the unit; pinning a curve does not sew it."""
        for at, step in enumerate(self._steps):
            figure = step.step.figure
            if figure is None or figure.size not in (None, self._key, *step.sizes):
                continue
            if _shows(step, unit) and figure.get("stage") != "pin":
                return at
        return None

    def _named(self, unit: Unit) -> int | None:
        """Return the step without a figure of a unit that names all parts of this one."""
        fitting = [
            at
            for at, step in enumerate(self._steps)
            if at not in self._claimed
            and _JOINS.search(step.step.text)
            and not (step.step.figure and step.step.figure.get("unit"))
            and self._names_parts(step.step.text, unit)
        ]
        ending = "-".join(re.findall(r"[a-z0-9]+", unit.kind.lower()))
        fitting.sort(key=lambda at: not self._steps[at].step.key.endswith(f"-{ending}"))
        return fitting[0] if fitting else None

    def _onwards(self, at: int, unit: Unit) -> Iterator[Told]:
        """Yield the steps after one that go on with the same unit."""
        for step in self._steps[at + 1 :]:
            figure = step.step.figure
            other = figure is not None and figure.get("unit", unit.kind) != unit.kind
            begins = _OPENS.match(step.step.text) is not None
            if other or begins or step.section is not self._steps[at].section:
                return
            yield step

    def _names_parts(self, text: str, unit: Unit) -> bool:
        wanted = self._letters(unit)
        names = [
            self._called.get(p.kind, p.name)
            for p in unit.parts
            if p.parts and not unit.made and not self._on_paper(p)
        ]
        papers = {self._on_paper(p) for p in unit.parts} - {()}
        said = {tuple(re.findall(r"[A-Z]{1,2}", m[1])) for m in _SECTIONS.finditer(text)}
        known = [n for n in names if n != "unit"]
        return (
            bool(wanted or papers or known)
            and wanted <= set(LETTER.findall(text))
            and papers <= said
            and all(re.search(rf"\b{re.escape(n)}s?\b", text, re.IGNORECASE) for n in known)
        )

    def _letters(self, unit: Unit) -> set[str]:
        """Return the letters of the pieces that a unit's own seams join."""
        if unit.made:
            making = next((m for m in self._plan.makings if m.kind == unit.kind), None)
            if making is not None:
                return set(making.letters)
        found = (self._plan.sources.get(p.patch.key) for p in unit.parts if p.patch is not None)
        return {letter for letter in found if letter is not None}

    def _on_paper(self, unit: Unit) -> tuple[str, ...]:
        """Return the letters of the foundation sections that are all a unit is joined from."""
        if unit.section:
            found = (f.letter for f in self._draft.foundations if f.key == unit.section)
            return tuple(found)
        inside = [self._on_paper(p) for p in unit.parts]
        return tuple(a for letters in inside for a in letters) if all(inside) else ()


_JOINED = ("units", "curve", "set-in", "quick")
"""Kinds of figure that show a unit being joined."""


def _shows(step: Told, unit: Unit) -> bool:
    figure = step.step.figure
    return figure is not None and figure.kind in _JOINED and figure.get("unit") == unit.kind
