"""Rules between the keys of one section: required, one of several, needed, idle.

In: a section's declaration, its values and the places of its keys. Out: notes.
Invariant: a key that is written counts as present even where its value does not hold.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Protocol

from publish.notes import Place, Severity
from publish.read.forms import listed
from publish.read.sections import Section


class NoteMaker(Protocol):
    """Takes down one finding."""

    def __call__(
        self,
        code: str,
        place: Place,
        what: str,
        *,
        expected: str = "",
        received: str = "",
        help: str = "",
        severity: Severity = Severity.ERROR,
    ) -> None: ...


def check_rules(
    note: NoteMaker,
    section: Section,
    values: Mapping[str, Any],
    present: Mapping[str, Place],
    owner: Place,
    subject: str,
) -> None:
    """Note what is missing from a section, what excludes what, and what has no effect."""
    for key in section.keys:
        if key.required and key.name not in present:
            note(
                "R111",
                owner,
                f"{subject} lacks `{key.name}`",
                expected=f"`{key.name}`: {key.shape.words}",
                received="nothing",
                help=f"add `{key.name}: {key.example}`",
            )
    _check_one_of(note, section, present, owner, subject)
    _check_needs(note, section, values, present, owner, subject)
    _check_apart(note, section.apart, present)
    _check_effect(note, section, values, present)


def _check_effect(
    note: NoteMaker, section: Section, values: Mapping[str, Any], present: Mapping[str, Place]
) -> None:
    """Note keys that do nothing beside, or without, others."""
    for idle in section.idle:
        value = _value(section, idle.key, values, present)
        if value in idle.values and idle.other in present:
            note(
                "R143",
                present[idle.other],
                f"`{idle.other}` has no effect with `{idle.key}: {value}`",
                expected=f"no `{idle.other}`",
                received=f"`{idle.other}`",
                help=f"remove `{idle.other}`, or change `{idle.key}`",
                severity=Severity.WARNING,
            )
    if section.one_of and not any(name in present for name in section.one_of):
        return  # what the others would go with is missing, and has its note
    for only in section.only:
        if only.key in present and not any(name in present for name in only.beside):
            beside = " or ".join(f"`{name}`" for name in only.beside)
            note(
                "R143",
                present[only.key],
                f"`{only.key}` has no effect without {beside}",
                expected=f"{beside} beside it",
                received=f"`{only.key}` alone",
                help=f"remove `{only.key}`, or add {beside}",
                severity=Severity.WARNING,
            )


def _check_needs(
    note: NoteMaker,
    section: Section,
    values: Mapping[str, Any],
    present: Mapping[str, Place],
    owner: Place,
    subject: str,
) -> None:
    for need in section.needs:
        value = _value(section, need.key, values, present)
        lacking = need.other not in present or values.get(need.other, "") is None
        wanted = value in need.values if need.values else need.key in present
        if wanted and lacking:
            key = section.key(need.other)
            said = f"{need.key}: {value}" if need.values else need.key
            note(
                "R111",
                present.get(need.other) or present.get(need.key, owner),
                f"{subject} lacks `{need.other}`, which `{said}` needs",
                expected=f"`{need.other}`: {key.shape.words}",
                received="nothing",
                help=f"add `{need.other}: {key.example}`",
            )


def _check_one_of(
    note: NoteMaker, section: Section, present: Mapping[str, Place], owner: Place, subject: str
) -> None:
    written = [name for name in present if name in section.one_of]
    if section.one_of and not written:
        choices = " or ".join(f"`{name}`" for name in section.one_of)
        note(
            "R111",
            owner,
            f"{subject} lacks {choices}",
            expected=choices,
            received="neither" if len(section.one_of) == 2 else "none of them",
            help=f"add `{section.one_of[0]}: {section.key(section.one_of[0]).example}`",
        )
    _check_apart(note, section.one_of, present)


def _check_apart(note: NoteMaker, names: tuple[str, ...], present: Mapping[str, Place]) -> None:
    """Note each key after the first of those that exclude each other."""
    written = [name for name in present if name in names]
    for extra in written[1:]:
        note(
            "R140",
            present[extra],
            f"{listed(written)} exclude each other",
            expected="one of them",
            received=" and ".join(written),
            help=f"remove `{extra}` or `{written[0]}`",
        )


def _value(
    section: Section, name: str, values: Mapping[str, Any], present: Mapping[str, Place]
) -> Any:
    """Return a word's value: as written, or its default; None where it does not hold."""
    return values.get(name) if name in present else section.key(name).default
