"""What the designer should know about the words: gaps that a maker would trip over.

In: the pattern as a book. Out: notes.
Invariant: nothing here stops the build but a booklet without any size.
"""

from __future__ import annotations

from collections.abc import Iterable

from publish.notes import Note, error, warning
from publish.write.context import Book

CODES: dict[str, str] = {
    "W501": "No size can be written about",
    "W502": "Two sizes carry one title",
    "W503": "Two fabrics carry one name",
    "W504": "The pattern says nothing of what may be made from it",
    "W505": "The pattern gives no address for mistakes",
    "W506": "A change names a step that there is not",
    "W507": "A text names a value that there is not",
    "W508": "The braces of a text cannot be read",
    "W509": "A change is for a size that its step is not for",
    "W511": "Wording of the studio's is for a step that this pattern has not",
    "W510": "A size is titled as a piece is lettered",
}


def notes_on(book: Book) -> tuple[Note, ...]:
    """Return the notes of this stage."""
    if not book.keys:
        return (
            error(
                "W501",
                book.pattern.place("sizes"),
                CODES["W501"],
                expected="at least one size that can be graded, drafted and cut",
                help="mend what the earlier notes say",
            ),
        )
    return (*_titles(book), *_fabrics(book), *_publication(book))


def _repeats(named: Iterable[tuple[str, str]]) -> list[tuple[str, str, str]]:
    """Return key, earlier key and name for each name that comes again."""
    first: dict[str, str] = {}
    found = []
    for key, name in named:
        if name in first:
            found.append((key, first[name], name))
        first.setdefault(name, key)
    return found


def _titles(book: Book) -> list[Note]:
    return [
        error(
            "W502",
            book.pattern.place("sizes", key, "title"),
            "two sizes carry one title, so that tables and steps cannot tell them apart",
            expected=f"a title other than that of `{other}`",
            received=name,
            help="give one of them its own `title`",
        )
        for key, other, name in _repeats((k, book.title(k)) for k in book.keys)
    ] + [
        warning(
            "W510",
            book.pattern.place("sizes", key, "title"),
            f"the title {book.title(key)} is a piece's letter as well",
            expected="a title of more than a letter",
            received=book.title(key),
            help="write it out, so that nobody takes the size for a piece",
        )
        for key in book.keys
        if book.title(key) in {p.letter for k in book.keys for p in book.plans[k].pieces}
    ]


def _fabrics(book: Book) -> list[Note]:
    return [
        warning(
            "W503",
            book.pattern.place("fabrics", key, "name"),
            "two fabrics carry one name, so that the materials cannot tell them apart",
            expected=f"a name other than that of `{other}`",
            received=name,
            help="give one of them its own `name`",
        )
        for key, other, name in _repeats((f, book.fabric(f)) for f in book.fabrics)
    ]


def _publication(book: Book) -> list[Note]:
    out = book.pattern.publication
    found = []
    if out.studio and not out.licence:
        found.append(
            warning(
                "W504",
                book.pattern.place("publication"),
                "a published pattern says nothing of what may be made from it",
                expected="`licence`",
                help="say in one sentence what a maker may make and sell",
            )
        )
    if out.studio and not out.contact:
        found.append(
            warning(
                "W505",
                book.pattern.place("publication"),
                "a published pattern gives no address for mistakes",
                expected="`contact`",
                help="give an address that makers can write to",
            )
        )
    return found
