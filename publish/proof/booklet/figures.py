"""Whether every figure that the booklet asks for can be placed and read.

In: a case. Out: notes.
Invariant: a figure's key stands for one figure; it shows a size, motif, block, fabric
that the pattern has; a figure that neither a step nor a heading of its own speaks for has
a caption.
"""

from __future__ import annotations

from collections.abc import Iterator

from publish.model.words import FigureBlock, FigureGrid, FigureSpec, Manual, Section, Steps
from publish.notes import Note, error, warning
from publish.proof.case import Case, Code

CODES = {
    "P851": Code(
        "One key stands for two figures",
        "one of them would be printed twice",
        "the key `binding-mini` for the join and for the corner",
        "`binding-mini-join` and `binding-mini-corner`",
    ),
    "P852": Code(
        "A figure stands without words",
        "the maker does not know what it shows",
        "a quilting plan drawn without a word beneath it",
        "`Mini wall quilt: the quilting lines.`",
    ),
    "P853": Code(
        "A figure shows something that the pattern does not have",
        "it stays empty",
        "a figure of the size `wall` in a pattern without one",
        "a figure of a size that the pattern has",
    ),
}


def check(case: Case) -> Iterator[Note]:
    """Yield a note for each figure that is ambiguous, mute or about nothing."""
    first: dict[str, FigureSpec] = {}
    for section, figure, alone in asked(case.manual):
        if first.setdefault(figure.key, figure) != figure:
            yield error(
                "P851",
                case.pattern.place("title"),
                f"the key {figure.key!r} stands for two figures",
                expected=_says(first[figure.key]),
                received=_says(figure),
            )
        if alone and not figure.caption.strip() and len(section.blocks) > 1:
            yield warning(
                "P852",
                case.pattern.place("title"),
                f"the figure {figure.key!r} in {section.title} has no caption",
            )
        yield from _subject(case, figure)


def asked(manual: Manual) -> Iterator[tuple[Section, FigureSpec, bool]]:
    """Yield each figure of the sections and whether it stands alone, without a step."""
    for section in manual.sections:
        for block in section.blocks:
            if isinstance(block, Steps):
                yield from ((section, s.figure, False) for s in block.items if s.figure)
            elif isinstance(block, FigureBlock):
                yield section, block.figure, True
            elif isinstance(block, FigureGrid):
                yield from ((section, figure, True) for figure in block.figures)


def _says(figure: FigureSpec) -> str:
    values = "".join(f", {name} {value}" for name, value in figure.values)
    return f"{figure.kind} for {figure.size or 'no size'}{values}"


def _subject(case: Case, figure: FigureSpec) -> Iterator[Note]:
    known = {
        "size": set(case.keys),
        "motif": {*case.pattern.motifs, *_templates(case)},
        "block": set(case.pattern.blocks),
        "fabric": set(case.pattern.fabrics),
    }
    for name, value in (("size", figure.size or ""), *figure.values):
        if value and name in known and value not in known[name]:
            yield error(
                "P853",
                case.pattern.place("title"),
                f"the figure {figure.key!r} shows a {name} that the pattern does not have",
                expected=" or ".join(sorted(known[name])),
                received=value,
            )


def _templates(case: Case) -> set[str]:
    """Return the keys of piece templates and foundations: they are on sheets as motifs are."""
    pieces = {t.key for key in case.keys for t in case.plans[key].templates}
    return pieces | {f.key for key in case.keys for f in case.drafts[key].foundations}
