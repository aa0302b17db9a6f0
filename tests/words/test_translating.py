"""What `foldwork words` lists: messages that a language lacks, or that are older than English."""

import json
import shutil

import pytest

from publish import translating
from publish.translating import digest, to_translate


@pytest.fixture
def french(tmp_path, monkeypatch):
    """Return a copy of a language's folder that may be changed."""
    home = translating.folder_of("fr")
    english = translating.folder_of("en")
    shutil.copytree(home, tmp_path / "fr")
    monkeypatch.setattr(
        translating, "folder_of", lambda code: tmp_path / "fr" if code == "fr" else english
    )
    translating.record("fr")
    return tmp_path / "fr"


@pytest.mark.parametrize("code", ["de", "fr"])
def test_nothing_is_left_to_translate(code):
    assert [entry.name for entry in to_translate(code)] == []


def test_a_message_that_is_missing_is_listed_with_its_english(french):
    path = french / "sleeve.ftl"
    path.write_text(path.read_text("utf-8").replace("sew-label =", "sew-another ="), "utf-8")
    (entry,) = to_translate("fr")
    assert (entry.name, entry.file, entry.own) == ("sew-label", "sleeve.ftl", "")
    assert "embroider a label" in entry.english
    told = "\n".join(translating.lines((entry,)))
    assert told.startswith("# sleeve.ftl\n\nmissing:\nsew-label = Write or embroider")


def test_a_message_whose_english_has_changed_is_out_of_date(french):
    path = french / translating.MADE_FROM
    kept = json.loads(path.read_text("utf-8"))
    kept["edition-first"] = digest("edition-first = The first")
    path.write_text(json.dumps(kept), "utf-8")
    (entry,) = to_translate("fr")
    assert (entry.name, entry.own.strip()) == ("edition-first", "edition-first = Première édition")
    translating.record("fr")
    assert not to_translate("fr")


def test_how_lines_are_broken_does_not_count():
    assert digest("a = one\n    two\n") == digest("a = one two")
    assert digest("a = one two") != digest("a = one, two")
