"""The computed values that a step's text may name, as plain text by name.

In: the pattern as a book, the sizes that a text speaks of. Out: nested dictionaries.
Invariant: every length is written by `publish.units` as elsewhere in the booklet; the
names are those of `model.names`, and a value that a size does not have has no entry.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from publish.model.names import EACH, FABRIC, PATTERN
from publish.words.values import Count
from publish.write.context import Book

Values = dict[str, Any]
"""Text, or further values by name."""


def values(book: Book, scope: Sequence[str]) -> Values:
    """Return every value, by the names that a text for the sizes in `scope` may use.

    Each size stands under its key with `_` for `-`; `each` gives a value for every size in
    `scope`, and says for which where they differ.
    """
    sizes = {key: _size(book, key) for key in book.keys}
    found: Values = {_word(key): value for key, value in sizes.items()}
    return {
        EACH: _each(book, {k: sizes[k] for k in scope}),
        PATTERN: _pattern(book),
        FABRIC: {_word(k): f.name for k, f in book.pattern.fabrics.items()},
        **found,
    }


def _number(book: Book, count: int) -> str:
    return book.words.value(Count(count))


def _word(key: str) -> str:
    """Return a key as the name of a value: `night-tide` as `night_tide`."""
    return key.replace("-", "_")


def _pattern(book: Book) -> Values:
    out = book.pattern.publication
    return {
        "title": book.pattern.title,
        "studio": out.studio,
        "contact": out.contact,
        "skill": out.skill,
        "seam": book.say.measure(book.pattern.sewing.seam),
        "sizes": _number(book, len(book.keys)),
    }


def _size(book: Book, key: str) -> Values:
    size, plan = book.sizes[key], book.plans[key]
    cut: dict[str, str] = {}
    count: dict[str, int] = {}
    for piece in plan.pieces:
        cut.setdefault(piece.letter, book.say.rectangle(piece.width, piece.length))
        count[piece.letter] = count.get(piece.letter, 0) + piece.count
    found: Values = {
        "title": size.title,
        "finished": book.say.rectangle(size.width, size.height),
        "width": book.say.measure(size.width),
        "height": book.say.measure(size.height),
        "perimeter": book.say.measure(size.perimeter),
        "block": book.say.measure(size.block_side),
        "blocks": _number(book, sum(book.blocks(key).values())),
        "columns": _number(book, size.columns),
        "rows": _number(book, size.rows),
        "border": {str(n): book.say.measure(b.width) for n, b in enumerate(size.borders, 1)},
        "cut": cut,
        "count": {letter: str(n) for letter, n in count.items()},
        "buy": {
            _word(k): book.say.to_buy(f.buy, f.buy_metric)
            for k, f in plan.fabrics.items()
            if f.buy > 0
        },
        "thread": book.say.thread(plan.thread.total),
        **_motif(book, key),
        **_finish(book, key),
    }
    return found


def _motif(book: Book, key: str) -> Values:
    size, plan = book.sizes[key], book.plans[key]
    if size.motif_span is None or plan.motif_square is None:
        return {}
    return {
        "motif": book.say.measure(size.motif_span),
        "motifs": _number(book, len(book.drafts[key].placements)),
        "motif_square": book.say.rectangle(plan.motif_square, plan.motif_square),
    }


def _finish(book: Book, key: str) -> Values:
    size, plan = book.sizes[key], book.plans[key]
    found: Values = {}
    if plan.backing is not None:
        found["backing"] = book.say.rectangle(plan.backing.width, plan.backing.height)
    if plan.batting is not None:
        found["batting"] = book.say.rectangle(plan.batting.width, plan.batting.height)
    if plan.binding is not None:
        found["binding_strips"] = _number(book, plan.binding.strips)
        found["binding_width"] = book.say.measure(plan.binding.strip_width)
        found["binding_length"] = book.say.measure(plan.binding.length)
    if plan.pillow is not None:
        found["pillow_form"] = book.say.measure(plan.pillow.form)
    if size.sleeve is not None:
        found["sleeve"] = book.say.measure(size.sleeve)
    return found


def _each(book: Book, sizes: Mapping[str, Values]) -> Values:
    """Return each value that some of the sizes have, with the sizes where they differ."""
    found: Values = {}
    for name in dict.fromkeys(n for values in sizes.values() for n in values):
        having = {k: v[name] for k, v in sizes.items() if name in v}
        if any(isinstance(v, dict) for v in having.values()):
            found[name] = _each(book, having)
        else:
            found[name] = book.each(list(having), having.__getitem__)
    return found


def flat(found: Values, before: str = "") -> Iterator[tuple[str, str]]:
    """Yield every dotted name with its text: `mini.block`."""
    for name, value in found.items():
        if isinstance(value, dict):
            yield from flat(value, f"{before}{name}.")
        else:
            yield f"{before}{name}", value
