"""What must differ, or be alike, between the patterns of a studio.

In: what reading says of each, and what became of each. Out: notes by pattern, each naming
both places.
Invariant: a note stands at the later of two patterns, in the order in which they are named;
patterns of different studios are compared by barcode alone, which is anybody's once.
"""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path

from publish.notes import Note, Place, error, warning
from publish.studio.outcome import Glance, Named

LINE_SHEET = "line-sheet"
"""The folder of what is made of all patterns together, beside theirs."""
_UNUSED = "W511"


def compared(glances: Sequence[Glance]) -> dict[Path, tuple[Note, ...]]:
    """Return what comparing patterns finds, by the pattern that has to say it."""
    found: dict[Path, list[Note]] = defaultdict(list)
    there = [g for g in glances if g.readable]
    for path, note in (
        *_folders(there),
        *_once(there, "R181", "stock number", lambda g: g.stock_number, error),
        *_once(there, "R182", "barcode", lambda g: g.barcode, error),
        *_once(there, "R183", "title", lambda g: g.title, warning),
        *_fabrics(there),
    ):
        found[path].append(note)
    return {path: tuple(notes) for path, notes in found.items()}


def _plain(text: str) -> str:
    """Return text as a reader takes it: without capitals, blanks and hyphens."""
    return re.sub(r"[\s\-‐-–]+", "", text.casefold())


def _folders(glances: Iterable[Glance]) -> Iterator[tuple[Path, Note]]:
    first: dict[str, Glance] = {}
    for glance in glances:
        assert glance.title is not None
        place, key = glance.title.place, glance.key.casefold()
        other = first.setdefault(key, glance)
        if key == LINE_SHEET or other is not glance:
            received = LINE_SHEET if other is glance else f"also for {_at(other)}"
            yield (
                glance.path,
                error(
                    "R186",
                    Place(place.file),
                    "the pattern's folder of results is another's",
                    expected=f"a folder of its own beside {LINE_SHEET}",
                    received=received,
                    help="rename the pattern's folder, or build it with another --out",
                ),
            )


def _at(glance: Glance) -> str:
    assert glance.title is not None
    return glance.title.place.file


def _once(
    glances: Iterable[Glance],
    code: str,
    noun: str,
    of: Callable[[Glance], Named | None],
    grave: Callable[..., Note],
) -> Iterator[tuple[Path, Note]]:
    """Yield a note for each pattern that has what another has already."""
    first: dict[tuple[str, str], Named] = {}
    for glance in glances:
        named = of(glance)
        if named is None or not named.text:
            continue
        whose = "" if noun == "barcode" else glance.studio
        other = first.setdefault((whose, _plain(named.text)), named)
        if other is not named:
            yield (
                glance.path,
                grave(
                    code,
                    named.place,
                    f"another pattern has this {noun} already",
                    expected=f"a {noun} of its own",
                    received=f"{named.text}, also at {other.place}",
                    help=f"give one of the two another {noun}",
                ),
            )


def _fabrics(glances: Iterable[Glance]) -> Iterator[tuple[Path, Note]]:
    """Yield a note for each name that means another colour, or is written another way."""
    first: dict[tuple[str, str], Named] = {}
    for glance in glances:
        own: dict[tuple[str, str], Named] = {}
        for named in glance.fabrics:
            name = (glance.studio, _plain(named.text))
            own.setdefault(name, named)
            other = first.get(name)
            if other is None:
                continue
            if other.more != named.more:
                yield (
                    glance.path,
                    warning(
                        "R184",
                        named.place,
                        f"{named.text} has another colour in another pattern",
                        expected=f"{other.more}, as at {other.place}",
                        received=named.more,
                        help="give both the colour of the cloth, or one of them another name",
                    ),
                )
            elif other.text != named.text:
                yield (
                    glance.path,
                    warning(
                        "R185",
                        named.place,
                        "the fabric's name is written in two ways",
                        expected=f"{other.text}, as at {other.place}",
                        received=named.text,
                        help="write it alike, so that shops see one fabric",
                    ),
                )
        for name, named in own.items():
            first.setdefault(name, named)


def unused_wording(told: Sequence[tuple[str, Iterable[Note]]]) -> tuple[Note, ...]:
    """Return a warning for each of the studio's changes that no pattern has the step of.

    `told` has, for each pattern, the studio's file and what was found. A pattern that did
    not get to its words must not be among them: nothing can be said then.
    """
    counts: dict[Place, list[Note]] = defaultdict(list)
    homes = Counter(house for house, _ in told)
    for _, notes in told:
        for note in notes:
            if note.code == _UNUSED:
                counts[note.place].append(note)
    return tuple(
        warning(
            "R187",
            place,
            "no pattern has the step that this wording is for",
            expected="the key of a step",
            received=notes[0].received,
            help="`foldwork steps PATTERN` lists the key of every step; or remove the change",
        )
        for place, notes in sorted(counts.items())
        if len(notes) == homes[place.file]
    )
