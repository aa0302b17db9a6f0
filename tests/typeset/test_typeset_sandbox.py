"""A layout that came with somebody's pattern can arrange the pages and do nothing else.

The ways out that are tried are those published for template engines of this kind (OWASP
Web Security Testing Guide, server-side template injection; from memory), and the methods
of the values that templates are given.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import bulrush
import bulrush_drawn
import pytest

from publish.model.book import LETTER
from publish.model.pattern import Photo
from publish.notes import Note, Severity
from publish.typeset import inspect
from publish.typeset.layout import find
from publish.typeset.pages import Composed, compose

ARTWORK = bulrush_drawn.artwork(LETTER)
FILE = "pattern.photos[0].file"
ESCAPES = [
    f"{{{{ {FILE}.read_text() }}}}",
    f"{{{{ {FILE}.unlink() }}}}",
    f"{{{{ {FILE}.write_text('gone') }}}}",
    f"{{{{ {FILE}.parent }}}}",
    "{{ pattern.photos | map(attribute='file') | first }}",
    f"{{{{ {FILE} | attr('unlink') }}}}",
    "{{ pattern.folder }}",
    "{{ pattern.folder.joinpath('x').touch() }}",
    "{{ '{0.photos[0].file.parent}'.format(pattern) }}",
    "{{ '{0.__class__}'.format(pattern) }}",
    "{{ ''.__class__.__mro__ }}",
    "{{ pattern.__class__.__init__.__globals__ }}",
    "{{ pattern['__class__'] }}",
    "{{ self.__init__.__globals__ }}",
    "{{ plate.__globals__ }}",
    "{{ plate.__closure__ }}",
    "{{ namespace.__init__.__globals__ }}",
    "{{ run.__init__ }}{% macro run() %}{% endmacro %}",
    "{{ paper.__class__('x', 'x', 1, 1) }}",
    "{{ pattern.place('title') }}",
    "{{ manual.figures() }}",
    "{{ settings.update(line=1) }}",
    "{{ settings.clear() }}",
    "{% include '/etc/hostname' %}",
    "{% include '../../kept.txt' %}",
    "{% include 'link.txt' %}",
    "{% include 'tideline/../../../kept.txt' %}",
]
ENDLESS = [
    "{% for a in range(99999) %}{% for b in range(99999) %}{% endfor %}{% endfor %}",
    "{% macro a() %}{{ a() }}{% endmacro %}{{ a() }}",
    "{{ 'x' * 999999999 }}",
    "{{ 9 ** 9999999 }}",
    "{{ " + "(" * 900 + "1" + ")" * 900 + " }}",
    "{{ range(99999999) | list }}",
]


@pytest.fixture
def own(tmp_path: Path) -> Path:
    """Return the folder of a layout that came with a pattern, and a file to leave alone."""
    (tmp_path / "kept.txt").write_text("kept", encoding="utf-8")
    folder = tmp_path / "layouts" / "creek"
    folder.mkdir(parents=True)
    (folder / "layout.yaml").write_text("extends: tideline\n", encoding="utf-8")
    (folder / "link.txt").symlink_to(tmp_path / "kept.txt")
    return folder


def composed(own: Path, template: str) -> tuple[Composed | None, tuple[Note, ...]]:
    """Return the pages of a layout of one template, and what is said of it."""
    (own / "booklet.html").write_text(f"<p>\n{template}</p>", encoding="utf-8")
    folder = own.parents[1]
    photos = (Photo(folder / "kept.txt"),)
    pattern = bulrush.pattern(layout="creek", folder=folder, photos=photos)
    layout, _ = find(pattern, LETTER)
    assert layout is not None
    manual = replace(bulrush.manual(), sections=())
    return compose(layout, pattern, manual, ARTWORK, LETTER, "booklet")


@pytest.mark.parametrize("template", [*ESCAPES, *ENDLESS])
def test_what_a_template_may_not_do_is_an_error_at_its_line(own: Path, template: str) -> None:
    pages, (note,) = composed(own, template)
    assert pages is None and note.code == "T703"
    assert note.place.file.endswith("creek/booklet.html") and note.place.line in (1, 2)
    assert (own.parents[1] / "kept.txt").read_text(encoding="utf-8") == "kept"
    assert sorted(p.name for p in own.parents[1].iterdir()) == ["kept.txt", "layouts"]


@pytest.mark.parametrize(
    ("template", "shown"),
    [
        ("{{ '{:.2f}'.format(settings.line) }}", "14.00"),
        ("{{ pattern.title.upper() }}", "BULRUSH"),
        ("{% for a in 'ab' %}{{ loop.cycle('x', 'y') }}{% endfor %}", "xy"),
        ("{% set n = namespace(a=1) %}{% set n.a = n.a + 1 %}{{ n.a }}", "2"),
        ("{{ settings.type.items() | list | length }}", "14"),
        ("{{ 2 * 3 }} {{ 'ab' * 2 }} {{ 2 ** 3 }}", "6 abab 8"),
    ],
)
def test_what_a_layout_needs_still_works(own: Path, template: str, shown: str) -> None:
    pages, notes = composed(own, template)
    assert notes == () and pages is not None and f"\n{shown}</p>" in pages.html


def test_the_name_of_a_layout_of_the_programs_is_never_taken_over(own: Path) -> None:
    mine = own.rename(own.with_name("tideline"))
    (mine / "layout.yaml").write_text("about: mine\n", encoding="utf-8")
    pattern = bulrush.pattern(folder=mine.parents[1])
    layout, notes = find(pattern, LETTER)
    assert notes == () and layout is not None and layout.folder != mine
    assert [(n.code, n.severity) for n in inspect(pattern)] == [("T719", Severity.WARNING)]


def test_what_a_layout_extends_is_not_taken_over_either(own: Path) -> None:
    false = own.with_name("tideline")
    false.mkdir()
    (false / "layout.yaml").write_text("about: mine\n", encoding="utf-8")
    pattern = bulrush.pattern(layout="creek", folder=own.parents[1])
    layout, notes = find(pattern, LETTER)
    assert notes == () and layout is not None and false not in layout.folders
    assert [n.code for n in inspect(pattern)] == ["T720", "T719"]


def test_a_layout_from_the_patterns_folder_is_used_when_named_and_said(own: Path) -> None:
    folder = own.parents[1]
    assert inspect(bulrush.pattern(folder=folder)) == ()
    (note,) = inspect(bulrush.pattern(layout="creek", folder=folder))
    assert (note.code, note.severity) == ("T720", Severity.INFO)
    assert note.received.endswith("layouts/creek")


@pytest.mark.parametrize(
    "settings",
    [
        "extends: tideline\nstyle: ../../kept.txt\n",
        "extends: tideline\nstyle: link.txt\n",
        "extends: tideline\nfonts: [{family: A, file: ../../kept.txt}]\n",
        "extends: tideline\nfonts: [{family: A, file: /etc/hostname}]\n",
        "extends: tideline\nstyle: [style.css]\n",
        "extends: tideline\nabout: \x07\n",
        "extends: tideline\nabout: 2026-99-99\n",
        "extends: !!python/object/apply:os.getcwd []\n",
        "about: " + "[" * 3000 + "\n",
        "a: &a [x, x]\nb: &b [*a, *a]\nextends: [*b, *b]\n",
    ],
)
def test_settings_that_reach_outside_or_cannot_be_read_are_told(own: Path, settings: str) -> None:
    (own / "layout.yaml").write_text(settings, encoding="utf-8")
    layout, notes = find(bulrush.pattern(layout="creek", folder=own.parents[1]), LETTER)
    assert layout is None and {n.code for n in notes} == {"T702"}
    assert all(n.place.file.endswith("creek/layout.yaml") for n in notes)
