"""Steps in the designer's own voice: rewritten, put in, taken out, moved."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
import write_made as w
from hypothesis import given, settings
from hypothesis import strategies as st
from rehearsed import write
from write_voiced import PLACES, every, insert, keys, plain, quiet, rewrite, section, voiced

from publish.model.pattern import StepChange
from publish.model.words import Steps
from publish.notes import Severity
from publish.write import step_list
from publish.write.collect import text as all_text
from publish.write.order import steps_of


def test_without_changes_the_booklet_is_as_generated() -> None:
    assert quiet().sections == plain()


def test_a_step_is_rewritten_and_keeps_what_is_not_said() -> None:
    old = every(plain())["folding-half-8"]
    new = every(quiet(rewrite("folding-half-8", "Fold it like a letter.")).sections)[old.key]
    assert new == replace(old, text="Fold it like a letter.", own=True)


def test_a_tip_goes_and_a_picture_goes() -> None:
    old = every(plain())["folding-square-star"]
    assert old.tip and old.figure is not None
    change = rewrite(old.key, tip="", caution="Mind the *starch*.", figure=False)
    manual = quiet(change)
    new = every(manual.sections)[old.key]
    assert (new.tip, new.caution, new.figure) == ("", "Mind the *starch*.", None)
    assert old.figure.key not in {f.key for f in manual.figures()}


def test_steps_come_before_and_after_in_the_order_of_the_file() -> None:
    manual = quiet(
        insert("folding-half-8", "One.", tip="Tea helps."),
        insert("folding-half-8", "Two."),
        insert("folding-half-8", "Zero.", before=True),
    )
    found = list(steps_of(section(manual, "folding")))
    at = [s.key for s in found].index("folding-half-8")
    assert [s.text for s in found[at - 1 : at + 3] if s.key != "folding-half-8"] == [
        "Zero.",
        "One.",
        "Two.",
    ]
    assert found[at + 1].tip == "Tea helps."
    assert len({s.key for s in found}) == len(found)


@pytest.mark.parametrize("name", ["three sizes", "one size", "patchwork", "two motifs"])
def test_numbers_have_no_gaps_after_any_change(name: str) -> None:
    found = [s.key for s in plain(name) for s in steps_of(s)]
    changes = [StepChange("remove", key) for key in found[::3]]
    changes += [insert(key, "Rest a while.") for key in found[1::3]]
    changes += [StepChange("move", found[2], found[1], before=True)]
    for each in quiet(*changes, name=name).sections:
        assert [s.number for s in steps_of(each)] == list(range(1, 1 + len(list(steps_of(each)))))


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_any_changes_leave_every_other_step_as_it_was(data: st.DataObject) -> None:
    before = every(plain())
    names = st.sampled_from(sorted(before))
    gone = data.draw(st.sets(names, max_size=5))
    moved = data.draw(st.sets(names, max_size=3)) - gone
    beside = data.draw(names.filter(lambda k: k not in gone | moved))
    changes = [StepChange("remove", k) for k in gone]
    changes += [StepChange("move", k, beside, data.draw(st.booleans())) for k in moved]
    after = every(quiet(*changes).sections)
    assert set(after) == set(before) - gone
    for key in set(after) - moved:
        assert replace(after[key], number=0) == replace(before[key], number=0)


def test_a_step_moves_to_another_section_and_says_its_sizes_there() -> None:
    """Binding is for the quilts alone, quilting for the pillow too."""
    manual = quiet(StepChange("move", "binding-trim", "quilting-baste"))
    assert "binding-trim" not in keys(manual, "binding")
    found = keys(manual, "quilting")
    assert found[found.index("quilting-baste") + 1] == "binding-trim"
    step = every(manual.sections)["binding-trim"]
    assert step.text.startswith("**Mini wall quilt** and **Throw** only: Trim")
    assert step.sizes == ("mini", "throw")


def test_a_change_for_one_size_leaves_the_step_for_the_others() -> None:
    manual = quiet(rewrite("quilting-begin", "Begin by hand.", sizes=("mini",)))
    found = keys(manual, "quilting")
    at = found.index("quilting-begin")
    assert found[at + 1] == "quilting-begin-mini"
    old, new = (every(manual.sections)[k] for k in found[at : at + 2])
    assert old.sizes == ("pillow", "throw") and new.sizes == ("mini",)
    assert old.text.startswith("**Pillow** and **Throw** only: Fit a walking foot")
    assert new.text == "**Mini wall quilt** only: Begin by hand."


def test_a_step_for_some_sizes_says_so_whoever_wrote_it() -> None:
    generated_ = every(plain())["quilting-border-parallel"]
    assert generated_.sizes == ("mini", "throw")
    new = every(quiet(rewrite(generated_.key, "Quilt the borders.")).sections)[generated_.key]
    assert new.text == "**Mini wall quilt** and **Throw** only: Quilt the borders."


def test_a_new_step_for_one_size_says_so() -> None:
    change = insert("folding-half-8", "Use a table.", sizes=("throw",))
    step = every(quiet(change).sections)["folding-own-1"]
    assert (step.text, step.sizes) == ("**Throw** only: Use a table.", ("throw",))


def test_a_step_is_taken_out_for_one_size() -> None:
    change = StepChange("remove", "quilting-begin", sizes=("mini", "pillow"))
    step = every(quiet(change).sections)["quilting-begin"]
    assert step.sizes == ("throw",) and step.text.startswith("**Throw** only: ")


def test_a_section_that_loses_all_of_its_steps_goes() -> None:
    gone = [k for k in every(plain()) if k.startswith("piecing-")]
    assert gone
    found = [s.key for s in quiet(*[StepChange("remove", k) for k in gone]).sections]
    assert found == [s.key for s in plain() if s.key != "piecing"]


def test_a_parent_goes_with_the_last_of_its_sections() -> None:
    gone = [k for k in every(plain()) if k.startswith("borders-")]
    found = [s.key for s in quiet(*[StepChange("remove", k) for k in gone]).sections]
    assert not any(k.startswith("borders") for k in found)


def test_a_section_with_more_than_steps_stays() -> None:
    manual = quiet(StepChange("remove", "label-and-care-label"))
    kinds = [type(b) for b in section(manual, "label-and-care").blocks]
    assert kinds and Steps not in kinds


def test_the_glossary_knows_what_the_designer_says() -> None:
    """A term that only the designer's text uses is explained."""
    assert "45 degrees" not in all_text([s for s in plain() if s.key == "glossary"])
    change = insert("folding-half-8", "Cloth stretches along the bias.")
    assert "The direction at 45 degrees" in all_text([section(quiet(change), "glossary")])


