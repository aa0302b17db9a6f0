"""The schema of book.yaml: a book of several patterns.

In: the declaration of a pattern. Out: `BOOK`.
Invariant: what a book shares with a pattern is declared there once.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from publish.gtin import ISBN
from publish.read.forms import Choice, Form, Hint, Unfit
from publish.read.schema import PATTERN
from publish.read.schema_studio import OWN, STUDIO
from publish.read.sections import Key, Many, Section
from publish.read.source import FILE_NAME
from publish.read.special import Barcode
from publish.read.texts import Text
from publish.words import LANGUAGES

BOOK_FILE = "book.yaml"


@dataclass(frozen=True)
class Isbn(Barcode):
    """A book's number."""

    @property
    def words(self) -> str:
        return "an ISBN, with or without its check digit"

    def read(self, text: str, hint: Hint) -> Any:
        found = super().read(text, hint)
        if isinstance(found, Unfit) or found.startswith(ISBN):
            return found
        return Unfit("R134", "is not an ISBN", f"write an ISBN, such as `{hint.example}`")

    def taken(self, text: str) -> Unfit | None:
        return None


@dataclass(frozen=True)
class PatternFolder(Form):
    """A folder below the book's that holds a pattern."""

    @property
    def words(self) -> str:
        return f"a folder that holds {FILE_NAME}, as seen from {BOOK_FILE}"

    def json(self) -> dict[str, Any]:
        return {"type": ["string", "number"]}

    def read(self, text: str, hint: Hint) -> Any:
        try:
            home = hint.folder.resolve()
            folder = (home / text).resolve()
            if not folder.is_relative_to(home):
                help_ = f"put {BOOK_FILE} beside the patterns or above them"
                return Unfit("R132", "leads out of the book's folder", help_)
            if (folder / FILE_NAME).is_file():
                return hint.folder / folder.relative_to(home)
            there = sorted(p.parent.name for p in home.glob(f"*/{FILE_NAME}"))
        except (OSError, ValueError):  # a name no system allows
            there = []
        help_ = f"patterns that are there: {', '.join(there[:8])}" if there else "check the name"
        return Unfit("R131", "is no folder of a pattern", help_)


_PATTERNS = Many(PatternFolder(), 1, 60, distinct=True)

PART = Section(
    "part",
    "A part of the book.",
    (
        Key(
            "title", Text(60, blank=False, name=True), "Its heading.", "Quiet water", required=True
        ),
        Key(
            "lead",
            Text(400, sentence=True),
            "A sentence under it.",
            "Two patterns for a first winter.",
            default='""',
        ),
        Key("patterns", _PATTERNS, "Its patterns, in order.", "[samphire, towpath]", required=True),
    ),
)


def _publication() -> Section:
    shape = STUDIO.key("publication").shape
    assert isinstance(shape, Section)
    kept = tuple(k for k in shape.keys if k.name != "skill")
    return replace(shape, name="imprint", keys=kept, meaning="Who publishes the book.")


BOOK = Section(
    "book",
    "Several patterns as one book. What their booklets tell alike is told once.",
    (
        Key(
            "title",
            Text(60, blank=False, name=True),
            "The book's title.",
            "A Year of Fens",
            required=True,
        ),
        Key(
            "subtitle",
            Text(120, sentence=True),
            "A line under it.",
            "Four quilts by water",
            default='""',
        ),
        Key(
            "isbn",
            Isbn(),
            "The book's number, printed as a barcode on the back cover.",
            '"978-0-306-40615-7"',
            default="none",
        ),
        Key(
            "foreword",
            Text(8000, lines=True),
            "What stands before the patterns, as Markdown.",
            "These quilts were made in one winter.",
            default='""',
        ),
        Key(
            "blurb",
            Text(1200, lines=True),
            "A paragraph for the back cover.",
            "Four walks along still water.",
            default='""',
        ),
        Key("patterns", _PATTERNS, "The patterns, in order.", "[samphire, towpath]"),
        Key(
            "parts",
            Many(PART, 1, 20),
            "The patterns by parts, in order.",
            "[{title: Quiet water, patterns: [samphire, towpath]}]",
        ),
        Key(
            "languages",
            Many(Choice(LANGUAGES), 1, 1),
            "The language that it is told in.",
            "[de]",
            default="[en]",
        ),
        PATTERN.key("layout"),
        Key(
            "papers",
            Many(Choice(("letter", "a4")), 1, 2, distinct=True),
            "The papers that it is printed on.",
            "[a4]",
            default="[letter, a4]",
        ),
        PATTERN.key("style"),
        Key(
            "publication",
            _publication(),
            "Who publishes it.",
            "{edition: First edition}",
            derived="the studio's",
        ),
    ),
    one_of=("patterns", "parts"),
)
assert "blurb" in OWN["publication"]
