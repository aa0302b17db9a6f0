"""French: that it says what English says, with the same values, and how it is set.

Plural categories: CLDR, by Babel. Decimal comma and the space before double punctuation: common
practice of French printers (Imprimerie nationale, from memory). Trade words: common practice of
quilters in France, no source.
"""

import re

import pytest
from babel import Locale
from fluent.syntax import FluentParser, ast
from test_german import MESSAGES, entry, found

from publish.measures import CM, Measures
from publish.words import language
from publish.words.values import Count, Length, Named, Several

METRIC = Measures("metric")
ENGLISH = re.compile(r"\b(?:the|and|of|with|from|each|seam|press|sew|cut|pieces?|fold)\b", re.I)
"""Words that no French sentence has."""
NARROW = re.compile(r"[^\s\u00a0\u202f«(][:;?!](?=\s|$)")
"""Double punctuation without a space that does not break before it."""


def test_every_message_is_there_with_the_same_parts_and_no_other_values():
    for name in MESSAGES:
        parts = [{a.id.name for a in entry(code, name).attributes} for code in ("en", "fr")]
        assert parts[0] <= parts[1], name
        assert found("fr", name).values <= found("en", name).values, name


def test_no_line_of_a_message_is_lost():
    for path in sorted(language("fr").folder.glob("*.ftl")):
        body = FluentParser().parse(path.read_text("utf-8")).body
        assert not [one.content for one in body if isinstance(one, ast.Junk)], path.name


def test_no_english_is_left_in_a_message():
    texts = {name: " ".join(found("fr", name).texts) for name in MESSAGES}
    assert [f"{n}: {m[0]}" for n, text in texts.items() if (m := ENGLISH.search(text))] == []


def test_double_punctuation_never_begins_a_line():
    texts = {n: found("fr", n).texts for n in MESSAGES if not n.startswith("term-")}
    assert [f"{n}: {t}" for n, ts in texts.items() for t in ts if NARROW.search(t)] == []
    assert [f"{n}: {t}" for n, ts in texts.items() for t in ts if re.search(" [:;?!]", t)] == []


@pytest.mark.parametrize("count", [0, 1, 2, 5, 11, 21, 101])
def test_plural_categories_are_those_of_cldr(count):
    assert language("fr").grammar.category(count) == Locale.parse("fr").plural_form(count)


def test_lengths_have_a_comma_and_lists_an_and():
    speak = language("fr", METRIC)
    assert speak.value(Length(CM * 5 / 2)) == "2,5 cm"
    assert speak.value(Several((Named("un"), Named("deux"), Named("trois")))) == "un, deux et trois"
    assert speak.value(Count(3, "block")) == "3 blocs"


def test_accents_do_not_count_in_the_order_of_terms():
    assert sorted(["unité", "épingle", "ente"], key=language("fr").grammar.sort_key) == [
        "ente",
        "épingle",
        "unité",
    ]