@pytest.mark.parametrize(
    ("change", "help_"),
    [
        (rewrite("folding-haf-8", "Fold."), "write `folding-half-8`"),
        (insert("quilting-begn", "Rest."), "write `quilting-begin`"),
        (StepChange("remove", "binding-jion"), "write `binding-join`"),
        (StepChange("move", "binding-jion", "binding-press"), "write `binding-join`"),
        (StepChange("move", "binding-join", "binding-pres"), "write `binding-press`"),
        (StepChange("remove", "xyzzy"), "`foldwork steps` lists"),
    ],
)
def test_a_step_that_is_not_there_is_told_with_the_nearest(change: StepChange, help_: str) -> None:
    manual, notes = voiced(change)
    (note,) = [n for n in notes if n.code == "W506"]
    assert note.severity is Severity.ERROR and help_ in note.help
    assert note.place == PLACES["steps.0"]
    assert every(manual.sections) == every(plain())


def test_a_size_that_the_step_is_not_for_is_told() -> None:
    _, notes = voiced(rewrite("borders-mini-sides-1", "Sew.", sizes=("throw",)))
    (note,) = [n for n in notes if n.code == "W509"]
    assert (note.expected, note.received) == ("`mini`", "throw")


def test_the_list_of_steps_names_each_once() -> None:
    listed = re.findall(r"^ +\d+  (\S+) +\S", step_list(plain()), re.MULTILINE)
    assert listed == [s.key for section in plain() for s in steps_of(section)]
    assert len(set(listed)) == len(listed)


def test_a_pattern_without_sizes_has_nothing_to_change() -> None:
    made = w.made()
    pattern = replace(made.pattern, steps=(StepChange("remove", "binding-join"),), places=PLACES)
    _, notes = write(pattern, {}, {}, {})
    assert {n.code for n in notes} >= {"W501"}
