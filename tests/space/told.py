"""The booklet as a maker reads it: every piece of text with where it stands.

In: a `Manual`. Out: `Line`s. Numbers in words and lengths in text are read by rules of
its own, so that nothing that the program wrote is judged by what wrote it.
"""

import re
from dataclasses import dataclass
from fractions import Fraction

WORDS = (
    "no",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
)
TIMES = {"once": 1, "twice": 2}
LENGTH = r"\d+ \d+/\d+|\d+/\d+|\d+"
"""A length in inches without its unit."""


@dataclass(frozen=True)
class Line:
    """One text: the section it stands in, what it is, its own key, the text.

    `kind` is `text`, `right`, `tip` or `caution` of a step; `lead`, `paragraph`, `item`,
    `caption`, `title`; `cell` or `note` of a table.
    """

    section: str
    kind: str
    key: str
    text: str
    sizes: tuple = ()
    number: int = 0

    @property
    def where(self):
        return f"{self.section}/{self.key}" if self.key else self.section

    @property
    def is_prose(self):
        return self.kind in ("text", "right", "tip", "caution", "lead", "paragraph", "item", "note")


def lines(manual):
    """Return every text of the booklet, in reading order."""
    found = []
    for section in manual.sections:
        found.append(Line(section.key, "title", "", section.title, section.sizes))
        found.append(Line(section.key, "lead", "", section.lead, section.sizes))
        for block in section.blocks:
            found += _BLOCKS.get(type(block).__name__, _nothing)(section, block)
    return [line for line in found if line.text]


def _nothing(_section, _block):
    return []


def _paragraph(section, block):
    return [Line(section.key, "paragraph", "", block.text, section.sizes)]


def _items(section, block):
    return [Line(section.key, "item", "", text, section.sizes) for text in block.items]


def _steps(section, block):
    found = []
    for step in block.items:
        for kind in ("text", "right", "tip", "caution"):
            sizes = step.sizes or section.sizes
            found.append(Line(section.key, kind, step.key, getattr(step, kind), sizes, step.number))
        if step.figure is not None:
            found.append(Line(section.key, "caption", step.key, step.figure.caption, section.sizes))
    return found


def _table(section, block):
    found = [Line(section.key, "title", block.key, block.title, section.sizes)]
    found += [Line(section.key, "cell", block.key, text, section.sizes) for text in block.head]
    for row in block.rows:
        found += [Line(section.key, "cell", block.key, text, section.sizes) for text in row.cells]
    return found + [Line(section.key, "note", block.key, text) for text in block.notes]


def _figure(section, block):
    return [Line(section.key, "caption", block.figure.key, block.figure.caption, section.sizes)]


def _figures(section, block):
    return [Line(section.key, "caption", f.key, f.caption, section.sizes) for f in block.figures]


_BLOCKS = {
    "Paragraph": _paragraph,
    "Bullets": _items,
    "Box": _items,
    "Steps": _steps,
    "Table": _table,
    "FigureBlock": _figure,
    "FigureGrid": _figures,
}


def tables(manual, start):
    """Yield every table whose key begins so."""
    for section in manual.sections:
        for block in section.blocks:
            if type(block).__name__ == "Table" and block.key.startswith(start):
                yield section, block


def number(word):
    """Return the number that a word or numeral says, or None."""
    low = word.lower().strip("*").replace(",", "")
    if low in WORDS:
        return WORDS.index(low)
    if low in ("a", "an", "the"):
        return 1
    return int(low) if low.isdigit() else TIMES.get(low)


def inches(text):
    """Return a length in inches: `2 1/2` is 5/2; with a root (`3 + 4√2`) a float."""
    if "√" in text:
        return _rooted(text)
    return sum((Fraction(part) for part in text.split()), Fraction(0))


def _rooted(text):
    total = 0.0
    for sign, plain, root in re.findall(r"(^-?|[+-] )([\d/ ]*)(√\d+)?", text):
        if not plain.strip() and not root:
            continue
        value = float(sum(Fraction(p) for p in plain.split())) if plain.strip() else 1.0
        value *= int(root[1:]) ** 0.5 if root else 1.0
        total += -value if "-" in sign else value
    return total


def boxes(text):
    """Return in inches every width and height told: `2 in × 3 in`, `4 in (10.2 cm) square`,
    `8.5 cm × 32 mm`."""
    found = []
    for one, read in ((rf"({LENGTH}) (in)", _in), (r"(\d+(?:\.\d+)?) (cm|mm)", _metric)):
        outside = re.sub(r"\([^)]*\)", "", text)
        found += [
            (read(m[1], m[2]), read(m[3], m[4])) for m in re.finditer(rf"{one} × {one}", outside)
        ]
        square = rf"(?<![\d/×.] )(?<![\d.]){one} +square"
        found += [(read(m[1], m[2]), read(m[1], m[2])) for m in re.finditer(square, outside)]
    return found


def _in(size, _unit):
    return inches(size)


def _metric(size, unit):
    return Fraction(size) * {"cm": 10, "mm": 1}[unit] / Fraction("25.4")


def letters(text):
    """Return every letter of a piece that a text names in bold: `**A**`, `**AB**`."""
    return re.findall(r"\*\*([A-Z]{1,2})\*\*", text)
