"""Whether every length in the booklet's words is one that the stages computed.

In: a case. Out: notes.
Invariant: a length with a unit equals a settled length of the sizes its passage is about,
or is one of the trade's own figures below; anything else is a warning that names the
nearest settled length, since a maker would measure it out.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from publish.measures import METRE, Measures
from publish.notes import Note, warning
from publish.operations.rehearsal import lengths_told
from publish.proof.booklet.claims import fragments, said_at
from publish.proof.booklet.lengths import NEAR, PRACTICE, Said, said, settled, written
from publish.proof.booklet.words import Passage, passages
from publish.proof.case import Case, Code
from publish.surd import Exact
from publish.units import (
    SIXTEENTH,
    UNITS,
    YARD,
    fraction_text,
    parse_length,
)

CODES = {
    "P861": Code(
        "A length in the words matches no computed length",
        "the maker may cut or sew to it",
        "`blurb: The throw is 66 in square.` for a throw of 64 in",
        "leave the number out, or in a step write `{{ throw.finished }}`",
    ),
}

PRACTICE_METRIC = frozenset(
    parse_length(text)
    for text in ("5 cm", "1.5 mm", "2.5 mm", "2.5 cm", "3 mm", "4 mm", "45 mm", "200 m", "59 m")
)
"""Inches: the check squares, stitch lengths, a rotary blade, a spool of thread, a bobbin of it."""
PRACTICE_YARDS = frozenset({64 * YARD})
"""Inches: the thread on a full bobbin."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each length in the words that nothing accounts for."""
    known = {key: _of(case, key) for key in case.keys}
    together: dict[tuple[str, ...], _Known] = {(key,): known[key] for key in case.keys}
    titles = {case.sizes[key].title: key for key in case.keys}
    told: set[tuple[str, str]] = set()
    for passage in passages(case.manual, titles):
        if passage.section == "glossary" and passage.kind == "cell":
            continue  # the metric table repeats lengths that are told, and judged, elsewhere
        sizes = tuple(k for k in passage.sizes if k in known) or case.keys
        for text, keys in fragments(case, passage.text, sizes):
            for length in said(text):
                if passage.instead and length.unit in case.units:
                    continue
                if keys not in together:
                    together[keys] = _union([known[k] for k in keys])
                computed = passage.kind == "cell" and bool(passage.sizes)
                fits = together[keys].accounts_for(length, computed)
                if fits or (passage.where, length.text) in told:
                    continue
                told.add((passage.where, length.text))
                yield _note(case, passage, length, together[keys].exact)


class _Known:
    """The lengths of some sizes, and as they are written in metric units."""

    def __init__(
        self,
        exact: set[Exact],
        curved: set[float],
        measures: Measures,
        practice: frozenset[Fraction],
    ) -> None:
        self.exact, self.curved = exact, curved
        self.measures, self.practice = measures, practice
        self._written: dict[tuple[str, int], set[str]] = {}
        self._judged: dict[tuple[str, bool], bool] = {}

    def accounts_for(self, length: Said, computed: bool) -> bool:
        """Return whether a length is settled, or, unless all there is computed, the trade's."""
        key = length.text, computed
        if key not in self._judged:
            practice = frozenset[Fraction]() if computed else self.practice
            self._judged[key] = self._accounts_for(length, practice)
        return self._judged[key]

    def _accounts_for(self, length: Said, practice: frozenset[Fraction]) -> bool:
        value, unit = length.inches, length.unit
        if unit == "yd":
            runs = any(_run(float(value), v) for v in self.curved)
            return runs or value in self.exact | PRACTICE_YARDS
        if self.measures.metric:
            return self._metric_first(length, practice)
        if unit in ("mm", "cm", "m"):
            number = length.number
            places = len(number.partition(".")[2])
            last = float(Fraction(1, 10**places) * UNITS[unit])
            near = any(abs(float(value) - v) <= last for v in self.curved)
            trade = value in PRACTICE_METRIC or number in {
                written(v, unit, places) for v in practice
            }
            return near or trade or number in self._as_written(unit, places)
        return value in self.exact | practice or any(
            abs(float(value) - v) <= NEAR for v in self.curved
        )

    def _metric_first(self, length: Said, practice: frozenset[Fraction]) -> bool:
        """Return whether a length is settled where centimetres lead: exactly as it is told, or
        in inches behind it to the nearest sixteenth."""
        value = length.inches
        if length.unit == "in":
            known = (*self.exact, *practice, *PRACTICE_METRIC, *self.curved)
            return any(abs(value - v) <= SIXTEENTH for v in known)
        near = NEAR if length.unit != "m" else METRE
        curved = any(abs(float(value) - v) <= near for v in self.curved)
        return curved or value in self.exact | practice | PRACTICE_METRIC

    def _as_written(self, unit: str, places: int) -> set[str]:
        if (unit, places) not in self._written:
            self._written[unit, places] = {written(v, unit, places) for v in self.exact}
        return self._written[unit, places]


def _of(case: Case, key: str) -> _Known:
    """Return what is settled of a size, and what its operations tell."""
    exact, curved = settled(case, (key,))
    made = case.making.sizes.get(key)
    found = exact | set(lengths_told(made.moments) if made else ())
    if case.measures.metric:
        found |= {case.near(v) for v in found}
    return _Known(found, curved, case.measures, case.practice(PRACTICE))


def _union(known: list[_Known]) -> _Known:
    exact, curved = {v for k in known for v in k.exact}, {v for k in known for v in k.curved}
    return _Known(exact, curved, known[0].measures, known[0].practice)


def _run(told: float, length: float) -> bool:
    """Return whether a run of stitching is told in the nearest quarter yard, at least one,
    or in whole yards that hold it."""
    quarter = float(YARD) / 4
    nearest = abs(told - length) <= quarter / 2 or (told == quarter and length < quarter)
    return nearest or (told % YARD == 0 and 0 <= told - length < YARD)


def _number(case: Case, inches: Exact, unit: str) -> str:
    if unit in ("in", "ft", "yd"):
        return fraction_text(case.near(inches) / UNITS[unit])
    return written(inches, unit, {"mm": 0, "cm": 1, "m": 2}[unit])


def _note(case: Case, passage: Passage, length: Said, exact: set[Exact]) -> Note:
    nearest = min(exact, key=lambda v: (abs(v - length.inches), v))
    perhaps = f"{_number(case, nearest, length.unit)} {length.unit}"
    return warning(
        "P861",
        said_at(case, passage),
        f"{length.text} in {passage.where} matches no computed length",
        expected=f"perhaps {perhaps}",
        received=length.text,
        help="use the computed value in the text instead of typing it",
    )
