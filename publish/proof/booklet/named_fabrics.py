"""Whether the steps call a piece by the fabric that it is cut from.

In: a case. Out: notes.
Invariant: a fabric named with a letter, before it or after `of`, is that piece's; a cutting
step that begins with a fabric cuts from it alone; a border is of the fabric its step says.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from publish.notes import Note, warning
from publish.proof.booklet.claims import LETTER, Told, is_cutting, step_place, told
from publish.proof.booklet.prose import moments_of
from publish.proof.case import Case, Code

CODES = {
    "P810": Code(
        "A step names another fabric than the piece is cut from",
        "the maker sews the wrong cloth",
        "`a Creek mist piece **B**`, where B is cut from Salt linen",
        "`a Salt linen piece **B**`",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a warning for each fabric named that is not the piece's."""
    names = {f.name: key for key, f in case.pattern.fabrics.items()}
    if not names:
        return
    name = "|".join(re.escape(n) for n in sorted(names, key=len, reverse=True))
    before = re.compile(rf"({name})(?: [^\W\d]+){{0,2}} \*\*([A-Z]{{1,2}})\*\*")
    after = re.compile(rf"\*\*([A-Z]{{1,2}})\*\* of ({name})")
    lead = re.compile(rf"^\*\*({name})\.\*\*")
    towards = re.compile(rf"[Pp]ress the seams? towards? ({name})")
    border = re.compile(rf"border is ({name})")
    for one in told(case):
        text = one.step.text
        pairs = [(fabric, letter) for fabric, letter in before.findall(text)]
        pairs += [(fabric, letter) for letter, fabric in after.findall(text)]
        first = lead.match(text)
        if first is not None and is_cutting(one.section):
            pairs += [(first[1], letter) for letter in LETTER.findall(text)]
        figure = one.step.figure
        if first is not None and figure is not None and figure.get("fabric"):
            shown = figure.get("fabric")
            if shown != names[first[1]]:
                yield _note(case, one, "its figure", {names[first[1]]}, shown)
        yield from _pictured(case, one)
        yield from _pressed(case, one, {names[n] for n in towards.findall(text)})
        for fabric, letter in dict.fromkeys(pairs):
            yield from _judged(case, one, names[fabric], letter)
        for fabric in border.findall(text):
            yield from _border(case, one, names[fabric])


def _pictured(case: Case, one: Told) -> Iterator[Note]:
    """A step's figure is of the fabric that its operations ask for."""
    figure = one.step.figure
    shown = figure.get("fabric") if figure is not None else ""
    moments = [m for key in one.sizes for m in moments_of(case, one, key)]
    asked = [f for m in moments if (f := m.operation.figure(m)) is not None]
    wanted = {value for f in asked for name, value in f.values if name == "fabric"}
    if shown and wanted and shown not in wanted:
        yield _note(case, one, "its figure", wanted, shown)


def _judged(case: Case, one: Told, fabric: str, letter: str) -> Iterator[Note]:
    cut = {p.fabric for k in one.sizes for p in case.plans[k].pieces if p.letter == letter}
    if cut and fabric not in cut:
        yield _note(case, one, f"piece {letter}", cut, fabric)


def _pressed(case: Case, one: Told, fabrics: set[str]) -> Iterator[Note]:
    """A seam is pressed towards a fabric that the unit has."""
    figure = one.step.figure
    kind = figure.get("unit") if figure is not None and figure.kind == "units" else ""
    held = {
        p.fabric
        for k in one.sizes
        for u in case.drafts[k].assembly.outermost_first()
        if u.kind == kind
        for p in u.patches
    }
    for fabric in sorted(fabrics - held) if held else ():
        yield _note(case, one, "the side to press to", held, fabric)


def _border(case: Case, one: Told, fabric: str) -> Iterator[Note]:
    figure = one.step.figure
    if figure is None or figure.kind != "borders":
        return
    number = int(figure.get("border", "0"))
    wanted = {
        layer.border.fabric
        for k in one.sizes
        for layer in case.sizes[k].layers[number : number + 1]
        if layer.border is not None
    }
    if wanted and fabric not in wanted:
        yield _note(case, one, "the border", wanted, fabric)


def _note(case: Case, one: Told, what: str, wanted: set[str], fabric: str) -> Note:
    return warning(
        "P810",
        step_place(case, one),
        f"{one.where} names another fabric for {what}",
        expected=" or ".join(case.name(f) for f in sorted(wanted)),
        received=case.name(fabric),
    )
