"""Stage 7, typesetting: a manual and its artwork as a finished PDF.

In: pattern, manual, artwork, paper. Out: `Edition`, or notes.
Invariant: words, numbers and drawings are placed, never changed; template sheets are
placed at 100 %; the same input gives the same bytes.

How the pages look is a layout's business: see layouts/README.md.
"""

from __future__ import annotations

from publish.model.book import PAPERS, Edition, Paper
from publish.model.figure import Artwork
from publish.model.pattern import Pattern
from publish.model.words import Manual
from publish.notes import Note, Severity, error
from publish.typeset import fonts, for_press, house, layout, pages, photos, plates, press, styled

__all__ = ["CODES", "inspect", "typeset"]

CODES: dict[str, str] = {
    "T701": "There is no layout of this name",
    "T702": "A layout's settings are faulty",
    "T703": "A template cannot be filled in",
    "T704": "A character is in none of the layout's fonts",
    "T705": "A figure that the booklet asks for was not drawn",
    "T706": "Template sheets that the booklet asks for were not drawn",
    "T707": "A template sheet is not drawn at the size of the paper",
    "T708": "A layout gives a template sheet no page of its own",
    "T709": "Template sheets are asked for on a paper of half the size",
    "T710": "A warning from WeasyPrint",
    "T711": "An error from WeasyPrint",
    "T712": "A font of the designer's cannot be read",
    "T713": "A font of the designer's lacks letters",
    "T714": "A font of the designer's may not be embedded",
    "T715": "An accent is too pale to be read",
    "T716": "A logo or a photograph cannot be read",
    "T717": "A logo has few pixels",
    "T718": "A photograph has too few pixels for its printed size",
    "T719": "A layout beside the pattern has the name of one of Foldwork's",
    "T720": "The booklet is set in a layout from the pattern's own folder",
    "T721": "A logo or a photograph holds too many pixels",
    "T722": "A font of the designer's has no true fractions",
}


def inspect(pattern: Pattern) -> tuple[Note, ...]:
    """Return what can be said of a pattern's looks before anything is typeset.

    Whether its layout is there and set for its papers and where it comes from, and whether
    its own fonts, logo, accent and photographs can be used.
    """
    notes: list[Note] = []
    for key in pattern.papers:
        chosen, found = layout.find(pattern, PAPERS[key])
        notes += [*found, *(layout.origin(pattern, chosen) if chosen else ())]
    return tuple(dict.fromkeys([*notes, *_own(pattern)]))


def _own(pattern: Pattern) -> tuple[Note, ...]:
    return (*house.check(pattern), *photos.check(pattern))


def typeset(
    pattern: Pattern,
    manual: Manual,
    artwork: Artwork,
    paper: Paper,
    name: str = "booklet",
    trimmed: bool = False,
    size: str = "",
) -> tuple[Edition | None, tuple[Note, ...]]:
    """Return one edition for one paper.

    `name` is the edition, `booklet` or `templates`. A `trimmed` edition is for a print shop:
    colour runs over the edges, nothing is see-through or tagged. Nothing is returned when a
    note is an error.
    """
    chosen, found = layout.find(pattern, paper)
    notes = [*found, *_own(pattern), *plates.check(pattern, manual, artwork, paper)]
    if chosen is None or _errors(notes):
        return None, tuple(notes)
    chosen = house.dressed(chosen, pattern)
    bleed = for_press.bleed_of(paper) if trimmed else 0.0
    artwork = for_press.opaque_artwork(artwork) if trimmed else artwork
    composed, faults = pages.compose(chosen, pattern, manual, artwork, paper, name, bleed)
    if composed is None:
        return None, (*notes, *faults)
    notes += photos.coarse(pattern, composed.html)
    notes += _unprintable(pattern, composed, artwork, chosen)
    if _errors(notes):
        return None, tuple(notes)
    at, variant = pattern.place("layout"), None if trimmed else press.VARIANT
    printed, said = press.print_pages(composed, chosen, artwork, at, variant)
    notes += (*said, *_homeless(pattern, manual, artwork, printed))
    if _errors(notes):
        return None, tuple(notes)
    made = Edition(
        _file(f"{name}-{size}" if size else name, paper, trimmed, pattern),
        paper,
        printed.pdf,
        composed.html,
        printed.sheet_pages,
        kind=name,
        size=size,
    )
    return made, tuple(notes)


def _file(name: str, paper: Paper, trimmed: bool, pattern: Pattern) -> str:
    """Return the edition's file name: `booklet-a4`; of one size `booklet-throw-a4`; for a print
    shop `press-a4`, and `press-templates-a4`; of a pattern in several languages `booklet-a4-de`."""
    told = f"-{pattern.language}" if len(pattern.languages) > 1 else ""
    if not trimmed:
        return f"{name}-{paper.key}{told}"
    return f"press-{paper.key}{told}" if name == "booklet" else f"press-{name}-{paper.key}{told}"


def _errors(notes: list[Note]) -> bool:
    return any(n.severity is Severity.ERROR for n in notes)


def _unprintable(
    pattern: Pattern, composed: styled.Composed, artwork: Artwork, chosen: layout.Layout
) -> tuple[Note, ...]:
    """Return a note when words or drawings hold characters that the layout's fonts lack."""
    drawings = [f.svg for f in artwork.figures.values()]
    drawings += [s.svg for s in artwork.pages]
    signs = fonts.missing(fonts.words("".join([composed.html, *drawings])), chosen.fonts)
    if not signs:
        return ()
    names = ", ".join(f"{sign} (U+{ord(sign):04X})" for sign in signs)
    return (
        error(
            "T704",
            pattern.place("title"),
            "the text uses characters that no font of the layout has",
            expected=" and ".join(dict.fromkeys(f.family for f in chosen.fonts)),
            received=names,
            help="write it another way, or use a layout with a font that has them",
        ),
    )


def _homeless(
    pattern: Pattern, manual: Manual, artwork: Artwork, printed: press.Printed
) -> tuple[Note, ...]:
    """Return a note for each sheet that the layout has not put on a page."""
    keys = [s.key for block in plates.wanted(manual) for s in plates.sheets(artwork, block)]
    return tuple(
        error(
            "T708",
            pattern.place("layout"),
            "the layout gives a template sheet no page",
            received=key,
            help="give it an element whose id is sheet_anchor(sheet)",
        )
        for key in dict.fromkeys(keys)
        if key not in printed.sheet_pages
    )
