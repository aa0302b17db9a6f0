"""The report as a page: every finding with its place, line and figure, and what was checked.

In: a report, the figures and the codes looked for. Out: HTML, complete in itself.
Invariant: each finding and each accepted warning of the report is on the page once; a code
counts as checked only where the run got that far.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from publish.catalogue import STAGES, codes, titles
from publish.model.studio import Origin
from publish.notes import Note, Place, Report, Severity
from publish.proof import EXPLAINED
from publish.report import summary, visible
from publish.web import embedded, render

AROUND = 2
"""Lines of the source that are shown on either side of the one that is meant."""
_HEADINGS = {
    Severity.ERROR: "Errors: to mend before anything is built",
    Severity.WARNING: "Warnings: to weigh",
    Severity.INFO: "Good to know",
}

Picture = tuple[str, str, str]
"""Caption, alternative text and SVG."""


@dataclass(frozen=True)
class Subject:
    """What a report is about. `looked` are the codes that the run got to."""

    title: str
    source: Place
    """The pattern's file; others are named as seen from its folder."""
    looked: frozenset[str] = frozenset()
    pictures: Mapping[Note, Picture] = field(default_factory=dict)
    origins: tuple[Origin, ...] = ()
    """Of the values that patterns of a studio may share."""

    def near(self, place: Place) -> Place:
        """Return a place as the page names it."""
        return place.within(self.source.folder)


def page(report: Report, subject: Subject) -> str:
    """Return the report as a page."""
    groups = [
        {"key": severity.value, "title": title, "items": items}
        for severity, title in _HEADINGS.items()
        if (items := [_item(n, report, subject) for n in report if n.severity is severity])
    ]
    held = [
        {
            **_item(note, report, subject),
            "reason": acceptance.reason,
            "held_at": subject.near(acceptance.place),
        }
        for note, acceptance in report.accepted
    ]
    found = list(dict.fromkeys(n.code for n in (*report, *(n for n, _ in report.accepted))))
    return render(
        "report.html",
        title=subject.title,
        source=subject.near(subject.source).file,
        summary=summary(report),
        groups=groups,
        accepted=held,
        about=[_about(code) for code in sorted(found)],
        stages=[_stage(name, codes(name), report, subject) for name in STAGES],
        origins=[_origin(o, subject) for o in subject.origins],
        checked=len(subject.looked & set(titles())),
        codes=len(titles()),
    )


def _item(note: Note, report: Report, subject: Subject) -> dict[str, Any]:
    """Return what the page shows of one finding."""
    picture = subject.pictures.get(note)
    accept = ""
    if note.severity is Severity.WARNING:
        at = f"at: {note.place.path}, " if note.place.path else ""
        accept = f"accept:\n  - {{code: {note.code}, {at}reason: …}}"
    return {
        "note": replace(
            note,
            what=visible(note.what),
            expected=visible(note.expected),
            received=visible(note.received),
            help=visible(note.help),
        ),
        "place": subject.near(note.place),
        "lines": _lines(note, report.sources),
        "picture": picture
        and {"caption": picture[0], "alt": picture[1], "address": embedded(picture[2].encode())},
        "accept": accept,
    }


def _lines(note: Note, sources: Mapping[str, str]) -> list[dict[str, Any]]:
    """Return the source round a finding: number, text, and the text split at the column."""
    lines = sources.get(note.place.file, "").splitlines()
    at = note.place.line
    if not 1 <= at <= len(lines):
        return []
    shown = []
    for number in range(max(1, at - AROUND), min(len(lines), at + AROUND) + 1):
        text, split = lines[number - 1], note.place.column - 1
        here = number == at
        shown.append(
            {
                "number": number,
                "before": visible(text[:split] if here else text),
                "meant": visible(text[split:]) if here else "",
            }
        )
    return shown


def _origin(origin: Origin, subject: Subject) -> dict[str, Any]:
    """Return what the page shows of where a value comes from."""
    return {
        "path": origin.path,
        "written": visible(origin.written),
        "place": origin.place and subject.near(origin.place),
        "replaced": origin.replaced and subject.near(origin.replaced),
    }


def _about(code: str) -> dict[str, str]:
    """Return what the reference says of a code: what, why, wrong and right."""
    said = EXPLAINED.get(code)
    return {
        "code": code,
        "title": titles().get(code, ""),
        "why": said.why if said else "",
        "wrong": said.wrong if said else "",
        "right": said.right if said else "",
    }


def _stage(name: str, codes: Mapping[str, str], report: Report, subject: Subject) -> dict[str, Any]:
    """Return a stage's codes, how often each was found, and which were not looked for."""
    found = Counter(n.code for n in report)
    held = Counter(n.code for n, _ in report.accepted)
    return {
        "name": name,
        "rows": [
            {
                "code": code,
                "title": title,
                "found": found[code],
                "held": held[code],
                "looked": code in subject.looked or bool(found[code] or held[code]),
            }
            for code, title in sorted(codes.items())
        ],
    }
