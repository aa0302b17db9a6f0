"""A booklet with changes to its steps, for the tests of the designer's own voice."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rehearsed import generated, write
from write_cases import made_for

from publish.model.pattern import StepChange
from publish.model.words import Manual, Section, Step
from publish.notes import Note, Place
from publish.write.order import steps_of

PLACES = {
    "": Place("pattern.yaml"),
    **{f"steps.{n}": Place("pattern.yaml", 50 + n, 5) for n in range(9)},
    **{f"steps.{n}.text": Place("pattern.yaml", 50 + n, 30) for n in range(9)},
}


def voiced(*changes: StepChange, name: str = "three sizes") -> tuple[Manual, tuple[Note, ...]]:
    made = made_for(name)
    pattern = replace(made.pattern, steps=changes, places=PLACES)
    return write(pattern, made.sizes, made.drafts, made.plans)


def quiet(*changes: StepChange, name: str = "three sizes") -> Manual:
    """Return the booklet, which must have been written without a note."""
    manual, notes = voiced(*changes, name=name)
    assert [n for n in notes if n.code in ("W506", "W507", "W508", "W509")] == []
    return manual


def every(sections: Sequence[Section]) -> dict[str, Step]:
    return {s.key: s for section in sections for s in steps_of(section)}


def section(manual: Manual, key: str) -> Section:
    return next(s for s in manual.sections if s.key == key)


def keys(manual: Manual, key: str) -> list[str]:
    return [s.key for s in steps_of(section(manual, key))]


def plain(name: str = "three sizes") -> tuple[Section, ...]:
    made = made_for(name)
    return generated(made.pattern, made.sizes, made.drafts, made.plans)


def rewrite(step: str, text: str | None = None, **more: object) -> StepChange:
    return StepChange("replace", step, text=text, **more)  # type: ignore[arg-type]


def insert(beside: str, text: str, *, before: bool = False, **more: object) -> StepChange:
    return StepChange("insert", beside=beside, before=before, text=text, **more)  # type: ignore[arg-type]
