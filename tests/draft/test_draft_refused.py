"""Hostile and mistaken drawings: refused with a place, in bounded time, never a traceback."""

import random
from collections.abc import Iterable

import pytest
from draft_builders import codes, read, svg
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.draft.drawing import read_drawing
from publish.draft.fill import cloth
from publish.notes import Severity

BOMB = """<?xml version="1.0"?>
<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>
<svg xmlns="http://www.w3.org/2000/svg"><text>&b;</text></svg>
"""
PLAIN_11 = """<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN"
  "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
"""
"""The document type of SVG 1.1 (W3C, 2011, 1.3), which drawing programs write."""
USES = "".join(
    f'<g id="g{i}"><use href="#g{i - 1}"/><use href="#g{i - 1}"/></g>' for i in range(1, 30)
)


def zigzag(count: int) -> str:
    """Every other point at the far side: nearly every stroke crosses every other."""
    turn = random.Random(5)
    return "M" + " ".join(f"{turn.random():.4f} {k % 2}" for k in range(count)) + "Z"


def comb(count: int, turned: bool) -> str:
    """A comb of narrow bars, valid by itself; two crossed combs meet at count squared places."""
    line = [(0.0, -1.0)]
    for k in range(count):
        line += [(k, 0.0), (k, float(count)), (k + 0.5, float(count)), (k + 0.5, 0.0)]
    line.append((float(count), -1.0))
    at = ((y, x) if turned else (x, y) for x, y in line)
    return "M" + "L".join(f"{x} {y}" for x, y in at) + "Z"


def sheets(selectors: Iterable[str]) -> str:
    """Return style sheets of a rule for each selector, each no longer than is read."""
    rules = [f"{one}{{fill:red}}" for one in selectors]
    parts = ("".join(rules[i : i + 3_000]) for i in range(0, len(rules), 3_000))
    return "".join(f"<style>{part}</style>" for part in parts)


