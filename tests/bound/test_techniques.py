"""What several patterns tell alike is told once, and nothing else is lost on the way."""

import pytest

from publish.bound import once
from publish.bound.techniques import techniques
from publish.model.words import (
    Box,
    Bullets,
    FigureSpec,
    Paragraph,
    Row,
    Section,
    Step,
    Steps,
    Table,
)
from publish.words import language


def section(key, *texts, parent=None):
    steps = tuple(Step(f"{key}-{n}", n, text) for n, text in enumerate(texts, 1))
    return Section(key, key.capitalize(), (Steps(steps),), parent=parent)


def texts(sections):
    return [s.text for one in sections for b in one.blocks for s in getattr(b, "items", ())]


def told(*manuals):
    """Return what is told once, and each pattern's texts."""
    found = techniques([tuple(m) for m in manuals], language())
    return texts(found.sections()), [texts(found.referring(tuple(m))) for m in manuals]


REFERENCE = "Work steps {0} of *Binding* on page [](#techniques--binding)."


def test_a_run_that_two_tell_alike_is_told_once():
    once_, (one, two) = told(
        [section("binding", "Trim.", "Press.", "Fold.", "Sew.")],
        [section("binding", "Square up.", "Press.", "Fold.", "Sew.")],
    )
    assert once_ == ["Press.", "Fold.", "Sew."]
    assert one == ["Trim.", REFERENCE.format("1 to 3")]
    assert two == ["Square up.", REFERENCE.format("1 to 3")]


def test_a_single_step_stays_where_it_is():
    once_, parts = told([section("binding", "A.", "Press.")], [section("binding", "B.", "Press.")])
    assert (once_, parts) == ([], [["A.", "Press."], ["B.", "Press."]])


def test_what_one_pattern_alone_says_stays():
    once_, parts = told([section("binding", "A.", "B.")], [section("binding", "C.", "D.")])
    assert once_ == [] and parts == [["A.", "B."], ["C.", "D."]]


def test_the_same_words_of_another_chapter_are_another_step():
    once_, _ = told([section("binding", "Press.", "Fold.")], [section("sleeve", "Press.", "Fold.")])
    assert once_ == []


def test_a_part_of_a_run_is_referred_to_by_its_numbers():
    once_, (_, _, three) = told(
        [section("binding", "A.", "B.", "C.", "D.")],
        [section("binding", "A.", "B.", "C.", "D.")],
        [section("binding", "B.", "C.", "Own.")],
    )
    assert once_ == ["A.", "B.", "C.", "D."]
    assert three == [REFERENCE.format("2 and 3"), "Own."]


def test_an_order_of_its_own_is_not_told_by_numbers_that_jump():
    once_, (one, two) = told(
        [section("binding", "A.", "B.", "C.", "D.")],
        [section("binding", "C.", "D.", "A.", "B.")],
    )
    assert once_ == ["A.", "B.", "C.", "D."]
    assert two == [REFERENCE.format("3 and 4"), REFERENCE.format("1 and 2")]
    assert one == [REFERENCE.format("1 to 4")]


@pytest.mark.parametrize(
    "change",
    [
        {"right": "Flat."},
        {"tip": "Slow."},
        {"caution": "Hot."},
        {"figure": FigureSpec("f", "fold")},
    ],
)
def test_steps_that_differ_in_anything_are_not_alike(change):
    other = Section(
        "binding", "Binding", (Steps((Step("a", 1, "A.", **change), Step("b", 2, "B."))),)
    )
    once_, _ = told([section("binding", "A.", "B.")], [other])
    assert once_ == []


def test_sections_by_size_belong_to_their_chapter():
    once_, (one, _) = told(
        [section("borders-mini", "A.", "B.", parent="borders")],
        [section("borders-throw", "A.", "B.", parent="borders")],
    )
    assert once_ == ["A.", "B."] and one[0].endswith("(#techniques--borders).")


def tools(*items):
    return Section("tools", "Tools", (Paragraph("**To cut**"), Bullets(items, check=True)))


def test_a_tool_says_who_asks_for_it_unless_all_do():
    made = once.tools(
        [("Sedge", {"tools": tools("Iron", "Ruler")}), ("Rush", {"tools": tools("Iron", "Hoop")})],
        language(),
    )
    assert made.blocks == (
        Paragraph("**To cut**"),
        Bullets(("Iron", "Ruler (*Sedge*)", "Hoop (*Rush*)"), check=True),
    )


def test_cautions_are_there_once_and_the_last_word_stays_last():
    a, b, last = (Box("caution", t, (t,)) for t in ("A", "B", "Before all of this"))
    sections = [Section("cautions", "Safely", (one, last)) for one in (a, b)]
    made = once.cautions(
        [(title, {"cautions": s}) for title, s in zip("SR", sections, strict=True)]
    )
    assert made.blocks == (a, b, last)


def test_first_words_are_shared_or_stay():
    shared, own = Box("note", "Seams", ("1/4 in",)), Box("note", "Felt", ("No seams",))
    signs = [Table("s", "Signs", ("Sign", "Meaning"), (Row((sign, "x")),)) for sign in "ba"]
    named = [
        ("S", {once.BEFORE: Section(once.BEFORE, "Before", (shared, own, signs[0]))}),
        ("R", {once.BEFORE: Section(once.BEFORE, "Before", (shared, signs[1]))}),
    ]
    made = once.before(named)
    assert made.blocks[0] == shared
    assert [r.cells[0] for r in made.blocks[1].rows] == ["a", "b"]
    rest = once.rest_of_before(named[0][1][once.BEFORE], named, language())
    assert rest.blocks[1:] == (own,)
    assert "#before-you-start" in rest.blocks[0].text


@pytest.mark.parametrize(
    ("pages", "said"),
    [([], ""), ([3], "3"), ([3, 5, 6, 7, 9], "3, 5–7, 9"), ([1, 2], "1–2")],
)
def test_pages_that_follow_each_other_are_put_together(pages, said):
    assert once.spans(pages) == said
