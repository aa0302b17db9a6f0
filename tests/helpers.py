"""What tests share: small patterns on disk, and their findings.

In: YAML text. Out: a folder with a pattern and its drawing; notes.
"""

import re
from importlib import resources
from pathlib import Path

from publish import grade, read
from publish.read import SMALLEST

ROOT = Path(__file__).parent.parent
PROJECTS = ROOT / "projects"
DEMO = PROJECTS / "samphire"
FAULTS = Path(__file__).parent / "faults"
DRAWING = (resources.files("publish") / "starter" / "motif.svg").read_text(encoding="utf-8")


def pattern(folder, text=SMALLEST, drawings=("bulrush.svg",)):
    """Write `text` as pattern.yaml with its drawings and return the file's path."""
    for name in drawings:
        (folder / name).write_text(DRAWING, encoding="utf-8")
    path = folder / "pattern.yaml"
    path.write_text(text, encoding="utf-8")
    return path


def changed(old, new, text=SMALLEST):
    """Return the smallest pattern with one passage changed."""
    assert text.count(old) == 1, f"{old!r} stands {text.count(old)} times"
    return text.replace(old, new)


def with_size(lines, text=SMALLEST):
    """Return the smallest pattern with other sizes: YAML indented by two blanks or more."""
    head, _, _ = text.partition("sizes:\n")
    return f"{head}sizes:\n{lines}"


def loaded(folder, text=SMALLEST, **files):
    """Return the pattern that `text` describes, which must have no faults."""
    result, notes, _ = read.load(pattern(folder, text, **files))
    assert_no_notes(notes)
    return result


def notes_of(folder, text, **files):
    """Return everything that reading finds in `text`."""
    return read.load(pattern(folder, text, **files))[1]


def graded(folder, text, size="mini"):
    """Return one size of the pattern that `text` describes, and grading's notes."""
    return grade.grade(loaded(folder, text), size)


def assert_no_notes(notes):
    """Fail with the notes' own words when there are any."""
    assert not notes, "\n".join(f"{n.place} {n.code} {n.what}" for n in notes)


def announced(text, prefixes):
    """Return (code, line) of each fault that a fixture's comments announce."""
    found = set()
    for number, line in enumerate(text.splitlines(), 1):
        match = re.search(r"# (?:error|warning): ([A-Z]\d{3}(?:, [A-Z]\d{3})*)", line)
        codes = match[1].split(", ") if match else []
        found |= {(code, number) for code in codes if code[0] in prefixes}
    return found
