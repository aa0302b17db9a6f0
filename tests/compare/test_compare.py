"""What changed between two editions, in a maker's words and in the order of her work.

Expected figures are worked out here by hand from the pattern's own numbers; 1 yd = 36 in =
0.9144 m exactly (international yard and pound agreement, 1959). A purchase is rounded up
to 1/8 yd or 10 cm after 1 in for straightening and 1/8 in for squaring up each strip.
"""

import json
from dataclasses import replace
from fractions import Fraction

import pytest
from editions import changes, demo, edited, said

from publish.compare import CONSEQUENCES, compare, data, lines
from publish.compare.parse import exact_of
from publish.compare.words import _longest_rising, difference
from publish.surd import Surd

WIDER = ("{width: 4 in, fabric: linen}", "{width: 4 1/2 in, fabric: linen}")
NAMED = ("    name: Salt linen", "    name: Tide linen")
PALER = ('colour: "#2f6152"\n  glasswort', 'colour: "#3f7162"\n  glasswort')
REWORDED = (
    "sizes:\n  mini",
    "steps:\n  - {step: folding-quarter-8, text: Fold the half into a "
    "quarter and press it with a warm iron.}\nsizes:\n  mini",
)


def only(found, subject, size="throw"):
    """Return the one change of a subject at a size."""
    held = [c for c in found if c.subject == subject and c.size == size]
    assert len(held) == 1, held
    return held[0]


def test_an_edition_compared_with_itself():
    assert compare(demo(), demo()) == ()
    assert list(lines(demo(), demo(), ()))[-1] == "Nothing changed for a maker."
    assert data(demo(), demo(), ())["changed"] is False


def test_consequences_come_in_the_order_of_their_cost():
    found = [c.consequence for c in changes(WIDER, PALER)]
    assert list(dict.fromkeys(found)) == ["bought", "cut", "sewn", "cosmetic"]
    assert found == sorted(found, key=list(CONSEQUENCES).index)


def test_a_wider_border_is_bought():
    # 2 in more of length: 82 1/4 in are 2.29 yd and 2.089 m; 80 1/4 in are 2.23 yd and 2.038 m.
    linen = said(changes(WIDER), "bought")[0]
    assert linen == "Throw: buy 2 3/8 yd (2.10 m) of Salt linen, not 2 1/4 yd (2.10 m)."
    change = changes(WIDER)[0]
    assert change.advice == "If you have bought 2 1/4 yd (2.10 m), you are 1/8 yd short."
    assert (change.old["needed"], change.new["needed"]) == ("80 1/4", "82 1/4")
    assert (change.old["buy"], change.new["buy"]) == ("81", "85 1/2")


def test_a_narrower_border_leaves_cloth_over():
    change = compare(edited(WIDER), demo())[0]
    assert change.sentence == "Throw: buy 2 1/4 yd (2.10 m) of Salt linen, not 2 3/8 yd (2.10 m)."
    assert change.advice == (
        "If you have bought 2 3/8 yd (2.10 m), it is enough, and 1/8 yd is left over."
    )


def test_a_wider_border_is_cut_and_sewn():
    found = changes(WIDER)
    # 3 x 18 in of blocks, 1 in and 4 1/2 in of border on either side: 65 in; ends 65 1/2 in cut.
    cut = {c.sentence.split(": ")[1].split(" (")[0]: c for c in found if c.subject == "piece"}
    ends = cut["cut J"]
    assert "5 in × 65 1/2 in (12.7 cm × 166.4 cm), not 4 1/2 in × 64 1/2 in" in ends.sentence
    assert ends.advice == "Those you have cut are too small: cut them again."
    assert (ends.new["width"], ends.new["length"]) == ("5", "65 1/2")
    # 4 x 65 in and 10 in more are 270 in; strips of 40 in join to 8 x 40 - 7 x 2 1/4 in.
    assert cut["cut 8 of M"].sentence == "Throw: cut 8 of M (binding strip), not 7."
    assert cut["cut 8 of M"].advice == "Cut one more."
    size = only(found, "finished size")
    assert size.sentence == (
        "Throw: the finished quilt is 65 in (165.1 cm) square, not 64 in (162.6 cm) square."
    )
    border = only(found, "border")
    assert border.sentence == (
        "Throw: the outer border is 4 1/2 in (11.4 cm) wide when finished, not 4 in (10.2 cm)."
    )


