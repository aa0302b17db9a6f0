"""What is said otherwise: steps, cautions, the booklet's other words.

In: two editions under the same keys. Out: changes, with their word differences.
Invariant: a step that only changed its key or its number is the same step; words that
changed only because a fabric or a size was renamed are not a change of their own.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from dataclasses import replace
from difflib import SequenceMatcher

from publish.compare.model import (
    COSMETIC,
    CUT,
    SAFETY,
    SEWN,
    Change,
    Edition,
    Prose,
    Step,
    Words,
)

ALIKE = 0.6
"""How alike two texts must be to count as one that was reworded (0 to 1)."""
_NUMBER = r"(?:\d+ )?\d+(?:[/.]\d+)?"
_LENGTH = rf"{_NUMBER} (?:in|yd|cm|mm|m)\b"
_TOKEN = re.compile(rf"\(?{_LENGTH}(?: × {_LENGTH})*(?: \([^()]*\))?[),.;:]*|\S+")
"""A word, or a whole measure: `2 1/2 in × 4 in (6.4 cm × 10.2 cm)` changes as one."""
_FIGURES = re.compile(_NUMBER)
_EARLY = ("before-you-start", "cutting", "folding", "marking")
"""How the keys of sections begin whose steps come before a piece is cut out."""

_IMPRINT = {
    "title": "title",
    "skill": "experience that the pattern asks for",
    "licence": "licence",
    "contact": "address for mistakes",
}

Renames = tuple[tuple[re.Pattern[str], str], ...]


def find(old: Edition, new: Edition) -> Iterator[Change]:
    """Yield every change of words."""
    renames = _renames(old, new)
    yield from _cautions(old, new, renames)
    yield from _steps(old, new, renames)
    yield from _prose(old, new, renames)
    for name, what in _IMPRINT.items():
        was, is_ = getattr(old, name), getattr(new, name)
        if was != is_:
            sentence = f"The {what} now reads:" if is_ else f"The {what} is no longer given:"
            # What she may do with what she makes binds her whatever she has done so far.
            consequence = SAFETY if name == "licence" else COSMETIC
            yield Change(consequence, name, sentence, words=difference(was, is_))


def _renames(old: Edition, new: Edition) -> Renames:
    """Return how names of the old edition are to be read in the new one."""
    pairs = [(f.name, new.fabrics[k].name) for k, f in old.fabrics.items() if k in new.fabrics]
    pairs += [(s.title, new.sizes[k].title) for k, s in old.sizes.items() if k in new.sizes]
    return tuple((re.compile(rf"\b{re.escape(a)}\b"), b) for a, b in pairs if a != b)


def renamed(text: str, renames: Renames) -> str:
    """Return an old text with the new names in it."""
    for name, instead in renames:
        text = name.sub(lambda _, put=instead: put, text)  # type: ignore[misc]
    return text


def plain(text: str) -> str:
    """Return text without the marks of Markdown."""
    return " ".join(text.replace("**", "").replace("*", "").split())


def folded(text: str) -> str:
    """Return text without what only looks different: case, stops, `a` or `an`."""
    words = re.findall(r"[\w/]+", plain(text).casefold())
    return " ".join("a" if w == "an" else w for w in words)


def difference(old: str, new: str) -> Words:
    """Return the words of two texts as runs: `same`, `gone` or `new`."""
    was, is_ = (_TOKEN.findall(plain(text)) for text in (old, new))
    runs: list[tuple[str, str]] = []
    for kind, a, b, c, d in SequenceMatcher(None, was, is_, autojunk=False).get_opcodes():
        if kind == "equal":
            runs.append(("same", " ".join(was[a:b])))
            continue
        runs += [("gone", " ".join(was[a:b]))] if b > a else []
        runs += [("new", " ".join(is_[c:d]))] if d > c else []
    return tuple(runs)


def _cautions(old: Edition, new: Edition, renames: Renames) -> Iterator[Change]:
    was = {**old.cautions, **{s.called: s.caution for s in old.steps if s.caution}}
    is_ = {**new.cautions, **{s.called: s.caution for s in new.steps if s.caution}}
    before = {folded(renamed(text, renames)) for text in was.values()}
    after = {folded(text) for text in is_.values()}
    gone = {k: t for k, t in was.items() if folded(renamed(t, renames)) not in after}
    for title, text in is_.items():
        if folded(text) in before:
            continue
        if title in gone:
            words = difference(renamed(gone.pop(title), renames), text)
            yield Change(SAFETY, "caution", f"The caution “{title}” has changed:", words=words)
        else:
            yield Change(
                SAFETY,
                "caution",
                f"There is a new caution, “{title}”:",
                words=(("new", plain(text)),),
            )
    for title, text in gone.items():
        yield Change(
            SAFETY,
            "caution",
            f"The caution “{title}” is no longer given:",
            words=(("gone", plain(text)),),
        )


def _steps(old: Edition, new: Edition, renames: Renames) -> Iterator[Change]:
    pairs = _matched(old.steps, new.steps, renames)
    taken = {was for was, _ in pairs if was is not None}
    kept = [(was, is_) for was, is_ in pairs if was is not None]
    yield from _moved(kept, old, new)
    reordered = _reordered(old, new)
    for was, is_ in pairs:
        if is_ is None:
            continue
        if was is None:
            if _elsewhere(is_.sizes, old):
                continue
            yield Change(
                _when(is_), "step", f"{is_.called}, is new:", words=(("new", plain(is_.text)),)
            )
            continue
        text = renamed(was.text, renames)
        if plain(text) == plain(is_.text) or (renames and folded(text) == folded(is_.text)):
            continue
        if reordered and _bag(text) == _bag(is_.text):
            continue
        trifling = folded(text) == folded(is_.text)
        yield Change(
            COSMETIC if trifling else _when(is_),
            "step",
            f"{is_.called}, now reads:",
            words=difference(text, is_.text),
        )
    for step in old.steps:
        if step not in taken and not _elsewhere(step.sizes, new):
            yield Change(
                _when(step),
                "step",
                f"{step.called}, is no longer there:",
                words=(("gone", plain(step.text)),),
            )


def _elsewhere(sizes: tuple[str, ...], edition: Edition) -> bool:
    """Return whether words are only for sizes that an edition does not have."""
    return bool(sizes) and not any(key in edition.sizes for key in sizes)


def _when(step: Step) -> str:
    return CUT if step.section.startswith(_EARLY) else SEWN


def _matched(
    old: Sequence[Step], new: Sequence[Step], renames: Renames
) -> list[tuple[Step | None, Step]]:
    """Return each new step with the old one that it was: by key, or else by its words."""
    left = {s.key: s for s in old}
    pairs: list[tuple[Step | None, Step]] = [(left.pop(s.key, None), s) for s in new]
    for at, (was, step) in enumerate(pairs):
        if was is None and left:
            texts = {k: renamed(s.text, renames) for k, s in left.items()}
            share, key = max((_alike(text, step.text), k) for k, text in texts.items())
            if share >= ALIKE:
                pairs[at] = (left.pop(key), step)
    return pairs


def _alike(one: str, other: str) -> float:
    matcher = SequenceMatcher(None, folded(one).split(), folded(other).split(), autojunk=False)
    return matcher.ratio() if matcher.quick_ratio() >= ALIKE else 0.0


def _moved(pairs: Sequence[tuple[Step, Step]], old: Edition, new: Edition) -> Iterator[Change]:
    """Yield the steps that come at another place for a maker of one of the sizes: those
    outside the longest run of her steps that has kept its order."""
    places = {step: at for at, step in enumerate(old.steps)}
    told: set[Step] = set()
    for key in (k for k in new.sizes if k in old.sizes):
        hers = [pair for pair in pairs if all(not s.sizes or key in s.sizes for s in pair)]
        kept = _longest_rising([places[was] for was, _ in hers])
        for at, (_, step) in enumerate(hers):
            if at not in kept and step not in told:
                told.add(step)
                where = f"after {hers[at - 1][1].called}" if at else "at the beginning"
                yield Change(_when(step), "step", f"{step.called}, now comes {where}.")


def _reordered(old: Edition, new: Edition) -> bool:
    """Return whether the sizes that both editions have are listed in another order."""
    return [k for k in old.sizes if k in new.sizes] != [k for k in new.sizes if k in old.sizes]


def _bag(text: str) -> list[str]:
    """Return the words of a text whatever their order: what sizes are told one after the
    other, and nothing else, is told in another order."""
    return sorted(folded(text).split())


def _longest_rising(numbers: Sequence[int]) -> frozenset[int]:
    """Return where in `numbers` the longest rising run of them stands."""
    ends: list[int] = []
    """The position of the smallest number that ends a run of each length."""
    before: list[int] = []
    for at, number in enumerate(numbers):
        length = bisect_left([numbers[e] for e in ends], number)
        before.append(ends[length - 1] if length else -1)
        ends[length : length + 1] = [at]
    found = []
    at = ends[-1] if ends else -1
    while at >= 0:
        found.append(at)
        at = before[at]
    return frozenset(found)


def _weight(words: Words) -> str:
    """Return what a change of words means: one of figures is one of the work."""
    figures = [_FIGURES.findall(said) for kind, said in words if kind != "same"]
    return SEWN if any(figures) else COSMETIC


def _prose(old: Edition, new: Edition, renames: Renames) -> Iterator[Change]:
    """Yield the booklet's other words that are gone, new or reworded, in reading order."""
    was = [replace(p, text=renamed(p.text, renames)) for p in old.prose]
    reordered = _reordered(old, new)

    def said(prose: Prose) -> str:
        return " ".join(_bag(prose.text)) if reordered else folded(prose.text)

    known, still = ({said(p) for p in texts} for texts in (was, new.prose))
    left = [p for p in was if said(p) not in still and not _elsewhere(p.sizes, new)]
    for prose in new.prose:
        if said(prose) in known or _elsewhere(prose.sizes, old):
            continue
        alike = [
            (_alike(p.text, prose.text), at)
            for at, p in enumerate(left)
            if renamed(p.section, renames) == prose.section
        ]
        share, at = max(alike, default=(0.0, 0))
        if share >= ALIKE:
            words = difference(left.pop(at).text, prose.text)
            yield Change(_weight(words), "text", f"In “{prose.section}”:", words=words)
        else:
            yield Change(
                COSMETIC, "text", f"New in “{prose.section}”:", words=(("new", plain(prose.text)),)
            )
    for prose in left:
        yield Change(
            COSMETIC,
            "text",
            f"No longer in “{prose.section}”:",
            words=(("gone", plain(prose.text)),),
        )
