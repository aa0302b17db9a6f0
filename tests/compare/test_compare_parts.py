"""Each kind of change by itself: the demo with one value changed, and what a maker reads.

Metric equivalents: 1 in = 2.54 cm exactly (international yard and pound agreement, 1959).
"""

from dataclasses import replace
from fractions import Fraction

import pytest
from editions import demo
from shapely import to_wkt
from shapely.geometry import LineString, MultiLineString, box

from publish.compare import compare
from publish.compare.model import Border, Template
from publish.compare.record import _foundation, _piece
from publish.model.draft import FoundationSection
from publish.model.pieces import PieceTemplate


def changed(key="throw", **values):
    """Return the demo with values of one size changed."""
    size = replace(demo().sizes[key], **values)
    return replace(demo(), sizes={**demo().sizes, key: size})


def sized(key="throw"):
    return demo().sizes[key]


def piece(which, /, key="throw", **values):
    """Return the demo with one piece of a size changed."""
    return changed(
        key,
        pieces=tuple(replace(p, **values) if p.letter == which else p for p in sized(key).pieces),
    )


def sentence(old, new=None):
    """Return the one change's consequence, sentence and advice."""
    (change,) = compare(demo(), old) if new is None else compare(old, new)
    return change.consequence, change.sentence, change.advice


@pytest.mark.parametrize(
    ("letter", "values", "said", "advice"),
    [
        ("B", {"count": 20}, "Throw: cut 20 of B (ground), not 18.", "Cut two more."),
        (
            "B",
            {"count": 15},
            "Throw: cut 15 of B (ground), not 18.",
            "Three of those you have cut are over.",
        ),
        (
            "B",
            {"width": Fraction(21, 2)},
            "Throw: cut B (ground) 10 1/2 in × 10 in (26.7 cm × 25.4 cm), not 10 in (25.4 cm) "
            "square.",
            "Those you have cut are too small: cut them again.",
        ),
        (
            "B",
            {"length": Fraction(19, 2)},
            "Throw: cut B (ground) 10 in × 9 1/2 in (25.4 cm × 24.1 cm), not 10 in (25.4 cm) "
            "square.",
            "Those you have cut can be trimmed.",
        ),
        (
            "H",
            {"fabric": "sandbar"},
            "Throw: cut H (outer side border) from Sandbar, not from Salt linen.",
            "Those you have cut are of the other fabric: cut them again.",
        ),
        (
            "H",
            {"joined_from": 3},
            "Throw: join H (outer side border) from three lengths, not two.",
            "",
        ),
        ("H", {"joined_from": 1}, "Throw: H (outer side border) is no longer joined.", ""),
        ("H", {"letter": "Q"}, "Throw: piece H (outer side border) is now called Q.", ""),
        (
            "H",
            {"note": "trim to fit"},
            "Throw: of H (outer side border) the table now says “trim to fit”.",
            "",
        ),
    ],
)
def test_a_piece(letter, values, said, advice):
    assert sentence(piece(letter, **values)) == ("cut", said, advice)


def test_a_piece_that_may_be_turned_fits_either_way():
    long = {"width": Fraction(3), "length": Fraction(5), "may_turn": True}
    old, new = (
        piece("B", **long),
        piece("B", **{**long, "width": Fraction(5), "length": Fraction(3)}),
    )
    assert sentence(old, new)[2] == "Those you have cut can be trimmed."
    still = piece("B", **{**long, "width": Fraction(5), "length": Fraction(3), "may_turn": False})
    assert sentence(old, still)[2] == "Those you have cut are too small: cut them again."


def test_pieces_that_are_new_or_gone():
    pieces = sized().pieces
    fewer = changed(pieces=tuple(p for p in pieces if p.letter != "J"))
    assert sentence(fewer)[:2] == (
        "cut",
        "Throw: do not cut J (outer top and bottom border); it is no longer part of this size.",
    )
    assert sentence(fewer, demo())[1] == (
        "Throw: cut 2 of J (outer top and bottom border) from Salt linen, 4 1/2 in × 64 1/2 in "
        "(11.4 cm × 163.8 cm); it is new in this size."
    )