def test_pieces_that_are_too_large_can_be_trimmed():
    back = compare(edited(WIDER), demo())
    ends = next(c for c in back if c.sentence.startswith("Throw: cut J"))
    assert ends.advice == "Those you have cut can be trimmed."
    strips = next(c for c in back if "binding strip" in c.sentence)
    assert strips.advice == "One of those you have cut is over."


def test_only_the_size_that_changed_is_named():
    assert {c.size for c in changes(WIDER) if c.size} == {"throw"}


def test_a_fabric_that_is_renamed_is_cosmetic():
    found = changes(NAMED)
    assert {c.consequence for c in found} == {"cosmetic"}
    assert said(found)[0] == "The fabric Salt linen is now called Tide linen."
    assert not [c for c in found if c.subject == "step"]  # its name in a step is no rewording


def test_other_colours_are_cosmetic():
    found = changes(PALER)
    assert {c.consequence for c in found} == {"cosmetic"}
    assert said(found)[0] == "Samphire green is shown in another colour: #3f7162, not #2f6152."


def test_keys_that_a_maker_never_sees_change_nothing():
    old, new = demo(), demo()
    sizes = {"lap" if k == "throw" else k: replace(s, key=k) for k, s in new.sizes.items()}
    fabrics = {"flax" if k == "linen" else k: f for k, f in new.fabrics.items()}

    def rekeyed(size):
        return replace(
            size,
            pieces=tuple(
                replace(p, fabric="flax") if p.fabric == "linen" else p for p in size.pieces
            ),
            borders=tuple(
                replace(b, fabric="flax") if b.fabric == "linen" else b for b in size.borders
            ),
            fabrics={"flax" if k == "linen" else k: f for k, f in size.fabrics.items()},
        )

    colourways = {
        way: {"flax" if k == "linen" else k: f for k, f in held.items()}
        for way, held in new.colourways.items()
    }
    steps = tuple(
        replace(s, key=s.key.replace("throw", "lap").replace("linen", "flax")) for s in new.steps
    )
    renamed = replace(
        new,
        sizes={k: rekeyed(s) for k, s in sizes.items()},
        fabrics=fabrics,
        steps=steps,
        colourways=colourways,
    )
    assert compare(old, renamed) == ()


def test_a_size_under_another_key_and_title_is_gone_and_new():
    sizes = dict(demo().sizes)
    lap = replace(sizes.pop("throw"), key="lap", title="Lap quilt")
    found = compare(demo(), replace(demo(), sizes={**sizes, "lap": lap}))
    assert [(c.consequence, c.sentence) for c in found] == [
        ("bought", "Throw: this size is no longer in the pattern."),
        ("cosmetic", "Lap quilt: this size is new in the pattern, 64 in (162.6 cm) square."),
    ]
    assert "First edition" in found[0].advice


def test_a_step_that_is_reworded_shows_its_words():
    change = only(changes(REWORDED), "step", "")
    assert change.consequence == "cut"  # the motif is not cut out yet
    assert change.sentence == "Folding the fabric, step 3, now reads:"
    kinds = dict(change.words)
    assert "warm iron." in kinds["new"]
    old = next(s.text for s in demo().steps if s.key == "folding-quarter-8")
    kept = " ".join(words for kind, words in change.words if kind != "new")
    assert kept == " ".join(old.replace("**", "").replace("*", "").split())


