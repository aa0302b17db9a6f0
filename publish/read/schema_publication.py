"""The schema of who publishes a pattern or a book.

In: forms and shapes. Out: `PUBLICATION`.
Invariant: declarations only.
"""

from __future__ import annotations

from publish.read.forms import Whole
from publish.read.sections import Key, Section
from publish.read.special import Barcode, Length
from publish.read.texts import Text

PUBLICATION = Section(
    "publication",
    "Who publishes the pattern, and what the covers say. What is left out is not printed.",
    (
        Key("studio", Text(60, name=True), "The studio's name.", "Hollow Fen Studio", default='""'),
        Key("stock_number", Text(30), "The number that shops order by.", "HF-101", default='""'),
        Key(
            "edition",
            Text(40, sentence=True),
            "Which edition this is.",
            "Second edition",
            derived="the first",
        ),
        Key("year", Whole(1900, 2199), "The year of publication.", "2026", default="none"),
        Key(
            "licence",
            Text(1200, lines=True),
            "What makers may do with what they sew and with the pattern.",
            "For personal use and for gifts.",
            default='""',
        ),
        Key(
            "contact",
            Text(120),
            "Where to report a mistake.",
            "patterns@hollowfen.example",
            default='""',
        ),
        Key(
            "skill",
            Text(40, sentence=True),
            "How much experience the pattern asks for.",
            "Confident beginner",
            default='""',
        ),
        Key(
            "blurb",
            Text(1200, lines=True),
            "A paragraph for the back cover.",
            "Samphire grows where the tide comes in twice a day.",
            default='""',
        ),
        Key(
            "barcode",
            Barcode(),
            "The number of the barcode on the back cover, from whoever "
            "gives out your numbers. It is printed at its nominal size, 37.3 mm wide.",
            "6291041500213",
            default="none",
        ),
        Key(
            "paper_thickness",
            Length("0 in", "0.05 in"),
            "Of the paper that the booklet is "
            "printed on: inner sheets of a folded booklet push out at the fold by as much, and "
            "their pages move inwards. The default is a common text paper's.",
            "0.1 mm",
            default="0.005 in",
        ),
    ),
)
