"""Patterns in several languages: which is read, whose texts serve, what is missing.

Codes of languages are those of RFC 5646; that a variant falls back on the language it is a
variant of is the lookup of RFC 4647, section 3.4.
"""

import pytest

from publish import read

PATTERN = """\
title: {title}
languages: [en, de]
fabrics:
  linen: {{name: {{en: Pale linen, de: Helles Leinen}}, colour: "#f4efe6"}}
  moss: {{name: Deep moss, colour: "#4f6b4a"}}
blocks:
  plain: {{ground: {{rows: [[linen, moss], [moss, linen]]}}}}
sizes:
  mini: {{block: plain, block_size: 8 in, columns: 2, rows: 2}}
"""


def loaded(tmp_path, text, language=""):
    path = tmp_path / "pattern.yaml"
    path.write_text(text, encoding="utf-8")
    return read.load(path, language)


def found(notes):
    return [(n.code, n.place.path) for n in notes]


@pytest.mark.parametrize(
    ("asked", "name", "title"),
    [
        ("", "Pale linen", "Bulrush"),
        ("en", "Pale linen", "Bulrush"),
        ("en-GB", "Pale linen", "Bulrush"),
        ("de", "Helles Leinen", "Rohrkolben"),
    ],
)
def test_a_pattern_is_read_in_one_language(tmp_path, asked, name, title):
    text = PATTERN.format(title="{en: Bulrush, de: Rohrkolben}")
    pattern, notes, _ = loaded(tmp_path, text, asked)
    assert not notes
    assert (pattern.title, pattern.fabrics["linen"].name) == (title, name)
    assert pattern.language == (asked or "en")
    assert pattern.fabrics["moss"].name == "Deep moss"
    assert pattern.texts["title.de"] == "Rohrkolben"


def test_a_text_that_is_missing_is_found_in_whichever_language(tmp_path):
    for asked in ("en", "de"):
        pattern, notes, _ = loaded(tmp_path, PATTERN.format(title="{en: Bulrush}"), asked)
        assert pattern is None
        assert ("R177", "title") in found(notes)


def test_a_language_that_is_not_there_is_named(tmp_path):
    _, notes, _ = loaded(tmp_path, PATTERN.format(title="{en: Bulrush, de: R, dee: R}"))
    assert found(notes) == [("R125", "title.dee")]
    _, notes, _ = loaded(
        tmp_path,
        "languages: [en, nl]\n" + PATTERN.format(title="B").replace("languages: [en, de]\n", ""),
    )
    assert ("R125", "languages.1") in found(notes)


def test_names_serve_in_every_language_and_sentences_do_not(tmp_path):
    text = PATTERN.format(title="Bulrush") + "publication: {blurb: Reeds., edition: Second}\n"
    pattern, notes, _ = loaded(tmp_path, text, "de")
    assert pattern.title == "Bulrush"
    assert found(notes) == [("R178", "publication.blurb"), ("R178", "publication.edition")]
    alone = text.replace("languages: [en, de]", "languages: [de]")
    assert not loaded(tmp_path, alone)[1]


def test_each_language_is_held_against_the_form(tmp_path):
    _, notes, _ = loaded(tmp_path, PATTERN.format(title=f"{{en: Bulrush, de: {'R' * 61}}}"))
    assert found(notes) == [("R127", "title.de")]
    _, notes, _ = loaded(tmp_path, PATTERN.format(title="{en: Bulrush, de: [R]}"))
    assert ("R112", "title.de") in found(notes)


def test_the_studio_says_the_languages_and_its_texts_in_each(tmp_path):
    (tmp_path / "studio.yaml").write_text(
        "languages: [en, de]\npublication: {licence: {en: Sew., de: Nähen.}}\n", encoding="utf-8"
    )
    text = PATTERN.format(title="B").replace("languages: [en, de]\n", "")
    pattern, notes, _ = loaded(tmp_path, text, "de")
    assert not notes
    assert pattern.languages == ("en", "de")
    assert pattern.publication.licence == "Nähen."
    assert pattern.texts["publication.licence.en"] == "Sew."
    own, _, _ = loaded(tmp_path, "languages: [de]\n" + text)
    assert own.languages == ("de",)
    assert own.publication.licence == "Nähen."


def test_the_first_edition_is_named_by_the_language(tmp_path):
    pattern, _, _ = loaded(tmp_path, PATTERN.format(title="Bulrush"))
    assert pattern.publication.edition == "First edition"
