"""One language: its messages, and the saying of them.

In: the language's folder. Out: `Language.say`: spans of a message or of one of its parts.
Invariant: a message is read from its file when it is first said; a message or a value that
is not there is a mistake of ours, LookupError.

Syntax is Project Fluent's (fluent.syntax reads it). Beyond it: a choice by a value that
differs from size to size is made for each size, and the texts are told side by side.
"""

from __future__ import annotations

import importlib
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from pathlib import Path

from fluent.syntax import FluentParser, ast

from publish.measures import INCHES, Measures
from publish.words.grammar import Grammar, capital
from publish.words.lengths import Lengths
from publish.words.patterns import choices, is_sentence, only, value_of
from publish.words.values import (
    BySize,
    Count,
    Figures,
    Named,
    Said,
    Several,
    Span,
    Spans,
    Value,
    Values,
    Word,
    text,
)

_ENTRY = re.compile(r"^(-?[a-zA-Z][\w-]*) *=", re.MULTILINE)
_OFFSET = re.compile(r"^(?=-?[a-zA-Z][\w-]* *=)", re.MULTILINE)


@cache
def language(code: str = "en", measures: Measures = INCHES) -> Language:
    """Return a language by its code, telling lengths as they are measured; ImportError for
    a language that there is not.

    What a variant such as `en-GB` does not say itself is said as its `base` says it.
    """
    module = importlib.import_module(f"publish.words.{code.lower().replace('-', '_')}")
    assert module.__file__ is not None
    grammar: Grammar = module.GRAMMAR
    folder = Path(module.__file__).parent
    sources = dict(language(grammar.base).sources) if grammar.base else {}
    sources |= own_sources(folder)
    marked = replace(measures, mark=grammar.decimal_mark)
    return Language(code, grammar, folder, sources, marked)


def own_sources(folder: Path, files: str = "*.ftl") -> dict[str, str]:
    """Return the text of each message in a language's folder, by name; ValueError for one
    that is there twice."""
    found: dict[str, str] = {}
    for path in sorted(folder.glob(files)):
        for entry in _OFFSET.split(path.read_text("utf-8"))[1:]:
            name = _ENTRY.match(entry)
            assert name is not None
            if name[1] in found:
                raise ValueError(f"{path.name}: the message {name[1]} is there twice")
            found[name[1]] = entry
    return found


def english(value: Value | None, measures: Measures = INCHES) -> str:
    """Return a value as findings and files tell it, which are in English; nothing for None."""
    return "" if value is None else language("en", measures).value(value)


