"""Whether the numbers of pieces, strips and units in the steps are the plan's.

In: a case. Out: notes.
Invariant: what the cutting steps take from their strips is what is cut; a step makes as
many units as the top has; no step uses more of a piece than there are.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator

from publish.notes import Note, warning
from publish.proof.booklet.claims import (
    COUNT,
    LETTER,
    Told,
    fragments,
    is_cutting,
    number,
    step_place,
    told,
)
from publish.proof.booklet.lengths import NUMBER
from publish.proof.case import Case, Code
from publish.units import parse_length

CODES = {
    "P808": Code(
        "A number in a step is not the number that is needed",
        "the maker makes too few, or too many",
        "`Make 16.`, where nine blocks take two of the units each",
        "`Make 18.`; in your own words write `{{ throw.count.B }}`",
    ),
}

_STRIPS = re.compile(
    rf"^(?:\*\*[^*]+\.\*\* )?(?:\*\*\d+\*\* )?Cut ({COUNT}) strips? .*? (?:deep|wide)"
)
_SECTION = re.compile(
    rf"^From (?:the|each of the ({COUNT}))\b.*? cut ({COUNT}) strips? .*? (?:deep|wide)",
    re.IGNORECASE,
)
_EACH = re.compile(rf"({COUNT}) \*\*([A-Z]{{1,2}})\*\*")
_NAMED = re.compile(rf"({COUNT})(?: [^\W\d]+){{0,3}}? \*\*([A-Z]{{1,2}})\*\*(?! and \*\*)")
_LENGTHS = re.compile(rf"({COUNT}) lengths of \*\*([A-Z]{{1,2}})\*\*")
_MAKE = re.compile(rf"\bMake ({COUNT})", re.IGNORECASE)
_DEPTH = re.compile(rf"[Cc]ut {COUNT} strips? ((?:{NUMBER}) (?:in|cm|mm))\b")
_BOUND = re.compile(rf"({COUNT}) strips (?=\d)", re.IGNORECASE)


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each count that does not hold."""
    taken: dict[str, Counter[str]] = {key: Counter() for key in case.keys}
    unclear: dict[str, set[str]] = {key: set() for key in case.keys}
    rehearsed: set[str] = set()
    for one in told(case):
        if is_cutting(one.section):
            rehearsed.update(one.sizes if one.step.covers else ())
            if len(one.sizes) == 1:
                yield from _deep(case, one)
                _cut(one, taken[one.sizes[0]], unclear[one.sizes[0]])
        else:
            yield from _pieces(case, one)
            yield from _made(case, one)
    for key in case.keys:
        for piece in case.plans[key].pieces:
            wanted = piece.count * piece.joined_from
            told_ = taken[key].get(piece.letter, 0)
            # What is not told in the designer's own words is rehearsed.
            others = () if key in rehearsed else (taken[key] or unclear[key])
            somewhere = piece.letter in taken[key] or others
            if somewhere and piece.letter not in unclear[key] and told_ != wanted:
                yield warning(
                    "P808",
                    case.size_place(key),
                    f"the cutting steps of the {key} cut another number of {piece.letter}",
                    expected=str(wanted),
                    received=str(told_),
                )


def _cut(one: Told, taken: Counter[str], unclear: set[str]) -> None:
    """Count what a cutting step takes from its strips, paragraph by paragraph."""
    for paragraph in one.step.text.split("\n\n"):
        times, strips = 1, _STRIPS.match(paragraph)
        section = _SECTION.match(paragraph) if strips is None else None
        if section is not None:
            times, strips = number(section[1] or "one") * number(section[2]), section
        elif strips is not None:
            times = number(strips[1])
        named = LETTER.findall(paragraph)
        found = _EACH.findall(paragraph)
        if strips is None or len(found) != len(named):
            unclear.update(named)
            continue
        for count, letter in found:
            taken[letter] += times * number(count)


def _deep(case: Case, one: Told) -> Iterator[Note]:
    """Each paragraph's strips are as deep as those that the plan lays its pieces in."""
    strips = [s for f in case.plans[one.sizes[0]].fabrics.values() for s in f.strips]
    strips += [inner for s in strips for section in s.sections for inner in section.strips]
    for paragraph in one.step.text.split("\n\n"):
        depth, named = _DEPTH.search(paragraph), set(LETTER.findall(paragraph))
        known = {s.depth for s in strips if named & {c.letter for c in s.cuts}}
        if depth is not None and known and parse_length(depth[1]) not in known:
            yield warning(
                "P808",
                step_place(case, one),
                f"the strips in {one.where} are of another depth",
                expected=" or ".join(map(case.text, sorted(known))),
                received=depth[1],
            )


def _pieces(case: Case, one: Told) -> Iterator[Note]:
    """More of a piece than there is, and lengths that are not joined so."""
    for text, sizes in fragments(case, one.words, one.sizes):
        pieces = [p for k in sizes for p in case.plans[k].pieces]
        for count, letter in _LENGTHS.findall(text):
            joined = {p.joined_from for p in pieces if p.letter == letter}
            if joined and number(count) not in joined:
                yield _note(case, one, f"lengths of {letter}", joined, count)
        for count, letter in _NAMED.findall(text):
            most = [p.count * p.joined_from * p.yields for p in pieces if p.letter == letter]
            if most and number(count) > max(most):
                yield _note(case, one, f"pieces {letter}", {max(most)}, count)
        if one.section.key.split("-")[0] == "binding":
            bound = [case.plans[k].binding for k in sizes]
            strips = {b.strips for b in bound if b is not None and b.square is None}
            for count in _BOUND.findall(text):
                if strips and number(count) not in strips:
                    yield _note(case, one, "binding strips", strips, count)


def _made(case: Case, one: Told) -> Iterator[Note]:
    """Units."""
    figure = one.step.figure
    kind = figure.get("unit") if figure is not None and figure.kind == "units" else ""
    for text, sizes in fragments(case, one.step.text, one.sizes):
        wanted = {
            sum(u.kind == kind for u in case.drafts[k].assembly.outermost_first())
            for k in sizes
            if kind
        } - {0}
        for count in _MAKE.findall(text):
            if wanted and number(count) not in wanted:
                yield _note(case, one, f"units ({kind})", wanted, count)


def _note(case: Case, one: Told, what: str, wanted: set[int], count: str) -> Note:
    return warning(
        "P808",
        step_place(case, one),
        f"the number of {what} in {one.where} is not what is needed",
        expected=" or ".join(map(str, sorted(wanted))),
        received=count,
        help="use the computed value in the text instead of typing it",
    )