MITRED = Border(Fraction(4), "mist", "mitred")


def part(key, name, **values):
    return changed(key, **{name: {**getattr(sized(key), name), **values}})


@pytest.mark.parametrize(
    ("new", "consequence", "said"),
    [
        (
            lambda: part("throw", "backing", panels=3),
            "cut",
            "Throw: the backing takes three panels, not two.",
        ),
        (
            lambda: part("throw", "backing", seams="horizontal"),
            "cut",
            "Throw: the backing's seams run from side to side.",
        ),
        (
            lambda: part("throw", "binding", length=Fraction(300)),
            "cut",
            "Throw: the binding is 300 in (762.0 cm) long, not 266 in (675.6 cm).",
        ),
        (
            lambda: part("throw", "binding", cut="bias"),
            "cut",
            "Throw: the binding is cut bias, not straight.",
        ),
        (lambda: changed(binding=None), "cut", "Throw: this size is no longer bound."),
        (
            lambda: changed(block_side=Fraction(19)),
            "sewn",
            "Throw: a finished block is 19 in (48.3 cm), not 18 in (45.7 cm).",
        ),
        (
            lambda: changed(grid=(3, 4)),
            "sewn",
            "Throw: lay out twelve blocks, three by four, not three by three.",
        ),
        (
            lambda: changed(arrangement=((0, 1, 0),) * 3),
            "sewn",
            "Throw: the blocks stand in another order.",
        ),
        (
            lambda: changed(motif_span=Fraction(16)),
            "sewn",
            "Throw: the finished motif is 16 in (40.6 cm) across, not 15 1/2 in (39.4 cm).",
        ),
        (
            lambda: changed(borders=sized().borders[:1]),
            "sewn",
            "Throw: the top has one border, not two.",
        ),
        (
            lambda: changed(borders=(sized().borders[0], MITRED)),
            "sewn",
            "Throw: the outer border is Creek mist, not Salt linen and has mitred corners, not "
            "butted ones.",
        ),
        (
            lambda: changed(quilting=(*sized().quilting[:2], ("border", "grid", "2"))),
            "sewn",
            "Throw: quilt the borders with a grid 2 in (5.1 cm) apart, not with parallel lines "
            "1 in (2.5 cm) apart.",
        ),
        (
            lambda: changed(quilting=sized().quilting[1:]),
            "sewn",
            "Throw: the motif is no longer quilted (in the ditch).",
        ),
        (
            lambda: part("pillow", "pillow", overlap="5"),
            "sewn",
            "Pillow: the pillow's backs overlap by 5 in (12.7 cm), not 4 in (10.2 cm).",
        ),
        (
            lambda: part("pillow", "pillow", back="zip"),
            "sewn",
            "Pillow: the pillow's back is made with a zip, not two backs that overlap.",
        ),
        (
            lambda: changed("pillow", other={**sized("pillow").other, "Zip": "One"}),
            "bought",
            "Pillow: you also need zip: One.",
        ),
        (lambda: changed("pillow", other={}), "bought", None),
        (lambda: replace(demo(), licence="Ask first."), "safety", "The licence now reads:"),
    ],
)
def test_one_value(new, consequence, said):
    found = compare(demo(), new())
    assert consequence in {c.consequence for c in found}
    assert said is None or [c.sentence for c in found] == [said]


def test_a_title():
    found = [c for c in compare(demo(), changed(title="Lap quilt")) if c.subject == "size"]
    assert [c.sentence for c in found] == ["The Throw is now called Lap quilt."]


def test_batting_that_the_package_still_holds_is_cut_and_not_bought():
    larger = part("throw", "batting", width=Fraction(72), height=Fraction(72))
    larger = replace(
        larger,
        sizes={
            **larger.sizes,
            "throw": replace(larger.sizes["throw"], other={**sized().other, "Batting": "72 in"}),
        },
    )
    assert sentence(larger) == (
        "cut",
        "Throw: cut the batting 72 in (182.9 cm) square, not 70 in (177.8 cm) square.",
        "A piece that you have cut 70 in (177.8 cm) square is too small. "
        "The package still holds it.",
    )


