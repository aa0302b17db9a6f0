"""Messages: that each can be read and said, and what the evaluator makes of values.

Syntax: Project Fluent, Syntax Guide (from memory); plural categories: CLDR, by Babel.
"""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from babel import Locale
from fluent.syntax import FluentParser, ast

from publish.operations import (
    applique,
    binding,
    binding_strips,
    borders,
    flat,
    folding,
    fusing,
    layering,
    marking,
    mitres,
    placing,
    preparing,
    quilting,
    sleeve,
    trimming,
)
from publish.operations.operation import Operation
from publish.words import language
from publish.words.language import Language
from publish.words.values import (
    BySize,
    Count,
    Length,
    Letter,
    Rectangle,
    Said,
    Several,
    Word,
    said,
    side_by_side,
    text,
)

TRADES = (
    applique,
    binding,
    binding_strips,
    borders,
    flat,
    folding,
    fusing,
    layering,
    marking,
    mitres,
    placing,
    preparing,
    quilting,
    sleeve,
    trimming,
)


def made(source: str) -> Language:
    """Return a language whose only messages are these."""
    entries = re.split(r"^(?=-?[a-z][\w-]* =)", source, flags=re.MULTILINE)
    found = {e.split(" =")[0]: e for e in entries if e.strip()}
    return Language("en", language().grammar, language().folder, found)


def test_every_message_can_be_read() -> None:
    speak = language()
    assert [
        name for name in speak.sources if not speak.has(name) and not name.startswith("-")
    ] == []


def test_nothing_is_left_over_when_a_message_is_read() -> None:
    """A line that begins with a sign of the syntax ends a message before its time."""
    folder = language().folder
    junk = [
        f"{path.name}: {entry.content}"
        for path in sorted(folder.glob("*.ftl"))
        for entry in FluentParser().parse(path.read_text("utf-8")).body
        if isinstance(entry, ast.Junk)
    ]
    assert junk == []


def test_every_operation_has_its_message() -> None:
    speak = language()
    verbs = [
        kind
        for trade in TRADES
        for kind in vars(trade).values()
        if isinstance(kind, type)
        and issubclass(kind, Operation)
        and kind.__module__ == trade.__name__
        and not kind.__name__.startswith("_")
    ]
    lacking = [
        kind.__name__
        for kind in verbs
        if not any(m.startswith(kind.message) for m in speak.sources) or not kind.message
    ]
    assert lacking == []


@pytest.mark.parametrize("count", [0, 1, 2, 3, 5, 11, 21, 100])
def test_plural_categories_are_those_of_the_cldr(count: int) -> None:
    assert language().grammar.category(count) == Locale.parse("en").plural_form(count)


def test_a_value_keeps_its_type_in_its_span() -> None:
    spans = made("cut = Cut { $size } wide.\n").say("cut", {"size": Length(Fraction(5, 2))})
    assert [s.value for s in spans] == [None, Length(Fraction(5, 2)), None]
    assert text(spans) == "Cut 2 1/2 in (6.4 cm) wide."


def test_a_choice_goes_by_number_category_or_word() -> None:
    speak = made(
        "strips = { $n ->\n    [0] none\n    [one] { $n } strip\n   *[other] { $n } strips\n}\n"
        "way = { $to ->\n    [left] to the left\n   *[right] to the right\n}\n"
    )
    said_ = [speak.text("strips", {"n": Count(n)}) for n in (0, 1, 2, 13)]
    assert said_ == ["none", "one strip", "two strips", "13 strips"]
    assert speak.text("way", {"to": Word("left")}) == "to the left"
    assert speak.text("way", {"to": Word("up")}) == "to the right"


def test_what_differs_is_told_side_by_side() -> None:
    each = {"Mini": Count(1), "Pillow": Count(1), "Throw": Count(9)}
    value = side_by_side(each)
    speak = made(
        "n = { $n } in all.\nm = { $n ->\n    [one] a block\n   *[other] { $n } blocks\n}\n"
    )
    assert isinstance(value, BySize)
    assert speak.text("n", {"n": value}) == (
        "one for the **Mini** and **Pillow** and nine for the **Throw** in all."
    )
    assert speak.text("m", {"n": value}) == (
        "a block for the **Mini** and **Pillow** and nine blocks for the **Throw**"
    )
    assert side_by_side({"Mini": Count(1), "Throw": Count(1)}) == Count(1)


def test_a_choice_that_all_sizes_make_alike_is_made_once() -> None:
    value = side_by_side({"Mini": Count(3), "Throw": Count(7)})
    speak = made("m = { $n ->\n    [one] A strip.\n   *[other] { $n } strips.\n}\n")
    assert speak.text("m", {"n": value}) == (
        "three for the **Mini** and seven for the **Throw** strips."
    )


def test_messages_lists_and_functions() -> None:
    speak = made(
        "name = inner border\ntail = Leave { A($t) } tail of { SHORT($t) }.\n"
        "the = { CAPITAL($what) }: { $letters }.\n"
    )
    assert speak.text("tail", {"t": Length(Fraction(8))}) == (
        "Leave an 8 in (20.3 cm) tail of 8 in."
    )
    values = {"what": said("name"), "letters": Several((Letter("A"), Letter("B")))}
    assert speak.text("the", values) == "Inner border: **A** and **B**."
    assert speak.value(Rectangle(Fraction(2), Fraction(2))) == "2 in (5.1 cm) square"


@pytest.mark.parametrize(
    ("source", "values"),
    [("a = { $gone }\n", {}), ("a = { gone }\n", {}), ("a = { GONE($n) }\n", {"n": Count(1)})],
)
def test_what_is_not_there_is_a_mistake_of_ours(source: str, values: dict) -> None:
    with pytest.raises(LookupError):
        made(source).say("a", values)
    with pytest.raises(LookupError):
        language().say("no-such-message", {})
    assert Said("a") == said("a")


DIALECT = {
    r"\btowards\b": "toward",
    r"\bcloth\b": "fabric",
    r"\bback[- ]stitch": "backstitch",
    r"\bround the\b": "around the",
    r"\bselvedge": "selvage",
    r"\bcushion": "pillow",
    r"\bwadding": "batting",
    r"\d %": "no space before %",
    r"\bcolor\b": "colour",
}
"""House style: Canadian spelling with North American trade words."""


SECTIONS = (
    "before",
    "book",
    "figures",
    "tools",
    "care",
    "cautions",
    "colour",
    "materials",
    "overview",
    "templates",
    "terms",
)
"""What stands before and after the chapters, which still has some words of its own."""


def test_messages_keep_the_house_style() -> None:
    folder = language().folder
    apart = ["\n" + (folder / f"{name}.ftl").read_text("utf-8") for name in SECTIONS]
    slips = [
        f"{name}: {right}"
        for name, source in language().sources.items()
        if not any(f"\n{name} =" in text for text in apart)
        for wrong, right in DIALECT.items()
        if re.search(wrong, source, re.IGNORECASE)
    ]
    assert slips == []
