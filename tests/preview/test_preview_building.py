"""One build of the page, in this process; setting a booklet is stood in for."""

from types import SimpleNamespace

import pytest
import stand_ins
from helpers import changed, pattern

from publish.preview import building
from publish.preview.building import Choice, Doing, Ended, Leaves, Picture
from publish.read import SMALLEST


@pytest.fixture
def told(tmp_path, monkeypatch):
    """Return a function that builds a text and returns what was told; each title is a page."""

    def print_editions(work, papers, only, progress, store, size):
        assert only == "booklet"
        told.asked = (papers, size, work.pattern.layout)
        made = SimpleNamespace(pdf=stand_ins.pdf(0.2, len(work.pattern.title) / 20))
        work.printed = (SimpleNamespace(edition=made),)

    monkeypatch.setattr(building, "print_editions", print_editions)

    def told(text, choice=Choice(), known=()):  # noqa: B008
        messages = []
        building.build(messages.append, pattern(tmp_path, text), choice, known)
        return messages

    return told


def test_a_build_tells_its_steps_its_pages_and_how_it_ended(told):
    messages = told(SMALLEST)
    assert isinstance(messages[0], Doing) and messages[0].said.startswith("read: ")
    assert isinstance(messages[-1], Ended) and messages[-1].good and not messages[-1].report.errors
    (leaves,) = (m for m in messages if isinstance(m, Leaves))
    shown = [m.key for m in messages if isinstance(m, Picture)]
    assert shown == [page.key for page in leaves.pages] and leaves.changed == ()
    assert told.asked[:2] == (["letter"], "")

    after = told(changed("title: Bulrush", "title: Reedmace"), known=tuple(shown))
    (leaves,) = (m for m in after if isinstance(m, Leaves))
    assert leaves.changed == (1,), "the page with the title alone"
    assert [m.key for m in after if isinstance(m, Picture)] == [leaves.pages[1].key]


def test_what_is_chosen_is_built(told):
    offer = next(m.offer for m in told(SMALLEST) if isinstance(m, Doing) and m.offer)
    (size, _), *_ = offer.sizes
    assert ("a4", "A4") in offer.papers and {"tideline", "washland"} <= {
        k for k, _ in offer.layouts
    }
    told(SMALLEST, Choice("a4", size, "washland"))
    assert told.asked == (["a4"], size, "washland")
    told(SMALLEST, Choice("a4", "gone", ""))
    assert told.asked[:2] == (["a4"], ""), "a size that was taken out since"


def test_findings_end_a_build(told):
    ended = told(changed("folds: 8", "folds: 7"))[-1]
    assert isinstance(ended, Ended) and not ended.good and ended.report.errors and not ended.fault


def test_a_mistake_of_the_programs_ends_it_too(told, monkeypatch):
    def broken(*values):
        raise LookupError("unknown <encoding>: foo")

    monkeypatch.setattr(building.pipeline, "proceed", broken)
    ended = told(SMALLEST)[-1]
    assert not ended.good and ended.fault == "LookupError: unknown <encoding>: foo"