def test_thread_that_comes_to_as_many_spools_is_cosmetic():
    thread = {**sized().thread, "Quilting": "310 yd (284 m): two spools"}
    assert sentence(changed(thread=thread)) == (
        "cosmetic",
        "Throw: thread for quilting: 310 yd (284 m): two spools, not 303 yd (277 m): two spools.",
        "It is two spools as before.",
    )
    thread["Quilting"] = "401 yd (367 m): three spools"
    assert sentence(changed(thread=thread))[0] == "bought"


def test_another_layout_of_the_same_pieces_is_cosmetic():
    linen = replace(sized().fabrics["linen"], layout=("another",))
    found = sentence(changed(fabrics={**sized().fabrics, "linen": linen}))
    assert found[0] == "cosmetic" and found[2].endswith("what you have cut is right.")


WING = PieceTemplate(
    "wing", "K", "linen", 4, 0, box(0, 0, 3, 2), box(-0.25, -0.25, 3.25, 2.25), (), 0.0
)


def template(kind, cut, lines=None):
    text = to_wkt(cut) + (to_wkt(lines) if lines is not None else "")
    return Template(kind, "wing", "K", cut, cut, lines, text)


def test_the_record_of_a_piece_is_its_outlines():
    made = _piece(WING)
    assert (made["kind"], made["key"], made["letter"]) == ("piece", "wing", "K")
    assert made["cut"] == "POLYGON ((3.25 -0.25, 3.25 2.25, -0.25 2.25, -0.25 -0.25, 3.25 -0.25))"


def test_the_record_of_a_foundation_has_its_seams():
    corner = tuple((Fraction(x), Fraction(y)) for x, y in ((0, 0), (4, 0), (4, 4), (0, 4)))
    seam = ((Fraction(0), Fraction(1)), (Fraction(4), Fraction(5, 2)))
    made = _foundation(FoundationSection("heron A", "A", "heron", (), corner, (seam,), 2))
    assert made["finished"] == "POLYGON ((0 0, 4 0, 4 4, 0 4, 0 0))"
    assert made["lines"] == "MULTILINESTRING ((0 1, 4 2.5))"


def test_a_template_of_a_piece():
    one, other = template("piece", box(0, 0, 3, 2)), template("piece", box(0, 0, 3, 1.5))
    old, new = changed(templates=(one,)), changed(templates=(other,))
    assert sentence(old, new) == (
        "cut",
        "Throw: print the template of piece K again; its outline has moved by up to 0.50 in "
        "(13 mm), and 1.50 sq in differ.",
        "What you have cut by the old one can be trimmed to it.",
    )
    assert sentence(new, old)[2].startswith("What you have cut by the old one is too small")
    assert "is new" in sentence(changed(templates=()), new)[1]
    assert "no longer used" in sentence(new, changed(templates=()))[1]


def test_a_template_that_is_only_drawn_anew_is_cosmetic():
    one = template("piece", box(0, 0, 3, 2))
    other = template("piece", box(0, 0, 3.002, 2))
    found = sentence(changed(templates=(one,)), changed(templates=(other,)))
    assert found[0] == "cosmetic" and "nowhere more than 0.005 in" in found[1]


def test_seams_of_a_foundation_that_moved():
    block = box(0, 0, 4, 4)
    lines = [MultiLineString([LineString([(0, y), (4, y)])]) for y in (1, 1.25)]
    one, other = (template("foundation", block, line) for line in lines)
    found = sentence(changed(templates=(one,)), changed(templates=(other,)))
    assert found[:2] == (
        "cut",
        "Throw: print the template of foundation K again; its seam lines have moved by up to "
        "0.25 in (6 mm).",
    )
