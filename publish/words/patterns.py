"""What a message's pattern chooses by, and the values that it is said with.

In: patterns as Fluent's syntax has them, values. Out: choices, values for some sizes.
Invariant: nothing is said here.
"""

from __future__ import annotations

from collections.abc import Iterator

from fluent.syntax import ast

from publish.words.values import BySize, Value, Values


def choices(pattern: ast.Pattern) -> Iterator[ast.SelectExpression]:
    """Yield every choice that a pattern makes, those inside a choice too."""
    for element in pattern.elements:
        if isinstance(element, ast.Placeable) and isinstance(
            element.expression, ast.SelectExpression
        ):
            yield element.expression
            for variant in element.expression.variants:
                yield from choices(variant.value)


def is_sentence(pattern: ast.Pattern) -> bool:
    """Return whether a variant ends a sentence: it cannot stand in the middle of a list."""
    return any(
        isinstance(e, ast.TextElement) and (". " in f"{e.value} " or ".\n" in e.value)
        for e in pattern.elements
    )


def value_of(name: str, values: Values) -> Value:
    if name not in values:
        raise LookupError(f"there is no value {name}")
    return values[name]


def only(values: Values, titles: tuple[str, ...], name: str, value: Value) -> Values:
    """Return the values as they are for some sizes, where one of them is chosen by."""
    return {k: _for(v, titles) for k, v in values.items()} | {name: value}


def _for(value: Value, titles: tuple[str, ...]) -> Value:
    """Return what a value is for some sizes alone."""
    if not isinstance(value, BySize):
        return value
    kept = tuple(
        (mine, v) for these, v in value.items if (mine := tuple(t for t in these if t in titles))
    )
    return kept[0][1] if len(kept) == 1 else BySize(kept)