def test_steps_that_are_new_gone_or_moved():
    steps = list(demo().steps)
    at = next(n for n, s in enumerate(steps) if s.key == "quilting-top")
    found = compare(demo(), replace(demo(), steps=tuple(steps[:at] + steps[at + 1 :])))
    assert said(found) == ["Layering and quilting, step 2, is no longer there:"]
    back = compare(replace(demo(), steps=tuple(steps[:at] + steps[at + 1 :])), demo())
    assert said(back) == ["Layering and quilting, step 2, is new:"]
    moved = [*steps[: at - 1], steps[at], steps[at - 1], *steps[at + 1 :]]
    assert len(compare(demo(), replace(demo(), steps=tuple(moved)))) == 1
    assert "now comes after" in said(compare(demo(), replace(demo(), steps=tuple(moved))))[0]


def test_a_new_caution_comes_first():
    cautions = {**demo().cautions, "Steam": "Steam burns."}
    found = compare(demo(), replace(edited(WIDER), cautions=cautions))
    assert (found[0].consequence, found[0].sentence) == (
        "safety",
        "There is a new caution, “Steam”:",
    )
    gone = compare(replace(demo(), cautions=cautions), demo())
    assert said(gone) == ["The caution “Steam” is no longer given:"]


def test_tools_and_a_narrower_usable_width_are_bought():
    tools = (*demo().tools, "A zip foot")
    assert said(compare(demo(), replace(demo(), tools=tools)), "bought") == [
        "Tools: you also need this: A zip foot."
    ]
    mini = demo().sizes["mini"]
    wide = {**mini.fabrics, "mist": replace(mini.fabrics["mist"], usable_width=Fraction(42))}
    new = replace(demo(), sizes={**demo().sizes, "mini": replace(mini, fabrics=wide)})
    (change,) = compare(demo(), new)
    assert change.consequence == "bought"
    assert change.sentence == (
        "Creek mist: the lengths to buy assume 42 in (106.7 cm) of usable width, "
        "not 40 in (101.6 cm)."
    )


def test_another_seam_is_for_every_size():
    (change,) = compare(demo(), replace(demo(), seam=Fraction(3, 8)))
    assert change.sentence == "Every seam is 3/8 in (10 mm), not 1/4 in (6 mm)."
    assert (change.consequence, change.new) == ("sewn", {"seam": "3/8"})


def test_the_data_is_json_with_exact_numbers():
    found = changes(WIDER)
    plain = json.loads(json.dumps(data(demo(), edited(WIDER), found)))
    assert plain["changed"] is True and len(plain["changes"]) == len(found)
    assert {c["consequence"] for c in plain["changes"]} <= set(CONSEQUENCES)
    for change in plain["changes"]:
        assert all(isinstance(v, str) for v in {**change["old"], **change["new"]}.values())


@pytest.mark.parametrize(
    ("old", "new", "runs"),
    [
        ("Sew the strip", "Sew the long strip", ["same", "new", "same"]),
        (
            "Cut 2 1/2 in (6.4 cm) deep.",
            "Cut 3 1/2 in (8.9 cm) deep.",
            ["same", "gone", "new", "same"],
        ),
        ("**Press** it", "Press it", ["same"]),
    ],
)
def test_word_differences(old, new, runs):
    found = difference(old, new)
    assert [kind for kind, _ in found] == runs
    assert all(len(words.split("(")) < 3 for _, words in found)


def test_a_measure_changes_as_one():
    found = dict(difference("Cut 2 1/2 in (6.4 cm) deep.", "Cut 3 in (7.6 cm) deep."))
    assert (found["gone"], found["new"]) == ("2 1/2 in (6.4 cm)", "3 in (7.6 cm)")


def test_the_longest_rising_run():
    assert _longest_rising([0, 1, 2]) == {0, 1, 2}
    assert _longest_rising([3, 0, 1, 2]) == {1, 2, 3}
    assert _longest_rising([]) == frozenset()


@pytest.mark.parametrize(
    "value",
    [
        Surd(Fraction(3), Fraction(4)),
        Surd(Fraction(-7, 2), Fraction(1)),
        Fraction(5, 2),
        Surd(Fraction(0), Fraction(-9, 4)),
        Surd(Fraction(1, 3), Fraction(-1)),
    ],
)
def test_lengths_on_the_diagonal_are_read_back(value):
    text = "2 1/2" if value == Fraction(5, 2) else str(value)
    assert exact_of(text) == value
