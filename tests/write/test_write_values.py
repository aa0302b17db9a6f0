"""Computed values in the text of steps: what they say, and what cannot be filled in."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from write_cases import CASES, made_for
from write_voiced import PLACES, every, quiet, rewrite, voiced

from publish.model.names import EACH, FABRIC, PATTERN, SIZE, VALUES
from publish.notes import Severity
from publish.units import parse_length
from publish.write import value_list
from publish.write.filling import filled


def test_each_name_is_listed_and_each_that_is_listed_has_a_value() -> None:
    """Over all the made-up patterns, every name of the reference stands for something."""
    seen: set[tuple[str, str]] = set()
    for case in CASES.values():
        made = case()
        fabrics, sizes = set(made.pattern.fabrics), set(made.pattern.sizes)
        for name, value in value_list(made.pattern, made.sizes, made.drafts, made.plans):
            first, *rest = name.split(".")
            assert first in {EACH, PATTERN, FABRIC} | sizes, name
            where = SIZE if first in sizes | {EACH} else first
            if where == FABRIC:
                rest = ["FABRIC"]
            elif len(rest) == 2:
                kinds = {"cut": "LETTER", "count": "LETTER", "buy": "FABRIC", "border": "NUMBER"}
                assert where == SIZE and (rest[0] != "buy" or rest[1] in fabrics)
                rest = [rest[0], kinds[rest[0]]]
            assert isinstance(value, str)
            seen.add((where, ".".join(rest)))
    assert seen == {(v.where, v.name) for v in VALUES}


def test_values_are_those_of_the_sizes_and_plans() -> None:
    """The inches before the bracket are the stages' own numbers."""
    made = made_for("three sizes")
    found = dict(value_list(made.pattern, made.sizes, made.drafts, made.plans))

    def inches(name: str) -> object:
        return parse_length(found[name].split(" (")[0])

    for key, size in made.sizes.items():
        plan = made.plans[key]
        assert inches(f"{key}.block") == size.block_side
        assert inches(f"{key}.width") == size.width
        assert inches(f"{key}.motif") == size.motif_span
        assert inches(f"{key}.motif_square") == plan.motif_square
        for number, border in enumerate(size.borders, 1):
            assert inches(f"{key}.border.{number}") == border.width
        for piece in plan.pieces:
            across = found[f"{key}.cut.{piece.letter}"].split(" (")[0].split(" × ")[0]
            assert parse_length(across) == piece.width
        for fabric, cloth in plan.fabrics.items():
            if cloth.buy > 0:
                assert inches(f"{key}.buy.{fabric}") == cloth.buy
    assert found["pattern.title"] == "Samphire" and found["fabric.linen"] == "Salt linen"
    assert found["throw.blocks"] == "nine"


def test_each_says_which_is_which() -> None:
    change = rewrite("folding-half-8", "Blocks of {{ each.block }}: {{each.blocks|capital}}.")
    text = every(quiet(change).sections)["folding-half-8"].text
    assert text == (
        "Blocks of 16 in (40.6 cm) for the **Mini wall quilt**, 17 in (43.2 cm) for the "
        "**Pillow** and 18 in (45.7 cm) for the **Throw**: One for the **Mini wall quilt** and "
        "**Pillow** and nine for the **Throw**."
    )


def test_each_speaks_of_the_sizes_of_its_step_alone() -> None:
    change = rewrite("folding-half-8", "Blocks of {{ each.block }}.", sizes=("throw",))
    new = every(quiet(change).sections)["folding-half-8-throw"]
    assert new.text == "**Throw** only: Blocks of 18 in (45.7 cm)."


def test_a_size_whose_key_has_a_hyphen_is_named_with_an_underscore() -> None:
    text, slips = filled("{{ night_tide.block }}", {"night_tide": {"block": "16 in"}})
    assert (text, slips) == ("16 in", ())


@pytest.mark.parametrize(
    ("text", "code", "received", "help_"),
    [
        ("{{ mini.blok }}", "W507", "mini.blok", "write {{ mini.block }}"),
        ("{{ minni.block }}", "W507", "minni.block", "write {{ mini.block }}"),
        ("{{ fabric.lnien }}", "W507", "fabric.lnien", "write {{ fabric.linen }}"),
        ("{{ mini.cut }}", "W507", "mini.cut", "go on with one of mini.cut.A"),
        ("{{ xyzzy }}", "W507", "xyzzy", "names begin with each"),
        (
            "{{ pillow.binding_width }}",
            "W507",
            "pillow.binding_width",
            "for pillow, but for mini and throw",
        ),
        ("{{ mini.border.3 }}", "W507", "mini.border.3", "write {{ mini.border.1 }}"),
        ("{{ 6 * 7 }}", "W508", "mul", "one name in double braces"),
        ("{{ mini.block | upper }}", "W508", "filter", "one name in double braces"),
        ("{{ mini.block", "W508", "{{ mini.block", "braces hold one name each"),
        ("{% if x %}a{% endif %}", "W508", "if", "one name in double braces"),
        ("{{ mini.__class__ }}", "W507", "mini.__class__", ""),
        ("{{ mini['block'].upper() }}", "W508", "call", "one name in double braces"),
        ("{{ mini[each] }}", "W508", "getitem", "one name in double braces"),
        ("{{ " + "(" * 900 + "mini.block" + ")" * 900 + " }}", "W508", "((((", ""),
        ("{{ " + "[" * 900, "W508", "[[[[", ""),
        ("{% include '/etc/hostname' %}", "W508", "include", "one name in double braces"),
    ],
)
def test_what_cannot_be_filled_in_is_told_at_its_place(
    text: str, code: str, received: str, help_: str
) -> None:
    _, notes = voiced(rewrite("folding-half-8"), rewrite("folding-quarter-8", f"Cut {text}"))
    (note,) = [n for n in notes if n.code in ("W507", "W508")]
    assert (note.code, note.severity) == (code, Severity.ERROR)
    assert note.place == PLACES["steps.1.text"]
    assert received in note.received and help_ in note.help


@settings(max_examples=150, deadline=None)
@given(st.text(alphabet="{}%#|. mini[]()'\"*_0each\n", max_size=24))
def test_no_text_raises(text: str) -> None:
    known = {"mini": {"a": "1 in"}, "each": {"a": "2 in"}}
    result, slips = filled(text, known)
    assert isinstance(result, str) and all(s.help for s in slips)
    if "{" not in text:
        assert slips == () and result == text.strip()
