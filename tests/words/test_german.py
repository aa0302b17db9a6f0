"""German: that it says what English says, with the same values, and how it inflects.

Plural categories: CLDR, by Babel. Decimal comma: DIN 1333, from memory. Order of umlauts: DIN
5007-1, from memory. Trade words: common practice of German quilters, no source.
"""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from babel import Locale
from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from publish.measures import CM, Measures
from publish.words import language
from publish.words.values import (
    Count,
    Length,
    Letter,
    Named,
    Purchase,
    Rectangle,
    Several,
    Stitch,
    Value,
    Word,
    said,
    side_by_side,
)

METRIC = Measures("metric")
ENGLISH = re.compile(r"\b(?:the|and|of|with|from|each|seam|press|sew|cut|pieces?|fold)\b", re.I)
"""Words that no German sentence has."""


class _Found(Visitor):
    def __init__(self) -> None:
        self.values: set[str] = set()
        self.others: set[str] = set()
        self.texts: list[str] = []

    def visit_VariableReference(self, node: ast.VariableReference) -> None:  # noqa: N802
        self.values.add(node.id.name)

    def visit_TermReference(self, node: ast.TermReference) -> None:  # noqa: N802
        self.others.add(f"-{node.id.name}")

    def visit_MessageReference(self, node: ast.MessageReference) -> None:  # noqa: N802
        self.others.add(node.id.name)

    def visit_TextElement(self, node: ast.TextElement) -> None:  # noqa: N802
        self.texts.append(node.value)


def entry(code: str, name: str) -> ast.Message | ast.Term:
    found = FluentParser(with_spans=False).parse_entry(language(code).sources[name])
    assert isinstance(found, ast.Message | ast.Term), name
    return found


def found(code: str, name: str) -> _Found:
    """Return what a message names, with what the messages in it name."""
    seen: set[str] = set()
    visitor, left = _Found(), [name]
    while left:
        one = left.pop()
        if one not in seen:
            seen.add(one)
            visitor.visit(entry(code, one))
            left += visitor.others
    return visitor


MESSAGES = [name for name in language("en").sources if not name.startswith("-")]


def test_every_message_is_there_with_the_same_values_and_parts() -> None:
    for name in MESSAGES:
        parts = [{a.id.name for a in entry(code, name).attributes} for code in ("en", "de")]
        assert parts[0] <= parts[1], name
        assert found("en", name).values == found("de", name).values, name


def test_no_line_of_a_message_is_lost() -> None:
    folder = language("de").folder
    junk = [
        f"{path.name}: {one.content}"
        for path in sorted(folder.glob("*.ftl"))
        for one in FluentParser().parse(path.read_text("utf-8")).body
        if isinstance(one, ast.Junk)
    ]
    assert junk == []


def test_no_english_is_left_in_a_message() -> None:
    texts = {name: " ".join(found("de", name).texts) for name in MESSAGES}
    assert [f"{n}: {m[0]}" for n, text in texts.items() if (m := ENGLISH.search(text))] == []


@pytest.mark.parametrize("count", [0, 1, 2, 5, 11, 21, 101])
def test_plural_categories_are_those_of_cldr(count: int) -> None:
    assert language("de").grammar.category(count) == Locale("de").plural_form(count)


@pytest.mark.parametrize(
    ("value", "words"),
    [
        (Length(Fraction(33, 2) * CM), "16,5 cm"),
        (Rectangle(40 * CM, 40 * CM), "40 cm × 40 cm"),
        (Rectangle(40 * CM, Fraction(61, 2) * CM), "40 cm × 30,5 cm"),
        (Stitch(Fraction(1, 4) * CM), "2,5 mm"),
        (Purchase(Fraction(36), 120 * CM), "1,20 m"),
        (Count(1, "strip"), "1 Streifen"),
        (Count(3, "block"), "3 Blöcke"),
        (Several((Letter("A"), Letter("B"), Letter("C"))), "**A**, **B** und **C**"),
        (Several((Named("4"), Named("6")), "or"), "4 oder 6"),
        (
            side_by_side({"Mini": Length(40 * CM), "Decke": Length(50 * CM)}),
            "40 cm für **Mini** und 50 cm für **Decke**",
        ),
    ],
)
def test_values_are_told_as_germans_write_them(value: Value, words: str) -> None:
    assert language("de", METRIC).value(value) == words


def test_names_have_their_plural_inside_names() -> None:
    block = said("name-block-of", block=Named("schilf"))
    sized = said("name-sized", place=Word("small"), number=Count(1), name=block)
    speak = language("de", METRIC)
    assert speak.value(said("some", count=Count(1), name=sized)) == "1 Block „schilf“ (klein)"
    assert speak.value(said("some", count=Count(4), name=sized)) == "4 Blöcke „schilf“ (klein)"
    assert speak.value(Count(8, "wedge"), "dative") == "8 Keilen"


def test_umlauts_are_sorted_as_their_vowels() -> None:
    words = ["Zickzack", "Ärmel", "Block", "ease", "Öse", "Naht"]
    assert sorted(words, key=language("de").grammar.sort_key) == [
        "Ärmel",
        "Block",
        "ease",
        "Naht",
        "Öse",
        "Zickzack",
    ]