@dataclass
class Language:
    """The messages of a language by name, and its grammar."""

    code: str
    grammar: Grammar
    folder: Path
    """Where its own messages stand."""
    sources: Mapping[str, str]
    measures: Measures = INCHES
    _read: dict[str, ast.Message | ast.Term] = field(default_factory=dict)

    @property
    def tag(self) -> str:
        """Return the language's tag for a page: `en-CA`."""
        return self.grammar.tag

    @property
    def lengths(self) -> Lengths:
        """Return how lengths are said."""
        return Lengths(self.measures, self.grammar.lengths)

    def has(self, message: str, part: str = "") -> bool:
        """Return whether there is such a message, with such a part (`right`, `tip` ...)."""
        return message in self.sources and self._pattern(message, part) is not None

    def in_full(self, message: str) -> str:
        """Return the message of which `message` is the short form, told again; or itself."""
        full = message.removesuffix("-again")
        return full if full in self.sources else message

    def say(self, message: str, values: Values, part: str = "") -> Spans:
        """Return a message, or its part, in spans; nothing for a part that it does not have."""
        pattern = self._pattern(message, part)
        if pattern is None:
            if part:
                return ()
            raise LookupError(f"the message {message} says nothing")
        try:
            return tuple(self._spans(pattern, values))
        except LookupError as missing:
            raise LookupError(f"{message}{'.' * bool(part)}{part}: {missing}") from missing

    def sentences(self, message: str, values: Values) -> tuple[str, ...]:
        """Return which whole sentences a message chooses by its values, by their keys.

        Sizes whose values choose different sentences cannot be told in one.
        """
        if message not in self.sources:
            return ()
        entry = self._entry(message)
        patterns = [entry.value, *(a.value for a in entry.attributes)]
        return tuple(
            self._named(self._variant(choice, values[choice.selector.id.name]))
            for pattern in patterns
            if pattern is not None
            for choice in choices(pattern)
            # what the teller adds of all sizes together is the same for each of them
            if isinstance(choice.selector, ast.VariableReference)
            and choice.selector.id.name in values
            and any(is_sentence(v.value) for v in choice.variants)
        )

    @staticmethod
    def _named(variant: ast.Variant) -> str:
        return variant.key.name if isinstance(variant.key, ast.Identifier) else variant.key.value

    def text(self, message: str, values: Values | None = None, part: str = "") -> str:
        """Return a message, or its part, as one string."""
        return text(self.say(message, values or {}, part))

    def tell(self, message: str, **values: str | int | Value) -> str:
        """Return a message as one string; `a_b` is its `$a-b`. Texts stand as they are, whole
        numbers in figures."""
        return self.text(message, {k.replace("_", "-"): _typed(v) for k, v in values.items()})

    def named(self, start: str) -> dict[str, str]:
        """Return the messages without values whose names begin so, by the rest of their names,
        with `_` for `-`, as templates name them."""
        names = (n for n, text in self.sources.items() if n.startswith(start) and "$" not in text)
        return {n.removeprefix(start).replace("-", "_"): self.text(n) for n in names}

    def value(self, value: Value, form: str = "") -> str:
        """Return a value in words; in a grammatical form such as `dative`, where the messages
        that it is made of have a part of that name."""
        if isinstance(value, Said):
            return self._formed(value.message, dict(value.values), form)
        if isinstance(value, Several):
            return self.listed([self.value(item, form) for item in value.items], value.word)
        if isinstance(value, BySize):
            return self.by_size([(self.value(v, form), titles) for titles, v in value.items])
        if isinstance(value, Count) and value.noun:
            return self._formed(f"noun-{value.noun}", {"count": Count(value.number)}, form)
        return self.grammar.plain(value, self.measures)

    def _formed(self, message: str, values: Values, form: str) -> str:
        return self.text(message, values, form if form and self.has(message, form) else "")

    def listed(self, texts: Sequence[str], word: str = "and") -> str:
        """Return texts one after another, joined by `and` or `or` as the language has them,
        or by semicolons where they are lists themselves."""
        if word == ";":
            return "; ".join(texts)
        return self.grammar.listed(texts, "" if word == "and" else self.text(f"list-{word}"))

    def capital(self, text: str) -> str:
        """Return a text that begins with a capital."""
        return capital(text)

    def by_size(self, items: Sequence[tuple[str, tuple[str, ...]]]) -> str:
        """Return texts, each with the titles of the sizes that it is for; one that is for all
        of them alone."""
        groups: dict[str, tuple[str, ...]] = {}
        for said, titles in items:
            groups[said] = (*groups.get(said, ()), *titles)
        if len(groups) == 1:
            return next(iter(groups))
        return self.grammar.by_size(list(groups.items()))

    def _entry(self, message: str) -> ast.Message | ast.Term:
        if message not in self._read:
            if message not in self.sources:
                raise LookupError(f"there is no message {message}")
            found = FluentParser(with_spans=False).parse_entry(self.sources[message])
            if not isinstance(found, ast.Message | ast.Term):
                raise ValueError(f"the message {message} cannot be read")
            self._read[message] = found
        return self._read[message]

    def _pattern(self, message: str, part: str) -> ast.Pattern | None:
        entry = self._entry(message)
        if not part:
            return entry.value
        return next((a.value for a in entry.attributes if a.id.name == part), None)

    def _spans(self, pattern: ast.Pattern, values: Values) -> Iterator[Span]:
        for element in pattern.elements:
            if isinstance(element, ast.TextElement):
                yield Span(element.value.replace("\n", " "))
            else:
                assert isinstance(element, ast.Placeable)
                yield from self._placed(element.expression, values)

    def _placed(
        self,
        expression: ast.Placeable | ast.InlineExpression | ast.SelectExpression,
        values: Values,
    ) -> Iterator[Span]:
        match expression:
            case ast.StringLiteral():
                yield Span(expression.parse()["value"])
            case ast.VariableReference():
                name = expression.id.name
                value = value_of(name, values)
                yield Span(self.value(value), value, name)
            case ast.MessageReference():
                part = expression.attribute.name if expression.attribute else ""
                yield from self.say(expression.id.name, values, part)
            case ast.TermReference():
                yield from self.say(f"-{expression.id.name}", values)
            case ast.FunctionReference():
                yield self._called(expression, values)
            case ast.SelectExpression():
                yield from self._chosen(expression, values)
            case ast.Placeable():
                yield from self._placed(expression.expression, values)
            case _:
                raise LookupError(f"{type(expression).__name__} is not understood")

    def _called(self, call: ast.FunctionReference, values: Values) -> Span:
        """Return what a function makes of its one value, or of the words given to it."""
        form = self.grammar.cases.get(call.id.name)
        if form is not None:
            return self._inflected(call.arguments.positional[0], form, values)
        inner = tuple(self._placed(call.arguments.positional[0], values))
        one = inner[0].value if len(inner) == 1 else None
        function = self.grammar.functions[call.id.name]
        if isinstance(one, BySize):
            name, argument = inner[0].name, call.arguments.positional[0]
            each = []
            for titles, value in one.items:
                said = text(tuple(self._placed(argument, only(values, titles, name, value))))
                each.append((function(value, said, self.measures), titles))
            return Span(self.by_size(each), one, name)
        return Span(function(one, text(inner), self.measures), one, inner[0].name if inner else "")

    def _inflected(self, argument: ast.SyntaxNode, form: str, values: Values) -> Span:
        """Return a value, or another message, in a grammatical form."""
        if isinstance(argument, ast.MessageReference):
            return Span(self._formed(argument.id.name, values, form))
        if not isinstance(argument, ast.VariableReference):
            raise LookupError("only a value or a message has a grammatical form")
        name = argument.id.name
        value = value_of(name, values)
        return Span(self.value(value, form), value, name)

    def _chosen(self, choice: ast.SelectExpression, values: Values) -> Iterator[Span]:
        selector = choice.selector
        if not isinstance(selector, ast.VariableReference):
            raise LookupError("only a value can be chosen by")
        name = selector.id.name
        value = value_of(name, values)
        if not isinstance(value, BySize):
            yield from self._spans(self._variant(choice, value).value, values)
            return
        variants = [self._variant(choice, v).value for _, v in value.items]
        if all(variant is variants[0] for variant in variants):
            yield from self._spans(variants[0], values)
            return
        said = [
            (
                text(
                    tuple(
                        self._spans(self._variant(choice, v).value, only(values, titles, name, v))
                    )
                ),
                titles,
            )
            for titles, v in value.items
        ]
        yield Span(self.by_size(said), value, name)

    def _variant(self, choice: ast.SelectExpression, value: Value) -> ast.Variant:
        """Return the variant for a value: by its number, its plural category or its key."""
        keys = [value.key] if isinstance(value, Word) else []
        if isinstance(value, Count):
            keys = [str(value.number), self.grammar.category(value.number)]
        named = {self._named(v): v for v in choice.variants}
        return next(
            (named[key] for key in keys if key in named),
            next(v for v in choice.variants if v.default),
        )


def _typed(value: str | int | Value) -> Value:
    if isinstance(value, str):
        return Named(value)
    return Figures(value) if isinstance(value, int) else value