REFUSED = {
    "entities": (BOMB, "D303", 2),
    "attributes": ("<!DOCTYPE svg [<!ATTLIST g onload CDATA 'x'>]>" + svg("<g/>"), "D303", 1),
    "outer-entity": ("<!DOCTYPE svg [<!ENTITY % a SYSTEM 'a.dtd'> %a;]>" + svg("<g/>"), "D303", 1),
    "unknown-entity": (PLAIN_11 + svg("<g>\n&fen;</g>"), "D301", 5),
    "outside-file": (svg('<use href="file:///etc/hosts#a"/>'), "D304", 2),
    "outside-web": (svg('<image xlink:href="http://drawing.example/a.png"/>'), "D304", 2),
    "outside-use": (svg('<use xlink:href="other.svg#leaf"/>'), "D304", 2),
    "outside-fill": (svg('<rect width="9" height="9" fill="url(//a.example/#p)"/>'), "D304", 2),
    "outside-style": (svg('<g>\n<style>@import "a.css";</style></g>'), "D304", 3),
    "outside-font": (svg("<style>@font-face{src:url('f.woff')}</style>"), "D304", 2),
    "outside-sheet": ('<?xml-stylesheet href="a.css"?>' + svg("<g/>"), "D304", 1),
    "script": (svg("<g>\n<script>alert(1)</script></g>"), "D305", 3),
    "handler": (svg('<rect onload="alert(1)" width="9" height="9"/>'), "D305", 2),
    "script-link": (svg('<a href="javascript:alert(1)"><g/></a>'), "D304", 2),
    "not-xml": ("M 0 0 L 9 9", "D301", 1),
    "cut-short": (svg("<g>")[:-9], "D301", 2),
    "not-svg": ("<html/>", "D301", 1),
    "empty": ("", "D301", 1),
    "binary": (bytes(range(256)), "D301", 1),
    "wrong-encoding": (b'<?xml version="1.0" encoding="klingon"?><svg/>', "D301", 1),
    "nested": (svg("<g>" * 200 + "</g>" * 200), "D302", 2),
    "elements": (svg("<g/>" * 30_000), "D302", 2),
    "bytes": (svg("<!--" + "x" * 5_000_000 + "-->"), "D302", 1),
    "numbers": (svg(f'<path d="M0 0{" L1 1" * 200_000}"/>'), "D302", 2),
    "uses": (svg(f'<rect id="g0" width="9" height="9"/>{USES}<use href="#g29"/>'), "D302", None),
    "far": (svg('<rect width="1e9" height="9"/>'), "D302", 2),
    "far-by-transform": (svg('<rect width="9" height="9" transform="scale(1e9)"/>'), "D302", 2),
    "infinite": (svg('<path d="M0 0L1e999 5 9 9Z"/>'), "D309", 2),
    "infinite-length": (svg('<rect width="1e999" height="9"/>'), "D309", 2),
    "not-a-number": (svg('<path d="M0 0L nan 5 9 9Z"/>'), "D309", 2),
    "no-move": (svg('<path d="L5 5 9 9Z"/>'), "D309", 2),
    "odd-path": (svg('<path d="M0 0L5 5 9Z"/>'), "D309", 2),
    "odd-flag": (svg('<path d="M0 0A5 5 0 2 0 9 9Z"/>'), "D309", 2),
    "odd-points": (svg('<polygon points="0 0 5 5 9"/>'), "D309", 2),
    "word-points": (svg('<polygon points="0 0 5 five"/>'), "D309", 2),
    "odd-length": (svg('<rect width="9 apples" height="9"/>'), "D309", 2),
    "odd-transform": (svg('<g transform="spin(3)"><rect width="9" height="9"/></g>'), "D309", 2),
    "short-matrix": (svg('<rect transform="matrix(1 2)" width="9" height="9"/>'), "D309", 2),
    "unknown-use": (svg('<rect width="9" height="9"/>\n<use href="#leaf"/>'), "D308", 3),
    "endless-use": (svg('<g id="a"><use href="#a"/></g>'), "D308", 2),
    "nothing": (svg("<title>fen</title>"), "D310", 1),
    "all-hidden": (svg('<rect width="9" height="9" display="none"/>'), "D310", 1),
    "flat": (svg('<path d="M0 0L9 9"/>'), "D310", 1),
    "tangled": (svg(f'<path d="{zigzag(3000)}"/>'), "D302", 2),
    "tangled-stroke": (svg(f'<path fill="none" stroke="red" d="{zigzag(3000)}"/>'), "D302", 2),
    "broad-stroke": (
        svg(
            f'<path fill="none" stroke="red" stroke-width="900" '
            f'd="M0 0{"".join(f"L{k} {k % 7}" for k in range(3000))}"/>'
        ),
        "D302",
        2,
    ),
    "combs": (svg(f'<path d="{comb(2000, False)}"/><path d="{comb(2000, True)}"/>'), "D302", None),
    "selectors": (
        svg(
            sheets(f".a.b{i}" for i in range(7_000))
            + "".join(f'<g class="a c{i}"/>' for i in range(6_000))
        ),
        "D302",
        None,
    ),
    "styles": (svg("".join(f'<g style="a{i}:{"b " * 100}"/>' for i in range(9_000))), "D302", None),
    "long-style": (svg(f"<style>{'a{fill:red}' * 10_000}</style>"), "D302", 2),
    "style-brackets": (svg(f'<g style="{"(" * 90_000}"/>'), "D310", 1),
}


@pytest.mark.parametrize("name", REFUSED)
def test_refused_with_a_place(tmp_path, name):
    text, code, line = REFUSED[name]
    drawing, notes = read(tmp_path, text)
    if drawing is not None:
        _, notes = cloth(drawing, 1e-3)
    assert code in codes(n for n in notes if n.severity is Severity.ERROR), notes
    first = next(n for n in notes if n.code == code)
    assert first.place.file == "wedge.svg" and first.what
    assert line is None or first.place.line == line


