"""Whether units, rows and the top measure in the steps what they measure in the draft.

In: a case. Out: notes.
Invariant: a step that makes a unit tells no size but that unit's; a step of assembling tells
the rows' and the centre's; each border and round is measured before and after as the top
then is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from publish.model.draft import Unit
from publish.model.size import Round
from publish.notes import Note, warning
from publish.proof.case import Case, Code
from publish.proof.claims import Told, letters, sentences, step_place, told
from publish.proof.lengths import PRACTICE, Said, said
from publish.proof.sewn_sizes import Pair, around, as_sewn, beyond, inside
from publish.surd import Surd
from publish.units import inches_text, maker_inches, on_ruler

CODES = {
    "P826": Code(
        "A unit is told at a size that it does not have",
        "the maker unpicks a seam that was right",
        "`The half ground measures 18 1/2 in × 10 in.`, of two 10 in squares and a 1/4 in seam",
        "`The half ground measures 19 1/2 in × 10 in.`",
    ),
}

_MAKING = ("curve", "set-in", "quick")
"""Figures of steps that make a unit and speak of other lengths as well."""
_RESULT = re.compile(r"\bmeasures?\b|\beach is\b|\btrim (?:it|each|each unit) to\b", re.IGNORECASE)
_ROUND = re.compile(r"-round-(\d+)-(?:strips|on)$")
_NUMBERED = re.compile(r"\b((?:[a-z]+ )?)(row|column)s? (\d+(?:(?:, | and |, and )\d+)*)")
_SMALL = Fraction(1, 2)
"""Inches: what a step may say beside a measure: a tolerance, a seam, an allowance."""


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each size told of a unit, a row or the top that is not its own."""
    shown: dict[str, tuple[str, int]] = {}
    for one in told(case):
        if len(one.sizes) != 1:
            continue
        if (now := _context(case, one)) is not None:
            shown[one.section.key] = now
        context = shown.get(one.section.key, ("", 0))
        for sentence in sentences(one.words):
            if letters(case, sentence) and "measure" not in sentence.lower():
                continue
            yield from _judged(case, one, context, sentence)


def _context(case: Case, one: Told) -> tuple[str, int] | None:
    """Return what the steps from this one on speak of: rows, or a layer round the blocks."""
    made = _ROUND.search(one.step.key)
    if made is not None:
        return "layer", int(made[1]) - 1
    kind = one.step.figure.kind if one.step.figure is not None else ""
    if kind == "borders" and one.step.figure is not None:
        layers = case.sizes[one.sizes[0]].layers
        borders = [at for at, layer in enumerate(layers) if layer.border is not None]
        index = int(one.step.figure.get("border", "0"))
        return ("layer", borders[index]) if index < len(borders) else ("", 0)
    return ("rows", 0) if kind in ("rows", "setting") else None


def _judged(case: Case, one: Told, context: tuple[str, int], sentence: str) -> Iterator[Note]:
    lengths = [length for length in said(sentence) if length.unit == "in"]
    if not lengths:
        return
    size, (kind, at) = one.sizes[0], context
    made = list(_made(case, one, sentence))
    if made:
        known = {as_sewn(case, size, unit) for unit in made}
    elif kind == "rows":
        named = _named(case, size, one.step.text, sentence)
        known = {beyond(case, size, unit, untrimmed=False) for unit in named}
    elif kind == "layer" and at < len(case.sizes[size].layers):
        known = set(_layered(case, size, at, sentence))
    else:
        known = set()
    if any(not (isinstance(v, Surd) or on_ruler(v)) for pair in known for v in pair):
        return  # told as the pieces are cut add up; the rehearsal holds that against the model
    pairs = {(maker_inches(wide), maker_inches(high)) for wide, high in known}
    if not pairs:
        return
    for text in _wrong(case, sentence, lengths, pairs):
        yield warning(
            "P826", step_place(case, one), f"{text} in {one.where} is not what is measured there",
            expected=" or ".join(_told(pair) for pair in sorted(pairs)), received=text,
        )  # fmt: skip


def _told(pair: tuple[Fraction, Fraction]) -> str:
    wide, high = map(inches_text, pair)
    return f"{wide} square" if wide == high else f"{wide} × {high}"


def _wrong(case: Case, sentence: str, lengths: list[Said],
           pairs: set[tuple[Fraction, Fraction]]) -> Iterator[str]:  # fmt: skip
    """Yield what a sentence says of none of these sizes: a side, or two sides together."""
    sides = {side for pair in pairs for side in pair}
    either = pairs | {pair[::-1] for pair in pairs}
    practice = {v for v in PRACTICE if v <= _SMALL or "measure" not in sentence.lower()}
    practice |= {case.seam, 2 * case.seam}
    for first, second in zip(lengths, [*lengths[1:], None], strict=True):
        together = second is not None and f"{first.text} × {second.text}" in sentence
        alone = rf"(?<![\d./])(?<!\d ){re.escape(first.text)}"
        square = re.search(rf"{alone}(?: \([^)]*\))? square", sentence)
        if first.inches not in sides | practice:
            yield first.text
        elif together and second is not None and second.inches in sides:
            if (first.inches, second.inches) not in either:
                yield f"{first.text} × {second.text}"
        elif square and first.inches not in practice and (first.inches,) * 2 not in pairs:
            yield f"{first.text} square"


def _made(case: Case, one: Told, sentence: str) -> Iterator[Unit]:
    """Yield the units that a step makes, if the sentence tells how they come out."""
    figure, found = one.step.figure, case.drafts[one.sizes[0]].assembly.outermost_first()
    if figure is not None and figure.get("unit"):
        if figure.kind == "units" or (figure.kind in _MAKING and _RESULT.search(sentence)):
            yield from (u for u in found if u.kind == figure.get("unit"))
    elif one.section.key.startswith("foundation") and _RESULT.search(sentence):
        start = f"{one.section.key}-"
        yield from (u for u in found if one.step.key == start + _slug(u.kind))


def _slug(kind: str) -> str:
    return "-".join(re.findall(r"[a-z0-9]+", kind.lower()))


def _named(case: Case, size: str, text: str, sentence: str) -> list[Unit]:
    """Return the rows, or the centre, whose measures a sentence tells."""
    if "measure" not in sentence.lower():
        return []
    parts = [u for u in case.drafts[size].assembly.outermost_first() if not u.patch]
    names = {u.name for u in parts}
    where = text if "each measure" in sentence.lower() else sentence
    told_: set[str] = set()
    for before, word, numbers in _NUMBERED.findall(where.lower()):
        for number in re.findall(r"\d+", numbers):
            long, short = f"{before}{word} {number}", f"{word} {number}"
            told_.add(long if long in names else short)
    return [u for u in parts if u.name in told_ or f"the {u.name} measures" in sentence.lower()]


def _layered(case: Case, size: str, at: int, sentence: str) -> Iterator[Pair]:
    """Yield what the top, or a strip of blocks, measures where a sentence speaks of it."""
    layer: Round = case.sizes[size].layers[at]
    before, after = inside(case, layer), around(case, case.sizes[size], layer)
    words = sentence.lower()
    if "both ways" in words:
        yield before
    elif "from top to bottom" in words:
        yield before[1], before[1]
    elif "from side to side" in words:
        yield after[0], after[0]
    elif "top now measures" in words:
        yield after[0], before[1]
    elif "top measures" in words:
        yield after
    elif "strips measure" in words:
        for unit in case.drafts[size].assembly.outermost_first():
            if unit.layer == at + 1 and unit.side:
                yield beyond(case, size, unit)
