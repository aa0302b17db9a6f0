"""The numbers of patchwork: pieces with shapes, templates, quicker methods, foundations.

The values of towpath's mini are worked out by hand in tests/cut/test_cut_towpath.py.
"""

import json
from functools import cache
from math import pi
from typing import Any

import pytest
from demos import demo

from publish.deliver import numbers


@cache
def data(name: str) -> dict[str, Any]:
    work = demo(name)
    found = numbers(work.pattern, work.sizes, work.drafts, work.plans)
    assert json.loads(json.dumps(found)) == found
    return found["sizes"]


def test_makings_name_their_pieces() -> None:
    mini = data("towpath")["mini"]
    pieces = {p["letter"]: p for p in mini["pieces"]}
    geese = next(m for m in mini["makings"] if m["method"] == "geese")
    sides = {pieces[letter]["width"]: each for letter, each in geese["pieces"].items()}
    assert sides == {"5 1/4": 1, "2 7/8": 4}
    assert (geese["count"], geese["batches"], geese["each_batch"], geese["over"]) == (8, 2, 4, 0)
    assert geese["trim"] == {"width": "4 1/2", "height": "2 1/2"} and geese["segment"] is None
    large = next(p for p in pieces.values() if p["width"] == "5 1/4")
    assert (large["shape"], large["yields"], large["template"]) == ("oversize", 1, None)
    assert large["exact_width"] == "9/2 + 1/2√2"
    strips = [m["segment"] for m in mini["makings"] if m["method"] == "strips"]
    assert sorted(strips) == ["1 1/2", "4 1/2"]
    kinds = {u["kind"]: u["made"] for u in mini["units"]}
    assert all(kinds[m["unit"]] == m["method"] for m in mini["makings"])


def test_how_the_blocks_are_set() -> None:
    sizes = data("towpath")
    assert sizes["mini"]["setting"]["sashing"] == {
        "width": "1",
        "fabric": "water",
        "cornerstones": "lamp",
        "outer": True,
    }
    throw = sizes["throw"]
    assert throw["setting"]["kind"] == "on point" and throw["setting"]["fabric"] == "sedge"
    assert throw["setting"]["alternates"] == [["path", "path"]] * 3
    assert throw["finished"] == {"width": "11 + 36√2", "height": "11 + 48√2"}
    side = next(p for p in throw["pieces"] if p["purpose"] == "side triangle")
    assert (side["width"], side["shape"], side["yields"]) == ("18 1/4", "twice-cut triangle", 4)


def test_templates() -> None:
    """A quarter circle of 6 in: finished area 9π sq in; its square of 8 in less that."""
    mini = data("millrace")["mini"]
    quarter = next(t for t in mini["templates"] if t["width"] == "6.00")
    assert float(quarter["area"]) == pytest.approx(9 * pi, abs=0.02)
    rest = next(t for t in mini["templates"] if t["width"] == "8.00")
    assert float(rest["area"]) == pytest.approx(64 - 9 * pi, abs=0.02)
    assert (quarter["count"], quarter["mirrored"], quarter["notches"]) == (4, 0, 3)
    assert quarter["key"] in {p["template"] for p in mini["pieces"]}


def test_foundations_and_rounds() -> None:
    throw = data("heronry")["throw"]
    sections = {s["key"]: s for s in throw["foundations"]}
    heron = [s for s in sections.values() if s["block"] == "heron"]
    assert [len(s["patches"]) for s in heron] == [4, 5, 6, 5, 4, 3, 2]
    assert [s["count"] for s in heron] == [1] * 7
    assert heron[0]["patches"][0] == {"number": "A1", "fabric": "bill"}
    # 18 + 2 x 1, + 2 x 2, + 2 x 6, + 2 x 2, + 2 x 8, + 2 x 2.
    assert [r["width"] for r in throw["setting"]["rounds"]] == ["20", "24", "36", "40", "56", "60"]
    assert {u["section"] for u in throw["units"]} - {None} == set(sections)
