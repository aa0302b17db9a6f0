"""Whatever the bytes: notes, never an exception (property tests)."""

import pytest
from helpers import DRAWING, PROJECTS
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from publish import grade, read
from publish.notes import Severity

DEMOS = {
    name: ((PROJECTS / name) / "pattern.yaml").read_text(encoding="utf-8")
    for name in ("samphire", "towpath", "millrace", "heronry")
}
TRAPS = [
    "no",
    "1:30",
    "~",
    "none",
    "[",
    "]",
    "{",
    "}",
    "*x",
    "&x ",
    "!x ",
    "<<: ",
    "\t",
    "- ",
    ": ",
    "? ",
    "#",
    '"',
    "'",
    "|",
    ">",
    "%",
    "-1 in",
    "1/0 in",
    "99 in",
    "½",
    "\\",
    "\x85",
    "\u2028",
    "\ud7ff",
    "\ufeff",
    "---\n",
    "...\n",
    "\r",
    "0x1F",
    "1e9",
    "2026-01-01",
    '"\\ud800"',
    '"\\0"',
    "16",
    "in",
    "[[0, 0], [1]]",
    "{a: b}",
    "[0, 0, 9]",
    "[1/2, 0, arc]",
    "-1/3",
    "heron",
    "on point",
    "{block: lock, at: [0, 0]}",
    "../x.svg",
    ".",
    "/",
]


@st.composite
def mutations(draw):
    """Return a demo pattern's text with a few lines moved, lost or spoilt."""
    lines = DEMOS[draw(st.sampled_from(sorted(DEMOS)))].splitlines(keepends=True)
    for _ in range(draw(st.integers(1, 4))):
        spot = draw(st.integers(0, len(lines) - 1))
        line = lines[spot]
        at = draw(st.integers(0, len(line)))
        new = draw(st.sampled_from(TRAPS) | st.text(max_size=6))
        kind = draw(st.sampled_from(["insert", "value", "drop", "twice", "indent", "swap", "key"]))
        if kind == "insert":
            lines[spot] = line[:at] + new + line[at:]
        elif kind == "value":
            lines[spot] = f"{line.split(':')[0]}: {new}\n"
        elif kind == "drop" and len(lines) > 1:
            del lines[spot]
        elif kind == "twice":
            lines.insert(spot, line)
        elif kind == "indent":
            lines[spot] = " " * draw(st.integers(0, 6)) + line.lstrip(" ")
        elif kind == "swap":
            other = draw(st.integers(0, len(lines) - 1))
            lines[spot], lines[other] = lines[other], lines[spot]
        else:
            lines[spot] = line.replace(":", f"{new}:", 1)
    return "".join(lines).encode("utf-8", "surrogatepass")


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    folder = tmp_path_factory.mktemp("mutated")
    for name in ("samphire.svg", "millrace.svg"):
        (folder / name).write_text(DRAWING, encoding="utf-8")
    return folder


def check(folder, data):
    (folder / "pattern.yaml").write_bytes(data)
    pattern, notes, _ = read.load(folder)
    errors = [note for note in notes if note.severity is Severity.ERROR]
    assert (pattern is None) == bool(errors)
    for note in notes:
        assert note.code in read.CODES
        assert all((note.what, note.expected, note.received, note.help)), note
        assert note.place.line >= 1
        assert note.place.column >= 1
        str(note).encode("utf-8")
    for key in pattern.sizes if pattern else ():
        size, found = grade.grade(pattern, key)
        assert (size is None) == any(note.severity is Severity.ERROR for note in found)
        assert {note.code for note in found} <= set(grade.CODES)
    return pattern


quick = settings(max_examples=150, suppress_health_check=[HealthCheck.too_slow])


@quick
@given(data=mutations())
def test_a_spoilt_pattern_gives_notes(folder, data):
    check(folder, data)


@quick
@given(
    data=st.binary(max_size=200) | st.text(max_size=200).map(lambda t: t.encode("utf-8", "replace"))
)
def test_any_bytes_give_notes(folder, data):
    assert check(folder, data) is None