@pytest.mark.parametrize(
    ("inside", "code"),
    [
        ("<text>Samphire</text>", "D307"),
        ('<image href="data:image/png;base64,AAAA"/>', "D307"),
        ("<foreignObject/>", "D307"),
        ('<rect width="1" height="1" clip-path="url(#c)"/>', "D312"),
        ('<g filter="url(#f)"/>', "D312"),
        ('<rect style="transform:scale(2)" width="1" height="1"/>', "D312"),
        ("<style>g > rect{fill:none}</style>", "D312"),
    ],
)
def test_left_out_with_a_warning(tmp_path, inside, code):
    drawing, notes = read(tmp_path, svg(f'<rect width="9" height="9"/>\n{inside}'))
    assert drawing is not None
    assert [(n.code, n.severity, n.place.line) for n in notes] == [(code, Severity.WARNING, 3)]


@pytest.mark.parametrize(
    "doctype",
    [
        PLAIN_11,
        "<!DOCTYPE svg>",
        '<!DOCTYPE svg SYSTEM "svg11.dtd">',
        "<!DOCTYPE svg []>",
        PLAIN_11.replace("1.1//EN", "20010904//EN"),
    ],
)
def test_a_document_type_that_declares_nothing_is_passed_over(tmp_path, doctype):
    drawing, notes = read(tmp_path, doctype + svg('<rect width="9" height="9"/>'))
    assert drawing is not None and notes == ()


@pytest.mark.parametrize(
    "css",
    [
        "a{fill:" + "(" * 20_000,
        "(" * 20_000,
        "a{" * 20_000,
        sheets(f"#a{i}" for i in range(7_000))[len("<style>") : -len("</style>")],
    ],
)
def test_odd_style_sheets_change_nothing(tmp_path, css):
    drawing, notes = read(tmp_path, svg(f'<style>{css}</style><rect width="9" height="9"/>'))
    assert drawing is not None and len(drawing.shapes) == 1
    assert {n.severity for n in notes} <= {Severity.WARNING}


def test_rules_apply_as_css_orders_them(tmp_path):
    """CSS 2.2, 6.4.3: ids before classes before names; of equals the later one."""
    css = ".a{fill:red} .b{fill:none} .a{fill:red} rect{fill:none} *{fill:none} #c.a{fill:none}"
    marks = ['class="a b"', 'class="b"', 'id="c" class="a"', "", 'class="a"']
    rects = "".join(f'<rect {mark} width="{n}" height="9"/>' for n, mark in enumerate(marks, 1))
    drawing, notes = read(tmp_path, svg(f"<style>{css}</style>{rects}"))
    assert notes == () and drawing is not None
    assert [s.place.column for s in drawing.shapes] == [
        svg(f"<style>{css}</style>{rects}").splitlines()[-2].index(f'width="{n}"')
        - len('<rect class="a b" ' if n == 1 else '<rect class="a" ')
        + 1
        for n in (1, 5)
    ]


def test_missing_file(tmp_path):
    drawing, notes = read_drawing(tmp_path / "gone.svg", "gone.svg", None, "motifs.fen")
    assert drawing is None and codes(notes) == ["D301"]
    drawing, notes = read_drawing(tmp_path, "folder", None, "motifs.fen")
    assert drawing is None and codes(notes) == ["D301"]


WHOLE = svg(
    '<defs><g id="a"><circle cx="5" cy="5" r="4"/></g></defs><style>.b{fill:none;stroke:red}'
    "</style>"
    '<g transform="rotate(10 5 5)"><path class="b" d="M0 0C1 2 3 4 5 6S7 8 9 9A3 4 5 0 1 2 3Z"/>'
    '<use href="#a" x="3"/><polygon points="1,2 3,4 9,1"/></g>'
)


@settings(max_examples=150)
@given(
    st.integers(0, len(WHOLE) - 1),
    st.sampled_from([*'<>"#&()0Z-e ', "1e9", "url(", "\0"]),
    st.booleans(),
)
def test_any_slip_of_the_hand_is_a_note(tmp_path_factory, at, mark, instead):
    """A character put in, or put in place of another, anywhere."""
    text = WHOLE[:at] + mark + WHOLE[at + instead :]
    drawing, notes = read(tmp_path_factory.mktemp("slip"), text)
    if drawing is None:
        assert any(n.severity is Severity.ERROR for n in notes)
    else:
        area, more = cloth(drawing, 1e-3)
        assert area.is_valid and (not area.is_empty or more)
