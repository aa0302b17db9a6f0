"""PDFs are set again only where what they show has changed, and are the same as made anew.

Also the content that results are told apart by: what a maker can see, and nothing else.
"""

from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

import numpy as np
import pytest
from shapely.geometry import Point
from small import CARRIES, MOTIF, text, written

from publish import editions
from publish.content import content
from publish.editions import Job
from publish.kept import Store
from publish.model.book import PAPERS
from publish.notes import Place
from publish.pipeline import prepare, print_jobs
from publish.surd import exact

TOP = "a: {block: carries, block_size: 9 in, motif_size: 7 in}"
TOLD = 'steps:\n  - {step: quilting-baste, text: "Baste with safety pins a hand apart%s"}\n'
JOBS = tuple(Job(name, PAPERS["letter"]) for name in ("booklet", "templates"))


def printed(path, store):
    """Return the PDFs of a pattern by name, and its findings with their lines."""
    work = prepare(path)
    print_jobs(work, JOBS, store=store)
    return {e.name: e.pdf for e in work.editions}, [(n.code, n.place) for n in work.report]


def test_only_what_shows_a_change_is_set_again(tmp_path, monkeypatch):
    made = []
    monkeypatch.setattr(
        editions,
        "print_one",
        lambda book, artwork, job, before=editions.print_one: (
            made.append(job.name) or before(book, artwork, job)
        ),
    )
    path, store = written(tmp_path, TOP, CARRIES, MOTIF + TOLD % "."), Store(tmp_path / "kept")
    first, _ = printed(path, store)
    assert made == ["booklet", "templates"]
    assert printed(path, store)[0] == first and made == ["booklet", "templates"]
    path.write_text("\n\n" + text(TOP, CARRIES, MOTIF + TOLD % ", all over."), encoding="utf-8")
    second, notes = printed(path, store)
    assert made == ["booklet", "templates", "booklet"]
    assert second["templates-letter"] == first["templates-letter"]
    assert (second, notes) == printed(path, Store())


@dataclass(frozen=True)
class Thing:
    value: object
    aside: object = None


@pytest.mark.parametrize(
    ("one", "two"),
    [
        (1, "1"),
        ("ab", ("a", "b")),
        (("a", "bc"), ("ab", "c")),
        (Fraction(1, 2), 0.5),
        (exact(Fraction(1), Fraction(2)), exact(Fraction(2), Fraction(1))),
        (Point(1, 2), Point(2, 1)),
        ({"a": 1, "b": 2}, {"b": 2, "a": 1}),
        (np.array([1, 2]), np.array([1.0, 2.0])),
        (Thing(Thing(1)), Thing(Thing(2))),
        (None, False),
    ],
)
def test_other_content_is_told_apart(one, two):
    assert content(one) != content(two)
    assert content(one) == content(one)


def test_what_does_not_matter_is_passed_over(tmp_path):
    here, there = Place("a.yaml", 3, 1, "sizes.a"), Place("b/a.yaml", 9, 7, "sizes.a")
    assert content(Thing(here)) == content(Thing(there))
    assert content(Thing(1, 2), passing={Thing: ("aside",)}) == content(
        Thing(1, 3), passing={Thing: ("aside",)}
    )
    assert content({"a", "b", "c"}) == content({"c", "b", "a"})
    file = tmp_path / "drawing.svg"
    file.write_text("<svg/>")
    before = content(Path(file))
    file.write_text("<svg></svg>")
    assert content(Path(file)) != before


def test_what_is_not_known_is_never_passed_over():
    with pytest.raises(TypeError, match="function"):
        content(Thing(lambda: None))
