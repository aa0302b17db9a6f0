"""A pattern in several languages: one set for each, with the same numbers, and pages that hold.

That texts grow by 40 % when English is translated: IBM's guidance on translated text (its table
gives 30 % and more for paragraphs, 100 % for single words), from memory.
"""

import dataclasses
import re

import pytest
from helpers import PROJECTS
from shared import shared

from publish import deliver, draw, pipeline, read, words
from publish.model.book import A4
from publish.typeset import typeset
from publish.words import language
from publish.words.language import Language

NAME = "lantern"


@shared
def told(code: str):
    """Return the demo prepared in one language; it must be without findings."""
    work = pipeline.prepare(PROJECTS / NAME, language=code)
    assert not list(work.report), code
    return work


def numbers(code):
    work = told(code)
    found = deliver.numbers(work.pattern, work.sizes, work.drafts, work.plans)
    return strip(found)


def strip(found):
    """Return what is counted and measured, without names in words."""
    if isinstance(found, dict):
        named = ("title", "edition", "name", "note", "batting", "package", "called")
        return {k: strip(v) for k, v in found.items() if k not in named}
    return [strip(v) for v in found] if isinstance(found, list) else found


def tokens(text):
    return set(re.findall(r"[^\W\d_]{2,}", text.lower()))


def plain(code):
    """Return the words of a language's messages, without names of values and keys."""
    found = set()
    for source in language(code).sources.values():
        body = source.partition("=")[2]
        body = re.sub(r"^ +\.\w+ =|\[[\w-]+\]|\{[^{}\[]*(?:\}|->)", " ", body, flags=re.M)
        found |= tokens(body)
    return found


@pytest.mark.parametrize("code", ["de", "fr"])
def test_all_editions_have_the_same_numbers(code):
    assert numbers(code) == numbers("en")


@pytest.mark.parametrize("code", ["de", "fr"])
def test_no_english_word_is_left_in_figures_and_text(code):
    work = told(code)
    made = (work.pattern, work.sizes, work.drafts, work.plans, work.manual, A4)
    artwork, notes = draw.draw(*made)
    assert not notes
    svg = [f"{f.svg} {f.alt}" for f in artwork.figures.values()]
    svg += [f"{s.svg} {s.alt} {s.title}" for s in artwork.pages]
    texts = [re.sub(r"<[^>]*>", " ", t) for t in svg]
    texts += [repr(s.blocks) for s in work.manual.sections]
    shown = set()
    for text in texts:
        shown |= {w for w in re.findall(r"[^\W\d_]{4,}", text.lower()) if w.isalpha()}
    own = tokens(" ".join(map(str, work.pattern.texts.values())))
    keys = tokens(repr(work.manual.figures()) + repr([type(b) for b in ()]))
    labels = set().union(*(tokens(t) for t in texts[: len(svg)]))
    left = (labels & plain("en")) - plain(code) - own - tokens(work.pattern.title) - keys
    # units are called there by the names that the draft has for them
    assert left - {"svg", "lantern", "studio", "patch"} == set()
    assert shown


class Longer(Language):
    """English with every word of its messages 40 % longer."""

    def _spans(self, pattern, values):
        for span in super()._spans(pattern, values):
            if span.value is None:
                yield dataclasses.replace(span, text=re.sub(r"[a-z]{3,}", _longer, span.text))
            else:
                yield span


def _longer(match):
    word = match[0]
    return word + (word * 2)[: round(len(word) * 0.4)]


@pytest.mark.thorough
def test_pages_hold_with_words_that_are_longer(monkeypatch):
    plain_language = language

    def longer(code="en", measures=None):
        found = plain_language(code, measures) if measures else plain_language(code)
        return Longer(found.code, found.grammar, found.folder, found.sources, found.measures)

    monkeypatch.setattr(words, "language", longer)
    monkeypatch.setattr("publish.model.pattern.language", longer)
    work = pipeline.prepare(PROJECTS / NAME)
    made = (work.pattern, work.sizes, work.drafts, work.plans, work.manual, A4)
    artwork, notes = draw.draw(*made)
    assert not notes
    edition, notes = typeset(work.pattern, work.manual, artwork, A4)
    assert edition is not None
    assert not notes


def test_files_carry_the_language_where_there_are_several():
    pattern, _, _ = read.load(PROJECTS / NAME)
    assert pattern.languages == ("en", "de", "fr")
