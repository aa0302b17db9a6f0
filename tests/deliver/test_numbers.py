"""`numbers.json` read back against a pattern worked out by hand (tests/reedmace.py).

Source: 1 yd = 36 in = 0.9144 m exactly (international yard and pound agreement, 1959).
"""

import json
from dataclasses import replace
from fractions import Fraction
from typing import Any

from reedmace import f, pattern
from reedmace_case import Spoil, case, pillow_case

from publish.deliver import numbers
from publish.model.cloth import SoldAs
from publish.model.cutplan import Alternative, Cut, PrecutPlan, Sheet, Strip
from publish.units import parse_number


def data() -> dict[str, Any]:
    whole = case()
    return numbers(whole.pattern, whole.sizes, whole.drafts, whole.plans)


def mini() -> dict[str, Any]:
    return data()["sizes"]["mini"]


def test_it_is_json_and_the_same_every_time() -> None:
    text = json.dumps(data())
    assert json.loads(text) == data()
    assert text == json.dumps(data())


def test_finished_sizes() -> None:
    size = mini()
    assert size["finished"] == {"width": "20", "height": "20"}
    assert size["inner"] == {"width": "16", "height": "16"}
    assert size["blocks"]["side"] == "16" and size["blocks"]["count"] == 1
    assert (size["motif_span"], size["motif_square"]) == ("14", "15 1/2")
    assert size["perimeter"] == "80"
    assert size["borders"] == [{"width": "2", "fabric": "sandbar", "corners": "butted"}]


def test_pieces() -> None:
    found = {p["letter"]: p for p in mini()["pieces"]}
    assert list(found) == list("ABCDEF")
    ground = found["A"]
    assert (ground["width"], ground["length"], ground["count"]) == ("17 1/2", "17 1/2", 1)
    assert (ground["finished_width"], ground["fabric"]) == ("16", "linen")
    assert found["B"]["finished_width"] is None


def test_purchases_in_yards_and_metres() -> None:
    linen = mini()["fabrics"]["linen"]
    assert (linen["length"], linen["needed"], linen["buy"]) == ("45 1/2", "46 1/2", "49 1/2")
    assert (linen["buy_yards"], linen["buy_metres"]) == ("1 3/8", "1.20")
    assert parse_number(linen["buy_yards"]) * 36 == parse_number(linen["buy"])
    assert Fraction(linen["buy_metres"]) >= parse_number(linen["needed"]) * Fraction("0.0254")
    assert (linen["bound"], linen["gap"], linen["waste_percent"]) == ("45 1/2", "0", "25.0")
    (strip,) = mini()["fabrics"]["sandbar"]["strips"]
    assert (strip["count"], strip["depth"], strip["used"]) == (2, "2 1/2", "37")
    assert strip["cuts"][0] == {
        "letter": "D",
        "across": "20 1/2",
        "along": "2 1/2",
        "count": 1,
        "turned": False,
    }


def test_finishing() -> None:
    size = mini()
    assert size["backing"]["width"] == "28" and size["backing"]["seams"] == "none"
    assert size["batting"] == {"name": "Cotton", "width": "26", "height": "26", "package": None}
    assert size["binding"]["length"] == "90" and size["binding"]["strips"] == 3
    assert size["pillow"] is None and size["sleeve"] is None and size["web"] is None
    # 180 + 150 + 600 + 200 in of thread
    assert size["thread"]["total"] == "1130.00" and size["thread"]["ratio"] == "2 1/2"


def test_cloth_that_is_sold_ready_cut() -> None:
    # Two 15 1/2 in squares do not lie side by side on 22 in: each takes a fat quarter.
    quarter = SoldAs("fat quarter", f(22), f(18))
    strip = Strip(f("15 1/2"), (Cut("B", f("15 1/2"), f("15 1/2"), 1),))
    cut = PrecutPlan(quarter, (Sheet((strip,), 2),), 2, 2, 2)
    other = Alternative(SoldAs("fat eighth", f(22), f(9)), None, larger="B")
    found = Spoil(case()).fabric("moss", precut=cut, alternatives=(other,), spare=-f("1 1/2"))
    moss = numbers(found.pattern, found.sizes, found.drafts, found.plans)["sizes"]["mini"][
        "fabrics"
    ]["moss"]
    assert moss["spare"] == "-1 1/2"
    assert moss["precut"]["sold_as"] == {
        "kind": "fat quarter",
        "width": "22",
        "length": "18",
        "packet": 1,
    }
    assert (moss["precut"]["used"], moss["precut"]["sheets"][0]["count"]) == (2, 2)
    assert moss["alternatives"][0]["too_large"] == "B"
    assert mini()["fabrics"]["linen"]["precut"] is None


def test_a_pillow() -> None:
    whole = pillow_case()
    size = numbers(whole.pattern, whole.sizes, whole.drafts, whole.plans)["sizes"]["mini"]
    assert size["finish"] == "pillow" and size["binding"] is None
    assert size["pillow"]["form"] == "18"
    assert (size["pillow"]["piece_width"], size["pillow"]["piece_length"]) == ("12", "18")


def test_units_before_and_after_sewing() -> None:
    found = {u["kind"]: u for u in mini()["units"]}
    assert list(found)[-1] == "top", "the top is sewn last"
    assert found["side"]["count"] == 2
    assert found["side"]["before"] == {"width": "2 1/2", "height": "16 1/2"}
    assert found["side"]["after"] == {"width": "2", "height": "16"}
    assert found["centre"]["join"] == "across" and found["centre"]["parts"] == 3
    assert found["top"]["before"] == {"width": "20 1/2", "height": "20 1/2"}


def test_the_edge_of_a_pillow_has_the_pillows_seam() -> None:
    # A 17 in cover with 1/2 in seams is trimmed to 18 in, the size of its form.
    whole = pillow_case()
    side = replace(whole.drafts["mini"].assembly, box=(f(0), f(0), f(17), f(17)))
    drafts = {"mini": replace(whole.drafts["mini"], assembly=side)}
    units = numbers(whole.pattern, whole.sizes, drafts, whole.plans)["sizes"]["mini"]["units"]
    assert units[-1]["before"] == {"width": "18", "height": "18"}
    assert units[-1]["after"] == {"width": "17", "height": "17"}


def test_the_motif_is_measured_in_decimals() -> None:
    motif = mini()["motifs"]["reedmace"]
    assert data()["decimal_places"] == 2
    assert (motif["count"], motif["span"], motif["folds"]) == (1, "14", 8)
    assert motif["wedge_angle"] == "45.00"
    shape = case().drafts["mini"].motifs["reedmace"]
    assert abs(float(motif["area"]) - shape.area) <= 0.005
    assert motif["contact"]["multiple"] == [["1.40", "7.00"]]  # a fifth of 7 in, and its end
    assert (motif["narrowest_neck"], motif["narrowest_slit"]) == ("0.90", "0.80")
    assert mini()["quilting"] == [
        {"area": "border", "style": "parallel", "spacing": "1", "length": "240.00"}
    ]


def test_no_float_reaches_the_file() -> None:
    def walk(value: Any) -> None:
        assert not isinstance(value, float)
        for inner in value.values() if isinstance(value, dict) else ():
            walk(inner)
        for inner in value if isinstance(value, list) else ():
            walk(inner)

    walk(data())


def test_a_size_that_could_not_be_finished_is_left_out() -> None:
    whole = case()
    assert numbers(whole.pattern, whole.sizes, {}, whole.plans)["sizes"] == {}
    assert pattern().key == numbers(whole.pattern, {}, {}, {})["pattern"]
