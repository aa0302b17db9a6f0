"""Whether a maker can tell which pattern this is, and whom to ask.

In: a case. Out: notes.
Invariant: a published pattern (one with a studio) has a title, a stock number, an edition, a
licence and an address; covers and the last page print them as the pattern has them.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.notes import Note, error, warning
from publish.proof.case import Case, Code

CODES = {
    "P854": Code(
        "A published pattern has no stock number or edition",
        "a shop cannot order it, and nobody knows which edition a correction is for",
        "`publication: {studio: Hollow Fen Studio}`",
        "`publication: {studio: Hollow Fen Studio, stock_number: HF-101, edition: First edition}`",
    ),
    "P855": Code(
        "The covers do not print what the pattern says",
        "two editions cannot be told apart",
        "a back cover without the licence that `publication.licence` gives",
        "title, studio, stock number, edition, licence and contact as in `publication`",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for whatever is missing or printed otherwise."""
    said, back, cover = case.pattern.publication, case.manual.back, case.manual.cover
    for key in ("stock_number", "edition"):
        if said.studio and not getattr(said, key).strip():
            name = key.replace("_", " ")
            yield warning(
                "P854",
                case.pattern.place("publication", key),
                f"the pattern has no {name}",
                expected=f"`{key}`",
                help=f"give it under `publication` as `{key}`",
            )
    printed = (
        ("title", case.pattern.title, cover.title),
        ("studio", said.studio, cover.studio),
        ("stock number", said.stock_number, back.stock_number),
        ("edition", said.edition if said.studio else "", back.edition),
        ("licence", said.licence, back.licence),
        ("contact", said.contact, back.contact),
        ("title at the foot", case.pattern.title, case.manual.running_foot),
        ("studio at the foot", said.studio, case.manual.running_foot if said.studio else ""),
    )
    for name, wanted, found in printed:
        words, told = " ".join(wanted.split()), " ".join(found.split())
        exact = name in ("title", "studio", "stock number")
        if (told != words) if exact else (words not in told):
            yield error(
                "P855",
                case.pattern.place("publication"),
                f"the covers do not print the {name} as the pattern has it",
                expected=wanted,
                received=found or "nothing",
            )
